using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Compare;

/// <summary>Reads the measures of a plan off a played season, as whole numbers.</summary>
internal sealed class SeasonMeasures
{
    private readonly ImmutableArray<Measure> _measures;
    private readonly Scenario _scenario;
    private readonly WorkMinutes _minutes;
    private readonly int[][] _spacesOfKind;

    public SeasonMeasures(SeasonPlan plan, ImmutableArray<Measure> measures)
    {
        (_measures, _scenario, _minutes) = (measures, plan.Scenario, plan.Scenario.Rules.Minutes);
        _spacesOfKind =
        [
            .. Enum.GetValues<SpaceKind>()
                .Select(kind =>
                    Enumerable.Range(0, _scenario.Spaces.Length).Where(space => _scenario.Spaces[space].Kind == kind).ToArray()
                ),
        ];
    }

    /// <summary>Fills one number a measure; each is 0 or more.</summary>
    public void Read(SeasonResult season, long[] values)
    {
        for (var at = 0; at < values.Length; at++)
        {
            values[at] = Value(_measures[at], season);
        }
    }

    /// <summary>Late plant-days of a season, all batches.</summary>
    public static long LatePlantDays(BatchOutcome[] batches)
    {
        long sum = 0;
        foreach (var batch in batches)
        {
            sum += batch.LatePlantDays;
        }

        return sum;
    }

    private long Value(Measure measure, SeasonResult season) =>
        measure.Kind switch
        {
            MeasureKind.PlantsInTime => season.PlantsInTime,
            MeasureKind.LatePlantDays => LatePlantDays(season.Batches),
            MeasureKind.MatPeak => Peak(season, SpaceKind.Mat),
            MeasureKind.BenchPeak => Peak(season, SpaceKind.Bench),
            MeasureKind.TablePeak => Peak(season, SpaceKind.Table),
            MeasureKind.MatTrayDays => TrayDays(season, SpaceKind.Mat),
            MeasureKind.BenchTrayDays => TrayDays(season, SpaceKind.Bench),
            MeasureKind.MeanHeld => season.Held.Sum(Sum),
            MeasureKind.LabourHours => WorkSeason.PartsOf(season, _minutes),
            MeasureKind.Fuel => SeasonEnergy.Fuel(
                _scenario,
                season,
                house => string.Equals(house.Heat!.Fuel.Id, measure.FuelId, StringComparison.Ordinal),
                _ => 1
            ),
            MeasureKind.MatPower => SeasonEnergy.MatPower(_scenario, season, _ => 1),
            MeasureKind.EnergyCost => SeasonEnergy.Fuel(_scenario, season, _ => true, house => house.Heat!.Price ?? 0)
                + SeasonEnergy.MatPower(_scenario, season, power => power.Price ?? 0),
            _ => throw new InvalidOperationException("An unknown measure."),
        };

    private long Peak(SeasonResult season, SpaceKind kind)
    {
        var spaces = _spacesOfKind[(int)kind];
        var peak = 0;
        for (var day = 0; day < season.Sown.Length; day++)
        {
            var held = 0;
            foreach (var space in spaces)
            {
                held += season.Held[space][day];
            }

            peak = Math.Max(peak, held);
        }

        return peak;
    }

    private long TrayDays(SeasonResult season, SpaceKind kind)
    {
        long sum = 0;
        foreach (var space in _spacesOfKind[(int)kind])
        {
            sum += Sum(season.Held[space]);
        }

        return sum;
    }

    private static long Sum(int[] byDay)
    {
        long sum = 0;
        foreach (var each in byDay)
        {
            sum += each;
        }

        return sum;
    }
}
