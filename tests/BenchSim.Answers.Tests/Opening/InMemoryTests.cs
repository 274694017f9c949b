using BenchSim.Answers.Asking;
using BenchSim.Answers.Compare;
using BenchSim.Answers.Opening;
using BenchSim.Folder.Files;

namespace BenchSim.Answers.Tests.Opening;

/// <summary>A question asked of texts in memory has the answer that the same texts have as files of a folder.</summary>
public sealed class InMemoryTests
{
    private static readonly PlayWatch s_watch = new(CancellationToken.None);

    [Fact]
    public void Variants_are_compared_as_those_of_a_folder()
    {
        using var folder = new FarmFolder();
        folder.Write("variants/more.toml", "[[space]]\nid = \"bench\"\nplaces = 80\n");
        var onDisk = Question(ScenarioSource.Folder(folder.Path), "more").Ask(s_watch);
        var inMemory = Question(Kept(folder), "more").Ask(s_watch);

        Assert.Equal(onDisk.Json(), inMemory.Json());
    }

    [Fact]
    public void Faults_of_a_variant_are_those_of_a_folder()
    {
        using var folder = new FarmFolder();
        folder.Write("variants/more.toml", "[[space]]\nid = \"bench\"\nplaces = -1\n");
        foreach (var name in new[] { "more", "mroe" })
        {
            var onDisk = Assert.Throws<FaultsFoundException>(() => Question(ScenarioSource.Folder(folder.Path), name).Ask(s_watch));
            var inMemory = Assert.Throws<FaultsFoundException>(() => Question(Kept(folder), name).Ask(s_watch));
            Assert.Equal(
                onDisk.Faults.Select(fault => fault.ToString()),
                inMemory.Faults.Select(fault => fault.ToString()),
                StringComparer.Ordinal
            );
        }
    }

    private static CompareQuestion Question(ScenarioSource scenario, string variant) =>
        new()
        {
            Scenario = scenario,
            Variants = [variant],
            Play = new PlayWish(Seasons: 5),
        };

    private static ScenarioSource Kept(FarmFolder folder) =>
        ScenarioSource.Files(TemporaryFolder.Files(folder.Path).Select(file => new InputFile(file.Key, [.. file.Value])), []);
}
