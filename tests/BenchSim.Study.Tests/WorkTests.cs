using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;
using static Support.SmallSite;

namespace BenchSim.Study.Tests;

/// <summary>Hours of work, by hand, on the site of <see cref="Support.SmallSite"/>.</summary>
public class WorkTests
{
    private static readonly WorkMinutes s_minutes = new()
    {
        Sow = 1,
        PotUp = 12,
        Move = 0.5,
        SetOut = 0.5,
    };

    // Two trays of 50 cells with two seeds each. Sown on day 0: 2 x 1 minute. Off the mat on day 3 and to the table: 4 moves of half a
    // minute. Set out on day 21: 2 x half a minute. 5 minutes in all.
    [Fact]
    public void Without_seconds_and_water_trays_alone_are_counted() => AssertMinutes(5, 3, new SiteRules { Minutes = s_minutes });

    // Beside these 200 seeds of 3 s (10 minutes), 100 cells of 1.2 s (2 minutes) and, on day 3, 100 cells thinned at 6 s (10 minutes). Two
    // places are watered on 21 days: 42 at 0.3 minutes, 12.6 minutes, 14 of them (4.2 minutes) in the first week.
    [Fact]
    public void Seeds_cells_thinning_and_water_come_on_top() =>
        AssertMinutes(
            39.6,
            29.2,
            new SiteRules
            {
                Minutes = s_minutes with { Water = 30 },
                Seconds = new WorkSeconds
                {
                    SowSeed = 3,
                    SowCell = 1.2,
                    PotUpPlant = 4,
                    ThinCell = 6,
                },
            }
        );

    // A flat of 75 seeds: 1 minute and 75 x 2 s to sow, a move off the mat, two trays at 12 minutes with 75 plants at 4 s, two moves to the
    // table, two trays loaded: 1 + 2.5 + 0.5 + 24 + 5 + 1 + 1 = 35 minutes.
    [Fact]
    public void Plants_are_potted_up_one_by_one()
    {
        var rules = new SiteRules
        {
            Minutes = s_minutes,
            Seconds = new WorkSeconds { SowSeed = 2, PotUpPlant = 4 },
        };
        var plan = Plan(Scenario([Mat(9), Bench(9), Table(9)], [PotUpBatch("p", 75, Monday, seedsPerFlat: 75)], rules));
        Assert.Equal(35_000, WorkSeason.PartsOf(Played(plan), rules));
    }

    // A third of a second a seed is no whole thousandth of a minute: 200 of them are 66.67 s, 1.111 minutes.
    [Fact]
    public void A_week_is_rounded_not_a_seed() =>
        AssertMinutes(
            5 + 1.111,
            3 + 1.111,
            new SiteRules
            {
                Minutes = s_minutes,
                Seconds = new WorkSeconds { SowSeed = 1 / 3.0 },
            }
        );

    private static void AssertMinutes(double all, double firstWeek, SiteRules rules)
    {
        var plan = Plan(Scenario([Mat(9), Bench(9), Table(9)], [Batch("a", 100, Monday) with { SeedsPerCell = 2 }], rules));
        var work = StudyRunner.Play(plan, new StudyOptions { Seasons = 2, Seed = 7 }, null, CancellationToken.None).Work;
        Assert.Equal(all / 60, work.Hours.Mean, 1e-9);
        Assert.Equal(firstWeek / 60, work.HoursByWeek[0].Mean, 1e-9);
        Assert.Equal(all * 1000, WorkSeason.PartsOf(Played(plan), rules), 1e-6);
    }

    private static SeasonResult Played(SeasonPlan plan)
    {
        var result = new SeasonResult();
        new SeasonPlayer(plan, 7).Play(0, PlaceLimits.AsGiven, result);
        return result;
    }
}
