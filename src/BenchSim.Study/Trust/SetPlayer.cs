using BenchSim.Season.Climate;
using BenchSim.Season.Doubt;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Trust;

/// <summary>Plays plans with sets of values in the place of those given, all on the same luck.</summary>
/// <param name="doubts">The values that may be wrong.</param>
/// <param name="measures">What is read off each season.</param>
/// <param name="options">Seed of all luck, and threads.</param>
/// <param name="progress">Told how many sets are done of all that are played, in rising order; null for nobody.</param>
/// <param name="cancel">Stops the play.</param>
internal sealed class SetPlayer(
    ValuesInDoubt doubts,
    IReadOnlyList<TrustMeasure> measures,
    TrustOptions options,
    IProgress<int>? progress,
    CancellationToken cancel
)
{
    private int _done;

    /// <summary>Seasons played so far.</summary>
    public long Seasons { get; private set; }

    /// <summary>Plays sets.</summary>
    /// <param name="plan">The plan, or a variant of it.</param>
    /// <param name="sets">The sets: a chance for each value, not-a-number for the value given.</param>
    /// <param name="seasons">Seasons of each set.</param>
    public SetOutcomes Play(SeasonPlan plan, double[][] sets, int seasons)
    {
        var outcomes = new SetOutcomes(measures.Count, sets.Length, seasons);
        var each = new StudyOptions
        {
            Seasons = sets.Length,
            Seed = options.Seed,
            Threads = options.Threads,
        };
        var told = progress is null ? null : new Offset(progress, _done);
        _ = new ParallelSeasons<SetOutcomes>(each, told, cancel).Run(() => outcomes, () => Worker(plan, sets, seasons), (_, _) => { });
        (_done, Seasons) = (_done + sets.Length, Seasons + ((long)sets.Length * seasons));
        return outcomes;
    }

    private Action<int, SetOutcomes> Worker(SeasonPlan plan, double[][] sets, int seasons)
    {
        SeasonResult result = new();
        return (set, outcomes) =>
        {
            // Each set has a heat of its own, which no other set asks for.
            var played = doubts.With(plan, sets[set]);
            var player = new SeasonPlayer(played, options.Seed, ClimateStore.OfOnePlay());
            Func<SeasonResult, double>[] readers = [.. measures.Select(measure => measure.ReaderOf(played))];
            for (var season = 0; season < seasons; season++)
            {
                player.Play(season, PlaceLimits.AsGiven, result);
                for (var measure = 0; measure < readers.Length; measure++)
                {
                    outcomes[measure, set, season] = readers[measure](result);
                }
            }
        };
    }

    private sealed class Offset(IProgress<int> progress, int before) : IProgress<int>
    {
        public void Report(int value) => progress.Report(before + value);
    }
}
