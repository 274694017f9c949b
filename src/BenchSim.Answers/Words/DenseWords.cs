using BenchSim.Report.Words;
using BenchSim.Study.Dense;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Words;

/// <summary>Says what dense sowing does to one crop, in sentences.</summary>
public static class DenseWords
{
    /// <summary>Seeds a flat of a crop.</summary>
    public static string Density(DenseCrop crop) =>
        crop.SeedsPerFlat.Least == crop.SeedsPerFlat.Most
            ? Figures.Whole(crop.SeedsPerFlat.Least)
            : $"{Figures.Whole(crop.SeedsPerFlat.Least)} to {Figures.Whole(crop.SeedsPerFlat.Most)}";

    /// <summary>A difference with half its interval: "-320 (± 12)".</summary>
    public static string Cell(MeasureChange change)
    {
        var decimals = CompareFigures.Decimals(change);
        var number = CompareFigures.Signed(change.Measure, change.Difference, decimals);
        return double.IsNaN(change.HalfWidth) || change.HalfWidth == 0
            ? number
            : $"{number} (± {CompareFigures.Amount(change.Measure, change.HalfWidth, decimals)})";
    }

    /// <summary>What is gained and what is paid.</summary>
    public static string Trade(DenseCrop crop)
    {
        var mats = crop.Of(Measures.MatTrayDays);
        var benches = crop.Of(Measures.BenchTrayDays);
        var work = crop.Of(Measures.LabourHours);
        var way = $"{SafeText.Short(crop.Crop.Name, 40)} sown dense, {Density(crop)} seeds a flat, instead of directly";
        var first = mats.IsReal
            ? $"{(mats.Difference < 0 ? "frees" : "takes")} {Span(mats)} tray-days {(mats.Difference < 0 ? "on" : "more of")} the heat mats"
            : "makes no difference on the heat mats that can be told";
        var second = benches.IsReal
            ? $"{(benches.Difference < 0 ? "frees" : "adds")} {Span(benches)} tray-days on the benches"
            : "makes no difference on the benches that can be told";
        var third = work.IsReal
            ? $"takes {Span(work)} hours {(work.Difference < 0 ? "less" : "more")} work"
            : "takes no more or less work that can be told";
        return $"{way}: it {first}, {second} and {third}.";
    }

    /// <summary>What it does to the stand in time.</summary>
    public static string Late(DenseCrop crop)
    {
        var late = crop.Of(Measures.PlantsLate);
        var plants =
            late.IsReal
                ? $"{Span(late)} {(late.Difference > 0 ? "fewer plants are" : "more plants are")} out in time, of all crops together"
            : late.Differing == 0 ? "the same plants are out in time in every season"
            : $"no difference can be told in the plants out in time ({InTime(late)})";
        var fits = crop.Fits.IsReal
            ? $"the plan fits in {Figures.Percent(crop.Fits.Variant.Share)} of seasons instead of {Figures.Percent(crop.Fits.Base.Share)}"
            : $"no difference can be told in the chance that the plan fits ({CompareFigures.SignedPoints(crop.Fits.Low)} "
                + $"to {CompareFigures.SignedPoints(crop.Fits.High)} percentage points)";
        return $"{char.ToUpperInvariant(plants[0])}{plants[1..]}; {fits}.";
    }

    private static string InTime(MeasureChange late) =>
        double.IsNaN(late.HalfWidth)
            ? "one season says nothing of luck"
            : $"{CompareFigures.Signed(late.Measure, -late.High, CompareFigures.Decimals(late))} to "
                + $"{CompareFigures.Signed(late.Measure, -late.Low, CompareFigures.Decimals(late))}";

    /// <summary>From which density on it frees mats.</summary>
    public static string MatBreakEven(DenseBreakEven even)
    {
        if (double.IsNaN(even.MatSeeds))
        {
            return "Sown directly it holds no mat, so there is none to free.";
        }

        var whole = even.MatSeedsWhole is { } seeds
            ? $"; in whole flats, with the assurance of the plan, from {Figures.Whole(seeds)} on"
            : $"; in whole flats no density up to {Figures.Whole(DenseBreakEven.MostSeeds)} does";
        return $"Dense sowing frees mats above {Figures.Short(even.MatSeeds)} seeds a flat{whole}.";
    }

    /// <summary>From which density on it takes no more work.</summary>
    public static string LabourBreakEven(DenseBreakEven even)
    {
        var hours =
            $"potting up takes {Figures.Tenths(even.PottedMinutes / 60)} hours with the moves after it, "
            + $"all the work of direct sowing {Figures.Tenths(even.DirectMinutes / 60)}";
        return even.LabourSeeds is { } seeds
            ? $"It takes no more work above {Figures.Short(seeds)} seeds a flat "
                + $"({hours}{(even.LabourSeedsWhole is { } whole ? $"; in whole flats from {Figures.Whole(whole)} on" : "")})."
            : $"No density takes as little work: {hours}.";
    }

    private static string Span(MeasureChange change)
    {
        var decimals = CompareFigures.Decimals(change);
        var amount = CompareFigures.Amount(change.Measure, Math.Abs(change.Difference), decimals);
        if (double.IsNaN(change.HalfWidth) || change.HalfWidth == 0)
        {
            return amount;
        }

        (var least, var most) = change.Difference < 0 ? (-change.High, -change.Low) : (change.Low, change.High);
        return $"{amount} ({CompareFigures.Amount(change.Measure, least, decimals)} to "
            + $"{CompareFigures.Amount(change.Measure, most, decimals)})";
    }
}
