using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;

namespace BenchSim.Study;

/// <summary>Plays one season into a result.</summary>
internal delegate void PlaySeason(int season, PlaceLimits limits, SeasonResult result);

/// <summary>Plays every season of one plan with places as given and without limit, on several threads.</summary>
/// <param name="shape">Plan.</param>
/// <param name="options">Seasons to play from the first one on, seed and threads.</param>
/// <param name="makePlayer">Makes a player, one a thread.</param>
/// <param name="progress">Told how many seasons are done; null for nobody.</param>
/// <param name="cancel">Stops the play.</param>
/// <param name="first">First season to play, from 0: a season is the same whether or not others are played.</param>
internal sealed class ParallelPlay(
    PlanShape shape,
    StudyOptions options,
    Func<PlaySeason> makePlayer,
    IProgress<int>? progress,
    CancellationToken cancel,
    int first = 0
)
{
    /// <summary>Plays all seasons; throws what the earliest failing season threw.</summary>
    public SeasonTally Run() =>
        new SeasonBlocks<SeasonTally>(options, progress, cancel).Run(
            () => new SeasonTally(shape),
            MakeWorker,
            (sum, other) => sum.Merge(other)
        );

    private Action<int, SeasonTally> MakeWorker()
    {
        var play = makePlayer();
        SeasonResult asGiven = new();
        SeasonResult unlimited = new();
        return (season, tally) =>
        {
            play(first + season, PlaceLimits.AsGiven, asGiven);
            play(first + season, PlaceLimits.None, unlimited);
            tally.Add(asGiven, unlimited);
        };
    }
}
