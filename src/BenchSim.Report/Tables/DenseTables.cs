using System.Collections.Immutable;
using BenchSim.Study.Dense;

namespace BenchSim.Report.Tables;

/// <summary>The tables of direct against dense sowing. Differences are dense less direct; blank where there is no figure.</summary>
internal static class DenseTables
{
    private static readonly ImmutableArray<Column> s_changes =
    [
        new("crop", "text", "crop id"),
        new("seeds_per_flat_least", "seeds", "fewest seeds in a flat of the batches sown dense"),
        new("seeds_per_flat_most", "seeds", "most seeds in a flat"),
        new("measure", "text", "what is measured"),
        new("unit", "text", "unit of the figures of the row"),
        new("direct", "see unit", "mean of a season, sown directly"),
        new("dense", "see unit", "mean of a season, sown dense and potted up"),
        new("difference", "see unit", "dense less direct"),
        new("low", "see unit", "lower end of the interval of the difference"),
        new("high", "see unit", "upper end"),
        new("real", "yes or no", "the interval leaves out 0"),
        FigureColumns.Seasons,
    ];

    /// <summary>What changes, crop by crop and measure by measure.</summary>
    public static CsvTable Changes(DenseResult result)
    {
        var table = new CsvTable(s_changes);
        foreach (var crop in result.Crops)
        {
            foreach (var change in crop.Changes)
            {
                table
                    .Text(crop.Crop.Id)
                    .Number(crop.SeedsPerFlat.Least)
                    .Number(crop.SeedsPerFlat.Most)
                    .Text(change.Measure.Code)
                    .Text(change.Measure.Unit)
                    .Number(change.Base)
                    .Number(change.Variant)
                    .Number(change.Difference)
                    .Number(change.Low)
                    .Number(change.High)
                    .Text(change.IsReal ? "yes" : "no")
                    .Number(result.Seasons);
            }
        }

        return table;
    }

    private static readonly ImmutableArray<Column> s_breakEven =
    [
        new("crop", "text", "crop id"),
        new("mat_seeds_per_flat", "seeds", "seeds a flat from which dense sowing holds fewer mat places"),
        new("mat_seeds_per_flat_whole_flats", "seeds", "the same, flats counted whole; blank where none does"),
        new("labour_seeds_per_flat", "seeds", "seeds a flat from which dense sowing is less work; blank where none is"),
        new("labour_seeds_per_flat_whole_flats", "seeds", "the same, flats counted whole"),
        new("direct_minutes", "minutes", "work for a tray sown directly"),
        new("potted_minutes", "minutes", "work for a tray potted up, without the sowing of its flat"),
    ];

    /// <summary>The break-even densities.</summary>
    public static CsvTable BreakEven(DenseResult result)
    {
        var table = new CsvTable(s_breakEven);
        foreach (var crop in result.Crops)
        {
            var even = crop.BreakEven;
            table
                .Text(crop.Crop.Id)
                .Number(even.MatSeeds)
                .Number(even.MatSeedsWhole ?? double.NaN)
                .Number(even.LabourSeeds ?? double.NaN)
                .Number(even.LabourSeedsWhole ?? double.NaN)
                .Number(even.DirectMinutes)
                .Number(even.PottedMinutes);
        }

        return table;
    }

    private static readonly ImmutableArray<Column> s_curve =
    [
        new("crop", "text", "crop id"),
        new("seeds_per_flat", "seeds", "seeds sown in a flat"),
        new("flats", "flats", "flats it takes"),
        new("seeds", "seeds", "seeds it takes"),
        new("mat_tray_days", "tray-days", "places held on the mats, sown dense"),
        new("direct_mat_tray_days", "tray-days", "the same, sown directly"),
        new("minutes", "minutes", "work, sown dense and potted up"),
        new("direct_minutes", "minutes", "work, sown directly"),
    ];

    /// <summary>The planned trade-off at several densities.</summary>
    public static CsvTable Curve(DenseResult result)
    {
        var table = new CsvTable(s_curve);
        foreach (var crop in result.Crops)
        {
            foreach (var point in crop.Curve)
            {
                table
                    .Text(crop.Crop.Id)
                    .Number(point.SeedsPerFlat)
                    .Number(point.Flats)
                    .Number(point.Seeds)
                    .Number(point.MatTrayDays)
                    .Number(point.DirectMatTrayDays)
                    .Number(point.Minutes)
                    .Number(point.DirectMinutes);
            }
        }

        return table;
    }
}
