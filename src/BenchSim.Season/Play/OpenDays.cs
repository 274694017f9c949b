using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// The days on which a house counts as open, and is heated where it has a heater: from its start (<see cref="HouseStart"/>) to the closing
/// date of the season; and on any day on which trays stand in it, and the day before, but never before its opening date.
/// </summary>
internal sealed class OpenDays
{
    private readonly int[] _spaces;
    private readonly int _never;
    private readonly int _first;
    private readonly int _last;

    private OpenDays(int[] spaces, int never, int first, int last) => (_spaces, _never, _first, _last) = (spaces, never, first, last);

    /// <summary>The days of each house.</summary>
    /// <param name="scenario">Scenario.</param>
    /// <param name="batches">Its batches with their planned dates.</param>
    /// <param name="layout">Says which spaces are in which house.</param>
    public static OpenDays[] Of(Scenario scenario, IEnumerable<BatchPlan> batches, ClimateLayout layout)
    {
        int? DayOf(DateOnly? date) => date?.DayNumber - scenario.Window.Opens.DayNumber;
        var starts = HouseStart.Of(scenario, batches);
        var spaces = Enumerable.Range(0, scenario.Spaces.Length).ToLookup(layout.AirOf);
        return
        [
            .. scenario.Houses.Select(
                (house, at) =>
                    new OpenDays(
                        [.. spaces[at + 1]],
                        house.Opening == HouseOpening.FromDate ? DayOf(house.OpensOn) ?? 0 : 0,
                        DayOf(starts[at]) ?? int.MaxValue,
                        DayOf(scenario.Window.Closes)!.Value
                    )
            ),
        ];
    }

    /// <summary>Whether the house is open on a day.</summary>
    /// <param name="held">Places held by space and day.</param>
    /// <param name="day">The day.</param>
    /// <param name="days">Days played.</param>
    public bool Has(int[][] held, int day, int days) =>
        day >= _never && ((day >= _first && day <= _last) || HoldsOn(held, day) || (day + 1 < days && HoldsOn(held, day + 1)));

    private bool HoldsOn(int[][] held, int day)
    {
        foreach (var space in _spaces)
        {
            if (held[space][day] > 0)
            {
                return true;
            }
        }

        return false;
    }
}
