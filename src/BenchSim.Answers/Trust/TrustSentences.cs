using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Trust;

namespace BenchSim.Answers.Trust;

/// <summary>The sentences of what hangs on values, each once.</summary>
internal static class TrustSentences
{
    /// <summary>The share of seasons that fit, at the values given and over their ranges.</summary>
    public static string Headline(TrustResult result)
    {
        var fits = result.Fits;
        var given =
            $"At the values given the plan fits in {ChanceWords.Fine(result.GivenFits.Share)} of "
            + $"{Numbers.Count(result.GivenFits.Seasons, "season", "seasons")}.";
        if (result.Values.IsEmpty)
        {
            return $"{given} All values behind that are yours, so none is taken to be wrong.";
        }

        var wrong = $"{given} {Numbers.Count(result.Values.Length, "value", "values")} behind that may be wrong.";
        var plants = result.Decides;
        return result.IsFitStill
            ? $"{wrong} Over their ranges {Numbers.Short(plants.Low)} to {Numbers.Short(plants.High)} plants are in time; "
                + $"{Numbers.Short(plants.AsGiven)} as given."
            : $"{wrong} Over their ranges it fits in {ChanceWords.FineNumber(fits.Low)} to {ChanceWords.Fine(fits.High)} "
                + $"({ChanceWords.Fine(fits.Middle)} in the middle).";
    }

    /// <summary>How much of the difference between seasons is luck.</summary>
    public static string Widths(TrustResult result)
    {
        var values = result.LatePlantDays.Widths.ShareOfValues;
        return $"Of how late plants are from season to season, luck makes {ChanceWords.Percent(1 - values)} and the values "
            + $"{ChanceWords.Percent(values)}.";
    }

    /// <summary>What to measure first; null where no value moves the answer much.</summary>
    public static string? First(TrustResult result) =>
        result.First.FirstOrDefault() is { } first ? $"Measure first: {Moves(result, first)} To know: {first.Value.Column.Measure}." : null;

    /// <summary>What comes after it.</summary>
    public static string? Next(TrustResult result)
    {
        TrustValue[] next = [.. result.First.Skip(1).Take(2)];
        return next.Length == 0 ? null : $"Then: {string.Join(" And then: ", next.Select(value => Moves(result, value)))}";
    }

    /// <summary>What one value does when it alone is wrong.</summary>
    public static string Moves(TrustResult result, TrustValue value)
    {
        var (low, high) = (value.AtLow[result.DecidesAt], value.AtHigh[result.DecidesAt]);
        var (atLow, atHigh) = result.IsFitStill
            ? ($"{Numbers.Short(low)} plants are in time", Numbers.Short(high))
            : ($"the plan fits in {ChanceWords.Fine(low)}", $"in {ChanceWords.Fine(high)}");
        return $"{DoubtWords.Name(value.Value)}, {value.Value.Now}. At {value.Value.At(0.05)} {atLow}, at {value.Value.At(0.95)} {atHigh}.";
    }

    /// <summary>What values do to the choice of a variant.</summary>
    public static string Choice(TrustResult result, TrustChoice choice)
    {
        var name = PlainText.Quote(PlainText.Short(choice.Variant, 24));
        var (plants, decides) = (choice.Plants, choice.Decides);
        var gain = $"With {name} {Plants(plants.GainAsGiven)} in time at the values given, {Plants(plants.Gain)} over their ranges.";
        if (choice.Money is { } money)
        {
            gain += $" After all it costs, it brings {Money(money.GainAsGiven)} a year at the values given, {Money(money.Gain)} over them.";
        }

        if (decides.Changes == 0)
        {
            return $"{gain} No set of values turns the choice: nothing need be measured for it.";
        }

        var turned = $"In {ChanceWords.Percent(decides.Changes)} of the sets of values the other choice is the better one.";
        var worth = $"Knowing all values before choosing would bring {Gain(result, choice, decides.WorthOfAll)} more";
        return decides.Worth.IsEmpty
            ? $"{gain} {turned} {worth}; no single value clearly brings any of it."
            : $"{gain} {turned} {worth}; {DoubtWords.Name(decides.Worth[0].Value)} alone "
                + $"{Gain(result, choice, decides.Worth[0].Gain.Share)}.";

        string Money(double amount) => InvestNames.Money(amount, Currency(result));
    }

    /// <summary>A gain of knowing, in the unit that decides the choice.</summary>
    public static string Gain(TrustResult result, TrustChoice choice, double gain) =>
        choice.Money is null ? $"{Numbers.Short(gain)} plants" : $"{InvestNames.Money(gain, Currency(result))} a year";

    private static string Currency(TrustResult result) => result.Plan.Scenario.Rules.Prices.Currency;

    /// <summary>What was played, and what the ranges are.</summary>
    public static string Played(TrustResult result)
    {
        var options = result.Options;
        return $"{Numbers.Count(options.Sets, "set", "sets")} of values, {Numbers.Count(options.Seasons, "season", "seasons")} of each, "
            + $"the same ones, of which {ChanceWords.Fine(result.Fits.AsGiven)} fit as given; each value alone in {options.FewerSeasons}. "
            + "Sow dates, trays and seeds stay. "
            + "Ranges you do not give are a judgement by where a value comes from.";
    }

    private static string Plants(double plants) =>
        Math.Abs(plants) < 0.5
            ? "no plant more or less is"
            : $"{Numbers.Short(Math.Abs(plants))} plants {(plants > 0 ? "more" : "fewer")} are";
}
