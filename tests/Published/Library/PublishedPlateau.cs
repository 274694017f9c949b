using System.Globalization;

namespace BenchSim.Published.Library;

/// <summary>
/// The rule of docs/sources.md for the plateau of emergence, worked from the 1954 table alone: the warmest tabulated temperature below the
/// ceiling up to which no temperature has more days than the optimum.
/// </summary>
internal static class PublishedPlateau
{
    internal static double Of(string crop, double optimumC, double ceilingC)
    {
        var warm = PublishedTable
            .Read("emergence_days.csv")
            .Where(line => line["crop"] == crop && Celsius(line) >= optimumC && Celsius(line) < ceilingC)
            .OrderBy(Celsius)
            .ToList();
        return warm.TakeWhile(line => Days(line) <= Days(warm[0])).Select(Celsius).Last();
    }

    private static double Celsius(Dictionary<string, string> line) => double.Parse(line["temp_c"], CultureInfo.InvariantCulture);

    // Where nothing came up, or nothing is printed, no number of days is few enough.
    private static double Days(Dictionary<string, string> line) =>
        double.TryParse(line["days"], CultureInfo.InvariantCulture, out var days) ? days : double.PositiveInfinity;
}
