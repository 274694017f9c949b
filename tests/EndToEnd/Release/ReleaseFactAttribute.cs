namespace EndToEnd.Release;

/// <summary>
/// A test of what eng/release made, in the folder that BENCHSIM_RELEASE names; without one it is skipped, and says so. Those that need an
/// empty root need Linux and its superuser.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ReleaseFactAttribute : FactAttribute
{
    public ReleaseFactAttribute()
    {
        if (Environment.GetEnvironmentVariable("BENCHSIM_RELEASE") is not { Length: > 0 })
        {
            Skip = "BENCHSIM_RELEASE names no folder that eng/release made.";
        }
        else if (!OperatingSystem.IsLinux() || !Environment.IsPrivilegedProcess)
        {
            Skip = "This test needs Linux and its superuser.";
        }
    }
}
