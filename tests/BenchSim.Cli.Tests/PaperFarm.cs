namespace BenchSim.Cli.Tests;

/// <summary>
/// The farm of scenarios/by-hand, whose house is 20 C night and day under a sky of 10 C, with sections changed for a test.
/// </summary>
internal static class PaperFarm
{
    /// <summary>
    /// A hoop house of 6 m by 10 m: cover 30 pi + 9 pi = 122.522 m2, volume 45 pi = 141.372 m3; at 5 W/m2K and one air change an hour it
    /// loses 612.611 + 46.653 = 659.263 W a kelvin.
    /// </summary>
    public const string HoopHouse = """
        shape = "hoop"
        width = "6 m"
        length = "10 m"
        u_value = "5 W/m2K"
        air_changes = 1
        fuel = "electricity"
        fuel_price = 0.5
        design_low = "-10 C"
        """;

    private const string ConstantWeather = """
        kind = "constant"
        low = "10 C"
        high = "10 C"
        rain = "0 mm"
        """;

    /// <summary>Lays the farm down.</summary>
    /// <param name="folder">Where.</param>
    /// <param name="house">Lines added to its house.</param>
    /// <param name="mats">Lines added to its mats.</param>
    /// <param name="sections">Sections added at the end.</param>
    /// <param name="record">Its weather record; null for 10 C day and night.</param>
    public static string In(TemporaryFolder folder, string house = "", string mats = "", string sections = "", string? record = null)
    {
        var from = Path.Combine(Repository.Root, "scenarios", "by-hand");
        var farm = folder.In("paper");
        Directory.CreateDirectory(farm);
        foreach (var name in new[] { "plan.csv", "crops.csv" })
        {
            File.Copy(Path.Combine(from, name), Path.Combine(farm, name));
        }

        var site = File.ReadAllText(Path.Combine(from, "site.toml"))
            .ReplaceLineEndings("\n")
            .Replace("day_lift = \"0 C\"\n", "day_lift = \"0 C\"\n" + house + "\n", StringComparison.Ordinal)
            .Replace("places = 4\ntemperature", mats + "\nplaces = 4\ntemperature", StringComparison.Ordinal);
        if (record is not null)
        {
            Assert.Contains(ConstantWeather.ReplaceLineEndings("\n"), site, StringComparison.Ordinal);
            site = site.Replace(
                ConstantWeather.ReplaceLineEndings("\n"),
                "kind = \"record\"\nfile = \"weather.csv\"",
                StringComparison.Ordinal
            );
            File.WriteAllText(Path.Combine(farm, "weather.csv"), record);
        }

        File.WriteAllText(Path.Combine(farm, "site.toml"), site + "\n" + sections);
        return farm;
    }
}
