using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>A season as a witness sees it while it is played.</summary>
public sealed class SeasonView
{
    private readonly ISeasonWitness _witness;

    internal SeasonView(SeasonState state, ISeasonWitness witness) => (State, _witness) = (state, witness);

    /// <summary>Day of the clock, 0 the first.</summary>
    public int Day => State.Day;

    internal SeasonState State { get; }

    /// <summary>Places held in a space.</summary>
    /// <param name="space">Position in the scenario.</param>
    public int HeldIn(int space) => State.Places.Held[space];

    /// <summary>Places that a grower holds in a space.</summary>
    /// <param name="grower">Position in order of first appearance in the plan.</param>
    /// <param name="space">Position in the scenario.</param>
    public int HeldBy(int grower, int space) => State.Places.HeldBy(grower, space);

    /// <summary>Places of a space today, 0 while its house is shut.</summary>
    /// <param name="space">Position in the scenario.</param>
    public int PlacesOf(int space) => State.Places.Today[space];

    /// <summary>Places that the trays and flats of a batch hold in the spaces of a kind.</summary>
    /// <param name="batch">Position in the plan.</param>
    /// <param name="kind">Kind of space.</param>
    public int PlacesHeld(int batch, SpaceKind kind)
    {
        var of = State.Batches[batch];
        var lots = kind switch
        {
            SpaceKind.Mat => of.OnMat,
            SpaceKind.Bench => of.OnBench,
            _ => of.OnTable,
        };
        var places = 0;
        foreach (var lot in lots)
        {
            places += lot.Count * of.PlacesEach(lot.IsFlat);
        }

        return places;
    }

    /// <summary>The trays and flats of a batch that stand somewhere: on mats, then on benches, then on tables.</summary>
    /// <param name="batch">Position in the plan.</param>
    public IEnumerable<StandingTrays> Standing(int batch)
    {
        var of = State.Batches[batch];
        return of
            .OnMat.Concat(of.OnBench)
            .Concat(of.OnTable)
            .Select(lot => new StandingTrays(lot.Space, lot.IsFlat, lot.First, lot.Count, lot.Hindrance == Hindrance.Place));
    }

    /// <summary>Takes the season down as it stands after the work of the day, to be played on from the next.</summary>
    public SeasonStart Capture() => Starting.Capture(State);

    internal void Begin() => _witness.Begins(this);

    internal void EndDay() => _witness.DayEnds(this);
}
