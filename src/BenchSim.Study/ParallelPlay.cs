using BenchSim.Season.Play;
using BenchSim.Study.Counting;

namespace BenchSim.Study;

/// <summary>Plays one season into a result.</summary>
internal delegate void PlaySeason(int season, PlaceLimits limits, SeasonResult result);

/// <summary>Plays every season of one plan with places as given and without limit, on several threads.</summary>
internal sealed class ParallelPlay(
    PlanShape shape, StudyOptions options, Func<PlaySeason> makePlayer, IProgress<int>? progress, CancellationToken cancel)
{
    /// <summary>Plays all seasons; throws what the earliest failing season threw.</summary>
    public SeasonTally Run() =>
        new SeasonBlocks<SeasonTally>(options, progress, cancel).Run(() => new SeasonTally(shape), MakeWorker, (sum, other) => sum.Merge(other));

    private Action<int, SeasonTally> MakeWorker()
    {
        PlaySeason play = makePlayer();
        SeasonResult asGiven = new();
        SeasonResult unlimited = new();
        return (season, tally) =>
        {
            play(season, PlaceLimits.AsGiven, asGiven);
            play(season, PlaceLimits.None, unlimited);
            tally.Add(asGiven, unlimited);
        };
    }
}
