using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>
/// What a variant changes, in plain words: one wording for the terminal and for the case report. Safe to show anywhere, as the names in it
/// are shortened, on one line and without control characters.
/// </summary>
public static class CompareSentences
{
    private const int LongestName = 60;

    /// <summary>What becomes of the chance of fit.</summary>
    /// <param name="variant">Name of the variant.</param>
    /// <param name="fits">What it changes.</param>
    /// <param name="seasons">Seasons played of each.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static string Fits(string variant, FitChange fits, int seasons)
    {
        ArgumentNullException.ThrowIfNull(variant);
        ArgumentNullException.ThrowIfNull(fits);
        return FitsWith(Name(variant), fits, seasons);
    }

    /// <summary>The same of what has no name of its own.</summary>
    /// <param name="it">What is set against the base: "this try".</param>
    /// <param name="fits">What becomes of the chance of fit.</param>
    /// <param name="seasons">Seasons played.</param>
    public static string FitsWith(string it, FitChange fits, int seasons)
    {
        ArgumentNullException.ThrowIfNull(it);
        ArgumentNullException.ThrowIfNull(fits);
        var counts =
            $"{Numbers.Whole(fits.OnlyVariant)} of {Numbers.Count(seasons, "season", "seasons")} fit only with it, "
            + $"{Numbers.Whole(fits.OnlyBase)} only without";
        if (fits.Differing == 0)
        {
            return $"The same seasons fit with and without {it}: {Numbers.Whole(fits.Both)} of {Numbers.Whole(seasons)}.";
        }

        if (!fits.IsReal)
        {
            return $"No clear difference in the chance that the plan fits: {ChanceWords.SignedPoints(fits)} "
                + $"percentage points; {counts}.";
        }

        (var least, var most) = fits.Difference > 0 ? (fits.Low, fits.High) : (-fits.High, -fits.Low);
        return $"With {it} the plan fits in {ChanceWords.Fine(fits.Variant.Share)} of seasons instead of "
            + $"{ChanceWords.Fine(fits.Base.Share)}: {ChanceWords.Points(Math.Abs(fits.Difference))} percentage points "
            + $"{(fits.Difference > 0 ? "more" : "fewer")} ({ChanceWords.Points(least)} to {ChanceWords.Points(most)}); {counts}.";
    }

    /// <summary>What a real difference of a measure means.</summary>
    /// <param name="variant">Name of the variant.</param>
    /// <param name="change">What it changes.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static string Real(string variant, MeasureChange change)
    {
        ArgumentNullException.ThrowIfNull(variant);
        ArgumentNullException.ThrowIfNull(change);
        var isMore = change.Difference > 0;
        var decimals = CompareFigures.Decimals(change);
        var amount = CompareFigures.Amount(change.Measure, Math.Abs(change.Difference), decimals);
        (var least, var most) = isMore ? (change.Low, change.High) : (-change.High, -change.Low);
        var (from, to) = (CompareFigures.Amount(change.Measure, least, decimals), CompareFigures.Amount(change.Measure, most, decimals));
        var range =
            change.HalfWidth == 0 ? "(in every season)"
            : string.Equals(from, to, StringComparison.Ordinal) ? ""
            : $"({from} to {to})";
        var isOne = amount is "1";
        var what = change
            .Measure.Change.Replace("{amount}", amount, StringComparison.Ordinal)
            .Replace("{more}", isMore ? "more" : "fewer", StringComparison.Ordinal)
            .Replace("{less}", isMore ? "more" : "less", StringComparison.Ordinal)
            .Replace("{be}", isOne ? "is" : "are", StringComparison.Ordinal)
            .Replace("{s}", isOne ? "" : "s", StringComparison.Ordinal)
            .Replace("{unit}", CompareFigures.Unit(change.Measure), StringComparison.Ordinal)
            .Replace("{range}", range, StringComparison.Ordinal);
        return $"With {Name(variant)} {what.TrimEnd()}.";
    }

    /// <summary>That a difference of a measure is not real.</summary>
    /// <param name="change">What the variant changes.</param>
    /// <param name="seasons">Seasons played of each.</param>
    /// <exception cref="ArgumentNullException"><paramref name="change"/> is null.</exception>
    public static string NotReal(MeasureChange change, int seasons)
    {
        ArgumentNullException.ThrowIfNull(change);
        var name = change.Measure.Subject;
        var played = Numbers.Count(seasons, "season", "seasons");
        if (change.Differing == 0)
        {
            return $"{PlainText.Capital(name)}: the same in {(seasons == 1 ? "the one season played" : "every one of " + played)}.";
        }

        var unit = CompareFigures.Unit(change.Measure);
        return CompareFigures.Interval(change) is { } interval
            ? $"No clear difference in {name}: {interval}{(unit.Length > 0 ? " " + unit : "")}, {played}."
            : $"No clear difference in {name}: one season is not enough to say.";
    }

    /// <summary>How intervals that allow for several comparisons are to be read.</summary>
    /// <param name="comparisons">How many were made.</param>
    public static string Allowance(int comparisons) =>
        $"The intervals allow for {Numbers.Count(comparisons, "comparison", "comparisons")} made here (Bonferroni): all of them hold at "
        + "once with 95 % confidence.";

    private static string Name(string variant) => $"\"{PlainText.Short(variant, LongestName)}\"";
}
