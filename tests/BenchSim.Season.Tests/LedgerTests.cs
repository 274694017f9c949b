using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Weather;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>Who holds what, what is filled and what is thrown out, on the site of <see cref="SmallSite"/>, counted by hand.</summary>
public class LedgerTests
{
    // A tray is on the mat on days 0 to 2, on the bench on days 3 to 16 and on the table on days 17 to 20: 3, 14 and 4 tray-days. Ada has 1
    // + 2 trays, Ben 4.
    [Fact]
    public void Trays_are_held_by_their_grower()
    {
        var result = PlayOnce(
            Scenario(
                [Mat(9), Bench(9), Table(9)],
                [Batch("a", 50, Monday), Batch("b", 200, Monday, grower: "Ben"), Batch("c", 100, Monday)]
            )
        );
        Assert.Equal(2, result.HeldByGrower.Length);
        Assert.Equal([3, 3], result.HeldByGrower[0][..2]);
        Assert.Equal([4, 4], result.HeldByGrower[1][..2]);
        Assert.Equal([9L, 42, 12], result.TrayDays[0]);
        Assert.Equal([12L, 56, 16], result.TrayDays[1]);
    }

    // Two trays of 50 cells with two seeds each: 100 cells and 200 seeds, as a flat of 75 seeds has no cells. They come off the mat and are
    // thinned on day 3. What is sown on a bench on day 2 is up on day 5, a Saturday, and thinned on Monday, day 7. The flat's 75 seedlings
    // go into one tray and half of another on day 10. What is sown as thick as it is kept is not thinned.
    [Fact]
    public void Seeds_cells_and_plants_are_counted_on_the_day_they_are_handled()
    {
        var result = PlayOnce(
            Scenario(
                [Mat(9), Bench(9), Table(9)],
                [
                    Batch("a", 100, Monday) with
                    {
                        SeedsPerCell = 2,
                    },
                    Batch("b", 50, Monday.AddDays(2), "cool") with
                    {
                        SeedsPerCell = 3,
                    },
                    Batch("c", 50, Monday.AddDays(4), "kept") with
                    {
                        SeedsPerCell = 3,
                    },
                    PotUpBatch("p", 75, Monday, seedsPerFlat: 75),
                ],
                crops: [Crop(), Crop("cool") with { BottomHeat = false, KeepPerCell = 2 }, Crop("kept") with { KeepPerCell = 3 }]
            )
        );
        Assert.Equal([275L, 0, 150, 0, 150], result.SeedsSown[..5]);
        Assert.Equal([100L, 0, 50, 0, 50], result.CellsSown[..5]);
        Assert.Equal([0L, 0, 0, 100, 0, 0, 0, 50], result.CellsThinned[..8]);
        Assert.Equal(150, result.CellsThinned.Sum());
        Assert.Equal((75L, 75L), (result.PlantsPotted[10], result.PlantsPotted.Sum()));
    }

    // A tray that the season's end finds on the mat was never thinned; one on the bench was.
    [Fact]
    public void What_stands_on_the_last_day_was_thinned_where_it_is_off_the_mat()
    {
        var plan = Plan(Scenario([Mat(9), Bench(1), Table(9)], [Batch("a", 100, Monday) with { SeedsPerCell = 2 }]));
        var result = new SeasonResult();
        new SeasonPlayer(plan with { Days = 8 }, 7).Play(0, PlaceLimits.AsGiven, result);
        Assert.Equal((1, 1), (result.Held[0][7], result.Held[1][7]));
        Assert.Equal((50L, 50L), (result.CellsThinned[3], result.CellsThinned.Sum()));
    }

    // Three flats of 50 seedlings for three trays, but only two find a mat, and the third is given up on day 1. The two that come fill a
    // tray each: the last flat rounds up to whole trays, and one tray is whole.
    [Fact]
    public void The_last_flat_fills_no_tray_more_than_its_seedlings_need()
    {
        var batch = PlayOnce(
            Scenario(
                [Mat(2), Bench(9), Table(9)],
                [PotUpBatch("p", 150, Monday, seedsPerFlat: 50)],
                new SiteRules { SowWaitDays = 9, SowGiveUpDays = 1 }
            )
        ).Batches[0];
        Assert.Equal((2, 1, 2, 100), (batch.FlatsSown, batch.GivenUp, batch.TraysStarted, batch.PlantsOut));
    }

    // A plan of four flats where the first fills the one planned tray. One flat at a time finds the mat, on days 0, 3 and 7 (day 6 is a
    // Sunday). On day 10 the first is potted up; the second, on the bench, and the third, still on the mat, are left over, and the fourth
    // is not sown any more.
    [Fact]
    public void What_is_left_over_when_the_planned_trays_are_filled_is_thrown_out_wherever_it_stands()
    {
        var plan = Plan(
            Scenario(
                [Mat(1), Bench(9), Table(9)],
                [PotUpBatch("p", 50, Monday, seedsPerFlat: 50)],
                new SiteRules { SowWaitDays = 30, SowGiveUpDays = 40 }
            )
        );
        var result = new SeasonResult();
        new SeasonPlayer(plan with { Batches = [plan.Batches[0] with { Flats = 4 }] }, 7).Play(0, PlaceLimits.AsGiven, result);
        var batch = result.Batches[0];
        Assert.Equal((3, 1, 2, 2), (batch.FlatsSown, batch.FlatsPotted, batch.FlatsDiscarded, batch.Discarded[(int)DiscardReason.Surplus]));
        Assert.Equal((1, 0), (batch.TraysStarted, batch.GivenUp));
        Assert.Equal([1, 0], Held(result, 0, 9, 10));
        Assert.Equal([2, 1], Held(result, 1, 9, 10));
    }

    // Three trays a day may be filled. On day 10 the first flat of "p" takes two, its second would take two more and is not potted; the
    // flat of "q" would take the one that is left, but a flat that is not potted ends the work of the day. On day 11 both are.
    [Fact]
    public void A_flat_for_which_the_hands_do_not_suffice_ends_the_potting_of_the_day()
    {
        var result = PlayOnce(
            Scenario(
                [Mat(9), Bench(9), Table(9)],
                [PotUpBatch("p", 200, Monday, seedsPerFlat: 100), PotUpBatch("q", 50, Monday, seedsPerFlat: 50)],
                new SiteRules { PotUpTraysADay = 3 }
            )
        );
        Assert.Equal([2, 3, 0], result.Potted[10..13]);
        Assert.Equal((11, 11), (result.Batches[0].PottedUp, result.Batches[1].PottedUp));
    }

    // Seed that needs 14 days is up at the very instant of that round, which counts.
    [Fact]
    public void What_comes_up_on_its_last_day_stays()
    {
        var slow = Crop() with { EmergeHeat = 140, EmergeGiveUpDays = 14 };
        var result = PlayOnce(
            Scenario([Mat(1), Bench(1), Table(1)], [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(40) }], crops: [slow])
        );
        Assert.Equal(0, result.Batches[0].TraysDiscarded);
        Assert.Equal([1, 0], Held(result, 0, 13, 14));
        Assert.Equal(1, result.Held[1][14]);
    }

    // Without a table the first tray stands on the bench until it is thrown out on day 42, 21 days after it was due, the second on the mat
    // until then; the third, sown on day 42, is not grown on the last day, 21 + 21 + 14 = 56. A player that has played this plays it again
    // to the same end.
    [Fact]
    public void A_player_keeps_nothing_of_the_season_before()
    {
        var scenario = Scenario([Mat(1), Bench(1), Table(0)], [Batch("a", 150, Monday)], new SiteRules { SowGiveUpDays = 99 });
        var player = new SeasonPlayer(Plan(scenario), 7);
        var (first, second) = (new SeasonResult(), new SeasonResult());
        player.Play(0, PlaceLimits.AsGiven, first);
        Assert.Equal((42, 1), (first.Batches[0].SownLast, first.Batches[0].TraysStanding));
        player.Play(0, PlaceLimits.AsGiven, second);
        Assert.Equivalent(first, second, strict: true);
    }

    // Planned dates know no luck: those of the season drawn by hand in GanttTests.
    [Fact]
    public void Luck_moves_no_planned_date()
    {
        var plan = Plan(
            Scenario([Mat(4), Bench(4), Table(4)], [Batch("a", 200, Monday)], crops: [Crop() with { EmergeCv = 0.5, GrowthCv = 0.5 }])
        ).Batches[0];
        Assert.Equal((3, 17, 21), (DayOf(plan.EmergeOn), DayOf(plan.TableOn), DayOf(plan.SetOutOn)));

        static int DayOf(DateOnly date) => date.DayNumber - Monday.DayNumber;
    }

    // Seed that needs 15 days at 20 C, given up after 14 days, is thrown out in the round of day 14, from the mat as from the bench.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_has_not_come_up_in_its_days_is_thrown_out(bool bottomHeat)
    {
        var slow = Crop() with { EmergeHeat = 150, EmergeGiveUpDays = 14, BottomHeat = bottomHeat };
        var result = PlayOnce(
            Scenario([Mat(1), Bench(1), Table(1)], [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(40) }], crops: [slow])
        );
        Assert.Equal([1, 0, 0], Held(result, bottomHeat ? 0 : 1, 13, 15));
        Assert.Equal(1, result.Batches[0].Discarded[(int)DiscardReason.NeverCameUp]);
        Assert.Equal(50, result.Batches[0].PlantsShort);
    }

    // One tray is sown each work day: on days 0 to 4, 7 to 11, 14 to 18, 21 to 25, 28 and 29. It is grown 17 days later and due three
    // nights after that, on a work day. With no table at all it is thrown out 21 days after it was due. The play ends on day 56, 35 after
    // the planned date: thrown out are those sown up to day 15, twelve, and ten stand. Those sown up to day 25 were due on day 45 or before
    // and are past their 7 days; those of days 28 and 29 were due on day 49, just 7 days ago.
    [Fact]
    public void Trays_that_still_stand_on_the_last_day_may_be_past_their_best_too()
    {
        var batch = PlayOnce(
            Scenario([Mat(30), Bench(30), Table(0)], [Batch("a", 22 * 50, Monday)], new SiteRules { SowTraysADay = 1, SowGiveUpDays = 60 })
        ).Batches[0];
        Assert.Equal((12, 10), (batch.TraysDiscarded, batch.TraysStanding));
        Assert.Equal((20, 20), (batch.OverHeld, batch.OverHeldForPlace));
    }

    // Thirty flats, one sown each work day, from day 0 to day 39. Ready to pot up ten days after, each would fill six trays of two places,
    // and there are eleven: it is thrown out 14 days later. On the last day, 35 after the planned day 24, those sown on days 36 to 39 still
    // stand.
    [Fact]
    public void Flats_that_still_stand_on_the_last_day_are_counted()
    {
        var batch = PlayOnce(
            Scenario(
                [Mat(40), Bench(11), Table(40)],
                [PotUpBatch("p", 120, Monday, seedsPerFlat: 120) with { TrayId = "big", Flats = 30 }],
                new SiteRules
                {
                    SowTraysADay = 1,
                    SowWaitDays = 60,
                    SowGiveUpDays = 60,
                }
            )
        ).Batches[0];
        Assert.Equal((30, 0, 26, 4), (batch.FlatsSown, batch.FlatsPotted, batch.FlatsDiscarded, batch.FlatsStanding));
    }

    // On the table from day 17; the night after day 20, a Sunday, is the last there.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(-0.1, 2)]
    public void Trays_are_carried_in_from_a_night_colder_than_does_damage(double night, int carried)
    {
        var weather = new RecordedWeather(
            [.. Enumerable.Range(-7, 200).Select(day => new DailyWeather(Monday.AddDays(day), day == 21 ? night : 10, 12, 0))],
            null,
            "record.csv"
        );
        var result = PlayOnce(
            Scenario([Mat(2), Bench(2), Table(2)], [Batch("a", 100, Monday)], new SiteRules { ForecastNights = 1 }, weather: weather)
        );
        Assert.Equal([0, carried, 0], result.CarriedIn[19..22]);
    }
}
