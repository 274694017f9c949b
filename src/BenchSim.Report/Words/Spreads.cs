using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>Quantities and dates that differ from season to season, told with their spread.</summary>
public static class Spreads
{
    /// <summary>"typically 700 plants (between 300 and 1,200 in eight seasons of ten)".</summary>
    public static string Amount(Estimate estimate, string one, string many)
    {
        var middle = Numbers.Count(estimate.P50, one, many);
        if (estimate.Seasons == 1)
        {
            return $"{middle} in the one season played";
        }

        if (estimate.Least.Equals(estimate.Most))
        {
            return $"{middle} in every season";
        }

        if (estimate.Seasons < Numbers.EnoughSeasons && estimate.P50 == 0)
        {
            return $"no {many} in at least half of the {Numbers.Whole(estimate.Seasons)} seasons, at most {Numbers.Whole(estimate.Most)}";
        }

        if (estimate.Seasons < Numbers.EnoughSeasons)
        {
            return $"typically {middle} (between {Numbers.Whole(estimate.Least)} and {Numbers.Whole(estimate.Most)} over "
                + $"{Numbers.Whole(estimate.Seasons)} seasons)";
        }

        if (estimate.P50 == 0 && estimate.P90 > 0)
        {
            return $"no {many} in most seasons, but {Numbers.Whole(estimate.P90)} or more in one season of ten";
        }

        if (estimate.P10.Equals(estimate.P90))
        {
            return $"{middle} in at least eight seasons of ten ({Numbers.Whole(estimate.Least)} to {Numbers.Whole(estimate.Most)} "
                + "over all)";
        }

        return $"typically {middle} (between {Numbers.Whole(estimate.P10)} and {Numbers.Whole(estimate.P90)} in eight seasons of ten)";
    }

    /// <summary>
    /// "412 gal on average (95 % interval 405 to 419), between 350 and 480 gal in eight seasons of ten".
    /// </summary>
    /// <param name="estimate">The quantity.</param>
    /// <param name="number">Writes a number.</param>
    /// <param name="unit">What follows a number, with its space; may be empty.</param>
    /// <param name="finer">Writes the mean and its interval where <paramref name="number"/> would write both
    /// ends alike; null to leave it at that.</param>
    public static string Mean(Estimate estimate, Func<double, string> number, string unit, Func<double, string>? finer = null)
    {
        var mean = number(estimate.Mean) + unit;
        if (estimate.Seasons == 1)
        {
            return $"{mean} in the one season played";
        }

        if (estimate.Least.Equals(estimate.Most))
        {
            return $"{mean} in every season";
        }

        var fine = finer is not null && EndsMeet(estimate, number) ? finer : number;
        var average = $"{fine(estimate.Mean)}{unit} on average (95 % interval {MeanRange(estimate, fine)})";
        return estimate.Seasons < Numbers.EnoughSeasons
            ? $"{average}, between {number(estimate.Least)} and {number(estimate.Most)}{unit} over {Numbers.Whole(estimate.Seasons)} "
                + "seasons"
            : $"{average}, between {number(estimate.P10)} and {number(estimate.P90)}{unit} in eight seasons of ten";
    }

    // "63 (63 to 63)" reads as if there were no interval.
    private static bool EndsMeet(Estimate estimate, Func<double, string> number) =>
        estimate.HalfWidth > 0
        && string.Equals(number(estimate.Mean - estimate.HalfWidth), number(estimate.Mean + estimate.HalfWidth), StringComparison.Ordinal);

    /// <summary>The 95 % interval of the mean of a quantity that is never below 0: "405 to 419"; a dash where
    /// one season tells nothing of it.</summary>
    public static string MeanRange(Estimate estimate, Func<double, string> number) =>
        double.IsNaN(estimate.HalfWidth)
            ? "–"
            : $"{number(Math.Max(0, estimate.Mean - estimate.HalfWidth))} to {number(estimate.Mean + estimate.HalfWidth)}";

    /// <summary>The same quantity in another unit.</summary>
    /// <param name="estimate">The quantity.</param>
    /// <param name="each">New units an old one, 0 or more.</param>
    public static Estimate Times(Estimate estimate, double each) =>
        new(
            estimate.Mean * each,
            estimate.HalfWidth * each,
            estimate.P10 * each,
            estimate.P50 * each,
            estimate.P90 * each,
            estimate.P95 * each,
            estimate.Least * each,
            estimate.Most * each,
            estimate.Seasons
        );

    /// <summary>True for a thing that happens in at least half of the seasons: only then does its median speak for the season.</summary>
    public static bool IsUsual(this DateSpread spread) => 2 * spread.Happened >= spread.Seasons;

    /// <summary>"4 of 1,000 seasons", "none of 1,000 seasons".</summary>
    public static string OfAll(int happened, int seasons) =>
        $"{(happened == 0 ? "none" : Numbers.Whole(happened))} of {Numbers.Count(seasons, "season", "seasons")}";

    /// <summary>A cell for a quantity that only some of the seasons have: "12 (8 to 17), in 4 of 1,000 seasons".</summary>
    public static string Cell(Estimate estimate, int seasons) =>
        estimate.Seasons == 0 || estimate.Seasons == seasons ? Cell(estimate) : $"{Cell(estimate)}, in {OfAll(estimate.Seasons, seasons)}";

    /// <summary>
    /// The middle and the spread for a table cell: "12 (8 to 17)"; where at least eight seasons of ten agree, the ends of all: "0 (at most
    /// 23)", "450 (0 to 450 over all)"; one number where all seasons agree.
    /// </summary>
    public static string Cell(Estimate estimate)
    {
        if (estimate.Seasons == 0)
        {
            return "–";
        }

        var middle = Numbers.Short(estimate.P50);
        if (estimate.Least.Equals(estimate.Most))
        {
            return middle;
        }

        if (!estimate.P10.Equals(estimate.P90))
        {
            return $"{middle} ({Numbers.Short(estimate.P10)} to {Numbers.Short(estimate.P90)})";
        }

        return estimate.Least.Equals(estimate.P50)
            ? $"{middle} (at most {Numbers.Short(estimate.Most)})"
            : $"{middle} ({Numbers.Short(estimate.Least)} to {Numbers.Short(estimate.Most)} over all)";
    }
}
