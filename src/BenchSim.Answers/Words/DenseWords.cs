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
            ? Numbers.Whole(crop.SeedsPerFlat.Least)
            : $"{Numbers.Whole(crop.SeedsPerFlat.Least)} to {Numbers.Whole(crop.SeedsPerFlat.Most)}";

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
        var way = $"{PlainText.Short(crop.Crop.Name, 40)} sown dense, {Density(crop)} seeds a flat, instead of directly";
        var first = mats.IsReal
            ? $"{(mats.Difference < 0 ? "frees" : "takes")} {Span(mats)} tray-days {(mats.Difference < 0 ? "on" : "more of")} the heat mats"
            : "makes no clear difference on the heat mats";
        var second = benches.IsReal
            ? $"{(benches.Difference < 0 ? "frees" : "adds")} {Span(benches)} tray-days on the benches"
            : "makes no clear difference on the benches";
        var third = work.IsReal
            ? $"takes {Span(work)} hours {(work.Difference < 0 ? "less" : "more")} work"
            : "makes no clear difference to the work";
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
            : $"no clear difference in the plants out in time ({InTime(late)})";
        var fits = crop.Fits.IsReal
            ? $"the plan fits in {ChanceWords.Fine(crop.Fits.Variant.Share)} of seasons instead of {ChanceWords.Fine(crop.Fits.Base.Share)}"
            : $"no clear difference in the chance that the plan fits ({ChanceWords.SignedPoints(crop.Fits)} " + $"percentage points)";
        return $"{char.ToUpperInvariant(plants[0])}{plants[1..]}; {fits}.";
    }

    private static string InTime(MeasureChange late) =>
        double.IsNaN(late.HalfWidth)
            ? "one season is not enough to say"
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
            ? $"; in whole flats, with the assurance of the plan, from {Numbers.Whole(seeds)} on"
            : $"; in whole flats no density up to {Numbers.Whole(DenseBreakEven.MostSeeds)} does";
        return $"Dense sowing frees mats above {Numbers.Short(even.MatSeeds)} seeds a flat{whole}.";
    }

    /// <summary>From which density on it takes no more work.</summary>
    public static string LabourBreakEven(DenseBreakEven even)
    {
        var hours =
            $"potting up takes {Numbers.Tenths(even.PottedMinutes / 60)} hours with the moves after it, "
            + $"all the work of direct sowing {Numbers.Tenths(even.DirectMinutes / 60)}";
        return even.LabourSeeds is { } seeds
            ? $"It takes no more work above {Numbers.Short(seeds)} seeds a flat "
                + $"({hours}{(even.LabourSeedsWhole is { } whole ? $"; in whole flats from {Numbers.Whole(whole)} on" : "")})."
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
        var (from, to) = (CompareFigures.Amount(change.Measure, least, decimals), CompareFigures.Amount(change.Measure, most, decimals));
        return string.Equals(from, to, StringComparison.Ordinal) ? amount : $"{amount} ({from} to {to})";
    }
}
