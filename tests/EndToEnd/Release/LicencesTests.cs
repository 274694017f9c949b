using EndToEnd.Faults;

namespace EndToEnd.Release;

/// <summary>Nothing is passed on of which eng/licences.sh does not know the licence.</summary>
[Trait("Category", "Release")]
public sealed class LicencesTests
{
    [LinuxFact]
    public async Task A_package_whose_native_files_nobody_has_looked_into_is_refused()
    {
        using var packages = Packages("<license type=\"expression\">MIT</license>");
        packages.Write("strange/1.2.3/runtimes/linux-x64/native/libstrange.so", "");
        var command = await LicencesAsync(packages);
        Assert.Equal(1, command.Code);
        Assert.Contains("Strange 1.2.3 brings native files, and eng/licences/inside.txt", command.Error, StringComparison.Ordinal);
    }

    [LinuxFact]
    public async Task A_package_without_a_licence_is_refused()
    {
        using var packages = Packages("<license type=\"file\">LICENSE</license>");
        var command = await LicencesAsync(packages);
        Assert.Equal(1, command.Code);
        Assert.Contains("Strange 1.2.3 has no licence expression.", command.Error, StringComparison.Ordinal);
    }

    [LinuxFact]
    public async Task A_licence_whose_text_is_not_there_is_refused()
    {
        using var packages = Packages("<license type=\"expression\">Odd-1.0</license>");
        var command = await LicencesAsync(packages);
        Assert.Equal(1, command.Code);
        Assert.Contains("The text of Odd-1.0 is not in eng/licences.", command.Error, StringComparison.Ordinal);
    }

    // A folder of packages with one of them in it, and what a build says of its parts.
    private static TemporaryFolder Packages(string licence)
    {
        var folder = new TemporaryFolder();
        folder.Write("strange/1.2.3/strange.nuspec", $"<package><metadata>{licence}<authors>Nobody</authors></metadata></package>");
        folder.Write(
            "build.deps.json",
            """
            {
              "libraries": {
                "Strange/1.2.3": {
                  "type": "package"
                }
              }
            }
            """
        );
        return folder;
    }

    private static async Task<Command> LicencesAsync(TemporaryFolder packages)
    {
        using var process = EmptyRoot.StartLine([
            "env",
            $"NUGET_PACKAGES={packages.Path}",
            "bash",
            Repository.File("eng/licences.sh"),
            packages.In("build.deps.json"),
        ]);
        return await Command.EndAsync(process);
    }
}
