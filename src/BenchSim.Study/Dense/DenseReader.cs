using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Dense;

/// <summary>Reads the measures of one way of one crop off a played season, as whole numbers of 0 or more.</summary>
internal sealed class DenseReader
{
    /// <summary>The measures, in the order read.</summary>
    public static readonly ImmutableArray<Measure> Measures =
    [
        new(MeasureKind.MatTrayDays, "", "tray-days on the heat mats", "tray-days", 1),
        new(MeasureKind.MatPeak, "", "peak on the heat mats", "places", 1),
        new(MeasureKind.BenchTrayDays, "", "tray-days on the benches", "tray-days", 1),
        new(MeasureKind.Flats, "", "flats sown", "flats", 1),
        new(MeasureKind.Trays, "", "trays sown or potted", "trays", 1),
        new(MeasureKind.LabourHours, "", "labour", "hours", WorkSeason.PartsAnHour),
        new(MeasureKind.MixLitres, "", "potting mix", "litres", SeasonEnergy.Thousandths),
        new(MeasureKind.Seeds, "", "seeds sown", "seeds", 1),
        new(MeasureKind.PlantsLate, "", "plants not out in time", "plants", 1),
        new(MeasureKind.LatePlantDays, "", "late plant-days", "plant-days", 1),
    ];

    private static readonly ImmutableArray<Measure> s_ofSite =
    [
        .. Measures.Where(measure =>
            measure.Kind
                is MeasureKind.MatTrayDays
                    or MeasureKind.MatPeak
                    or MeasureKind.BenchTrayDays
                    or MeasureKind.LabourHours
                    or MeasureKind.LatePlantDays
        ),
    ];

    private readonly SeasonMeasures _site;
    private readonly long[] _siteValues = new long[s_ofSite.Length];
    private readonly (BatchPlan Plan, int At)[] _batches;
    private readonly long _wanted;

    public DenseReader(SeasonPlan plan, string crop)
    {
        _site = new SeasonMeasures(plan, s_ofSite);
        _batches =
        [
            .. plan
                .Batches.Select((batch, at) => (batch, at))
                .Where(each => string.Equals(each.batch.Order.CropId, crop, StringComparison.Ordinal)),
        ];
        _wanted = plan.Batches.Sum(batch => (long)batch.Order.Plants);
    }

    /// <summary>Fills one number a measure.</summary>
    public void Read(SeasonResult season, long[] values)
    {
        _site.Read(season, _siteValues);
        for (var at = 0; at < values.Length; at++)
        {
            values[at] = Measures[at].Kind switch
            {
                MeasureKind.PlantsLate => _wanted - season.PlantsInTime,
                MeasureKind.Flats => Sum(season, (_, outcome) => outcome.FlatsSown),
                MeasureKind.Trays => Sum(season, (_, outcome) => outcome.TraysStarted),
                MeasureKind.MixLitres => Sum(season, (plan, outcome) => SeasonEnergy.Rounded(SeasonGoods.MixLitres(plan, outcome))),
                MeasureKind.Seeds => Sum(season, SeasonGoods.Seeds),
                _ => _siteValues[s_ofSite.IndexOf(Measures[at])],
            };
        }
    }

    private long Sum(SeasonResult season, Func<BatchPlan, BatchOutcome, long> of)
    {
        long sum = 0;
        foreach ((var plan, var at) in _batches)
        {
            sum += of(plan, season.Batches[at]);
        }

        return sum;
    }
}
