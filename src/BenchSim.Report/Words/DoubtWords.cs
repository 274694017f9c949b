using BenchSim.Season.Doubt;
using BenchSim.Study.Trust;

namespace BenchSim.Report.Words;

/// <summary>What is said of values that may be wrong, wherever it is said.</summary>
public static class DoubtWords
{
    /// <summary>"days of growth of Leek".</summary>
    /// <param name="value">The value.</param>
    public static string Name(DoubtfulValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return $"{value.Column.Title} of {PlainText.Short(value.Owners, 40)}";
    }

    /// <summary>What the values of a group are about: "how fast plants grow".</summary>
    /// <param name="group">The group.</param>
    public static string Of(DoubtGroup group) =>
        group switch
        {
            DoubtGroup.ComingUp => "when seed comes up",
            DoubtGroup.Germination => "how much seed comes up",
            DoubtGroup.Growth => "how fast plants grow",
            DoubtGroup.PottingUp => "potting up",
            DoubtGroup.Losses => "plants lost before the field",
            DoubtGroup.Houses => "how warm the houses are",
            _ => "how warm mix and covers are",
        };

    /// <summary>A figure as it is read: a chance, or a number.</summary>
    /// <param name="measure">What is read.</param>
    /// <param name="value">The figure.</param>
    public static string Figure(TrustMeasure measure, double value)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.IsShare ? ChanceWords.Fine(value) : Numbers.Short(value);
    }

    /// <summary>A share of a variance with its interval: "34 % (25 to 43)", or that it is not clear.</summary>
    /// <param name="share">The share; null where it was not worked out.</param>
    public static string Share(ShareEstimate? share) =>
        share is not { } known ? "-"
        : known.IsClear ? $"{ChanceWords.Percent(Math.Clamp(known.Share, 0, 1))} ({End(known.Low)} to {End(known.High)})"
        : "not clear";

    private static string End(double share) => ChanceWords.Number(Math.Clamp(share, 0, 1));
}
