using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Kept;
using BenchSim.Study.Results;
using Support;

namespace BenchSim.Study.Tests.Kept;

/// <summary>Seasons without limits are played once for all numbers of places, and that never shows in an answer.</summary>
public class KeptSeasonsTests
{
    private static readonly SeasonPlan s_plan = Plans.Small();

    [Fact]
    public void A_play_with_other_places_plays_no_season_without_limits_again()
    {
        KeptSeasons kept = new();
        List<PlaceLimits> played = [];
        Play(s_plan, kept, played);
        Assert.Equal(20, played.Count(limits => limits == PlaceLimits.None));

        played.Clear();
        var other = Places(s_plan, 5);
        var answer = Play(other, kept, played);

        Assert.All(played, limits => Assert.Equal(PlaceLimits.AsGiven, limits));
        Assert.Equal(ResultText.Of(Play(other, null, [])), ResultText.Of(answer));
        Assert.Same(other, answer.Plan);
    }

    [Fact]
    public void Where_no_limit_ever_bit_the_season_is_not_played_again_and_kept_all_the_same()
    {
        // The seasons drawn are told to have no limit that bit: the wanted places are those held.
        KeptSeasons kept = new();
        List<PlaceLimits> played = [];
        var answer = Play(s_plan, kept, played, everBit: false);

        Assert.All(played, limits => Assert.Equal(PlaceLimits.AsGiven, limits));
        Assert.All(answer.Spaces, space => Assert.Equal<IEnumerable<DaySpread>>(space.Held, space.Wanted));

        played.Clear();
        Play(Places(s_plan, 5), kept, played);
        Assert.All(played, limits => Assert.Equal(PlaceLimits.AsGiven, limits));
    }

    [Fact]
    public void Another_seed_or_another_plan_finds_nothing()
    {
        KeptSeasons kept = new();
        Play(s_plan, kept, []);
        foreach (
            var (plan, seed) in new[]
            {
                (s_plan, 8UL),
                (s_plan with { Days = s_plan.Days + 1 }, 7UL),
                (s_plan with { Batches = s_plan.Batches.RemoveAt(2) }, 7UL),
            }
        )
        {
            List<PlaceLimits> played = [];
            Play(plan, kept, played, seed: seed);
            Assert.Equal(20, played.Count(limits => limits == PlaceLimits.None));
        }
    }

    [Fact]
    public void What_is_kept_is_bounded_and_the_plan_played_last_stays()
    {
        // A season of 4 spaces and 8 days is 4 rows of 32 bytes and what goes with them: under 1,000 bytes.
        KeptSeasons kept = new(mostBytes: 30_000);
        for (var plants = 100; plants < 120; plants++)
        {
            List<PlaceLimits> played = [];
            var plan = Plans.Small(plantsEach: plants);
            Play(plan, kept, played);
            Assert.InRange(kept.Bytes, 20 * 128, 30_000);

            played.Clear();
            Play(plan, kept, played);
            Assert.DoesNotContain(PlaceLimits.None, played);
        }
    }

    [Fact]
    public void A_plan_that_fills_it_alone_is_played_all_the_same()
    {
        KeptSeasons kept = new(mostBytes: 2_000);
        Assert.Equal(ResultText.Of(Play(s_plan, null, [])), ResultText.Of(Play(s_plan, kept, [])));
        Assert.InRange(kept.Bytes, 1, 2_000);
        Assert.Equal(ResultText.Of(Play(s_plan, null, [])), ResultText.Of(Play(s_plan, kept, [])));
    }

    // The whole chain with the real player: a site whose mats and benches are short in some seasons and not in others.
    [Fact]
    public void Real_seasons_give_the_same_answer_played_twice_or_once_or_kept_on_any_number_of_places()
    {
        KeptSeasons kept = new();
        foreach (var places in new[] { 3, 40, 7, 5, 12 })
        {
            var plan = SmallSite.Plan(
                SmallSite.Scenario(
                    [SmallSite.Mat(places), SmallSite.Bench(2 * places), SmallSite.Table(places)],
                    [
                        SmallSite.Batch("A", 300, SmallSite.Monday),
                        SmallSite.Batch("B", 400, SmallSite.Monday.AddDays(2)),
                        SmallSite.Batch("C", 300, SmallSite.Monday.AddDays(9)),
                    ]
                )
            );
            StudyOptions options = new()
            {
                Seasons = 30,
                Seed = 3,
                Threads = 2,
            };
            SeasonPlayer first = new(plan, options.Seed);
            var twice = StudyRunner.Play(plan, options, () => PlayedTwice(first.Another()), null, CancellationToken.None);
            var alone = StudyRunner.Play(plan, options, null, CancellationToken.None);
            var together = StudyRunner.Play(plan, options, null, CancellationToken.None, kept);
            Assert.Equal(ResultText.Of(twice), ResultText.Of(alone));
            Assert.Equal(ResultText.Of(twice), ResultText.Of(together));
        }
    }

    private static PlaySeason PlayedTwice(SeasonPlayer player) =>
        (season, asGiven, withoutLimits) =>
        {
            player.Play(season, PlaceLimits.AsGiven, asGiven);
            player.Play(season, PlaceLimits.None, withoutLimits!);
            return withoutLimits!;
        };

    private static SeasonPlan Places(SeasonPlan plan, int more) =>
        plan with
        {
            Scenario = plan.Scenario with
            {
                Spaces =
                [
                    .. plan.Scenario.Spaces.Select(space =>
                        space with
                        {
                            Places = space.Places + more,
                            Changes = [.. space.Changes.Select(change => change with { Places = change.Places + more })],
                        }
                    ),
                ],
            },
        };

    private static SeasonPlan Roomy(SeasonPlan plan) =>
        plan with
        {
            Scenario = plan.Scenario with { Spaces = [.. plan.Scenario.Spaces.Select(space => space with { Places = 9 })] },
        };

    private static StudyResult Play(SeasonPlan plan, KeptSeasons? kept, List<PlaceLimits> played, bool everBit = true, ulong seed = 7) =>
        StudyRunner.Play(
            plan,
            new StudyOptions
            {
                Seasons = 20,
                Seed = seed,
                Threads = 3,
            },
            () =>
                DrawnPlayer.Of(
                    (season, limits, result) =>
                    {
                        lock (played)
                        {
                            played.Add(limits);
                        }

                        // Without limits the places there are do not show.
                        Seasons.Draw(limits == PlaceLimits.None ? Roomy(plan) : plan, season, limits, result);
                        result.LimitEverBit = everBit;
                    }
                ),
            null,
            CancellationToken.None,
            kept
        );
}
