using System.Diagnostics;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;

namespace EndToEnd.Release;

/// <summary>What people download works on a machine that has nothing.</summary>
[Trait("Category", "Release")]
public sealed class ReleaseTests
{
    private static readonly string[] s_inside =
    [
        "==== Apache-2.0",
        "==== MIT",
        "==== EPL-2.0",
        "Preact",
        "Bitstream Vera",
        "CsvHelper",
        "SoPlex",
        "Microsoft.NETCore.App",
    ];

    [ReleaseFact]
    public Task The_archive_runs_in_an_empty_root() => RunsAsync(EmptyRoot.Linux);

    [ReleaseFact(EmptyRoot.Native)]
    public Task The_native_program_runs_in_an_empty_root() => RunsAsync(EmptyRoot.Native);

    private static async Task RunsAsync(string archive)
    {
        using var root = new EmptyRoot(archive);
        await Done(root.RunAsync("new", "/home/spring", "--farm", "hoop-house"));
        await Done(root.RunAsync("check", "/home/spring"));
        await Done(root.RunAsync("run", "/home/spring", "--seasons", "100"));
        Assert.True(File.Exists(root.In("/home/spring-report/report.html")));
        Assert.NotEmpty(Directory.GetFiles(root.In("/home/spring-report/charts"), "*.png"));
        await Done(root.RunAsync("print", "/home/spring"));
        var level = await Done(root.RunAsync("level", "/home/spring"));
        Assert.DoesNotContain("left out", level.Output, StringComparison.Ordinal);
    }

    [ReleaseFact]
    public Task The_workbench_opens_in_an_empty_root() => OpensAsync(EmptyRoot.Linux);

    [ReleaseFact(EmptyRoot.Native)]
    public Task The_workbench_of_the_native_program_opens_in_an_empty_root() => OpensAsync(EmptyRoot.Native);

    private static async Task OpensAsync(string archive)
    {
        using var root = new EmptyRoot(archive);
        await Done(root.RunAsync("new", "/home/spring", "--farm", "container"));
        using var process = root.Start("open", "/home/spring");
        try
        {
            await process.StandardOutput.ReadLineAsync();
            var page = await PageAsync(new Uri((await process.StandardOutput.ReadLineAsync())!));
            Assert.Contains("<title>", page, StringComparison.Ordinal);
        }
        finally
        {
            process.Kill();
        }
    }

    // As a file manager starts it: no terminal, nothing to read from or write to. The browser is a script that keeps the address.
    [ReleaseFact]
    public async Task A_double_click_opens_the_workbench()
    {
        using var root = new EmptyRoot();
        var browser = new AddressKeeper(root.In("bin"));
        const string line = "cd \"$HOME\" && exec setsid \"$0\" < /dev/null > /dev/null 2>&1";
        var path = $"PATH={await browser.LayAsync()}:/usr/bin:/bin";
        using var process = EmptyRoot.StartLine(["env", "-i", $"HOME={root.In("home")}", path, "sh", "-c", line, root.Program]);
        try
        {
            var page = await PageAsync(await browser.AddressAsync(process));
            Assert.Contains("<title>", page, StringComparison.Ordinal);
        }
        finally
        {
            process.Kill();
        }
    }

    // In a fresh home, from the folder that was made as the only feed.
    [ReleaseFact]
    public async Task The_tool_installs_and_runs_in_a_fresh_home()
    {
        using var home = new TemporaryFolder();
        var feed = home.In("NuGet.config");
        await File.WriteAllTextAsync(
            feed,
            $"""<configuration><packageSources><clear /><add key="made" value="{EmptyRoot.Folder}" /></packageSources></configuration>"""
        );
        string[] clean = ["env", "-u", "DOTNET_ROOT", "-u", "NUGET_PACKAGES", $"HOME={home.Path}", $"DOTNET_CLI_HOME={home.Path}"];
        await Done(
            Command.EndAsync(
                EmptyRoot.StartLine([
                    .. clean,
                    "dotnet",
                    "tool",
                    "install",
                    "BenchSim",
                    "--tool-path",
                    home.In("tools"),
                    "--configfile",
                    feed,
                ])
            )
        );
        Task<Command> Run(params string[] args) => Command.EndAsync(EmptyRoot.StartLine([.. clean, home.In("tools/benchsim"), .. args]));
        await Done(Run("new", home.In("spring")));
        await Done(Run("run", home.In("spring"), "--seasons", "50"));
        Assert.True(File.Exists(home.In("spring-report/report.html")));
        var level = await Run("level", home.In("spring"));
        Assert.Equal(2, level.Code);
        Assert.StartsWith("The solver that this command needs was left out", level.Error, StringComparison.Ordinal);
    }

    [ReleaseFact]
    public void Checksums_licences_and_the_bill_are_those_of_what_was_made()
    {
        foreach (var line in File.ReadLines(Path.Combine(EmptyRoot.Folder, "SHA256SUMS")))
        {
            var (sum, file) = (line[..64], Path.Combine(EmptyRoot.Folder, line[66..]));
            Assert.Equal(sum, Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file))));
        }

        using var bill = JsonDocument.Parse(File.ReadAllBytes(EmptyRoot.Archive("*.cdx.json")));
        Assert.Equal("CycloneDX", bill.RootElement.GetProperty("bomFormat").GetString());
        HashSet<string> billed = new(bill.RootElement.GetProperty("components").EnumerateArray().Select(Name), StringComparer.Ordinal);
        foreach (var archive in Directory.GetFiles(EmptyRoot.Folder, "*.zip"))
        {
            using var zip = ZipFile.OpenRead(archive);
            var names = zip.Entries.Select(entry => entry.FullName).ToHashSet(StringComparer.Ordinal);
            Assert.Superset(new HashSet<string>(["LICENSE.txt", "LICENCES.txt", "READ ME FIRST.txt"], StringComparer.Ordinal), names);
            Assert.Contains(names, name => name.StartsWith("solver/", StringComparison.Ordinal));
            using var licences = new StreamReader(zip.GetEntry("LICENCES.txt")!.Open());
            var text = licences.ReadToEnd();
            Assert.All(s_inside, part => Assert.Contains(part, text, StringComparison.OrdinalIgnoreCase));

            // A part has its licence in the line below its name.
            var lines = text.Split('\n');
            string[] parts =
            [
                .. lines.Where((_, at) => at + 1 < lines.Length && lines[at + 1].StartsWith("    licence: ", StringComparison.Ordinal)),
            ];
            Assert.True(parts.Length > s_inside.Length, $"{parts.Length} parts");
            Assert.All(parts, part => Assert.Contains(part, billed));
        }

        static string Name(JsonElement component) =>
            component.GetProperty("name").GetString()
            + (component.TryGetProperty("version", out var version) ? " " + version.GetString() : "");
    }

    private static async Task<Command> Done(Task<Command> running)
    {
        var command = await running;
        Assert.True(command.Code == 0, command.Output + command.Error);
        return command;
    }

    private static async Task<string> PageAsync(Uri address)
    {
        using var visitor = new HttpClient();
        return await visitor.GetStringAsync(address);
    }
}
