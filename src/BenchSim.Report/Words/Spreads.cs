using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>Quantities and dates that differ from season to season, told with their spread.</summary>
internal static class Spreads
{
    /// <summary>"typically 700 plants (between 300 and 1,200 in eight seasons of ten)".</summary>
    public static string Amount(Estimate estimate, string one, string many)
    {
        string middle = Numbers.Count(estimate.P50, one, many);
        if (estimate.Seasons == 1)
            return $"{middle} in the one season played";
        if (estimate.Least.Equals(estimate.Most))
            return $"{middle} in every season";
        if (estimate.Seasons < Numbers.EnoughSeasons)
            return $"typically {middle} (between {Numbers.Whole(estimate.Least)} and {Numbers.Whole(estimate.Most)} over "
                + $"{Numbers.Whole(estimate.Seasons)} seasons)";
        if (estimate.P50 == 0 && estimate.P90 > 0)
            return $"no {many} in most seasons, but {Numbers.Whole(estimate.P90)} or more in one season of ten";
        if (estimate.P10.Equals(estimate.P90))
            return $"{middle} in at least eight seasons of ten ({Numbers.Whole(estimate.Least)} to {Numbers.Whole(estimate.Most)} over all)";
        return $"typically {middle} (between {Numbers.Whole(estimate.P10)} and {Numbers.Whole(estimate.P90)} in eight seasons of ten)";
    }

    /// <summary>The middle and the spread for a table cell: "12 (8 to 17)", "0 (at most 23)"; one number where all seasons agree.</summary>
    public static string Cell(Estimate estimate)
    {
        string middle = Numbers.Short(estimate.P50);
        if (estimate.Least.Equals(estimate.Most))
            return middle;
        return estimate.P10.Equals(estimate.P90)
            ? $"{middle} (at most {Numbers.Short(estimate.Most)})"
            : $"{middle} ({Numbers.Short(estimate.P10)} to {Numbers.Short(estimate.P90)})";
    }
}
