namespace EndToEnd.Faults;

/// <summary>A test that needs the shell, the limits or the devices of Linux; said to be skipped elsewhere.</summary>
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

    /// <summary>True for a test that shows nothing to the superuser, who may write anywhere.</summary>
    public bool NotForRoot
    {
        get => Skip is not null;
        init
        {
            if (value && Environment.IsPrivilegedProcess)
            {
                Skip = "The superuser may write anywhere.";
            }
        }
    }
}
