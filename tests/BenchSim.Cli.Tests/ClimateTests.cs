using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Check;
using BenchSim.Answers.Opening;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Cli.Tests;

/// <summary>"check" says what the site's weather means for the plan. Every figure here is worked out by hand.</summary>
public sealed class ClimateTests
{
    [Fact]
    public void The_same_weather_every_day_takes_one_sentence()
    {
        using var folder = new TemporaryFolder();
        var check = Call.Run("check", PaperFarm.In(folder), "--all");
        Assert.Equal(0, check.Code);
        Assert.Contains(
            "Climate The weather is the same every day: every night is at 10 C, and there is no last frost to look for. Air of the houses",
            check.Sentences,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("Caution", check.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Frost_is_counted_after_the_date_and_hold_days_by_fortnight()
    {
        using var folder = new TemporaryFolder();

        // Three years at 12 C, the season from 1 March to 30 April. 2021: a frost on 20 March. 2022: a frost on 5 April and 4.9 C on 1 and
        // 2 March. 2023: none.
        var record = Record.Years(3, low: (day, _) => (day.Year, day.Month, day.Day) switch
            {
                (2021, 3, 20) => -1,
                (2022, 4, 5) => 0,
                (2022, 3, 1 or 2) => 4.9,
                _ => 12,
            });
        var check = Call.Run("check", PaperFarm.In(folder, record: record), "--all");
        Assert.Equal(0, check.Code);
        string[] lines =
        [
            .. check
                .Output.Split('\n')
                .SkipWhile(line => !line.StartsWith("  fortnight from", StringComparison.Ordinal))
                .Where(line => line.StartsWith("  2027-", StringComparison.Ordinal))
                .Take(10)
                .Select(Squeeze),
        ];

        // Frosts after: two years of three, then one, then none. The table asks for 5 C in each of the next three nights, the field for 3
        // C: the night before 20 March
        // holds on 17, 18 and 19 March, that before 5 April on 2, 3 and 4 April, in one year of three each; 4.9 C before 2 March holds the
        // table only, on 1 March.
        Assert.Equal(
            [
                "2027-03-01 67 % 0.3",
                "2027-03-15 67 % 1.0",
                "2027-03-29 33 % 1.0",
                "2027-04-12 0 % 0.0",
                "2027-04-26 0 % 0.0",
                "2027-03-01 0.0 0.0",
                "2027-03-15 0.0 1.0",
                "2027-03-29 0.0 1.0",
                "2027-04-12 0.0 0.0",
                "2027-04-26 0.0 0.0",
            ],
            lines
        );
        check.Says(
            "the chance of frost AFTER the date, that is, of at least one night from the first day of the line on, up to 2027-04-30, "
                + "at or below 0 C. Small is safe. Out of 3 years of the record."
        );
        Assert.Contains("below the temperature: 5 C: Paper plant.", check.Sentences, StringComparison.Ordinal);
        Assert.Contains("below the temperature: 3 C: Paper plant.", check.Sentences, StringComparison.Ordinal);
    }

    [Fact]
    public void The_months_of_a_record_are_shown()
    {
        // Two years: the mean low of a month is its number, the high is 10 above it. Every third day from 1 January 2021, counted 0, has 3
        // mm: in March, days
        // 59 to 89 and 424 to 454, those are 60 to 87 and 426 to 453, ten in each year, so 30 mm; in April 90 to 117 and 456 to 483, ten
        // again.
        using var folder = new TemporaryFolder();
        var check = Call.Run("check", PaperFarm.In(folder, record: Record.Years(2)), "--all");
        Assert.Equal(0, check.Code);
        string[] months = [.. check.Output.Split('\n').Select(Squeeze)];
        Assert.Contains("month mean low C mean high C rain mm", months, StringComparer.Ordinal);
        Assert.Contains("March 3.0 13.0 30", months, StringComparer.Ordinal);
        Assert.Contains("April 4.0 14.0 30", months, StringComparer.Ordinal);
    }

    [Fact]
    public void Machines_get_the_climate()
    {
        using var folder = new TemporaryFolder();
        var record = Record.Years(3, low: (day, _) => (day.Year, day.Month, day.Day) is (2021, 3, 20) ? -1 : 12);
        using var json = JsonDocument.Parse(Call.Run("check", PaperFarm.In(folder, record: record), "--json").Output);
        var climate = json.RootElement.GetProperty("climate");
        Assert.Equal(3, climate.GetProperty("years").GetInt32());
        var frost = climate.GetProperty("frost_after")[0];
        Assert.Equal("2027-03-01", frost.GetProperty("from").GetString());
        Assert.Equal(1 / 3.0, frost.GetProperty("share").GetDouble(), 1e-6);
        Assert.Equal(10, climate.GetProperty("nights_below").GetArrayLength());

        // One cold night of three years holds the table on the three days before it.
        var holds = climate.GetProperty("hold_days");
        Assert.Equal("table wet field", string.Join(" ", holds.EnumerateArray().Select(kind => kind.GetProperty("kind").GetString())));
        Assert.Equal("Paper plant", holds[0].GetProperty("crops")[0].GetString());
        Assert.Equal(5, holds[0].GetProperty("above_c").GetDouble());
        var fortnight = holds[0].GetProperty("fortnights")[1];
        Assert.Equal(
            (1, 14, 3),
            (fortnight.GetProperty("mean").GetDouble(), fortnight.GetProperty("days").GetInt32(), fortnight.GetProperty("years").GetInt32())
        );
    }

    [Fact]
    public void Fuel_and_the_load_of_the_coldest_night_stand_with_their_cautions()
    {
        using var folder = new TemporaryFolder();
        var check = Call.Run(
            "check",
            PaperFarm.In(folder, house: PaperFarm.HoopHouse, sections: "[prices]\ncurrency = \"EUR\"\n"),
            "--all"
        );
        Assert.Equal(0, check.Code);
        string[] lines = [.. check.Output.Split('\n').Select(Squeeze)];

        // 659.263 W/K x 10 K x 24 h = 158.223 kWh a day; 31 days 4,904.9, 30 days 4,746.7, together 9,651.6; at 0.5 a kWh 4,825.81.
        Assert.Contains("House electricity 2027-03 4,905 kWh EUR 2,452", lines, StringComparer.Ordinal);
        Assert.Contains("House electricity 2027-04 4,747 kWh EUR 2,373", lines, StringComparer.Ordinal);
        Assert.Contains("House electricity season 9,652 kWh 9,652 to 9,652 EUR 4,826", lines, StringComparer.Ordinal);

        // 659.263 W/K x (20 - -10) K = 19.8 kW.
        Assert.Contains("House 20 C -10 C 19.8", lines, StringComparer.Ordinal);
        Assert.Contains("House: electricity at EUR 0.50 per kWh, as given.", check.Sentences, StringComparison.Ordinal);

        // What the user did not give is among the values to check: the air of the hall is given, the efficiency of its heater is not.
        Assert.Contains(Call.Run("check", folder.In("paper"), "--sources").Output.Split('\n').Select(Squeeze), line =>
            line.StartsWith("House efficiency 100 % seen in the source ", StringComparison.Ordinal)
        );
        check.Says(
            "Caution: This is an estimate for planning. Burners need fresh air, a flue and a carbon monoxide alarm;",
            "Caution: This is heat lost on one cold night by a simple rule, without wind, snow or a margin. Have the heater chosen and "
                + "fitted by licensed people",
            "Caution: Dimensions here serve to work out heat and room. They say nothing about wind or snow load;"
        );
    }

    // A price of a kilowatt-hour has more than two decimals as often as not.
    [Fact]
    public void A_price_of_fuel_is_printed_as_it_was_given()
    {
        using var folder = new TemporaryFolder();
        var check = Call.Run(
            "check",
            PaperFarm.In(
                folder,
                house: PaperFarm.HoopHouse.Replace("fuel_price = 0.5", "fuel_price = 0.085", StringComparison.Ordinal),
                sections: "[prices]\ncurrency = \"EUR\"\n"
            ),
            "--all"
        );
        Assert.Contains("House: electricity at EUR 0.085 per kWh, as given.", check.Sentences, StringComparison.Ordinal);
    }

    [Fact]
    public void Mats_stand_with_their_electricity_and_the_check_of_their_circuit()
    {
        using var folder = new TemporaryFolder();
        var check = Call.Run(
            "check",
            PaperFarm.In(folder, mats: "watts = 480\nduty = \"50 %\"\ncircuit_volts = 120\ncircuit_amps = 15\npower_price = 0.25"),
            "--all"
        );
        Assert.Equal(0, check.Code);

        // Planned on the mats: A and B from 1 to 3 March, P from 8 to 10 March, 6 days. 480 W x 24 h x 6 x 0.5 = 34.56 kWh. 80 % of 120 V x
        // 15 A = 1440 W.
        Assert.Contains("Heat mats 480 6 35 8.64", check.Output.Split('\n').Select(Squeeze), StringComparer.Ordinal);
        var circuit = CircuitCheck.Of(480, 120, 15);
        Assert.Equal(1440, circuit.LimitWatts);
        check.Says(
            "Heat mats: " + circuit.Words,
            "Caution: This is electricity for planning. Use heat mats made for wet places, one layer, as their maker says, on a circuit "
                + "with ground-fault protection; have a licensed electrician look, under local codes.",
            "Caution: This compares watts with the 80 % rule for loads of three hours and more"
        );
    }

    [Fact]
    public void The_generator_of_a_site_is_named_with_its_doubts()
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder, record: Record.Years(2, low: (_, usual) => usual + 5));
        var site = Path.Combine(farm, "site.toml");
        File.WriteAllText(site, File.ReadAllText(site).Replace("kind = \"record\"", "kind = \"generated\"", StringComparison.Ordinal));
        var check = Call.Run("check", farm, "--all");
        Assert.Equal(0, check.Code);
        var plan = new CheckQuestion { Scenario = ScenarioSource.Folder(farm) }
            .Ask()
            .Plan;
        var fitted = Assert.IsType<GeneratedWeather>(plan.Scenario.Weather).Fitted!;
        Assert.Equal(2, fitted.Report.Years, 0.01);
        check.Says([
            "Weather: drawn anew for each season by a generator made from the daily record weather.csv.",
            "Out of 200 generated years.",
            "The record is short: 2.0 years, and 10 or more are wanted.",
            .. WeatherFitWords.Warnings(fitted.Report, UnitSystem.Metric),
        ]);
    }

    private static string Squeeze(string line) => string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
