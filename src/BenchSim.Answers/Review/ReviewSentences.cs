using BenchSim.Report.Words;
using BenchSim.Study.Review;

namespace BenchSim.Answers.Review;

/// <summary>What a review found, in sentences.</summary>
internal static class ReviewSentences
{
    private const double MinutesAnHour = 60;

    /// <summary>How good the forecasts were, in a sentence or two.</summary>
    public static string? Forecast(SeasonReview review)
    {
        if (review.Cases == 0)
        {
            return null;
        }

        var (inRange, earlier, later) = (
            review.Weeks.Sum(week => week.InRange),
            review.Weeks.Sum(week => week.Earlier),
            review.Weeks.Sum(week => week.Later)
        );
        var side =
            earlier + later == 0 ? ""
            : later == 0 ? $"; the others went out earlier"
            : earlier == 0 ? $"; the others went out later"
            : $"; {Numbers.Whole(earlier)} went out earlier, {Numbers.Whole(later)} later";
        return $"Forecast on each of {Numbers.Count(review.Weeks.Length, "Monday", "Mondays")}: the day on which a batch went out lay in "
            + $"the range of eight seasons of ten in {Numbers.Whole(inRange)} of {Numbers.Count(review.Cases, "case", "cases")} "
            + $"({ChanceWords.Percent((double)inRange / review.Cases)}){side}.";
    }

    /// <summary>What was timed, and what the site says of the same work.</summary>
    public static string Work(SeasonReview review)
    {
        var hours = review.Agreed.Work.Hours;
        var expected = $"the agreed plan's whole season takes about {Numbers.Count(hours.Mean, "hour", "hours")}";
        if (review.Minutes.IsEmpty)
        {
            return $"Work: no line has minutes, so no hours were counted; {expected} by the site's minutes.";
        }

        var (lines, all) = (review.Minutes.Sum(each => each.Timed), review.Minutes.Sum(each => each.Minutes));
        MinutesSpent[] ruled = [.. review.Minutes.Where(each => each.ByTheRules is not null)];
        var rules = ruled.Sum(each => each.ByTheRules ?? 0);
        var same =
            ruled.Length == 0 ? ""
            : ruled.Length == review.Minutes.Length ? $", for which the site's minutes give {Hours(rules)}"
            : $"; for {Hours(ruled.Sum(each => each.Minutes))} of them the site's minutes give {Hours(rules)}";
        return $"Work: {Hours(all)} hours timed in {Numbers.Count(lines, "line", "lines")}{same}; {expected}.";
    }

    /// <summary>The fuel of a house: counted, as the model has it for what was, and as the agreed plan had it.</summary>
    public static string Fuel(SeasonReview review, FuelSpent fuel)
    {
        var heat = fuel.House.Heat!.Fuel;
        var metric = review.Plan.Scenario.Units == Season.Values.UnitSystem.Metric;
        var unit = metric ? heat.MetricUnit : heat.Unit;
        var counted = fuel.Counted is { } known ? $"{Amount(known)} {unit} counted" : $"none counted ({unit})";
        var expected = fuel.Expected is { } agreed
            ? $", {Amount(agreed.Mean)} ({Amount(agreed.P10)} to {Amount(agreed.P90)}) by the agreed plan"
            : "";
        return $"{PlainText.Short(fuel.House.Name, 24)} {counted}, {Amount(fuel.AsItWas)} worked out from log and weather{expected}";

        string Amount(double bought) => Numbers.Whole(metric ? heat.ToMetric(bought) : bought);
    }

    private static string Hours(double minutes) => Numbers.Short(minutes / MinutesAnHour);
}
