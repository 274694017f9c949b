using System.CommandLine;
using BenchSim.Answers.Asking;

namespace BenchSim.Cli.Commands;

/// <summary>The options that say how a study is played, alike in every command that plays one.</summary>
/// <param name="what">What the number of seasons is, a sentence.</param>
/// <param name="otherwise">How many are played where nothing is said, a sentence.</param>
internal sealed class PlayOptions(string what = "Seasons to play of each.", string otherwise = "Default: what site.toml says.")
{
    /// <summary>Most seasons that may be asked for.</summary>
    public const int MostSeasons = 1_000_000;

    private const int MostThreads = 1024;

    /// <summary>How many seasons.</summary>
    public Option<int?> Seasons { get; } = CommonOptions.Whole("--seasons", "N", 1, MostSeasons, $"{what} {otherwise}");

    /// <summary>Seed of all luck.</summary>
    public Option<ulong?> Seed { get; } =
        CommonOptions.Seed("--seed", "S", "Seed number of all draws: the same number gives the same answer. Default: what site.toml says.");

    /// <summary>On how many threads.</summary>
    public Option<int?> Threads { get; } =
        CommonOptions.Whole("--threads", "T", 1, MostThreads, "Threads to use; they do not change the answer. Default: one a core.");

    public void AddTo(Command command)
    {
        command.Add(Seasons);
        command.Add(Seed);
        command.Add(Threads);
    }

    /// <summary>What was asked.</summary>
    public PlayWish Of(ParseResult parsed) => new(parsed.GetValue(Seasons), parsed.GetValue(Seed), parsed.GetValue(Threads));
}
