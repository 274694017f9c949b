using System.Globalization;

namespace BenchSim.Published.Library;

/// <summary>
/// The rule of docs/sources.md for the ceiling of emergence, worked from the published tables alone: the maximum of the Oregon table, else
/// of the California table, else the coolest temperature above the optimum at which the 1954 table has no normal seedling.
/// </summary>
internal static class PublishedCeiling
{
    internal static double Of(string crop, double optimumC)
    {
        var temperatures = PublishedTable.Read("germination_temps.csv");
        var kind = crop.Split('_')[0];
        var row = temperatures.Find(line => line["crop"] == kind && line["source"].Contains("Oregon State", StringComparison.Ordinal))
            ?? temperatures.Find(line => line["crop"] == kind && line["source"].Contains("GN 154", StringComparison.Ordinal));
        return row is not null
            ? Celsius(row["max_f"])
            : PublishedTable
                .Read("emergence_days.csv")
                .Where(line => line["crop"] == crop && line["pct_normal"] == "0")
                .Select(line => double.Parse(line["temp_c"], CultureInfo.InvariantCulture))
                .Where(temperature => temperature > optimumC)
                .Min();
    }

    internal static double Celsius(string fahrenheit) => (double.Parse(fahrenheit, CultureInfo.InvariantCulture) - 32) / 1.8;
}
