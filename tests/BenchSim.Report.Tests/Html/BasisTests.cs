using BenchSim.Report.Html;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Season.Inputs;
using BenchSim.Season.Seed;
using BenchSim.Season.Values;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Html;

/// <summary>What a page says of the weather and the age of the seed.</summary>
public class BasisTests
{
    [Fact]
    public void The_source_of_the_weather_is_told_in_words()
    {
        Assert.Equal("the same every day: 39 °F to 59 °F, 0.1 in of rain", Words(new ConstantWeather(4, 15, 2.54)));
        Assert.Equal("a year drawn from weather.csv for each season", Words(new RecordedWeather([], null, "weather.csv")));
        Assert.Equal("the year 2014 of weather.csv, in every season", Words(new RecordedWeather([], 2014, "weather.csv")));
        Assert.Equal(
            "generated anew for each season, by a generator fitted to the daily record weather.csv (2012-01-01 to 2015-12-31)",
            Words(SyntheticHeat.Weather("the daily record weather.csv", 4))
        );
        Assert.Equal(
            "generated anew for each season, from the monthly normals in site.toml",
            Words(SyntheticHeat.Normals("the monthly normals in site.toml"))
        );
    }

    [Fact]
    public void Warnings_of_a_fit_are_seen_once_before_what_it_reproduces()
    {
        // The site counts in Fahrenheit: July's lowest is 0.2 K off.
        var text = Written(SyntheticHeat.Weather("weather.csv", 12, "Rain follows rain."));

        Assert.Contains("<ul><li><bdi>Rain follows rain.</bdi></li></ul>\n<details>", text, StringComparison.Ordinal);
        Assert.Contains(
            "<li><bdi>Mean lowest temperature: the worst month, July, misses by 0.4 F.</bdi></li>",
            text,
            StringComparison.Ordinal
        );
        Assert.Equal(2, text.Split("Rain follows rain.").Length);
    }

    [Fact]
    public void Normals_tell_what_was_assumed() =>
        Assert.Contains(
            "<li><bdi>Rain follows rain.</bdi></li>",
            Written(SyntheticHeat.Normals("site.toml", "Rain follows rain.")),
            StringComparison.Ordinal
        );

    [Fact]
    public void Other_weather_has_no_such_part() => Assert.Empty(Written(new ConstantWeather(4, 15, 0)));

    [Fact]
    public void A_fit_without_warnings_says_so() =>
        Assert.Contains(
            "<p>The fit to the record gives no warning.</p>",
            Written(SyntheticHeat.Weather("weather.csv", 12)),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("shape", UnitSystem.Metric, "100 m² of covering, 50 m² of floor, 100 m³ of air")]
    [InlineData("shape", UnitSystem.Imperial, "1,076 ft² of covering, 538 ft² of floor, 3,531 ft³ of air")]
    [InlineData("u_value", UnitSystem.Metric, "4 W/m² K")]
    [InlineData("u_value", UnitSystem.Imperial, "0.704 Btu/h ft² °F")]
    [InlineData("efficiency", UnitSystem.Metric, "80 %")]
    [InlineData("fuel_price", UnitSystem.Metric, "0.66 per L")]
    [InlineData("design_low", UnitSystem.Imperial, "5.9 °F")]
    [InlineData("heat_content", UnitSystem.Metric, "96.487 MJ per gal of propane")]
    [InlineData("length", UnitSystem.Metric, "")]
    public void Values_of_a_house_come_in_the_units_of_the_site(string key, UnitSystem units, string text)
    {
        // A square metre is 10.764 square feet, a cubic metre 35.315 cubic feet; 5.678 W/m2K are 1 Btu/h ft2 F; -14.5 C are 5.9 F.
        var body = SyntheticHeat.Body() with { Sources = SyntheticPlan.Sources((key, Trust.User, "")) };
        var house = new House
        {
            Id = "main",
            Name = "Main house",
            Body = body,
            Heat = SyntheticHeat.House(),
        };
        var scenario = ScenarioFields.Nothing with { Units = units, Houses = [house] };
        Assert.Equal(text, SourcedValue.Of(scenario).Last(value => value.Column == key).Value);
    }

    [Fact]
    public void Seed_without_storage_is_taken_as_tested() =>
        Assert.StartsWith("packets are taken at their tested germination", SeedPart.Words(WithStorage(null)), StringComparison.Ordinal);

    [Fact]
    public void Aged_seed_tells_how_it_is_kept_and_which_batch_loses_most()
    {
        // Only b01, a tomato, has a date of test; the plan has it at 88.5 % of a packet tested at 90 %.
        Assert.Equal(
            "in force for 1 of 2 batches, kept at 10 % moisture and 41 °F since the test: b01 loses most, from 90 to 88.5 %; "
                + "the others have no date of test, or a crop whose seed life is not known, and are taken as tested",
            SeedPart.Words(WithStorage(new SeedStorage(10, 5)))
        );
    }

    [Fact]
    public void Storage_without_dates_of_test_ages_nothing()
    {
        var result = WithStorage(new SeedStorage(10, 5));
        var words = SeedPart.Words(
            result with
            {
                Plan = result.Plan with
                {
                    Batches = [.. result.Plan.Batches.Select(batch => batch with { Order = batch.Order with { TestedOn = null } })],
                },
            }
        );

        Assert.Contains("no batch has a date of test", words, StringComparison.Ordinal);
    }

    private static string Words(WeatherInput weather) => WeatherPart.Words(SyntheticPlan.Tiny().Scenario with { Weather = weather });

    private static string Written(WeatherInput weather)
    {
        var html = new HtmlText();
        WeatherPart.Write(html, SyntheticPlan.Tiny().Scenario with { Weather = weather });
        return html.ToString();
    }

    private static StudyResult WithStorage(SeedStorage? storage)
    {
        var result = SyntheticStudy.Tiny();
        var scenario = result.Plan.Scenario with { Rules = result.Plan.Scenario.Rules with { SeedStorage = storage } };
        return result with { Plan = result.Plan with { Scenario = scenario } };
    }
}
