using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace EndToEnd.Faults;

/// <summary>
/// A sweep of 10,000 tasks: killed at ten moments and taken up again it gives the bytes of one that was left in peace, plays nothing twice,
/// and takes no more memory to merge than one of 1,000 tasks.
/// </summary>
public sealed partial class SweepKilledTests : IDisposable
{
    private const int Tasks = 10_000;
    private const int Kills = 10;
    private const long MostGrowth = 30_000_000;

    private readonly TemporaryFolder _folder = new();

    public SweepKilledTests()
    {
        _folder.Write("farm/site.toml", FarmFolder.GoodSite);
        _folder.Write("farm/plan.csv", FarmFolder.GoodPlan);
        _folder.Write("many.toml", Sweep(Tasks));
        _folder.Write("few.toml", Sweep(Tasks / 10));
    }

    [LinuxFact]
    [Trait("Category", "Slow")]
    public async Task Killed_at_ten_moments_it_ends_with_the_same_bytes_and_plays_nothing_twice()
    {
        var peace = await SweepAsync("many.toml", "--out", "peace");
        Assert.Equal((0, ""), (peace.Code, peace.Error));

        Random random = new(20_261_130);
        int[] moments = [.. Enumerable.Range(0, Kills).Select(_ => random.Next(1, Tasks)).Order()];
        var done = new Dictionary<string, DateTime>(StringComparer.Ordinal);
        foreach (var moment in moments)
        {
            using var sweep = Command.StartIn(_folder.Path, [], "sweep", "many.toml", "--out", "killed");
            var ends = Command.EndAsync(sweep);
            await WhenAsync(sweep, () => CountOf("killed") >= moment);
            sweep.Kill();
            await ends;

            // What was done before is as it was; what is there is whole.
            var now = Results("killed");
            Assert.All(done, file => Assert.Equal(file.Value, now.GetValueOrDefault(file.Key)));
            Assert.All(now.Keys.Except(done.Keys, StringComparer.Ordinal), AssertWhole);
            Assert.False(Path.Exists(_folder.In("killed/answer")));
            done = now;
        }

        var lacking = await SweepAsync("many.toml", "--out", "killed", "--merge");
        Assert.Equal(1, lacking.Code);
        Assert.StartsWith(
            $"Nothing was written: of 10,000 tasks {Tasks - done.Count:#,##0} have no result",
            lacking.Output,
            StringComparison.Ordinal
        );

        var end = await SweepAsync("many.toml", "--out", "killed");
        Assert.Equal((0, ""), (end.Code, end.Error));
        var last = Results("killed");
        Assert.All(done, file => Assert.Equal(file.Value, last.GetValueOrDefault(file.Key)));
        Assert.Equal(Tasks, last.Count);

        var (expected, actual) = (TemporaryFolder.Files(_folder.In("peace")), TemporaryFolder.Files(_folder.In("killed")));
        Assert.Equal(expected.Keys, actual.Keys, StringComparer.Ordinal);
        Assert.All(expected, file => Assert.Equal(file.Value, actual[file.Key]));
        await AssertFlatAsync();
    }

    public void Dispose() => _folder.Dispose();

    private static string Sweep(int tasks) =>
        string.Create(CultureInfo.InvariantCulture, $"name = \"many\"\nfolders = [\"farm\"]\nseasons = {tasks}\nseasons_per_task = 1\n");

    private Task<Command> SweepAsync(params string[] words) => Command.InAsync(_folder.Path, ["sweep", .. words]);

    // The results of the one of 1,000 tasks are made by its own call, whose merge is not looked at.
    private async Task AssertFlatAsync()
    {
        Assert.Equal(0, (await SweepAsync("few.toml", "--out", "few")).Code);
        var few = await PeakAsync("few.toml", "--out", "few", "--merge");
        var many = await PeakAsync("many.toml", "--out", "killed", "--merge");
        Assert.True(many - few < MostGrowth, $"1,000 tasks: {few:#,##0} bytes at the most; 10,000 tasks: {many:#,##0}.");
    }

    // The most memory that the process ever had, by the system's own count, as it was seen last before the end. What is no longer used
    // is taken back after every 4 MiB (400000 in hexadecimal), not when the runtime finds it worth while, which says nothing of the
    // program.
    private async Task<long> PeakAsync(params string[] words)
    {
        using var process = Command.StartIn(_folder.Path, [("DOTNET_GCgen0size", "400000")], ["sweep", .. words]);
        var ends = Command.EndAsync(process);
        long peak = 0;
        while (!process.HasExited)
        {
            try
            {
                var status = await File.ReadAllTextAsync($"/proc/{process.Id.ToString(CultureInfo.InvariantCulture)}/status");
                if (Peak().Match(status) is { Success: true } match)
                {
                    peak = 1024 * long.Parse(match.Groups["kb"].Value, CultureInfo.InvariantCulture);
                }
            }
            catch (IOException)
            {
                // It has just ended.
            }

            await Task.Delay(2);
        }

        Assert.Equal(0, (await ends).Code);
        Assert.True(peak > 0);
        return peak;
    }

    private static async Task WhenAsync(System.Diagnostics.Process process, Func<bool> isTime)
    {
        while (!isTime())
        {
            Assert.False(process.HasExited, "The sweep ended before it was to be killed.");
            await Task.Delay(5);
        }
    }

    private int CountOf(string sweep)
    {
        var tasks = _folder.In($"{sweep}/tasks");
        return Directory.Exists(tasks) ? Directory.EnumerateFiles(tasks, "*.task", SearchOption.AllDirectories).Count() : 0;
    }

    private Dictionary<string, DateTime> Results(string sweep) =>
        Directory
            .EnumerateFiles(_folder.In($"{sweep}/tasks"), "*.task", SearchOption.AllDirectories)
            .ToDictionary(file => file, File.GetLastWriteTimeUtc, StringComparer.Ordinal);

    private static void AssertWhole(string file)
    {
        var text = File.ReadAllText(file);
        var end = text.LastIndexOf('\n', text.Length - 2);
        var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(text[..end])));
        Assert.Equal($"\n{hash}\n", text[end..]);
    }

    [GeneratedRegex(@"^VmHWM:\s+(?<kb>[0-9]+) kB", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Peak();
}
