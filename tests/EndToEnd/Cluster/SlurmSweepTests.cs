using System.Diagnostics;
using EndToEnd.Faults;

namespace EndToEnd.Cluster;

/// <summary>deploy/slurm on a cluster of one node: whatever happens to jobs and node, the merged answer is that of one machine.</summary>
[Trait("Category", "Cluster")]
[Trait("Category", "Slow")]
public sealed class SlurmSweepTests
{
    private const int Shares = 20;

    [ClusterFact]
    public async Task Jobs_killed_a_share_played_twice_at_once_and_a_node_that_went_away_leave_the_answer_of_one_machine()
    {
        await using var cluster = await SlurmCluster.StartAsync();
        var sweep = await MakeSweepAsync(cluster.Folder);
        var local = Path.Combine(cluster.Folder, "local");
        var results = Path.Combine(cluster.Folder, "results");
        (string, string)[] program = [("BENCHSIM", await ScriptAsync(cluster.Folder))];
        string[] submit = ["bash", Repository.File("deploy/slurm/submit"), sweep, results, $"{Shares}"];
        var alone = await Command.RunAsync("sweep", sweep, "--out", local);
        Assert.True(alone.Code == 0, alone.Error);

        // Three jobs are killed while they run, then the daemon of the node.
        await cluster.RunAsync(program, submit);
        var killed = new HashSet<string>(StringComparer.Ordinal);
        var clock = Stopwatch.StartNew();
        while (killed.Count < 3)
        {
            Assert.True(clock.Elapsed < TimeSpan.FromMinutes(2), "No three jobs ran.");
            foreach (var job in (await cluster.JobsAsync("R")).Where(job => job.Contains('_') && killed.Count < 3 && killed.Add(job)))
            {
                await cluster.RunAsync([], "scancel", "--signal=KILL", "--full", job);
            }

            await Task.Delay(100);
        }

        await cluster.RestartNodeAsync();
        await cluster.EmptyAsync();
        var first = Directory.GetFiles(results + ".logs", "merge.txt").Select(File.ReadAllText).Single();
        Assert.Contains("Nothing was written: of 80 tasks ", first, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(results, "answer")));

        // The same line again plays what is missing; one share is played by a second job at the same time.
        await cluster.RunAsync(program, submit);
        string[] twice =
        [
            "sbatch",
            "--array=7",
            $"--output={cluster.Folder}/twice.txt",
            Repository.File("deploy/slurm/share.sbatch"),
            sweep,
            results,
            $"{Shares}",
        ];
        await cluster.RunAsync(program, twice);
        await cluster.EmptyAsync();

        Assert.Equal(FolderText.Of(local), FolderText.Of(results));
    }

    // Words of one program, as the scripts want it.
    private static async Task<string> ScriptAsync(string folder)
    {
        var script = Path.Combine(folder, "benchsim.sh");
        var words = string.Join(' ', Command.Program.Select(word => $"'{word}'"));
        await File.WriteAllTextAsync(script, $"#!/bin/sh\nexec {words} \"$@\"\n");
        if (OperatingSystem.IsLinux())
        {
            File.SetUnixFileMode(script, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        return script;
    }

    private static async Task<string> MakeSweepAsync(string folder)
    {
        foreach (var farm in new[] { "hoop-house", "two-houses" })
        {
            var made = await Command.RunAsync("new", Path.Combine(folder, "farms", farm), "--farm", farm);
            Assert.True(made.Code == 0, made.Error);
        }

        var sweep = Path.Combine(folder, "sweep.toml");
        await File.WriteAllTextAsync(
            sweep,
            """
            name = "Two farms"
            folders = ["farms/*"]
            variants = "all"
            seasons = 1000
            seasons_per_task = 50
            seed = 7

            """
        );
        return sweep;
    }
}
