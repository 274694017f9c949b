using BenchSim.Study.Invest;

namespace BenchSim.Report.Words;

/// <summary>
/// What a money case comes to, in plain words: one wording for the terminal and for the case report. Safe to show anywhere, as the names in
/// it are shortened, on one line and without control characters.
/// </summary>
public static class InvestSentences
{
    private const int LongestName = 60;
    private const string OtherSeasons = ", though other seasons might have shown something else";

    /// <summary>Whether it pays on average.</summary>
    /// <param name="result">The case.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static string Headline(InvestResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var net = result.NetPresentValue;
        var life = Numbers.Count(result.Terms.LifeYears, "year", "years");
        var mean = Money(result, net.Mean);
        var except = result.LeftOut.IsEmpty
            ? ""
            : " Not counted, as it has no price: "
                + $"{PlainText.List([.. result.LeftOut.Select(part => PlainText.Short(part, LongestName))])}.";
        if (double.IsNaN(net.HalfWidth))
        {
            return $"One season cannot tell whether it pays: over {life} the net present value would be {mean}.{except}";
        }

        var range =
            $"(95 % interval {Money(result, net.Low)} to {Money(result, net.High)}, {Numbers.Count(result.Seasons, "season", "seasons")})";
        return net switch
        {
            { Low: > 0 } => $"With the figures given it pays on average: over {life} the net present value is {mean} {range}.{except}",
            { High: < 0 } =>
                $"With the figures given it does not pay on average: over {life} the net present value is {mean} {range}.{except}",
            _ => $"Whether it pays on average is not clear: over {life} the net present value is {mean} {range}. "
                + $"More seasons would show.{except}",
        };
    }

    /// <summary>The chance that it pays.</summary>
    /// <param name="result">The case.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static string Chance(InvestResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result.Pays.Hits == 0 || result.Pays.Hits == result.Pays.Seasons)
        {
            return $"It pays in {(result.Pays.Hits == 0 ? "none" : "each")} of {Numbers.Whole(result.Lives)} runs of "
                + $"{Numbers.Count(result.Terms.LifeYears, "year", "years")} drawn from the "
                + $"{Numbers.Count(result.Seasons, "season", "seasons")} played.";
        }

        return $"It pays in {ChanceWords.Fine(result.Pays.Share)} of {Numbers.Whole(result.Lives)} runs of "
            + $"{Numbers.Count(result.Terms.LifeYears, "year", "years")} drawn from the "
            + $"{Numbers.Count(result.Seasons, "season", "seasons")} played (95 % interval "
            + $"{ChanceWords.FineInterval(result.Pays)}).";
    }

    /// <summary>What decides it.</summary>
    /// <param name="result">The case.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static string Deciding(InvestResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        Swing[] deciding = [.. result.Tornado.Take(result.Deciding)];
        if (deciding.Length == 0)
        {
            return "No input given makes a difference.";
        }

        string[] turning = [.. deciding.Where(swing => swing.TurnsTheCase).Select(Named)];
        var turns = turning.Length switch
        {
            0 => "Within the range tried none of them alone turns the case.",
            1 when deciding.Length == 1 => "Within the range tried it turns the case.",
            _ => $"Within the ranges tried {PlainText.List(turning)} alone would turn the case.",
        };
        return $"{(deciding.Length == 1 ? "What decides it is" : "What decides it most are")} "
            + $"{PlainText.List([.. deciding.Select(Named)])}. {turns}";
    }

    /// <summary>What one must believe of one input for it to pay, all else as given; in brackets the 95 % interval.</summary>
    /// <param name="each">The input and where it breaks even.</param>
    /// <param name="currency">Currency sign or code; may be empty.</param>
    /// <exception cref="ArgumentNullException"><paramref name="each"/> is null.</exception>
    public static string Belief(BreakEven each, string currency)
    {
        ArgumentNullException.ThrowIfNull(each);
        var subject = "the " + InvestNames.Of(each.Input);
        var given = $"; {InvestNames.Value(each.Input, each.Value, currency)} is given";
        if (each.IsHopeless)
        {
            return $"No {Whatever(each.Input)} makes it pay{Doubt(each)}.";
        }

        if (each.IsFloor ? each.At <= 0 : double.IsPositiveInfinity(each.At))
        {
            return $"It pays whatever {subject}{(IsSureOfAny(each) ? "" : OtherSeasons)}{given}.";
        }

        var bound = each.IsFloor ? "at least" : "at most";
        return $"It pays if {subject} is {bound} {InvestNames.Value(each.Input, each.At, currency)}" + $"{Span(each, currency)}{given}.";
    }

    /// <summary>A rate in percent, or that there is none; null where it cannot be told.</summary>
    /// <param name="rate">A rate a year; infinite where nothing is lost or all is.</param>
    public static string? Rate(double rate) =>
        rate switch
        {
            double.NaN => null,
            double.NegativeInfinity => "none, a loss",
            double.PositiveInfinity => "none, no loss",
            _ => InvestNames.Percent(rate),
        };

    /// <summary>Years with one decimal, or that the money never comes back; null where it cannot be told.</summary>
    /// <param name="years">Years, 0 or more; infinite where the money never comes back.</param>
    public static string? Years(double years) =>
        double.IsNaN(years) ? null
        : double.IsInfinity(years) ? "never"
        : years.ToString("0.0", null);

    /// <summary>The ends of an interval in words, one where both are the same; null where one season tells nothing of it.</summary>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end.</param>
    /// <param name="word">The word of an end; null where it cannot be told.</param>
    /// <exception cref="ArgumentNullException"><paramref name="word"/> is null.</exception>
    public static string? Range(double low, double high, Func<double, string?> word)
    {
        ArgumentNullException.ThrowIfNull(word);
        if (word(low) is not { } least || word(high) is not { } most || double.IsNaN(low) || double.IsNaN(high))
        {
            return null;
        }

        return string.Equals(least, most, StringComparison.Ordinal) ? least : $"{least} to {most}";
    }

    private static string Money(InvestResult result, double amount) => InvestNames.Money(amount, result.Currency);

    private static string Named(Swing swing) => "the " + InvestNames.Of(swing.Input);

    private static string Whatever(InvestInput input) =>
        input switch
        {
            InvestInput.Life => "life up to 60 years",
            InvestInput.Capital => "capital, however small,",
            InvestInput.DiscountRate => "discount rate, however low,",
            _ => InvestNames.Of(input),
        };

    private static string Doubt(BreakEven each) => double.IsInfinity(each.Low) == double.IsInfinity(each.High) ? "" : OtherSeasons;

    // Whether any value would do in all of the interval too.
    private static bool IsSureOfAny(BreakEven each) => each.IsFloor ? each.High <= 0 : double.IsPositiveInfinity(each.Low);

    // Where all seasons are alike, or there is one only, there is nothing between the ends.
    private static string Span(BreakEven each, string currency) =>
        each.Low.Equals(each.High) ? "" : $" ({End(each, each.Low, currency)} to {End(each, each.High, currency)})";

    private static string End(BreakEven each, double value, string currency)
    {
        if (each.Input == InvestInput.Life && value == 0)
        {
            return "any value";
        }

        if (double.IsFinite(value))
        {
            return InvestNames.Value(each.Input, value, currency);
        }

        return each.IsFloor == double.IsPositiveInfinity(value) ? "no value that would do" : "any value";
    }
}
