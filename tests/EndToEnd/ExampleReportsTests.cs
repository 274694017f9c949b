namespace EndToEnd;

/// <summary>
/// The examples under scenarios/ still give the reports under reports/. With BENCHSIM_APPROVE=1 in the environment the reports are written
/// anew instead: look at what changed before committing it. An example with a log is a season under way: its
/// report is the page of a day, and the report of a run from that day on.
/// </summary>
public sealed class ExampleReportsTests
{
    // The day of the examples that have a log.
    private const string Today = "2027-04-20";

    private static readonly bool s_isApproving = string.Equals(
        Environment.GetEnvironmentVariable("BENCHSIM_APPROVE"),
        "1",
        StringComparison.Ordinal
    );

    [Fact]
    public void Every_report_has_its_example()
    {
        var reports = Path.Combine(Repository.Root, "reports");
        string[] named = Directory.Exists(reports)
            ? [.. Directory.EnumerateDirectories(reports).Select(folder => Path.GetFileName(folder))]
            : [];
        Assert.Empty(named.Except(Repository.Examples.Select(example => Path.GetFileName(example)), StringComparer.Ordinal));
    }

    [Fact]
    public async Task Every_example_still_gives_its_report()
    {
        var differences = new List<string>();
        foreach (var example in Repository.Examples)
        {
            var name = Path.GetFileName(example);
            var approved = Path.Combine(Repository.Root, "reports", name);
            if (s_isApproving)
            {
                // What was approved is kept by the repository; a merge may have changed its files.
                if (Directory.Exists(approved))
                {
                    Directory.Delete(approved, recursive: true);
                }

                await RunAsync(example, approved);
            }
            else
            {
                differences.AddRange((await CompareAsync(example, approved)).Select(difference => $"{name}/{difference}"));
            }
        }

        Assert.True(
            differences.Count == 0,
            $"Run the tests with BENCHSIM_APPROVE=1 to approve these differences:\n{string.Join('\n', differences)}"
        );
    }

    private static async Task<string[]> CompareAsync(string example, string approved)
    {
        if (!Directory.Exists(approved))
        {
            return ["there is no approved report"];
        }

        using var folder = new TemporaryFolder();
        var made = folder.In("report");
        await RunAsync(example, made);
        return [.. ReportComparison.Differences(approved, made)];
    }

    // Of a season under way the page of the day, and the report of a run from that day on.
    private static async Task RunAsync(string example, string report)
    {
        if (!File.Exists(Path.Combine(example, "log.csv")))
        {
            await DoAsync("run", example, "--out", report);
            return;
        }

        await DoAsync("print", example, "--today", Today, "--out", Path.Combine(report, "today"));
        await DoAsync("run", example, "--today", Today, "--out", Path.Combine(report, "report"));
    }

    private static async Task DoAsync(params string[] words)
    {
        var run = await Command.RunAsync(words);
        Assert.True(run.Code == 0, run.Error);
        Assert.Empty(run.Error);
    }
}
