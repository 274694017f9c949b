using BenchSim.Study.Compare;

namespace BenchSim.Cli.Words;

/// <summary>Says what changed between the base and a variant, in a sentence each.</summary>
internal static class CompareWords
{
    /// <summary>An amount without its sign, with so many decimals.</summary>
    public static string Amount(Measure measure, double amount, int decimals)
    {
        // The figures of one measure stand under one another, so they have as many decimals; whole 0 is just 0.
        double rounded = Math.Round(Math.Abs(amount), decimals, MidpointRounding.AwayFromZero);
        string number = rounded == 0 ? "0" : rounded.ToString(decimals == 0 ? "#,##0" : "#,##0." + new string('0', decimals), null);
        return measure.Kind == MeasureKind.EnergyCost ? measure.Unit + number : number;
    }

    /// <summary>With a sign: +1,230, -12, 0.</summary>
    public static string Signed(Measure measure, double amount, int decimals)
    {
        string text = Amount(measure, amount, decimals);
        return text.Any(character => character is >= '1' and <= '9') ? (amount < 0 ? "-" : "+") + text : text;
    }

    /// <summary>
    /// Decimals that show the first figure of half the interval, and an end of a real difference as something other than 0; two where the
    /// difference never varies but is not whole.
    /// </summary>
    public static int Decimals(MeasureChange change)
    {
        if (double.IsNaN(change.HalfWidth) || change.HalfWidth == 0)
            return change.Difference == Math.Round(change.Difference) ? 0 : 2;
        int decimals = (int)Math.Clamp(-Math.Floor(Math.Log10(change.HalfWidth)), 0, 3);
        double nearest = Math.Min(Math.Abs(change.Low), Math.Abs(change.High));
        while (change.IsReal && decimals < 4 && Math.Round(nearest, decimals, MidpointRounding.AwayFromZero) == 0)
            decimals++;
        return decimals;
    }

    /// <summary>The interval of a difference, with signs; a dash where one season tells nothing.</summary>
    public static string Interval(MeasureChange change) => double.IsNaN(change.HalfWidth)
        ? "-"
        : $"{Signed(change.Measure, change.Low, Decimals(change))} to {Signed(change.Measure, change.High, Decimals(change))}";

    /// <summary>Percentage points with a sign.</summary>
    public static string SignedPoints(double share)
    {
        double points = Math.Round(share * 100, 1);
        return points == 0 ? "0" : points.ToString("+0.#;-0.#", null);
    }

    /// <summary>What a real difference of a measure means.</summary>
    public static string Real(string variant, MeasureChange change)
    {
        bool isMore = change.Difference > 0;
        int decimals = Decimals(change);
        string amount = Amount(change.Measure, change.Difference, decimals);
        (double least, double most) = isMore ? (change.Low, change.High) : (-change.High, -change.Low);
        string range = change.HalfWidth == 0 ? "(in every season)" : $"({Amount(change.Measure, least, decimals)} to {Amount(change.Measure, most, decimals)})";
        string more = $"{amount} {(isMore ? "more" : "fewer")}";
        string moreOrLess = isMore ? "more" : "less";
        string be = amount is "1" ? "is" : "are";
        string s = amount is "1" ? "" : "s";
        string what = change.Measure.Kind switch
        {
            MeasureKind.PlantsInTime => $"{more} plant{s} {be} out in time {range}",
            MeasureKind.LatePlantDays => $"there {be} {more} late plant-day{s} {range}",
            MeasureKind.MatPeak => $"{more} place{s} {be} held on the heat mats at their peak {range}",
            MeasureKind.BenchPeak => $"{more} place{s} {be} held on the benches at their peak {range}",
            MeasureKind.TablePeak => $"{more} place{s} {be} held on the hardening tables at their peak {range}",
            MeasureKind.MatTrayDays => $"trays spend {more} tray-day{s} on the heat mats {range}",
            MeasureKind.BenchTrayDays => $"trays spend {more} tray-day{s} on the benches {range}",
            MeasureKind.MeanHeld => $"{more} place{s} {be} held on an average day {range}",
            MeasureKind.LabourHours => $"the work takes {more} hour{s} {range}",
            MeasureKind.Fuel => $"the houses burn {amount} {change.Measure.Unit} {moreOrLess} of {change.Measure.Name["fuel: ".Length..]} {range}",
            MeasureKind.MatPower => $"the heat mats use {amount} kWh {moreOrLess} {range}",
            MeasureKind.EnergyCost => $"fuel and mat electricity cost {amount} {moreOrLess} {range}",
            _ => throw new InvalidOperationException("An unknown measure."),
        };
        return $"With {SafeText.Quote(variant)} {what}.";
    }

    /// <summary>That a difference of a measure is not real.</summary>
    public static string NotReal(MeasureChange change, int seasons)
    {
        string name = Subject(change.Measure);
        if (change.Differing == 0)
            return $"{char.ToUpperInvariant(name[0])}{name[1..]}: the same in every one of {Seasons(seasons)}.";
        string unit = change.Measure.Kind == MeasureKind.EnergyCost ? "" : " " + change.Measure.Unit;
        return double.IsNaN(change.HalfWidth)
            ? $"No difference can be told in {name}: one season says nothing of luck."
            : $"No difference can be told in {name}: {Interval(change)}{unit}, {Seasons(seasons)}.";
    }

    /// <summary>What becomes of the chance of fit.</summary>
    public static string Fits(string variant, FitChange fits, int seasons)
    {
        string counts = $"{Figures.Whole(fits.OnlyVariant)} of {Seasons(seasons)} fit only with it, {Figures.Whole(fits.OnlyBase)} only without";
        if (fits.Differing == 0)
            return $"The chance that the plan fits: the same seasons fit, {Figures.Whole(fits.Both)} of {Figures.Whole(seasons)}.";
        if (!fits.IsReal)
            return $"No difference can be told in the chance that the plan fits: {SignedPoints(fits.Low)} to {SignedPoints(fits.High)} percentage points; {counts}.";
        (double least, double most) = fits.Difference > 0 ? (fits.Low, fits.High) : (-fits.High, -fits.Low);
        return $"With {SafeText.Quote(variant)} the plan fits in {Figures.Percent(fits.Variant.Share)} of seasons instead of {Figures.Percent(fits.Base.Share)}: "
            + $"{Points(Math.Abs(fits.Difference))} percentage points {(fits.Difference > 0 ? "more" : "fewer")} ({Points(least)} to {Points(most)}); {counts}.";
    }

    private static string Seasons(int seasons) => Figures.Count(seasons, "season", "seasons");

    private static string Points(double share) => Math.Round(share * 100, 1).ToString("0.#", null);

    private static string Subject(Measure measure) => measure.Kind switch
    {
        MeasureKind.Fuel => "the use of " + measure.Name["fuel: ".Length..],
        MeasureKind.PlantsInTime => "the plants out in time",
        MeasureKind.LatePlantDays => "the late plant-days",
        MeasureKind.MeanHeld => "the places held on an average day",
        MeasureKind.LabourHours => "the hours of work",
        _ => "the " + measure.Name,
    };
}
