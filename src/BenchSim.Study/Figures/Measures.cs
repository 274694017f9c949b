using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Study.Figures;

/// <summary>What is compared between plans: each measure once, with how it is read off a season and what is said of it.</summary>
public static class Measures
{
    // Thousandths, for what is no whole number: each season is rounded to them once, so that sums do not depend on their order.
    private const double Thousandths = SeasonEnergy.Thousandths;

    /// <summary>Wanted plants out in time, days of weather hold excepted.</summary>
    public static Measure PlantsInTime { get; } =
        new("plants_in_time", "plants out in time", "plants", 1)
        {
            Change = "{amount} {more} plant{s} {be} out in time {range}",
            Read = season => season.Season.PlantsInTime,
        };

    /// <summary>Late plant-days.</summary>
    public static Measure LatePlantDays { get; } =
        new("late_plant_days", "late plant-days", "plant-days", 1)
        {
            Change = "there {be} {amount} {more} late plant-day{s} {range}",
            Read = season => season.LatePlantDays,
        };

    /// <summary>Tray-days waited for a place on the spaces of a kind.</summary>
    internal static Measure Waited { get; } = new("waited_days", "tray-days waited", "tray-days", 1);

    /// <summary>Days from sowing to field size, mean of the trays that go out.</summary>
    internal static Measure Growing { get; } = new("growing_days", "days from sowing to field size", "days", Thousandths);

    /// <summary>Most places held on any day on all heat mats together.</summary>
    public static Measure MatPeak { get; } =
        new("mat_peak", "peak on the heat mats", "places", 1)
        {
            Change = "{amount} {more} place{s} {be} held on the heat mats at their peak {range}",
            Read = season => season.Peak(SpaceKind.Mat),
        };

    /// <summary>Most places held on any day on all benches together.</summary>
    public static Measure BenchPeak { get; } =
        new("bench_peak", "peak on the benches", "places", 1)
        {
            Change = "{amount} {more} place{s} {be} held on the benches at their peak {range}",
            Read = season => season.Peak(SpaceKind.Bench),
        };

    /// <summary>Most places held on any day on all hardening tables together.</summary>
    public static Measure TablePeak { get; } =
        new("table_peak", "peak on the hardening tables", "places", 1)
        {
            Change = "{amount} {more} place{s} {be} held on the hardening tables at their peak {range}",
            Read = season => season.Peak(SpaceKind.Table),
        };

    private static readonly Measure s_oneTablePeak = TablePeak with
    {
        Name = "peak on the hardening table",
        Subject = "the peak on the hardening table",
        Change = "{amount} {more} place{s} {be} held on the hardening table at its peak {range}",
    };

    /// <summary>Tray-days on heat mats: the sum over days of places held.</summary>
    public static Measure MatTrayDays { get; } =
        new("mat_tray_days", "tray-days on the heat mats", "tray-days", 1)
        {
            Change = "trays spend {amount} {more} tray-day{s} on the heat mats {range}",
            Read = season => season.TrayDays(SpaceKind.Mat),
        };

    /// <summary>Tray-days on benches.</summary>
    public static Measure BenchTrayDays { get; } =
        new("bench_tray_days", "tray-days on the benches", "tray-days", 1)
        {
            Change = "trays spend {amount} {more} tray-day{s} on the benches {range}",
            Read = season => season.TrayDays(SpaceKind.Bench),
        };

    /// <summary>Places held, mean over the days played, in all spaces together.</summary>
    public static Measure MeanHeld { get; } = MeanHeldOver(1);

    /// <summary>Hours of work.</summary>
    public static Measure LabourHours { get; } =
        new("labour_hours", "labour", "hours", WorkSeason.PartsAnHour)
        {
            Subject = "the hours of work",
            Change = "the work takes {amount} {more} hour{s} {range}",
            IsAmount = true,
            Read = season => season.WorkParts,
        };

    /// <summary>Electricity of heat mats.</summary>
    public static Measure MatPower { get; } =
        new("mat_electricity", "electricity of the heat mats", "kWh", Thousandths)
        {
            Change = "the heat mats use {amount} kWh {less} {range}",
            IsAmount = true,
            Read = season => SeasonEnergy.MatPower(season.Scenario, season.Season, _ => 1),
        };

    /// <summary>Wanted plants not out in time, days of weather hold excepted.</summary>
    public static Measure PlantsLate { get; } =
        new("plants_late", "plants not out in time", "plants", 1) { Read = season => season.PlantsLate };

    /// <summary>Open flats sown.</summary>
    public static Measure Flats { get; } =
        new("flats", "flats sown", "flats", 1) { Read = season => season.Goods((_, outcome) => outcome.FlatsSown) };

    /// <summary>Trays sown or potted.</summary>
    public static Measure Trays { get; } =
        new("trays", "trays sown or potted", "trays", 1) { Read = season => season.Goods((_, outcome) => outcome.TraysStarted) };

    /// <summary>Potting mix, loose, litres.</summary>
    public static Measure MixLitres { get; } =
        new("mix_litres", "potting mix", "litres", Thousandths)
        {
            IsAmount = true,
            Read = season => season.Goods((plan, outcome) => SeasonEnergy.Rounded(SeasonGoods.MixLitres(season.Scenario, plan, outcome))),
        };

    /// <summary>Seeds sown.</summary>
    public static Measure Seeds { get; } = new("seeds", "seeds sown", "seeds", 1) { Read = season => season.Goods(SeasonGoods.Seeds) };

    /// <summary>Cost of fuel and of the mats' electricity, in the user's money.</summary>
    /// <param name="currency">Its sign; may be empty.</param>
    public static Measure EnergyCost(string currency) =>
        new("energy_cost", "cost of fuel and mat electricity", currency, Thousandths)
        {
            Change = "fuel and mat electricity cost {amount} {less} {range}",
            IsAmount = true,
            IsMoney = true,
            Read = season =>
                SeasonEnergy.Fuel(season.Scenario, season.Season, _ => true, house => house.Heat!.Price ?? 0)
                + SeasonEnergy.MatPower(season.Scenario, season.Season, power => power.Price ?? 0),
        };

    /// <summary>
    /// The measures of plans that are compared, in the order shown: those that mean something in the base or in a variant.
    /// </summary>
    internal static ImmutableArray<Measure> Of(IReadOnlyList<SeasonPlan> plans, int days)
    {
        var hasMats = plans.Any(plan => plan.Scenario.Spaces.Any(space => space.Kind == SpaceKind.Mat));
        return
        [
            PlantsInTime,
            LatePlantDays,
            .. hasMats ? [MatPeak] : Array.Empty<Measure>(),
            BenchPeak,
            plans.Any(plan => plan.Scenario.Spaces.Count(space => space.Kind == SpaceKind.Table) > 1) ? TablePeak : s_oneTablePeak,
            .. hasMats ? [MatTrayDays] : Array.Empty<Measure>(),
            BenchTrayDays,
            MeanHeldOver(days),
            LabourHours,
            .. Energy(plans),
        ];
    }

    private static IEnumerable<Measure> Energy(IReadOnlyList<SeasonPlan> plans)
    {
        House[] houses = [.. plans.SelectMany(plan => plan.Scenario.Houses).Where(SeasonEnergy.Burns)];
        MatPower[] mats = [.. plans.SelectMany(plan => plan.Scenario.Spaces).Select(space => space.Power).OfType<MatPower>()];
        var fuels = houses
            .Select(house => house.Heat!.Fuel)
            .DistinctBy(fuel => fuel.Id, StringComparer.Ordinal)
            .OrderBy(fuel => fuel.Id, StringComparer.Ordinal);
        foreach (var fuel in fuels)
        {
            yield return Fuel(fuel, plans[0].Scenario.Units == UnitSystem.Metric);
        }

        if (mats.Length > 0)
        {
            yield return MatPower;
        }

        // A cost that leaves something out would mislead.
        if (houses.Length + mats.Length > 0 && houses.All(house => house.Heat!.Price is not null) && mats.All(mat => mat.Price is not null))
        {
            yield return EnergyCost(plans[0].Scenario.Rules.Prices.Currency);
        }
    }

    private static Measure Fuel(Fuel fuel, bool isMetric) =>
        new(
            $"fuel_{fuel.Id}",
            $"fuel: {fuel.Name}",
            isMetric ? fuel.MetricUnit : fuel.Unit,
            isMetric ? Thousandths / fuel.MetricPerUnit : Thousandths
        )
        {
            Subject = $"the use of {fuel.Name}",
            Change = $"the houses burn {{amount}} {{unit}} {{less}} of {fuel.Name} {{range}}",
            IsAmount = true,
            IsFuel = true,
            Read = season =>
                SeasonEnergy.Fuel(
                    season.Scenario,
                    season.Season,
                    house => string.Equals(house.Heat!.Fuel.Id, fuel.Id, StringComparison.Ordinal),
                    _ => 1
                ),
        };

    private static Measure MeanHeldOver(int days) =>
        new("mean_places_held", "places held, mean over the days", "places", days)
        {
            Subject = "the places held on an average day",
            Change = "{amount} {more} place{s} {be} held on an average day {range}",
            Read = season => season.PlaceDays,
        };
}
