using System.CommandLine;
using BenchSim.Season.Inputs;
using BenchSim.Study;

namespace BenchSim.Cli.Commands;

/// <summary>The options that say how a study is played, alike in every command that plays one.</summary>
internal sealed class PlayOptions
{
    private readonly Option<int?> _seasons = CommonOptions.Whole("--seasons", "N", 1, 1_000_000, "Seasons to play of each. Default: what site.toml says.");
    private readonly Option<ulong?> _seed = CommonOptions.Seed("--seed", "S", "Seed of all luck: the same seed gives the same answer. Default: what site.toml says.");
    private readonly Option<int?> _threads = CommonOptions.Whole("--threads", "T", 1, 1024, "Threads to play on; the answer does not depend on it. Default: one a core.");

    public void AddTo(Command command)
    {
        command.Add(_seasons);
        command.Add(_seed);
        command.Add(_threads);
    }

    /// <summary>What was asked, and the plan's own settings for the rest.</summary>
    public StudyOptions Of(ParseResult parsed, SeasonPlan plan) => new()
    {
        Seasons = parsed.GetValue(_seasons) ?? plan.Scenario.Play.Seasons,
        Seed = parsed.GetValue(_seed) ?? plan.Scenario.Play.Seed,
        Threads = parsed.GetValue(_threads) ?? 0,
    };
}
