using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Seed;
using BenchSim.Season.Weather;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>What the climate of each place does to a lot, and what a house burns, worked out by hand.</summary>
public class ClimateAndHeatTests
{
    [Fact]
    public void Heat_of_emergence_carries_across_the_move_from_mat_to_bench()
    {
        // Tomato, base 7.5 C, 103.3 degree-days (1954 table). One day on a 25 C mat brings 17.5; then the bench's 18 C medium brings 10.5 a
        // day: up 1 + (103.3 - 17.5) / 10.5 = 9.171 days after sowing. It leaves the mat as early as 1 in 1,000 is up: 103.3 exp(-3.09 x
        // 0.6) = 16.2.
        var tomato = Crop() with { EmergeBaseC = 7.5, EmergeOptimumC = 25, EmergeHeat = 103.3, EmergeSigma = 0.6, LeaveMatAt = 0.001 };
        var mat = Mat(4) with { MatC = 25 };
        var scenario = Scenario(
            [mat, Bench(4), Table(4)],
            [Batch("a", 50, Monday)],
            new SiteRules { MediumOffsetK = -2.0000001 },
            [tomato]
        );
        var watch = new EmergenceWitness();
        new SeasonPlayer(Plan(scenario), 1).Play(0, PlaceLimits.AsGiven, new SeasonResult(), watch);
        Assert.Equal(1 + ((103.3 - 17.5) / 10.5), watch.DaysToEmergence, 1e-5);
    }

    [Fact]
    public void Heat_is_loss_times_kelvin_hours_on_the_days_a_house_is_open()
    {
        // 10 C outdoors day and night, 20 C kept, no sun: 240 kelvin-hours a day. Shell of 100 m2 at 4 W/m2K and no leaks: 400 W/K x 240 =
        // 96,000 Wh.
        var heat = Heated(4);
        var always = PlayOnce(With(heat, HouseOpening.AllSeason));
        Assert.Equal(96_000, always.HeatWattHours[0][0]);

        // The season closes on day 120; the play ends before: planned set-out on day 21, 21 days to the last discard, 14 more = day 56, so
        // 57 days, all heated.
        Assert.Equal(57, always.HeatWattHours[0].Count(day => day > 0));

        // The first tray is planned on day 0, and there are no days before it.
        // When needed: trays stand in it from day 0 to day 16; nothing stands there on day 17, and the day before counts before day 0 only.
        var needed = PlayOnce(With(heat, HouseOpening.WhenNeeded));
        Assert.Equal(17, needed.DaysOpen[0]);
        Assert.Equal(17L * 96_000, needed.HeatWattHours[0].Sum());
        Assert.Equal(3, needed.MatDays[0]);
    }

    [Fact]
    public void A_when_needed_house_is_heated_from_the_day_before()
    {
        // Sown on day 7: heated on day 6 too; the trays leave the house on day 24.
        var scenario = With(Heated(4), HouseOpening.WhenNeeded) with { Batches = [Batch("a", 200, Monday.AddDays(7))] };
        var result = PlayOnce(scenario);
        Assert.Equal(0, result.HeatWattHours[0][5]);
        Assert.Equal(96_000, result.HeatWattHours[0][6]);
        Assert.Equal(0, result.HeatWattHours[0][24]);
        Assert.Equal(18, result.DaysOpen[0]);
    }

    [Fact]
    public void A_house_open_all_season_is_heated_from_two_days_before_its_first_planned_tray()
    {
        // The season opens on day 0 and nothing is sown before day 7: heated from day 5 to the end of the play. Set out on day 28, 21 days
        // to the last discard, 14 more: the play ends on day 63, before the season closes on day 120: 59 days.
        var scenario = With(Heated(4), HouseOpening.AllSeason) with { Batches = [Batch("a", 200, Monday.AddDays(7))] };
        var result = PlayOnce(scenario);
        Assert.Equal([0, 0, 96_000], result.HeatWattHours[0][3..6]);
        Assert.Equal(59, result.DaysOpen[0]);
        Assert.Equal(59L * 96_000, result.HeatWattHours[0].Sum());

        // With an opening date it is heated from that day, empty or not.
        var dated = scenario with { Houses = [scenario.Houses[0] with { Opening = HouseOpening.FromDate, OpensOn = Monday.AddDays(2) }] };
        Assert.Equal([0, 96_000], PlayOnce(dated).HeatWattHours[0][1..3]);
    }

    [Fact]
    public void A_house_open_all_season_that_only_takes_what_finds_no_room_is_heated_while_it_does()
    {
        // Four trays come off the mats on day 3 to benches of three in the main house and one in the spare one, second choice: planned on
        // the first. So the spare house is heated from day 2 to day 16, the last with a tray in it.
        var scenario = With(Heated(4), HouseOpening.AllSeason);
        scenario = scenario with
        {
            Houses = [scenario.Houses[0], scenario.Houses[0] with { Id = "spare", Name = "Spare" }],
            Spaces = [Mat(4), Bench(3), Bench(1) with { Id = "spare-bench", HouseId = "spare" }, Table(4)],
        };
        var result = PlayOnce(scenario);
        Assert.Equal(1, result.Held[2][3]);
        Assert.Equal(Enumerable.Range(2, 15), result.HeatWattHours[1].Index().Where(day => day.Item > 0).Select(day => day.Index));
        Assert.Equal(57, result.DaysOpen[0]);
    }

    [Fact]
    public void Heating_ends_on_the_closing_date_or_with_the_last_tray_after_it()
    {
        // Trays stand in the house to day 16. A season that closes on day 20 heats it empty for four days more, one that closes on day 10
        // to day 16.
        var scenario = With(Heated(4), HouseOpening.AllSeason);
        SeasonResult Closing(int day)
        {
            var closing = scenario with { Window = scenario.Window with { Closes = Monday.AddDays(day) } };
            var result = new SeasonResult();
            new SeasonPlayer(Plan(scenario) with { Scenario = closing }, 1).Play(0, PlaceLimits.AsGiven, result);
            return result;
        }

        Assert.Equal((21, 17), (Closing(20).DaysOpen[0], Closing(10).DaysOpen[0]));
    }

    [Fact]
    public void Old_seed_is_sown_thicker()
    {
        // Lettuce by its own constants at 10 % moisture and 20 C (tests/Published/data/viability.csv): sigma = 10^(7.938 - 5.25 - 0.0329 x
        // 20 - 0.000478 x 400) = 10^1.8388 = 68.99 days. 95 % tested 100 days before: probit 1.6449 - 100/68.99 = 0.1954, which is 57.7 %.
        var lettuce = Crop("lettuce");
        var scenario = Scenario(
            [Mat(40), Bench(40), Table(40)],
            [Batch("a", 500, Monday, "lettuce") with { Germination = 0.95, TestedOn = Monday.AddDays(-100) }],
            new SiteRules { SeedStorage = new SeedStorage(10, 20) },
            [lettuce]
        );
        var aged = Plan(scenario).Batches[0];
        Assert.Equal(0.577, aged.Germination, 0.001);
        var fresh = Plan(scenario with { Rules = scenario.Rules with { SeedStorage = null } }).Batches[0];
        Assert.Equal(0.95, fresh.Germination);
        Assert.True(aged.Trays > fresh.Trays);
    }

    [Fact]
    public void Generated_weather_is_the_same_for_the_same_season_and_another_for_the_next()
    {
        var months = Enumerable.Range(0, 12).Select(_ => new MonthNormals(8, 18, 10, 60)).ToArray();
        var model = new WeatherNormals { Months = [.. months], Source = "test" }.ToModel();
        var scenario = Scenario([Mat(4), Bench(4), Table(4)], [Batch("a", 200, Monday)], weather: new GeneratedWeather(model, null)) with
        {
            Houses =
            [
                new House
                {
                    Id = "main",
                    Name = "Main",
                    NightC = 12,
                    DayC = 15,
                    Body = Heated(4),
                    Heat = s_propane,
                },
            ],
        };
        var player = new SeasonPlayer(Plan(scenario), 5);
        var (first, again, next) = (new SeasonResult(), new SeasonResult(), new SeasonResult());
        player.Play(0, PlaceLimits.AsGiven, first);
        player.Play(1, PlaceLimits.AsGiven, next);
        player.Another().Play(0, PlaceLimits.AsGiven, again);
        Assert.Equal(first.HeatWattHours, again.HeatWattHours);
        Assert.NotEqual(first.HeatWattHours, next.HeatWattHours);
    }

    private static Scenario With(HouseBody body, HouseOpening opening)
    {
        var scenario = Scenario([Mat(4), Bench(4), Table(4)], [Batch("a", 200, Monday)]);
        return scenario with { Houses = [scenario.Houses[0] with { Body = body, Heat = s_propane, Opening = opening }] };
    }

    private static readonly HouseHeat s_propane = new() { Fuel = Fuels.Propane, Efficiency = 0.8 };

    private static HouseBody Heated(double uValue) =>
        new()
        {
            Shell = new HouseShell(100, 0, 0, 50, 120, 10),
            Covering = "test",
            UValue = uValue,
            AirChanges = 0,
            Transmission = 0.6,
        };

    private sealed class EmergenceWitness : ISeasonWitness
    {
        public double DaysToEmergence { get; private set; }

        public void WentOut(TraysOut trays) => DaysToEmergence = (trays.UpHour - trays.SownHour) / 24;
    }
}
