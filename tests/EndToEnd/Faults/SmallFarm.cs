namespace EndToEnd.Faults;

/// <summary>The starter folder and the reports that are made of it.</summary>
internal sealed class SmallFarm : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private SmallFarm() => Directory.CreateDirectory(_folder.In("out"));

    public string Scenario => _folder.In("farm");

    /// <summary>Where reports go; nothing else is in the folder above.</summary>
    public string Report => _folder.In("out/report");

    /// <summary>All that is beside the report, hidden or not, by name.</summary>
    public string[] Entries =>
        [
            .. Directory
                .EnumerateFileSystemEntries(_folder.In("out"), "*", new EnumerationOptions { AttributesToSkip = FileAttributes.None })
                .Select(path => Path.GetFileName(path))
                .Order(StringComparer.Ordinal),
        ];

    public static async Task<SmallFarm> MakeAsync()
    {
        var farm = new SmallFarm();
        var made = await Command.RunAsync("new", farm.Scenario);
        Assert.Equal(0, made.Code);
        return farm;
    }

    /// <summary>The words of a command that writes the report.</summary>
    public string[] Run(params string[] more) => ["run", Scenario, "--out", Report, "--seasons", "10", .. more];

    /// <summary>The report has all its files, and the pages end as they should.</summary>
    public void AssertWhole()
    {
        string[] files =
        [
            .. Directory
                .EnumerateFiles(
                    Report,
                    "*",
                    new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None }
                )
                .Select(file => Path.GetRelativePath(Report, file)),
        ];
        Assert.Superset(
            new HashSet<string>(
                [
                    ".benchsim-files",
                    ".benchsim-report",
                    "report.html",
                    "result.json",
                    "tables/daily.csv",
                    "tables/fuel.csv",
                    "charts/batches.png",
                ],
                StringComparer.Ordinal
            ),
            new HashSet<string>(files, StringComparer.Ordinal)
        );
        Assert.EndsWith("</html>", File.ReadAllText(Path.Combine(Report, "report.html")).TrimEnd(), StringComparison.Ordinal);
        using var json = System.Text.Json.JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Report, "result.json")));
    }

    public void Dispose() => _folder.Dispose();
}
