using System.Text;

namespace BenchSim.Cli.Tests;

/// <summary>
/// What growers of six invented farms read first. The first five lines of each command are kept in Approved, to be read aloud: with
/// BENCHSIM_APPROVE=1 in the environment they are written anew. No first screen is above 24 lines of 80 columns.
/// </summary>
[Trait("Category", "Slow")]
public sealed class ReadingTests
{
    private const int Read = 5;

    [Theory]
    [InlineData("roomy-hoop-house", "fewer-mats", "mats", "lettuce", "7,14", "2,3", "16")]
    [InlineData("crowded-hoop-house", "longer-table", "table", "lettuce", "7,10", "2,3", "12")]
    [InlineData("short-of-mats", "twelve-mats", "mats", "basil", "7,14", "2", "21")]
    [InlineData("two-houses-with-a-record", "warmer-overflow", "main-bench", "lettuce", "7,10", "3,4", "12")]
    [InlineData("cold-spring-market", "row-cover", "table", "lettuce", "7,14", "2,3", "14")]
    [InlineData("few-hands", "eight-trays-a-day", "bench", "lettuce", "7,14", "2,3", "14")]
    public void Says_it_in_five_lines(string farm, string variant, string space, string batch, string every, string times, string gap)
    {
        var folder = Repository.File($"tests/BenchSim.Cli.Tests/Farms/{farm}");
        List<string[]> commands =
        [
            ["check", folder],
            ["run", folder, "--no-report"],
            ["compare", folder, "--with", variant],
            ["size", folder, "--space", space],
            ["level", folder],
            ["bottlenecks", folder],
            ["dense", folder],
            ["succession", folder, "--batch", batch, "--every", .. every.Split(','), "--times", .. times.Split(','), "--gap", gap],
            ["mend", folder],
        ];
        if (File.ReadAllText(Path.Combine(folder, "variants", variant + ".toml")).Contains("[invest]", StringComparison.Ordinal))
        {
            commands.Add(["invest", folder, "--with", variant]);
        }

        if (Path.Combine(folder, "weather.csv") is var record && File.Exists(record))
        {
            commands.Add(["weather", record]);
        }

        var read = new StringBuilder();
        foreach (var command in commands)
        {
            var lines = FirstScreen.Of(Call.Run([.. command]), folder);
            var told = string.Join('\n', [$"$ benchsim {string.Join(' ', command)}", .. lines.Take(Read), ""]);
            read.Append(told.Replace(folder, farm, StringComparison.Ordinal)).Append('\n');
        }

        Assert.Equal(Approved.Text($"tests/BenchSim.Cli.Tests/Approved/{farm}.txt", read.ToString()), read.ToString());
    }
}
