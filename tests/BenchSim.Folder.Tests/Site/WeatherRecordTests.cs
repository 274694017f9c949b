using System.Globalization;
using System.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;

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
    public void Bad_days_are_all_named() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(
                Site(""),
                others: ("weather.csv", "date,tmin,tmax,rain\n2015-01-01,1,9,0\n2015-01-03,1,9,0\n2015-01-03,9,1,\n2015-01-04,x,9,-1\n")
            ),
            "weather.csv:4:12: the lowest temperature 9 C is above the highest 1 C; the lowest first; exchange the two if they are swapped",
            "weather.csv:4:16: rain is empty; fill in every day of the record",
            "weather.csv:5:12: tmin is \"x\", which is not a number; write a temperature such as 60 F or 15.5 C",
            "weather.csv:5:16: a day's rain of -1 mm is not possible; 0 or more, at most 1825 mm"
        );

    [Theory]
    [InlineData(
        "year = 2014",
        "site.toml:27:8: year is 2014, which the record does not hold from January to December; the whole years in it are: 2015"
    )]
    [InlineData("", null)]
    public void A_fixed_year_must_be_whole_in_the_record(string year, string? message)
    {
        var faults = TestFolder.Faults(
            Site(year),
            others: ("weather.csv", Year(2015, (date, text) => text.Append(date).Append(",1,9,0\n")) + "2016-01-01,1,9,0\n")
        );
        Assert.Equal(message, faults.SingleOrDefault());
    }

    [Fact]
    public void A_record_without_a_whole_year_is_no_use() =>
        Assert.Equal(
            "weather.csv:1:1: the record holds no whole calendar year; give at least one year from 1 January to 31 December",
            Assert.Single(TestFolder.Faults(Site(""), others: ("weather.csv", "date,tmin,tmax,rain\n2015-01-01,1,9,0\n")))
        );

    [Theory]
    [InlineData("../weather.csv")]
    [InlineData("/etc/hostname")]
    [InlineData("a\\\\b.csv")]
    [InlineData("C:weather.csv")]
    [InlineData("spring?.csv")]
    [InlineData("data./weather.csv")]
    public void A_record_outside_the_folder_or_under_a_name_that_no_report_can_keep_is_refused(string file)
    {
        var fault = Assert.Single(TestFolder.Faults(TestFolder.Site(Constant, $"kind = \"record\"\nfile = \"{file}\"")));
        Assert.Contains("which is no plain name of a file inside the scenario folder", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_is_not_there() =>
        Assert.Equal(
            "site.toml:26:8: there is no file \"weather.csv\" in the folder; did you mean \"wether.csv\"",
            Assert.Single(TestFolder.Faults(Site(""), others: ("wether.csv", "x")))
        );

    // 2016 is a leap year. Each mended thing is a warning on its line: row n of the year is on line n + 1.
    [Theory]
    [InlineData(
        "2016-02-29,1,9,0\n",
        "",
        "weather.csv:61:1: 2016-02-29 is missing; filled on a straight line between the days before and after"
    )]
    [InlineData(
        "2016-01-02,1,9,0\n2016-01-03,1,9,0\n2016-01-04,1,9,0\n",
        "",
        "weather.csv:3:1: 3 days are missing, 2016-01-02 to 2016-01-04; filled on a straight line between the days before and after"
    )]
    [InlineData(
        "2016-01-02,1,9,0\n",
        "2016-01-02,1,9,0\n2016-01-02,1,9,0\n",
        "weather.csv:4:1: 2016-01-02 is in line 3 too, with the same values; the second row was left out"
    )]
    [InlineData(
        "2016-01-02,1,9,0\n2016-01-03,1,9,0\n",
        "2016-01-03,1,9,0\n2016-01-02,1,9,0\n",
        "weather.csv:4:1: 2016-01-02 comes after 2016-01-03 in the file; the rows were put in order of date"
    )]
    public void What_is_mended_is_said(string old, string replacement, string warning)
    {
        using var folder = new TestFolder(Site(""));
        folder.Write("weather.csv", Leap().Replace(old, replacement, StringComparison.Ordinal));
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Equal(warning, Assert.Single(reading.Warnings).ToString());
        var days = Assert.IsType<RecordedWeather>(reading.Scenario!.Weather).Days;
        Assert.Equal(366, days.Length);
        Assert.All(Enumerable.Range(0, 366), day =>
            Assert.Equal(new DailyWeather(new DateOnly(2016, 1, 1).AddDays(day), 1, 9, 0), days[day])
        );
    }

    [Theory]
    [InlineData(
        "2016-01-02,1,9,0\n2016-01-03,1,9,0\n2016-01-04,1,9,0\n2016-01-05,1,9,0\n",
        "",
        "weather.csv:3:1: 4 days are missing, 2016-01-02 to 2016-01-05; a row for each day; gaps of up to 3 days are filled"
    )]
    [InlineData(
        "2016-01-02,1,9,0\n",
        "2016-01-02,1,9,0\n2016-01-02,2,9,0\n",
        "weather.csv:4:1: 2016-01-02 is in line 3 too, with other values; one row a date"
    )]
    [InlineData(
        "2016-01-02,1,9,0\n",
        "2016-01-02,9,1,0\n",
        "weather.csv:3:12: the lowest temperature 9 C is above the highest 1 C; the lowest first; exchange the two if they are swapped"
    )]
    [InlineData(
        "2016-01-02,1,9,0\n",
        "2016-01-02,1,90,0\n",
        "weather.csv:3:14: a highest temperature of 90 C has never been measured on earth; between -90 C and 57 C"
    )]
    [InlineData(
        "2016-02-29,1,9,0\n",
        "2016-02-29,1,9,0\n2016-02-30,1,9,0\n",
        "weather.csv:62:1: date is 2016-02-30, which is not in the calendar; February 2016 has 29 days"
    )]
    [InlineData(
        ",1,9,0",
        ",9,1,0",
        "weather.csv:2:12: the lowest temperature is above the highest in 366 of 366 rows; the two columns are exchanged: name the "
            + "lower one tmin and the higher one tmax"
    )]
    [InlineData(
        ",1,9,0",
        ",45,68,0",
        "weather.csv:2:12: the temperatures are too high for degrees Celsius and look like Fahrenheit; write temperature_unit = "
            + "\"F\" in [weather], or degrees Celsius"
    )]
    [InlineData(
        "date,tmin,tmax",
        "date,tmin,tmx",
        "weather.csv:1:1: there is no column \"tmax\"; add a column named tmax to the first line",
        "weather.csv:1:11: there is no column \"tmx\" in this file; did you mean \"tmax\""
    )]
    public void What_cannot_be_mended_is_a_fault(string old, string replacement, params string[] messages) =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(Site(""), others: ("weather.csv", Leap().Replace(old, replacement, StringComparison.Ordinal))),
            messages
        );

    // 31 F = -0.56 C: a summer of 31 C that is read as Fahrenheit.
    [Fact]
    public void Celsius_that_is_read_as_Fahrenheit_is_a_fault() =>
        Assert.Equal(
            "weather.csv:2:12: read as Fahrenheit, the warmest day of this record has 31 F; it looks like Celsius; write "
                + "temperature_unit = \"C\" in [weather]",
            Assert.Single(
                TestFolder.Faults(
                    Site("temperature_unit = \"F\""),
                    others: ("weather.csv", Leap().Replace("2016-07-15,1,9,0", "2016-07-15,18,31,0", StringComparison.Ordinal))
                )
            )
        );

    // A mean year has 365.25 days. 8 in a day: 2922 in. 0.3 mm a day: 109.6 mm, more than a desert;
    // 0.2 mm a day: 73 mm on 365 days. 2.1 in a day: 767.0 in; 1 in a day is 9,277 mm and may be; 0.5 mm on one day is a desert.
    [Theory]
    [InlineData(
        "in",
        ",1,9,8\n",
        "read as inches, this record has 2922 in of rain in a mean year; it looks like millimetres; write rain_unit = \"mm\" in [weather]"
    )]
    [InlineData(
        "in",
        ",1,9,2.1\n",
        "read as inches, this record has 767 in of rain in a mean year; it looks like millimetres; write rain_unit = \"mm\" in [weather]"
    )]
    [InlineData("in", ",1,9,1\n", null)]
    [InlineData(
        "mm",
        ",1,9,0.2\n",
        "read as millimetres, this record has 73 mm of rain in a mean year, on 365 days; it looks like inches; write rain_unit = "
            + "\"in\" in [weather]"
    )]
    [InlineData("mm", ",1,9,0.3\n", null)]
    [InlineData("mm", ",1,9,0\n", null)]
    public void Rain_that_is_read_in_the_other_unit_is_a_fault(string unit, string day, string? message)
    {
        var faults = TestFolder.Faults(
            Site($"rain_unit = \"{unit}\""),
            others: ("weather.csv", Leap().Replace(",1,9,0\n", day, StringComparison.Ordinal))
        );
        Assert.Equal(message is null ? null : $"weather.csv:2:16: {message}", faults.SingleOrDefault());
    }

    // A year from last day to first: all but the first row come after a later date. Twenty are shown, and how many there are.
    [Fact]
    public void A_file_in_reverse_order_does_not_say_so_365_times()
    {
        using var folder = new TestFolder(Site(""));
        folder.Write("weather.csv", "date,tmin,tmax,rain\n" + string.Join('\n', Leap().Trim().Split('\n').Skip(1).Reverse()));
        var reading = folder.Read();
        Assert.NotNull(reading.Scenario);
        Assert.Equal(21, reading.Warnings.Length);
        Assert.Equal(
            "weather.csv:1:1: 365 things in this record were mended, and the first 20 are shown; look through the dates of the record",
            reading.Warnings[0].ToString()
        );
    }

    [Fact]
    public void Weather_is_made_after_a_record()
    {
        using var folder = new TestFolder(TestFolder.Site(Constant, "kind = \"generated\"\nfile = \"weather.csv\""));
        folder.Write("weather.csv", Varied(2014, 2016));
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        var weather = Assert.IsType<GeneratedWeather>(reading.Scenario!.Weather);
        Assert.Equal("the daily record weather.csv", weather.Model.Source);
        Assert.Equal(
            (new DateOnly(2014, 1, 1), new DateOnly(2016, 12, 31), 0),
            (weather.Fitted!.Report.First, weather.Fitted.Report.Last, weather.Fitted.Report.MissingDays)
        );

        // 1096 days / 365.25 = 3.0 years.
        Assert.Equal(
            "site.toml:26:8: the record has 3.0 years of days, and a cold spring that comes once in ten years may not be in it; "
                + "give ten years or more if you can; with fewer, chances of frost may be off either way",
            Assert.Single(reading.Warnings).ToString()
        );
        Assert.Equal(["plan.csv", "site.toml", "weather.csv"], reading.Inputs.Select(file => file.Name).ToArray());
    }

    [Fact]
    public void A_record_that_never_changes_still_makes_weather()
    {
        using var folder = new TestFolder(TestFolder.Site(Constant, "kind = \"generated\"\nfile = \"weather.csv\""));
        folder.Write("weather.csv", Leap());
        Assert.IsType<GeneratedWeather>(folder.Read().Scenario!.Weather);
    }

    [Theory]
    [InlineData("year = 2016", "site.toml:27:1: year is not for kind = \"generated\"; take it out, or write kind = \"record\"")]
    [InlineData("low = 3", "site.toml:27:1: low is not for kind = \"generated\"; take it out, or write kind = \"constant\"")]
    public void Keys_of_other_kinds_are_faults_where_weather_is_made(string line, string message) =>
        Assert.Equal(
            message,
            Assert.Single(
                TestFolder.Faults(
                    TestFolder.Site(Constant, $"kind = \"generated\"\nfile = \"weather.csv\"\n{line}"),
                    others: ("weather.csv", Leap())
                )
            )
        );

    [Fact]
    public void A_record_with_a_thin_month_makes_no_weather()
    {
        var winter = string.Join('\n', Leap().Trim().Split('\n').Take(1 + 31 + 29)) + "\n";
        var fault = Assert.Single(
            TestFolder.Faults(TestFolder.Site(Constant, "kind = \"generated\"\nfile = \"weather.csv\""), others: ("weather.csv", winter))
        );
        Assert.StartsWith(
            "weather.csv:1:1: no weather can be made after this record: each month needs 20 days or more, but March has 0",
            fault,
            StringComparison.Ordinal
        );
        Assert.EndsWith("; give whole years, ten or more if you can", fault, StringComparison.Ordinal);
    }

    private static string Leap() => Year(2016, (date, text) => text.Append(date).Append(",1,9,0\n"));

    // Some weather: a wave through the year, a shorter one through its days, rain on every third day.
    private static string Varied(int first, int last)
    {
        var text = new StringBuilder("date,tmin,tmax,rain\n");
        for (var day = new DateOnly(first, 1, 1); day.Year <= last; day = day.AddDays(1))
        {
            var low = 5 - (10 * Math.Cos(2 * Math.PI * day.DayOfYear / 365)) + (3 * Math.Sin(day.DayNumber * 1.7));
            var rain = day.DayNumber % 3 == 0 ? 2 + (day.DayNumber % 7) : 0;
            text.Append(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd},{low:0.0},{low + 9 + (2 * Math.Cos(day.DayNumber)):0.0},{rain}\n");
        }

        return text.ToString();
    }

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
