namespace EndToEnd.Release;

/// <summary>
/// A test of what eng/release made, in the folder that BENCHSIM_RELEASE names; without one it is skipped, and says so. Those that need an
/// empty root need Linux and its superuser.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ReleaseFactAttribute : FactAttribute
{
    /// <summary>A test of the folder, or of one archive in it.</summary>
    /// <param name="archive">Pattern of the archive, where it need not have been made; null for none.</param>
    public ReleaseFactAttribute(string? archive = null)
    {
        if (Environment.GetEnvironmentVariable("BENCHSIM_RELEASE") is not { Length: > 0 })
        {
            Skip = "BENCHSIM_RELEASE names no folder that eng/release made.";
        }
        else if (archive is not null && Directory.GetFiles(EmptyRoot.Folder, archive).Length == 0)
        {
            Skip = $"{archive} was not made.";
        }
        else if (!OperatingSystem.IsLinux() || !Environment.IsPrivilegedProcess)
        {
            Skip = "This test needs Linux and its superuser.";
        }
    }
}
