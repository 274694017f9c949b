using System.Globalization;
using System.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Site;

public class WeatherRecordTests
{
    private const string Constant = "kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"";

    [Fact]
    public void A_record_is_read_in_its_own_units()
    {
        using var folder = new TestFolder(Site("temperature_unit = \"F\"\nrain_unit = \"in\"\nyear = 2015"));
        folder.Write("weather.csv", Year(2015, (date, text) => text.Append(date).Append(",50,68,0.5\n")));
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        var record = Assert.IsType<RecordedWeather>(reading.Scenario!.Weather);
        // 50 F = 10 C, 68 F = 20 C, 0.5 in = 12.7 mm.
        Assert.Equal(365, record.Days.Length);
        Assert.Equal(new DailyWeather(new DateOnly(2015, 1, 1), 10, 20, 12.7), record.Days[0]);
        Assert.Equal((2015, "weather.csv"), (record.FixedYear, record.File));
        Assert.Equal(["plan.csv", "site.toml", "weather.csv"], reading.Inputs.Select(file => file.Name).ToArray());
    }

    [Fact]
    public void Bad_days_are_all_named() => FaultMessageTests.AssertFaults(
        TestFolder.Faults(Site(""), others: ("weather.csv", "date,tmin,tmax,rain\n2015-01-01,1,9,0\n2015-01-03,1,9,0\n2015-01-03,9,1,\n2015-01-04,x,9,-1\n")),
        "weather.csv:4:12: the lowest temperature 9 is above the highest 1; the lowest first; exchange the two if they are swapped",
        "weather.csv:4:16: rain is empty; fill in every day of the record",
        "weather.csv:5:12: tmin is \"x\", which is not a number; write a temperature such as 60 F or 15.5 C",
        "weather.csv:5:16: rain of -1 mm in a day is not possible; 0 or more millimetres, at most 1825");

    [Theory]
    [InlineData("year = 2014", "site.toml:27:8: year is 2014, which the record does not hold from January to December; the whole years in it are: 2015")]
    [InlineData("", null)]
    public void A_fixed_year_must_be_whole_in_the_record(string year, string? message)
    {
        var faults = TestFolder.Faults(Site(year), others: ("weather.csv", Year(2015, (date, text) => text.Append(date).Append(",1,9,0\n")) + "2016-01-01,1,9,0\n"));
        Assert.Equal(message, faults.SingleOrDefault());
    }

    [Fact]
    public void A_record_without_a_whole_year_is_no_use() => Assert.Equal(
        "weather.csv:1:1: the record holds no whole calendar year; give at least one year from 1 January to 31 December",
        Assert.Single(TestFolder.Faults(Site(""), others: ("weather.csv", "date,tmin,tmax,rain\n2015-01-01,1,9,0\n"))));

    [Theory]
    [InlineData("../weather.csv")]
    [InlineData("/etc/hostname")]
    [InlineData("a\\\\b.csv")]
    [InlineData("C:weather.csv")]
    public void A_record_outside_the_folder_is_refused(string file)
    {
        var fault = Assert.Single(TestFolder.Faults(TestFolder.Site(Constant, $"kind = \"record\"\nfile = \"{file}\"")));
        Assert.Contains("which is not inside the scenario folder", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_is_not_there() => Assert.Equal(
        "site.toml:26:8: there is no file \"weather.csv\" in the folder; did you mean \"wether.csv\"",
        Assert.Single(TestFolder.Faults(Site(""), others: ("wether.csv", "x"))));

    private static string Site(string lines) => TestFolder.Site(Constant, $"kind = \"record\"\nfile = \"weather.csv\"\n{lines}");

    private static string Year(int year, Action<string, StringBuilder> add)
    {
        var text = new StringBuilder("date,tmin,tmax,rain\n");
        for (var day = new DateOnly(year, 1, 1); day.Year == year; day = day.AddDays(1))
        {
            add(day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), text);
        }

        return text.ToString();
    }
}
