using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Compare;

/// <summary>Which measures a comparison shows: those that mean something in the base or in a variant.</summary>
internal static class MeasureList
{
    /// <summary>
    /// Thousandths, for what is no whole number: each season is rounded to them once, so that sums do not depend on their order.
    /// </summary>
    public const double Thousandths = SeasonEnergy.Thousandths;

    /// <summary>The measures of plans that are compared, in the order shown.</summary>
    public static ImmutableArray<Measure> Of(IReadOnlyList<SeasonPlan> plans, int days)
    {
        var hasMats = plans.Any(plan => plan.Scenario.Spaces.Any(space => space.Kind == SpaceKind.Mat));
        var measures = ImmutableArray.CreateBuilder<Measure>();
        measures.Add(new Measure(MeasureKind.PlantsInTime, "", "plants out in time", "plants", 1));
        measures.Add(new Measure(MeasureKind.LatePlantDays, "", "late plant-days", "plant-days", 1));
        if (hasMats)
        {
            measures.Add(new Measure(MeasureKind.MatPeak, "", "peak on the heat mats", "places", 1));
        }

        measures.Add(new Measure(MeasureKind.BenchPeak, "", "peak on the benches", "places", 1));
        measures.Add(new Measure(MeasureKind.TablePeak, "", "peak on the hardening tables", "places", 1));
        if (hasMats)
        {
            measures.Add(new Measure(MeasureKind.MatTrayDays, "", "tray-days on the heat mats", "tray-days", 1));
        }

        measures.Add(new Measure(MeasureKind.BenchTrayDays, "", "tray-days on the benches", "tray-days", 1));
        measures.Add(new Measure(MeasureKind.MeanHeld, "", "places held, mean over the days", "places", days));
        measures.Add(new Measure(MeasureKind.LabourHours, "", "labour", "hours", WorkSeason.PartsAnHour));
        AddEnergy(plans, measures);
        return measures.ToImmutable();
    }

    private static void AddEnergy(IReadOnlyList<SeasonPlan> plans, ImmutableArray<Measure>.Builder measures)
    {
        House[] houses = [.. plans.SelectMany(plan => plan.Scenario.Houses).Where(SeasonEnergy.Burns)];
        MatPower[] mats = [.. plans.SelectMany(plan => plan.Scenario.Spaces).Select(space => space.Power).OfType<MatPower>()];
        foreach (
            var fuel in houses
                .Select(house => house.Heat!.Fuel)
                .DistinctBy(fuel => fuel.Id, StringComparer.Ordinal)
                .OrderBy(fuel => fuel.Id, StringComparer.Ordinal)
        )
        {
            var isMetric = plans[0].Scenario.Units == UnitSystem.Metric;
            measures.Add(
                new Measure(
                    MeasureKind.Fuel,
                    fuel.Id,
                    $"fuel: {fuel.Name}",
                    isMetric ? fuel.MetricUnit : fuel.Unit,
                    isMetric ? Thousandths / fuel.MetricPerUnit : Thousandths
                )
            );
        }

        if (mats.Length > 0)
        {
            measures.Add(new Measure(MeasureKind.MatPower, "", "electricity of the heat mats", "kWh", Thousandths));
        }

        // A cost that leaves something out would mislead.
        if (houses.Length + mats.Length > 0 && houses.All(house => house.Heat!.Price is not null) && mats.All(mat => mat.Price is not null))
        {
            measures.Add(
                new Measure(
                    MeasureKind.EnergyCost,
                    "",
                    "cost of fuel and mat electricity",
                    plans[0].Scenario.Rules.Prices.Currency,
                    Thousandths
                )
            );
        }
    }
}
