using System.Globalization;
using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"learn" says what rows of fuel teach of the heat loss of a house.</summary>
public sealed class LearnHouseTests
{
    private const string Head = "date,batch,what,trays,space,count,note\n2027-03-01,a,sown,5,mats,,\n";

    // Half a circle of 3 m radius, 20 m long: 60 pi + 9 pi = 216.770 m2 at 4 W/m2K, and 90 pi = 282.743 m3 that change once an hour:
    // 867.080 + 0.33 x 282.743 = 960.385 W/K. At 20 C inside and 10 C outdoors, day and night, that is 10 K x 24 h x 960.385 = 230.492 kWh
    // a day.
    private const double DayKwh = 230.492;

    // A meter that runs 1.3 times as fast, read five times: four stretches. Of the logarithm the precision is 1/0.3^2 = 11.1111 before and
    // 4/s^2 for them, s^2 = ln(1 + 0.2^2) = 0.0392207: 101.987. They lie at ln 1.3 + s^2/2 = 0.281975, so the mean at 0.281975 x
    // 101.987/113.098 = 0.254273, with a deviation of 1/sqrt(113.098) = 0.0940314: exp(0.254273) = 1.28952, and exp(0.254273 -+ 1.644854 x
    // 0.0940314) = 1.10473 and 1.50522.
    [Fact]
    public void A_meter_read_again_and_again_gives_the_closed_normal_form()
    {
        using var farm = Farm(Readings(5));
        var house = Json(farm);
        Assert.Equal(("main", 4), (house.GetProperty("house").GetString(), house.GetProperty("stretches").GetInt32()));
        Assert.Equal(1.28952, house.GetProperty("loss_factor").GetDouble(), 1e-3);
        Assert.Equal(1.10473, house.GetProperty("interval90").GetProperty("low").GetDouble(), 2e-3);
        Assert.Equal(1.50522, house.GetProperty("interval90").GetProperty("high").GetDouble(), 2e-3);
        var learn = Call.Run("learn", farm.Path);
        learn.Says("By their fuel: main takes 1.29 times the heat worked out (1.10 to 1.51).");
        Assert.InRange(FirstScreen.Of(learn, farm.Path).Length, 1, 24);

        // An electric heater gives all of it; with that factor 1/1.28952.
        Call.Run("learn", farm.Path, "--all").Says("Heat loss of houses, by their fuel", "main 1.29 1.10 to 1.51 4 1.00 0.78");
    }

    // A delivery fills up what was burnt since the one before: the first says nothing of how much.
    [Fact]
    public void Deliveries_count_from_one_to_the_next()
    {
        var rows = Enumerable.Range(0, 5).Select(week => Row(week, week == 0 ? 9999 : 1.3 * 7 * DayKwh, "kWh"));
        using var farm = Farm(string.Concat(rows));
        Assert.Equal(1.28952, Json(farm).GetProperty("loss_factor").GetDouble(), 1e-3);
    }

    [Fact]
    public void Too_few_stretches_are_told_and_teach_nothing()
    {
        using var farm = Farm(Readings(3));
        var house = Json(farm);
        Assert.Equal((2, JsonValueKind.Null), (house.GetProperty("stretches").GetInt32(), house.GetProperty("loss_factor").ValueKind));
        Call.Run("learn", farm.Path, "--all")
            .Says("Heat loss of main: 2 stretches between lines of fuel can be set beside the weather, and 3 are needed.");
    }

    private static string Readings(int times) =>
        string.Concat(Enumerable.Range(0, times).Select(week => Row(week, 5000 + (1.3 * 7 * week * DayKwh), "\"meter, kWh\"")));

    private static string Row(int week, double count, string note)
    {
        var amount = count.ToString("0.000", CultureInfo.InvariantCulture);
        return $"{new DateOnly(2027, 3, 2).AddDays(7 * week):yyyy-MM-dd},,fuel,,main,{amount},{note}\n";
    }

    private static JsonElement Json(FarmFolder farm)
    {
        var call = Call.Run("learn", farm.Path, "--json");
        Assert.Equal((0, ""), (call.Code, call.Error));
        return JsonDocument.Parse(call.Output).RootElement.GetProperty("houses").EnumerateArray().Single();
    }

    private static FarmFolder Farm(string rows)
    {
        var site = FarmFolder
            .GoodSite.Replace(
                "night = \"60 F\"",
                """
                night = "20 C"
                day = "20 C"
                open = 2027-01-18
                shape = "hoop"
                length = "20 m"
                width = "6 m"
                u_value = "4 W/m2K"
                air_changes = 1
                day_lift = "0 C"
                fuel = "electricity"
                """,
                StringComparison.Ordinal
            )
            .Replace("low = \"12 C\"", "low = \"10 C\"", StringComparison.Ordinal)
            .Replace("high = \"20 C\"", "high = \"10 C\"\nobserved = \"seen.csv\"", StringComparison.Ordinal);
        var farm = new FarmFolder(site);
        var days = Enumerable.Range(0, 100).Select(day => $"{new DateOnly(2027, 1, 18).AddDays(day):yyyy-MM-dd},10 C,10 C,0\n");
        farm.Write("seen.csv", "date,tmin,tmax,rain\n" + string.Concat(days).Replace(" C", "", StringComparison.Ordinal));
        farm.Write("log.csv", Head + rows);
        return farm;
    }
}
