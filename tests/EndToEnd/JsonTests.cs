namespace EndToEnd;

/// <summary>What every command prints for machines is as its schema says.</summary>
public sealed class JsonTests
{
    // Each with few seasons, in a folder beside a copy of the spring example.
    private static readonly string[] s_calls =
    [
        "new fresh",
        "check spring --sources --stand",
        "check nowhere",
        "run spring --seasons 20 --bottlenecks --require 0.9 --out report",
        "run spring --precision 10% --most 60 --no-report",
        "run spring --seasons 10 --season 3 --batch broccoli-1",
        "run spring --seasons 10 --shard 1/2",
        "run spring --seasons 10 --shard 2/2",
        "merge spring.1-of-2.part spring.2-of-2.part --no-report",
        "merge spring.1-of-2.part",
        "weather spring/weather.csv --out fit",
        "compare spring --with more-mats second-house --seasons 10",
        "bottlenecks spring --seasons 10",
        "bottlenecks spring --seasons 1",
        "size spring --space table --seasons 10",
        "dense spring --seasons 10",
        "invest spring --with second-house --seasons 10",
        "mend spring --seasons 10",
        "level spring --seasons 10 --out levelled.csv",
        "succession spring --batch lettuce --every 7 --times 3 --gap 12 --seasons 10",
        "agree spring --seasons 10",
        "agree spring --bill tray-days --on 2027-01-15",
        "review spring",
        "learn spring",
        "trust spring --with more-mats --sets 32 --seasons 10",
        "sweep all.toml --plan",
        "sweep all.toml --task 1",
        "sweep all.toml --merge",
        "sweep all.toml --shard 2/2",
        "sweep all.toml --task 9",
        "sweep all.toml",
        "print spring --out papers",
        "print spring --today 2027-03-01 --out today",
    ];

    [Fact]
    public async Task What_every_command_prints_is_as_its_schema_says()
    {
        using var folder = new TemporaryFolder();
        foreach (var (name, bytes) in TemporaryFolder.Files(Repository.File("scenarios/two-house-spring")))
        {
            folder.Write("spring/" + name, bytes);
        }

        folder.Write("all.toml", "folders = [\"spring\"]\nseasons = 4\nseasons_per_task = 2\nvalue_sets = 1\n");
        var asked = new HashSet<string>(StringComparer.Ordinal) { "result" };
        foreach (var call in s_calls)
        {
            var words = call.Split(' ');
            asked.Add(words[0]);
            var done = await Command.InAsync(folder.Path, [.. words, "--json"]);
            Assert.True(done.Output.Length > 0, $"{call}: {done.Error}");
            Assert.Empty(SchemaCheck.Faults(words[0], done.Output));
        }

        Assert.Empty(SchemaCheck.Faults("result", await File.ReadAllTextAsync(folder.In("report/result.json"))));
        Assert.Equal(
            Directory
                .EnumerateFiles(Repository.File("docs/schemas"))
                .Select(file => Path.GetFileName(file).Split('.')[0])
                .Order(StringComparer.Ordinal),
            asked.Order(StringComparer.Ordinal)
        );
    }
}
