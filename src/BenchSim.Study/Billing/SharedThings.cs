using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Billing;

/// <summary>In what a bill is given.</summary>
public enum BillUnit
{
    /// <summary>The user's money: all that is burnt and drawn has a price.</summary>
    Money,

    /// <summary>Kilowatt-hours of heat and of current: a price is missing.</summary>
    Heat,

    /// <summary>Days on which trays stand in a heated house: neither shell nor heater of any is given, nor the watts of any mat.</summary>
    Days,
}

/// <summary>What the growers share and somebody pays for: the heat of a house, or the electricity of the mats of a space.</summary>
/// <param name="Name">Its name.</param>
/// <param name="House">Position of the house; null for mats.</param>
/// <param name="Spaces">Positions of the spaces by which it is used.</param>
/// <param name="FullBy">
/// Positions of the spaces that say whether it is full: the benches of a house, where it has some; else all it has.
/// </param>
public sealed record SharedThing(string Name, int? House, ImmutableArray<int> Spaces, ImmutableArray<int> FullBy);

/// <summary>All that the growers of a plan share, and what it costs in a played season.</summary>
public sealed class SharedThings
{
    private const double WattHoursAKilowattHour = 1000;
    private const int HoursADay = 24;

    private readonly Scenario _scenario;
    private readonly DateOnly _monday;
    private readonly int _first;

    /// <summary>Finds what is shared.</summary>
    /// <param name="plan">Plan.</param>
    public SharedThings(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        _scenario = plan.Scenario;
        _first = plan.FirstDay.DayNumber;
        _monday = TableNights.MondayOf(plan.FirstDay);
        Weeks = WeekOf(plan.Days - 1) + 1;
        Growers = [.. plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal)];
        SharedThing[] counted = [.. Houses(SeasonEnergy.Burns), .. Mats()];
        Unit =
            counted.Length == 0 ? BillUnit.Days
            : _scenario.Houses.Where(SeasonEnergy.Burns).All(house => house.Heat!.Price is not null)
            && _scenario.Spaces.All(space => space.Power is null or { Price: not null })
                ? BillUnit.Money
            : BillUnit.Heat;
        All = [.. Unit == BillUnit.Days ? Houses(house => house.IsHeated) : counted];
        NotCounted = Unit == BillUnit.Days ? [] : [.. _scenario.Houses.Where(house => house.IsHeated && house.Heat is null)];
    }

    /// <summary>The things; empty where no house is heated and no mat draws a given number of watts.</summary>
    public ImmutableArray<SharedThing> All { get; }

    /// <summary>In what their cost is given.</summary>
    public BillUnit Unit { get; }

    /// <summary>Heated houses whose heat is not counted, as their shell or heater is not given and that of others is.</summary>
    public ImmutableArray<House> NotCounted { get; }

    /// <summary>The growers in order of first appearance in the plan.</summary>
    public ImmutableArray<string> Growers { get; }

    /// <summary>Weeks of the season, Monday to Sunday, the first and the last perhaps in part.</summary>
    public int Weeks { get; }

    /// <summary>Week of a day, 0 the first.</summary>
    /// <param name="day">Day, 0 the first of the season.</param>
    public int WeekOf(int day) => (_first + day - _monday.DayNumber) / SeasonResult.DaysAWeek;

    /// <summary>What a thing cost in a week of a played season.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="season">The season.</param>
    /// <param name="week">The week.</param>
    /// <param name="days">Days of the season that count.</param>
    public double CostOf(SharedThing thing, SeasonResult season, int week, int days)
    {
        ArgumentNullException.ThrowIfNull(thing);
        ArgumentNullException.ThrowIfNull(season);
        var from = _monday.DayNumber + (week * SeasonResult.DaysAWeek) - _first;
        var until = Math.Min(from + SeasonResult.DaysAWeek, days);
        from = Math.Max(0, from);
        if (from >= until)
        {
            return 0;
        }

        if (thing.House is { } house && Unit != BillUnit.Days)
        {
            var heat = _scenario.Houses[house].Heat!;
            double wattHours = Rows.Sum(season.HeatWattHours[house].AsSpan(from..until));
            return Unit == BillUnit.Money
                ? heat.Fuel.Units(wattHours, heat.Efficiency) * heat.Price!.Value
                : wattHours / WattHoursAKilowattHour;
        }

        var used = Enumerable.Range(from, until - from).Count(day => thing.Spaces.Any(space => season.Held[space][day] > 0));
        return thing.House is null ? Current(_scenario.Spaces[thing.Spaces[0]].Power!, used) : used;
    }

    private double Current(MatPower power, int days) =>
        MatElectricity.KilowattHours(power.Watts, HoursADay * (double)days, power.Duty) * (Unit == BillUnit.Money ? power.Price!.Value : 1);

    private IEnumerable<SharedThing> Houses(Func<House, bool> counts)
    {
        for (var at = 0; at < _scenario.Houses.Length; at++)
        {
            var house = _scenario.Houses[at];
            if (counts(house))
            {
                ImmutableArray<int> spaces = [.. Indices(space => string.Equals(space.HouseId, house.Id, StringComparison.Ordinal))];
                ImmutableArray<int> benches = [.. spaces.Where(space => _scenario.Spaces[space].Kind == SpaceKind.Bench)];
                yield return new SharedThing(house.Name, at, spaces, benches.IsEmpty ? spaces : benches);
            }
        }
    }

    private IEnumerable<SharedThing> Mats() =>
        Indices(space => space.Power is not null).Select(space => new SharedThing(_scenario.Spaces[space].Name, null, [space], [space]));

    private IEnumerable<int> Indices(Func<Space, bool> isMeant) =>
        Enumerable.Range(0, _scenario.Spaces.Length).Where(space => isMeant(_scenario.Spaces[space]));
}
