using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>Single spaces without limit, larger or smaller, on the plan as it is.</summary>
public class PlaceLimitsTests
{
    [Fact]
    public void More_or_fewer_places_are_as_good_as_a_site_that_has_them()
    {
        RandomSites.GenScenario.Each(40, 71, scenario =>
        {
            if (SeasonPlanner.Make(scenario).Plan is not { } plan)
            {
                return;
            }

            var player = new SeasonPlayer(plan, 5);
            for (var space = 0; space < scenario.Spaces.Length; space++)
            {
                foreach (var added in new[] { -4, 3 })
                {
                    var (limited, larger) = (new SeasonResult(), new SeasonResult());
                    player.Play(1, PlaceLimits.Adding(space, added), limited);
                    new SeasonPlayer(With(plan, space, added), 5).Play(1, PlaceLimits.AsGiven, larger);
                    Assert.Equal(larger.Held, limited.Held);
                    Assert.Equal(larger.Waiting, limited.Waiting);
                    Assert.Equal(larger.Batches.Select(batch => batch.LatePlantDays), limited.Batches.Select(batch => batch.LatePlantDays));
                }
            }
        });
    }

    [Fact]
    public void Nothing_waits_for_a_space_without_limit_that_is_open()
    {
        var waited = 0;
        RandomSites.GenScenario.Each(60, 72, scenario =>
        {
            if (SeasonPlanner.Make(scenario).Plan is not { } plan)
            {
                return;
            }

            var player = new SeasonPlayer(plan, 5);
            var (asGiven, unlimited) = (new SeasonResult(), new SeasonResult());
            player.Play(1, PlaceLimits.AsGiven, asGiven);
            for (var space = 0; space < scenario.Spaces.Length; space++)
            {
                if (scenario.Houses.Any(house => house.Id == scenario.Spaces[space].HouseId && house.Opening == HouseOpening.FromDate))
                {
                    continue;
                }

                player.Play(1, PlaceLimits.Without(space), unlimited);
                waited += asGiven.Waiting[space].Sum() > 0 ? 1 : 0;
                Assert.Equal(0, unlimited.Waiting[space].Sum());
            }
        });
        Assert.True(waited > FixedSample.CasesOf(30), $"only {waited} spaces were waited for");
    }

    [Fact]
    public void Who_waits_adds_up_to_what_waits()
    {
        var waited = 0L;
        RandomSites.GenScenario.Each(60, 73, scenario =>
        {
            if (SeasonPlanner.Make(scenario).Plan is not { } plan)
            {
                return;
            }

            var result = new SeasonResult();
            new SeasonPlayer(plan, 5).Play(1, PlaceLimits.AsGiven, result);
            var spaces = scenario.Spaces.Length;
            for (var space = 0; space < spaces; space++)
            {
                for (var week = 0; week * 7 < plan.Days; week++)
                {
                    var days = result.Waiting[space].Skip(week * 7).Take(7).Sum();
                    waited += days;
                    Assert.Equal(days, Enumerable.Range(0, spaces + 1).Sum(from => result.Refused[from, space][week]));
                }
            }
        });
        Assert.True(waited > FixedSample.CasesOf(1000), $"only {waited} place-days were waited");
    }

    [Fact]
    public void Each_kind_of_limit_says_which_spaces_it_limits_and_what_it_adds()
    {
        Assert.Equal((true, true, 0), Said(PlaceLimits.AsGiven));
        Assert.Equal((false, false, 0), Said(PlaceLimits.None));
        Assert.Equal((true, false, 0), Said(PlaceLimits.Without(1)));
        Assert.Equal((true, true, -2), Said(PlaceLimits.Adding(1, -2)));
        Assert.Equal(0, PlaceLimits.Adding(1, -2).Added(0));

        Assert.Equal(
            ["as given", "no limits", "without 1,2", "space 0 +2", "space 1 -3"],
            new[]
            {
                PlaceLimits.AsGiven,
                PlaceLimits.None,
                PlaceLimits.Without(1, 2),
                PlaceLimits.Adding(0, 2),
                PlaceLimits.Adding(1, -3),
            }.Select(limits => limits.ToString()!),
            StringComparer.Ordinal
        );

        static (bool First, bool Second, int Added) Said(PlaceLimits limits) => (limits.IsLimited(0), limits.IsLimited(1), limits.Added(1));
    }

    // The only bench stands in a house that opens on day 20: sown on day 0, the tray waits on the mat until then, however many places are
    // added.
    [Fact]
    public void Nothing_is_added_while_a_house_is_shut()
    {
        var scenario = Scenario([Mat(1), Bench(1, house: "late"), Table(1)], [Batch("a", 50, Monday)]);
        scenario = scenario with
        {
            Houses = scenario.Houses.Add(
                new House
                {
                    Id = "late",
                    Name = "Late",
                    NightC = 20,
                    DayC = 20,
                    VentC = 20,
                    DayLiftK = 0,
                    Opening = HouseOpening.FromDate,
                    OpensOn = Monday.AddDays(20),
                }
            ),
        };
        Assert.Equal([0, 0, 1], Held(PlayOnce(scenario, PlaceLimits.Adding(1, 5)), 1, 19, 21));
    }

    // In the crowded season the tray of "a", wanted too late, is thrown out on day 42, and most of "b" waits and is given up. Its result is
    // used again for another plan.
    [Fact]
    public void A_result_that_is_used_again_keeps_nothing_of_the_season_before()
    {
        var crowded = new SeasonPlayer(
            Plan(
                Scenario(
                    [Mat(1), Bench(2), Table(2)],
                    [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(49) }, Batch("b", 300, Monday.AddDays(4))]
                )
            ),
            1
        );
        var roomy = new SeasonPlayer(Plan(Scenario([Mat(9), Bench(9), Table(9)], [Batch("a", 50, Monday), Batch("b", 50, Monday)])), 1);
        var (used, fresh) = (new SeasonResult(), new SeasonResult());
        crowded.Play(0, PlaceLimits.AsGiven, used);
        Assert.Equal(1, used.Batches[0].TraysDiscarded);
        Assert.True(used.Batches[1].GivenUp > 0);
        roomy.Play(0, PlaceLimits.AsGiven, used);
        roomy.Play(0, PlaceLimits.AsGiven, fresh);
        Assert.Equivalent(fresh, used, strict: true);
    }

    // Flats and trays, luck, a full bench: whatever a season needs it has kept from the seasons before.
    [Fact]
    public void A_season_takes_no_new_memory_once_such_seasons_have_been_played()
    {
        var crop = Crop() with { StandLoss = 0.1, GrowthCv = 0.2, EmergeCv = 0.2 };
        var player = new SeasonPlayer(
            Plan(
                Scenario(
                    [Mat(2), Bench(3), Table(2)],
                    [Batch("a", 200, Monday), PotUpBatch("b", 150, Monday.AddDays(4), seedsPerFlat: 50)],
                    crops: [crop]
                )
            ),
            1
        );
        var (given, free) = (new SeasonResult(), new SeasonResult());
        Play(200);

        // A collection that another test brings about meanwhile can leave the rest of a block counted as taken. What seasons take they take
        // each time.
        Assert.Contains(0, Enumerable.Range(0, 10).Select(_ => Taken()));
        Assert.True(given.Waiting.Sum(days => days.Sum()) > 0);

        long Taken()
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            Play(200);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        void Play(int seasons)
        {
            for (var season = 0; season < seasons; season++)
            {
                player.Play(season, PlaceLimits.AsGiven, given);
                player.Play(season, PlaceLimits.None, free);
            }
        }
    }

    // One bench place too few: 2 trays stand up on the mat from Thursday 4 March (day 3), one moves; the other waits for the bench until
    // the first is grown. Grown 14 days after it came up (day 3 at 08:00): on day 17, when the first goes to the table and the other to the
    // bench: 14 days of waiting, 4 of them in the week of day 0 (days 3 to 6), 7 in the next and 3 in the third (days 14 to 16).
    [Fact]
    public void A_tray_on_the_mat_is_told_to_wait_for_the_bench()
    {
        var result = PlayOnce(Scenario([Mat(2), Bench(1), Table(5)], [Batch("a", 100, Monday)]));
        Assert.Equal([4, 7, 3], result.Refused[0, 1][..3]);
        Assert.Equal(14, result.Refused.Sum);
    }

    // Twice the spaces take twice the memory; by pair of spaces they would take four times as much.
    [Fact]
    public void A_season_takes_memory_by_the_space_and_not_by_the_pair()
    {
        Assert.InRange((double)Taken(800) / Taken(400), 1.5, 2.5);

        static long Taken(int spaces)
        {
            var result = new SeasonResult();
            var before = GC.GetAllocatedBytesForCurrentThread();
            result.Prepare(spaces, houses: 1, batches: 1, growers: 1, days: 150, reliefs: 0, mishaps: 0);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    private static SeasonPlan With(SeasonPlan plan, int space, int added)
    {
        var given = plan.Scenario.Spaces[space];
        var changed = given with
        {
            Places = Math.Max(0, given.Places + added),
            Changes = [.. given.Changes.Select(change => change with { Places = Math.Max(0, change.Places + added) })],
        };
        return plan with { Scenario = plan.Scenario with { Spaces = plan.Scenario.Spaces.SetItem(space, changed) } };
    }
}
