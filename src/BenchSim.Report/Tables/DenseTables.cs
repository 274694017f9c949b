using BenchSim.Study.Dense;

namespace BenchSim.Report.Tables;

/// <summary>The tables of direct against dense sowing. Differences are dense less direct; blank where there is no figure.</summary>
internal static class DenseTables
{
    /// <summary>What changes, crop by crop and measure by measure.</summary>
    public static byte[] Changes(DenseResult result)
    {
        var table = new CsvTable(
            "crop",
            "seeds_per_flat_least",
            "seeds_per_flat_most",
            "measure",
            "unit",
            "direct",
            "dense",
            "difference",
            "low",
            "high",
            "real",
            "seasons"
        );
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

        return table.ToBytes();
    }

    /// <summary>The break-even densities.</summary>
    public static byte[] BreakEven(DenseResult result)
    {
        var table = new CsvTable(
            "crop",
            "mat_seeds_per_flat",
            "mat_seeds_per_flat_whole_flats",
            "labour_seeds_per_flat",
            "labour_seeds_per_flat_whole_flats",
            "direct_minutes",
            "potted_minutes"
        );
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

        return table.ToBytes();
    }

    /// <summary>The planned trade-off at several densities.</summary>
    public static byte[] Curve(DenseResult result)
    {
        var table = new CsvTable(
            "crop",
            "seeds_per_flat",
            "flats",
            "seeds",
            "mat_tray_days",
            "direct_mat_tray_days",
            "minutes",
            "direct_minutes"
        );
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

        return table.ToBytes();
    }
}
