using System.Text.Json;
using BenchSim.Answers.Weather;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Cli.Tests;

/// <summary>"weather" fits a record, says how well it does, and reports every fault of the record with its place.</summary>
public sealed class WeatherTests
{
    [Fact]
    public void Prints_the_record_beside_the_generator_and_warns_of_a_short_record()
    {
        using var folder = new TemporaryFolder();
        var record = Write(folder, Record.Years(2));
        var weather = Call.Run("weather", record, "--all");
        Assert.Equal(0, weather.Code);
        Assert.Empty(weather.Error);
        Assert.Contains("Nothing had to be put right in it.", weather.Output, StringComparison.Ordinal);

        // The mean low of a month is its number, the high 10 more; rain falls on every third of its days, 3 mm each.
        var march = Lines(weather, "  March ");
        Assert.Equal(2, march.Length);
        Assert.EndsWith(" 3.0", march[0], StringComparison.Ordinal);
        Assert.Matches(@"\A  March +3\.0 +[0-9.]+ +13\.0 ", march[1]);
        var fit = new WeatherQuestion { File = record }
            .Ask(Asked.Unwatched)
            .Fitted.Report;
        Assert.Equal((new DateOnly(2021, 1, 1), new DateOnly(2022, 12, 31), 400), (fit.First, fit.Last, fit.GeneratedYears));
        weather.Says([
            "The record is short: 2.0 years, and 10 or more are wanted.",
            "Fitted to 2.0 years of days, 2021-01-01 to 2022-12-31, and compared with 400 generated years.",
            .. WeatherFitWords.Sentences(fit, UnitSystem.Metric, UnitSystem.Metric),
            .. WeatherFitWords.Warnings(fit, UnitSystem.Metric),
        ]);
    }

    [Fact]
    public void Fahrenheit_and_inches_are_read_and_shown_as_such()
    {
        using var folder = new TemporaryFolder();
        var record = Write(folder, Record.Years(2, low: (_, usual) => usual + 50));
        var weather = Call.Run("weather", record, "--temperature-unit", "f", "--rain-unit", "in", "--all");
        Assert.Equal(0, weather.Code);
        Assert.Matches(@"\A  March +53\.0 +[0-9.]+ +63\.0 ", Lines(weather, "  March ")[1]);
        using var json = JsonDocument.Parse(Call.Run("weather", record, "--temperature-unit", "F", "--json").Output);

        // 53 F = (53 - 32) / 1.8 C.
        var low = json.RootElement.GetProperty("months")[2].GetProperty("record").GetProperty("low_c").GetDouble();
        Assert.Equal(21 / 1.8, low, 1e-6);
        Assert.True(json.RootElement.GetProperty("short").GetBoolean());
    }

    [Fact]
    public void Every_fault_of_the_record_comes_in_one_pass_with_its_place()
    {
        using var folder = new TemporaryFolder();
        var lines = Record.Years(2).Split('\n');
        lines[10] = lines[10].Replace(",12.0,", ",warm,", StringComparison.Ordinal).Replace(",10.0,", ",warm,", StringComparison.Ordinal);
        lines[20] = "2021-01-20,9,3,0";
        lines[30] = "2021-01-30,1,11,-4";
        lines[40] = "2021-02-09,1,,0";
        var record = Write(folder, string.Join('\n', lines));
        var weather = Call.Run("weather", record);
        Assert.Equal(2, weather.Code);
        Assert.Empty(weather.Output);
        var faults = weather.Error.TrimEnd('\n').Split('\n');
        Assert.Equal(
            [
                $"{record}:11:16: tmax is \"warm\", which is not a number",
                $"{record}:21:12: the lowest temperature 9 C is above the highest 3 C",
                $"{record}:31:17: a day's rain of -4 mm is not possible",
                $"{record}:41:14: tmax is empty",
                "4 faults found. Mend them and try again.",
            ],
            faults[..5].Select(fault => fault.Split("; ")[0]),
            StringComparer.Ordinal
        );
        Assert.Equal(
            "Temperatures without a unit were read as C and rain as mm; --temperature-unit and --rain-unit say otherwise.",
            faults[5]
        );
    }

    [Fact]
    public void A_record_in_Fahrenheit_read_as_Celsius_is_one_fault_that_names_the_option()
    {
        using var folder = new TemporaryFolder();
        var weather = Call.Run("weather", Write(folder, Record.Years(2, low: (_, usual) => usual + 50)));
        Assert.Equal(2, weather.Code);
        Assert.Contains(
            ":2:12: the temperatures are too high for degrees Celsius and look like Fahrenheit; "
                + "give --temperature-unit F, or degrees Celsius\n",
            weather.Error,
            StringComparison.Ordinal
        );
        Assert.Contains("1 fault found.", weather.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_in_Celsius_read_as_Fahrenheit_is_a_fault_too()
    {
        // The warmest day is in December, whose lows are 11 and 13 and whose highs are 10 more.
        using var folder = new TemporaryFolder();
        var weather = Call.Run("weather", Write(folder, Record.Years(2)), "--temperature-unit", "F");
        Assert.Equal(2, weather.Code);
        Assert.Contains(
            ":2:12: read as Fahrenheit, the warmest day of this record has 23 F; it looks like Celsius; give --temperature-unit C\n",
            weather.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Faults_are_told_in_the_units_of_the_file()
    {
        using var folder = new TemporaryFolder();
        var lines = Record.Years(2, low: (_, usual) => usual + 50).Split('\n');
        lines[20] = "2021-01-20,52,41,0";
        lines[30] = "2021-01-30,445,446,500";
        var weather = Call.Run("weather", Write(folder, string.Join('\n', lines)), "--temperature-unit", "F", "--rain-unit", "in");
        Assert.Equal(2, weather.Code);
        Assert.Contains(":21:12: the lowest temperature 52 F is above the highest 41 F; ", weather.Error, StringComparison.Ordinal);
        Assert.Contains(
            ":31:12: a lowest temperature of 445 F has never been measured on earth; between -130 F and 134.6 F\n",
            weather.Error,
            StringComparison.Ordinal
        );

        // 1,825 mm are 71.85 inches.
        Assert.Contains(
            ":31:20: a day's rain of 500 in is not possible; 0 or more, at most 71.85 in\n",
            weather.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Dates_of_another_form_are_not_missing_days()
    {
        using var folder = new TemporaryFolder();
        var lines = Record.Years(2).Split('\n');
        for (var line = 100; line < 120; line++)
        {
            lines[line] = "soon" + lines[line][10..];
        }

        var weather = Call.Run("weather", Write(folder, string.Join('\n', lines)));
        Assert.Equal(2, weather.Code);
        Assert.Contains("20 faults found.", weather.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("missing", weather.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_put_right_is_said()
    {
        using var folder = new TemporaryFolder();
        var lines = Record.Years(2).Split('\n').ToList();
        lines.RemoveAt(50);
        var record = Write(folder, string.Join('\n', lines));
        var weather = Call.Run("weather", record, "--all");
        Assert.Equal(0, weather.Code);

        // Line 1 is the header and line 2 the first day: line 51 held 19 February, and now holds the 20th.
        Assert.Contains(
            $"Put right in it, 1 place:\n  {record}:51:1: 2021-02-19 is missing; "
                + "filled on a straight line between the days before and after\n",
            weather.Output,
            StringComparison.Ordinal
        );
        using var json = JsonDocument.Parse(Call.Run("weather", record, "--json").Output);
        Assert.Equal(51, Assert.Single(json.RootElement.GetProperty("repairs").EnumerateArray()).GetProperty("line").GetInt32());
    }

    [Theory]
    [InlineData("date,tmin,tmax\n2021-01-01,1,2\n", ":1:1: there is no column \"rain\"; ")]
    [InlineData("date,tmin,tmax,rain\n", ":0:0: there is no day in the file; ")]
    [InlineData(
        "date,tmin,tmax,rain\n2021-01-01,1,2,0\n",
        ":0:0: the record cannot be fitted: each month needs 20 days or more, but January has 1, "
    )]
    [InlineData("", ":1:1: the file is empty; ")]
    public void A_record_that_is_none_is_a_fault(string text, string fault)
    {
        using var folder = new TemporaryFolder();
        var weather = Call.Run("weather", Write(folder, text));
        Assert.Equal(2, weather.Code);
        Assert.Contains(fault, weather.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void No_file_and_a_folder_in_its_place_are_faults_for_machines_too()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(
            $"{folder.In("none.csv")}:0:0: there is no such file; check the name",
            Call.Run("weather", folder.In("none.csv")).Error.Split('\n')[0]
        );
        var call = Call.Run("weather", folder.Path, "--json");
        Assert.Equal(2, call.Code);
        using var json = JsonDocument.Parse(call.Output);
        Assert.Equal(
            "this is a folder, not a file",
            Assert.Single(json.RootElement.GetProperty("faults").EnumerateArray()).GetProperty("what").GetString()
        );
    }

    [Fact]
    public void Machines_get_a_null_where_a_record_has_no_rain()
    {
        using var folder = new TemporaryFolder();
        var call = Call.Run("weather", Write(folder, Record.Years(2).Replace(",3\n", ",0\n", StringComparison.Ordinal)), "--json");
        Assert.Equal(0, call.Code);
        using var json = JsonDocument.Parse(call.Output);
        Assert.Equal(
            JsonValueKind.Null,
            json.RootElement.GetProperty("months")[0].GetProperty("record").GetProperty("wet_after_wet").ValueKind
        );
    }

    private static string Write(TemporaryFolder folder, string text)
    {
        var file = folder.In("record.csv");
        File.WriteAllText(file, text);
        return file;
    }

    private static string[] Lines(Call call, string begin) =>
        [.. call.Output.Split('\n').Where(line => line.StartsWith(begin, StringComparison.Ordinal))];
}
