using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Kept;

namespace BenchSim.Study;

/// <summary>Plays one season with places as given and, where that is asked, without limits.</summary>
/// <param name="season">Number of the season.</param>
/// <param name="asGiven">Filled.</param>
/// <param name="withoutLimits">Filled as far as it is needed; null where it is not asked.</param>
/// <returns>The one that tells of the season without limits: as given, where no limit ever bit.</returns>
internal delegate SeasonResult PlaySeason(int season, SeasonResult asGiven, SeasonResult? withoutLimits);

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
    /// <summary>How a player plays a season.</summary>
    public static PlaySeason By(SeasonPlayer player) =>
        (season, asGiven, withoutLimits) =>
        {
            if (withoutLimits is not null)
            {
                return player.PlayBoth(season, asGiven, withoutLimits);
            }

            player.Play(season, PlaceLimits.AsGiven, asGiven);
            return asGiven;
        };

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
        RoomySeason own = new();
        return (season, tally) =>
        {
            var number = first + season;
            var roomy = _kept?.Find(number);
            var told = play(number, asGiven, roomy is null ? unlimited : null);
            if (roomy is null)
            {
                own.Read(told);
                _kept?.Keep(number, own);
                roomy = own;
            }

            tally.Add(asGiven, roomy);
        };
    }
}
