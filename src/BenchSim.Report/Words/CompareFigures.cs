using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>The figures of what a variant changes, as people read them: one way for the terminal and for the case report.</summary>
public static class CompareFigures
{
    private const int LongestUnit = 20;

    /// <summary>An amount with so many decimals, money with its sign in front; a minus where it is below 0.</summary>
    /// <param name="measure">What is measured.</param>
    /// <param name="amount">Amount, in the unit of the measure.</param>
    /// <param name="decimals">Decimals, 0 to 4, so that figures of one measure stand under one another; whole 0 is just 0.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measure"/> is null.</exception>
    public static string Amount(Measure measure, double amount, int decimals)
    {
        ArgumentNullException.ThrowIfNull(measure);
        var rounded = Math.Round(amount, decimals, MidpointRounding.AwayFromZero);
        return (rounded < 0 ? "-" : "") + Size(measure, Math.Abs(rounded), decimals);
    }

    /// <summary>With a sign: +1,230, -12, 0.</summary>
    /// <param name="measure">What is measured.</param>
    /// <param name="amount">Amount, in the unit of the measure.</param>
    /// <param name="decimals">Decimals, 0 to 4.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measure"/> is null.</exception>
    public static string Signed(Measure measure, double amount, int decimals)
    {
        var text = Amount(measure, amount, decimals);
        return amount > 0 && text.Any(character => character is >= '1' and <= '9') ? "+" + text : text;
    }

    /// <summary>
    /// Decimals that show the first figure of half the interval, and an end of a real difference as something other than 0; two where the
    /// difference never varies but is not whole. Money never has one alone.
    /// </summary>
    /// <param name="change">What the variant changes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="change"/> is null.</exception>
    public static int Decimals(MeasureChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        if (double.IsNaN(change.HalfWidth) || change.HalfWidth == 0)
        {
            return change.Difference == Math.Round(change.Difference) ? 0 : 2;
        }

        var decimals = (int)Math.Clamp(-Math.Floor(Math.Log10(change.HalfWidth)), 0, 3);
        var nearest = Math.Min(Math.Abs(change.Low), Math.Abs(change.High));
        while (change.IsReal && decimals < 4 && Math.Round(nearest, decimals, MidpointRounding.AwayFromZero) == 0)
        {
            decimals++;
        }

        return decimals == 1 && change.Measure.IsMoney ? 2 : decimals;
    }

    /// <summary>The interval of a difference, with signs: "-3 to +12"; null where one season tells nothing of it.</summary>
    /// <param name="change">What the variant changes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="change"/> is null.</exception>
    public static string? Interval(MeasureChange change)
    {
        var decimals = Decimals(change);
        return double.IsNaN(change.HalfWidth)
            ? null
            : $"{Signed(change.Measure, change.Low, decimals)} to {Signed(change.Measure, change.High, decimals)}";
    }

    /// <summary>The unit of a measure, to stand beside a figure; nothing for money, which carries its sign.</summary>
    /// <param name="measure">What is measured.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measure"/> is null.</exception>
    public static string Unit(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.IsMoney ? "" : PlainText.Short(measure.Unit, LongestUnit);
    }

    private static string Size(Measure measure, double size, int decimals)
    {
        var number = size == 0 ? "0" : size.ToString(decimals == 0 ? "#,##0" : "#,##0." + new string('0', decimals), null);
        return measure.IsMoney ? new Money(measure.Unit).Before(number) : number;
    }
}
