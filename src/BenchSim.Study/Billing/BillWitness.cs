using BenchSim.Season.Play;

namespace BenchSim.Study.Billing;

/// <summary>Sees who holds places in what is shared, week by week of one season after another.</summary>
/// <param name="things">What is shared.</param>
/// <param name="days">Days of the season that count.</param>
internal sealed class BillWitness(SharedThings things, int days) : ISeasonWitness
{
    // Full: no more than one place of twenty is free.
    private const int Places = 20;

    private readonly long[][][] _placeDays =
    [
        .. things.All.Select(_ => Enumerable.Range(0, things.Weeks).Select(_ => new long[things.Growers.Length]).ToArray()),
    ];

    private readonly bool[][] _full = [.. things.All.Select(_ => new bool[things.Weeks])];

    /// <summary>What the things cost in the season that was played last, and who used them.</summary>
    /// <param name="season">The season.</param>
    public IEnumerable<BillWeek[]> Read(SeasonResult season) =>
        things.All.Select(
            (thing, at) =>
                Enumerable
                    .Range(0, things.Weeks)
                    .Select(week => new BillWeek(things.CostOf(thing, season, week, days), _placeDays[at][week], _full[at][week]))
                    .ToArray()
        );

    /// <inheritdoc/>
    public void Begins(SeasonView season)
    {
        foreach (var weeks in _placeDays.SelectMany(weeks => weeks))
        {
            Array.Clear(weeks);
        }

        foreach (var weeks in _full)
        {
            Array.Clear(weeks);
        }
    }

    /// <inheritdoc/>
    public void DayEnds(SeasonView season)
    {
        ArgumentNullException.ThrowIfNull(season);
        if (season.Day >= days)
        {
            return;
        }

        var week = things.WeekOf(season.Day);
        for (var at = 0; at < things.All.Length; at++)
        {
            var thing = things.All[at];
            foreach (var space in thing.Spaces)
            {
                for (var grower = 0; grower < things.Growers.Length; grower++)
                {
                    _placeDays[at][week][grower] += season.HeldBy(grower, space);
                }
            }

            var (held, places) = (0, 0);
            foreach (var space in thing.FullBy)
            {
                held += season.HeldIn(space);
                places += season.PlacesOf(space);
            }

            _full[at][week] |= places > 0 && Places * held >= (Places - 1) * places;
        }
    }
}
