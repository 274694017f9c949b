namespace EndToEnd.Faults;

/// <summary>A test that needs the shell, the limits or the devices of Linux; elsewhere it is skipped, and says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class LinuxFactAttribute : FactAttribute
{
    public LinuxFactAttribute()
    {
        if (!OperatingSystem.IsLinux())
        {
            Skip = "This test needs Linux.";
        }
    }
}
