using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Site;

/// <summary>[weather] of kind normals. Its keys begin on line 26 of the good site.</summary>
public class NormalsTests
{
    private const string Constant = "kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"";
    private const string Low = "low = [-5, -4, 0, 4, 9, 14, 17, 16, 12, 6, 1, -3]";
    private const string High = "high = [3, 4, 9, 15, 21, 26, 29, 28, 24, 17, 10, 5]";
    private const string RainDays = "rain_days = [10, 9, 10, 11, 12, 11, 10, 9, 9, 9, 10, 10]";
    private const string Rain = "rain = [70, 60, 80, 85, 95, 100, 105, 95, 90, 80, 75, 70]";

    private static readonly string s_good = string.Join('\n', Low, High, RainDays, Rain);

    // The mean of a month is the share of wet days times their mean and the share of dry days times theirs.
    [Fact]
    public void Weather_is_made_whose_months_have_the_normals()
    {
        var weather = Read(s_good);
        Assert.Null(weather.Fitted);
        Assert.Equal("the monthly normals in site.toml", weather.Model.Source);
        var april = weather.Model.Months[3];
        Assert.Equal(11 / 30.0, april.WetShare, 9);
        Assert.Equal(4, (april.WetShare * april.TminWetC) + ((1 - april.WetShare) * april.TminDryC), 9);
        Assert.Equal(15, (april.WetShare * april.TmaxWetC) + ((1 - april.WetShare) * april.TmaxDryC), 9);
        Assert.Equal(85, 30 * april.WetShare * april.RainShape * april.RainScaleMm, 9);
    }

    // 50 F = 10 C and 68 F = 20 C in every month; 2 in = 50.8 mm on 10 days.
    [Fact]
    public void Normals_are_read_in_their_own_units()
    {
        var weather = Read(
            string.Join(
                '\n',
                "temperature_unit = \"F\"",
                "rain_unit = \"in\"",
                Same("low", "50"),
                Same("high", "68"),
                Same("rain_days", "10"),
                Same("rain", "2")
            )
        );
        var march = weather.Model.Months[2];
        Assert.Equal(10, (march.WetShare * march.TminWetC) + ((1 - march.WetShare) * march.TminDryC), 9);
        Assert.Equal(50.8, 31 * march.WetShare * march.RainShape * march.RainScaleMm, 9);
    }

    [Fact]
    public void Spreads_that_are_given_replace_the_assumption()
    {
        Assert.Contains(Read(s_good).Model.Assumptions, words =>
            words.StartsWith("Where the spread of daily temperatures is not given", StringComparison.Ordinal)
        );
        var given = Read($"{s_good}\n{Same("low_sd", "4")}\n{Same("high_sd", "\"9 F\"")}");
        Assert.DoesNotContain(given.Model.Assumptions, words =>
            words.StartsWith("Where the spread of daily temperatures is not given", StringComparison.Ordinal)
        );

        // A day's spread is at most the month's: the season and the rain make a part of it. A difference of 9 F is 5 K.
        Assert.All(given.Model.Months, month => Assert.InRange(month.TminSdC, 2, 4));
        Assert.All(given.Model.Months, month => Assert.InRange(month.TmaxSdC, 2.5, 5));
    }

    [Theory]
    [InlineData(Low, "low = [-5, -4, 0]", "site.toml:26:1: low has 3 numbers; write 12, one for each month, January first")]
    [InlineData(
        Low,
        "low = 4",
        "site.toml:26:7: low is not a list; write 12 numbers between square brackets, one for each month, January first"
    )]
    [InlineData(
        Low,
        "temperature_unit = \"F\"\n" + Low,
        "site.toml:28:1: read as Fahrenheit, the warmest month has 29 F; the normals look like Celsius; write temperature_unit = \"C\""
    )] // 29 F
    [InlineData(Low, "", "site.toml:24:1: [weather] has no low; add a line low = [...] with 12 numbers, one for each month, January first")]
    [InlineData(
        "[3, 4, 9,",
        "[3, -5, 9,",
        "site.toml:27:12: high is -5 C in February, below low, which is -4 C; write the mean lowest temperature of a day in low and "
            + "the mean highest in high"
    )]
    [InlineData("[10, 9, 10,", "[10, 29, 10,", "site.toml:28:18: rain_days is \"29\"; write a value from 0 to 28")]
    [InlineData(
        "[10, 9, 10,",
        "[10, 0, 10,",
        "site.toml:28:18: rain_days is 0 in February, which has 60 mm of rain; write the days on which it falls, or no rain"
    )]
    [InlineData(
        "[70, 60,",
        "[70, 0,",
        "site.toml:29:13: rain is 0 in February, which has 9 rain days; write the rain of the whole month, or no rain days"
    )]
    [InlineData(
        Rain,
        Rain + "\nfile = \"x.csv\"",
        "site.toml:30:1: file is not for kind = \"normals\"; take it out, or write kind = \"record\""
    )]
    [InlineData(
        Rain,
        Rain + "\nlow_sd = [0, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3]",
        "site.toml:30:11: low_sd is \"0\"; write a value from 0.1 C to 20 C"
    )]
    public void Bad_normals_say_where_and_what(string old, string replacement, string message) =>
        Assert.Equal(message, Assert.Single(TestFolder.Faults(Site(s_good.Replace(old, replacement, StringComparison.Ordinal)))));

    [Fact]
    public void Every_bad_month_is_named() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(Site(s_good.Replace("[-5, -4,", "[\"cold\", \"90 C\",", StringComparison.Ordinal))),
            "site.toml:26:8: low is \"cold\", which is not a number; write a temperature such as 60 F or 15.5 C",
            "site.toml:26:16: low is \"90 C\", which is 90 C; write a temperature from -60 C to 55 C, with its unit, such as 60 F"
        );

    [Fact]
    public void A_key_of_normals_is_not_for_constant_weather() =>
        Assert.Equal(
            "site.toml:28:1: rain_days is not for kind = \"constant\"; take it out, or write kind = \"normals\"",
            Assert.Single(TestFolder.Faults(TestFolder.Site(Constant, $"{Constant}\n{RainDays}")))
        );

    private static string Same(string key, string value) => $"{key} = [{string.Join(", ", Enumerable.Repeat(value, 12))}]";

    private static string Site(string lines) => TestFolder.Site(Constant, $"kind = \"normals\"\n{lines}");

    private static GeneratedWeather Read(string lines)
    {
        using var folder = new TestFolder(Site(lines));
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        return Assert.IsType<GeneratedWeather>(reading.Scenario!.Weather);
    }
}
