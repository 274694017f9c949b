using BenchSim.Season.Weather;

namespace BenchSim.Folder.Tests.Site;

/// <summary>What was observed this season, and what is forecast: files that [weather] names beside its own.</summary>
public class SeenWeatherTests
{
    private const string Head = "date,tmin,tmax,rain\n";

    private static readonly string s_site = TestFolder.Site(
        "kind = \"constant\"",
        "kind = \"constant\"\nobserved = \"seen.csv\"\nforecast = \"ahead.csv\""
    );

    [Fact]
    public void Days_may_be_missing_and_come_in_any_order()
    {
        using var folder = new TestFolder(s_site);
        folder.Write("seen.csv", Head + "2027-03-02,1 C,9 C,2 mm\n2027-02-20,32 F,50 F,0\n");
        folder.Write("ahead.csv", Head + "2027-03-03,-2 C,4 C,0\n");
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Equal(
            [new DailyWeather(new(2027, 2, 20), 0, 10, 0), new DailyWeather(new(2027, 3, 2), 1, 9, 2)],
            reading.Scenario!.Seen.Observed.ToArray()
        );
        Assert.Equal([new DailyWeather(new(2027, 3, 3), -2, 4, 0)], reading.Scenario.Seen.Forecast.ToArray());
    }

    [Fact]
    public void Bad_days_say_where_and_what() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(
                s_site,
                others:
                [
                    (
                        "seen.csv",
                        Head + "2027-03-01,9 C,1 C,0\n2027-03-02,1 C,9 C,0\n2027-03-02,1 C,8 C,0\nsoon,1 C,,0\n2027-03-04,1 C,90 C,-1\n"
                    ),
                    ("ahead.csv", Head),
                ]
            ),
            "seen.csv:2:12: tmin is \"9 C\", above tmax; write the lowest in tmin and the highest in tmax",
            "seen.csv:4:1: date 2027-03-02 is on line 3 already; keep one row for a day",
            "seen.csv:5:1: date is \"soon\", which is not a date; write year-month-day such as 2027-03-15",
            "seen.csv:5:10: tmax is empty; fill it in, or leave the whole row out",
            "seen.csv:6:16: tmax is \"90 C\", which is 90 C; write a temperature from -60 C to 55 C, with its unit, such as 60 F",
            "seen.csv:6:21: rain is \"-1\"; write a value from 0 mm to 1825 mm"
        );

    [Fact]
    public void Files_that_are_not_there_or_are_others_are_faults() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(s_site.Replace("ahead.csv", "plan.csv", StringComparison.Ordinal)),
            "site.toml:26:12: there is no file \"seen.csv\" in the folder; add seen.csv, or check its name",
            "site.toml:27:12: forecast is \"plan.csv\", and plan.csv is another file of the scenario; give the weather record a name "
                + "of its own, such as \"weather.csv\""
        );
}
