using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Kept;

namespace BenchSim.Study;

/// <summary>Plays one season into a result.</summary>
internal delegate void PlaySeason(int season, PlaceLimits limits, SeasonResult result);

/// <summary>
/// Plays seasons of one plan, on several threads: each with places as given and, where a limit ever bit, without limit too. Where none did,
/// the season without limits is the same.
/// </summary>
/// <param name="shape">Plan.</param>
/// <param name="options">Seasons to play from the first one on, seed and threads.</param>
/// <param name="makePlayer">Makes a player, one a thread.</param>
/// <param name="progress">Told how many seasons are done; null for nobody.</param>
/// <param name="cancel">Stops the play.</param>
/// <param name="kept">Seasons without limits of earlier plays; null where none are kept.</param>
/// <param name="first">First season to play, from 0: a season is the same whether or not others are played.</param>
internal sealed class PlanSeasons(
    PlanShape shape,
    StudyOptions options,
    Func<PlaySeason> makePlayer,
    IProgress<int>? progress,
    CancellationToken cancel,
    KeptSeasons? kept = null,
    int first = 0
)
{
    private readonly KeptPlan? _kept = kept?.Of(shape.Plan, options.Seed);

    /// <summary>Plays all seasons; throws what the earliest failing season threw.</summary>
    public SeasonTally Run() => Seasons.Run(MakeTally, MakeWorker, Merge);

    /// <summary>Plays until cancelled: the count is that of the first seasons, however many were begun.</summary>
    public SeasonTally RunUntilCancelled() => Seasons.RunUntilCancelled(MakeTally, MakeWorker, Merge);

    private ParallelSeasons<SeasonTally> Seasons => new(options, progress, cancel);

    private static void Merge(SeasonTally sum, SeasonTally other) => sum.Merge(other);

    private SeasonTally MakeTally() => new(shape);

    private Action<int, SeasonTally> MakeWorker()
    {
        var play = makePlayer();
        SeasonResult asGiven = new();
        SeasonResult unlimited = new();
        RoomySeason own = new(shape.Wanted);
        return (season, tally) =>
        {
            var number = first + season;
            play(number, PlaceLimits.AsGiven, asGiven);
            var roomy = _kept?.Find(number);
            if (roomy is null)
            {
                own.Read(asGiven.LimitEverBit ? Unlimited(play, number, unlimited) : asGiven);
                _kept?.Keep(number, own);
                roomy = own;
            }

            tally.Add(asGiven, roomy);
        };
    }

    private static SeasonResult Unlimited(PlaySeason play, int season, SeasonResult result)
    {
        play(season, PlaceLimits.None, result);
        return result;
    }
}
