using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study.Tests.Counting;

public class SeasonTallyTests
{
    private static readonly SeasonPlan s_plan = Plans.Small();

    [Fact]
    public void Places_by_day_follow_the_opening_of_the_house_and_the_changes()
    {
        var result = Count(Seasons.Quiet(s_plan));

        // The annex opens on day 2 with 6 places and has 2 from day 4.
        Assert.Equal<IEnumerable<int>>([0, 0, 6, 6, 2, 2, 2, 2], result.Spaces[2].Places);
        Assert.Equal<IEnumerable<int>>([10, 10, 16, 16, 12, 12, 12, 12], result.Groups[1].Places);
        Assert.Equal([SpaceKind.Mat, SpaceKind.Bench, SpaceKind.Table], result.Groups.Select(group => group.Kind));
    }

    [Fact]
    public void Space_peak_full_days_and_tray_days()
    {
        // The mat has 4 places. Season 1 holds 0 4 4 1 0 0 0 0: peak 4 first on day 1, 2 days full, 9 tray-days. Season 2 holds 2 on day 5
        // alone.
        var one = Seasons.Quiet(s_plan);
        one.Held[0] = [0, 4, 4, 1, 0, 0, 0, 0];
        one.Waiting[0] = [0, 0, 3, 2, 0, 0, 0, 0];
        var two = Seasons.Quiet(s_plan);
        two.Held[0] = [0, 0, 0, 0, 0, 2, 0, 0];

        var mat = Count(one, two).Spaces[0];

        Assert.Equal((3.0, 2, 4), (mat.Peak.Mean, mat.Peak.Least, mat.Peak.Most));
        Assert.Equal(new DateSpread(new(2027, 3, 2), new(2027, 3, 2), new(2027, 3, 6), 2, 2), mat.PeakOn);
        Assert.Equal((1.0, 2), (mat.DaysFull.Mean, mat.DaysFull.Most));
        Assert.Equal((5.5, 2, 9), (mat.TrayDays.Mean, mat.TrayDays.P50, mat.TrayDays.P90));
        Assert.Equal((2.5, 5), (mat.WaitedDays.Mean, mat.WaitedDays.Most));
        Assert.Equal(new DaySpread(2, 0, 0, 4, 4, 4), mat.Held[1]);
        Assert.Equal(new DaySpread(1.5, 0, 0, 3, 3, 3), mat.Waiting[2]);
    }

    [Fact]
    public void A_space_that_is_never_used_has_no_peak_day_and_one_without_places_is_never_full()
    {
        var annex = Count(Seasons.Quiet(s_plan)).Spaces[2];

        Assert.Equal(new DateSpread(null, null, null, 0, 1), annex.PeakOn);
        Assert.Equal(0, annex.DaysFull.Most);
    }

    [Fact]
    public void Wanted_places_come_from_the_play_without_limits_and_make_the_shortage()
    {
        // Both benches wanted 8 + 9 = 17 on day 3 (16 places: 1 short) and 9 + 8 = 17 on day 5 (12 places: 5 short).
        var unlimited = Seasons.Quiet(s_plan);
        unlimited.Held[1][3] = 8;
        unlimited.Held[2][3] = 9;
        unlimited.Held[1][5] = 9;
        unlimited.Held[2][5] = 8;
        var asGiven = Seasons.Quiet(s_plan);
        asGiven.Waiting[1][4] = 2;
        asGiven.Waiting[2][4] = 1;
        asGiven.Waiting[1][6] = 1;

        var result = Count((asGiven, unlimited), (Seasons.Quiet(s_plan), Seasons.Quiet(s_plan)));

        var benches = result.Groups[1];
        Assert.Equal(17, benches.Wanted[3].Most);
        Assert.Equal(9, result.Spaces[2].Wanted[3].Most);
        Assert.Equal((2.5, 0, 5), (benches.Shortage.Mean, benches.Shortage.P50, benches.Shortage.P90));
        Assert.Equal(new DateSpread(new(2027, 3, 6), new(2027, 3, 6), new(2027, 3, 6), 1, 2), benches.ShortageOn);
        Assert.Equal((1, 2), (benches.RunsOut.Hits, benches.RunsOut.Seasons));
        Assert.Equal(new DateOnly(2027, 3, 5), benches.RunsOutOn.P50);

        // First refused on day 4, and most of all, 3, there too.
        Assert.Equal(3, benches.WorstWaiting.Most);
        Assert.Equal(new DateOnly(2027, 3, 5), benches.WorstWaitingOn.P50);
        Assert.Equal(0, result.Groups[0].RunsOut.Hits);
    }

    // Two trays are refused on day 1, three and four of both benches together on day 3, seven on day 5: each with a date of its own.
    [Fact]
    public void The_first_day_without_a_place_and_the_worst_have_their_own_dates()
    {
        var season = Seasons.Quiet(s_plan);
        (season.Waiting[1][1], season.Waiting[1][3], season.Waiting[2][3], season.Waiting[1][5]) = (2, 3, 4, 7);
        var benches = Count((season, Seasons.Quiet(s_plan))).Groups[1];
        Assert.Equal(
            (s_plan.FirstDay.AddDays(1), s_plan.FirstDay.AddDays(3), 7),
            (benches.RunsOutOn.P50, benches.WorstWaitingOn.P50, benches.WorstWaiting.Most)
        );
    }

    [Theory]
    [InlineData(false, false, true, 300, Cause.Place)]
    [InlineData(false, false, false, 284, Cause.Germination)]
    [InlineData(false, false, false, 285, Cause.SlowGrowth)]
    [InlineData(true, false, false, 0, Cause.Hold)]
    [InlineData(true, false, true, 300, Cause.Hold)]
    public void Cause_of_a_season_that_does_not_fit(bool fits, bool weatherCounted, bool fitsUnlimited, int outUnlimited, Cause cause)
    {
        // 300 plants wanted and a goal of 0.95: 285 are enough.
        var asGiven = Seasons.Quiet(s_plan);
        asGiven.Fits = fits;
        asGiven.FitsWeatherCounted = weatherCounted;
        var unlimited = Seasons.Quiet(s_plan);
        unlimited.Fits = fitsUnlimited;
        unlimited.PlantsOut = outUnlimited;

        var result = Count((asGiven, unlimited));

        Assert.Equal(Enum.GetValues<Cause>(), result.Causes.Keys);
        Assert.Equal(Enum.GetValues<Cause>().Select(each => each == cause ? 1 : 0), result.Causes.Values);
        Assert.Equal((fits ? 1 : 0, 0), (result.Fits.Hits, result.FitsWeatherCounted.Hits));
    }

    [Theory]
    [InlineData(284, true, Cause.ThrownOut)]
    [InlineData(284, false, Cause.Germination)]
    [InlineData(285, true, Cause.SlowGrowth)]
    public void Trays_thrown_out_even_with_room_are_a_cause_of_their_own(int outUnlimited, bool isShortForThrownOut, Cause cause)
    {
        // 300 plants wanted and a goal of 0.95: 285 are enough, and then the season is only late.
        var asGiven = Seasons.Quiet(s_plan);
        asGiven.Fits = asGiven.FitsWeatherCounted = false;
        var unlimited = Seasons.Quiet(s_plan);
        unlimited.Fits = false;
        unlimited.PlantsOut = outUnlimited;
        unlimited.IsShortForThrownOut = isShortForThrownOut;

        Assert.Equal(1, Count((asGiven, unlimited)).Causes[cause]);
    }

    [Theory]
    [InlineData(true, true, 285, 0, 0, 0)]
    [InlineData(false, true, 285, 1, 0, 0)]
    [InlineData(true, false, 285, 0, 1, 0)]
    [InlineData(true, true, 284, 0, 0, 1)]
    [InlineData(false, false, 0, 1, 1, 1)]
    public void Conditions_that_are_not_met_are_counted_each(
        bool sownInTime,
        bool noneOverHeld,
        int inTime,
        int late,
        int overHeld,
        int tooFew
    )
    {
        // 300 plants wanted and a goal of 0.95: 285 are enough. The second season meets all three.
        var season = Seasons.Quiet(s_plan);
        season.SownInTime = sownInTime;
        season.NoneOverHeldForPlace = noneOverHeld;
        season.PlantsInTime = season.PlantsOut = inTime;
        var good = Seasons.Quiet(s_plan);
        good.PlantsInTime = good.PlantsOut = 300;

        var result = Count(season, good);

        Assert.Equal((late, overHeld, tooFew), (result.SownTooLate.Hits, result.OverHeldForPlace.Hits, result.TooFewInTime.Hits));
        Assert.Equal((2, 2, 2), (result.SownTooLate.Seasons, result.OverHeldForPlace.Seasons, result.TooFewInTime.Seasons));
    }

    [Fact]
    public void A_season_that_fits_has_no_cause() => Assert.All(Count(Seasons.Quiet(s_plan)).Causes, each => Assert.Equal(0, each.Value));

    [Fact]
    public void Plants_are_in_time_late_or_short()
    {
        // 300 wanted, 290 out, 250 of them in time: 40 late, 10 short.
        var season = Seasons.Quiet(s_plan);
        season.PlantsOut = 290;
        season.PlantsInTime = 250;
        season.Batches[0].LatePlantDays = 70;
        season.Batches[2].LatePlantDays = 5;
        season.Batches[0].OverHeld = 2;
        season.Batches[1].Discarded[(int)DiscardReason.Surplus] = 3;
        season.Batches[2].Discarded[(int)DiscardReason.OverHeld] = 1;
        season.Batches[2].TraysStanding = 4;
        season.Batches[1].FlatsStanding = 1;
        season.ReliefUses[0] = 12;

        var result = Count(season);

        Assert.Equal(300, result.PlantsWanted);
        Assert.Equal((250, 40, 10), (result.PlantsInTime.Mean, result.PlantsLate.Mean, result.PlantsShort.Mean));
        Assert.Equal((75, 2, 4, 5), (result.LatePlantDays.Mean, result.OverHeld.Mean, result.Discarded.Mean, result.StillStanding.Mean));
        Assert.Equal(12, Assert.Single(result.ReliefUses).Mean);
    }

    [Fact]
    public void Batch_dates_and_lateness()
    {
        // Planned out on day 5. Season 1: last tray on day 7, 2 days late. Season 2: day 4, early, so 0. Season 3: none goes out.
        SeasonResult[] seasons = [Seasons.Quiet(s_plan), Seasons.Quiet(s_plan), Seasons.Quiet(s_plan)];
        seasons[0].Batches[0].OutLast = 7;
        seasons[1].Batches[0].OutLast = 4;
        seasons[1].Batches[0].PlantsInTime = 100;
        seasons[0].Batches[0].PlantsInTime = 99;
        seasons[2].Batches[0].BlockedTrayDays[1] = 6;
        seasons[2].Batches[0].Discarded[(int)DiscardReason.NeverCameUp] = 3;

        var batch = Count(seasons).Batches[0];

        Assert.Equal(new DateSpread(new(2027, 3, 5), new(2027, 3, 5), new(2027, 3, 8), 2, 3), batch.OutLast);
        Assert.Equal((1.0, 0, 2, 2), (batch.DaysLate.Mean, batch.DaysLate.P50, batch.DaysLate.Most, batch.DaysLate.Seasons));
        Assert.Equal((1, 3), (batch.Complete.Hits, batch.Complete.Seasons));
        Assert.Equal((2.0, 6), (batch.BlockedTrayDays[1].Mean, batch.BlockedTrayDays[1].Most));
        Assert.Equal("FlatOverHeld NeverCameUp OverHeld Surplus", string.Join(' ', batch.Discarded.Keys));
        Assert.Equal(1.0, batch.Discarded["NeverCameUp"].Mean);
    }

    [Fact]
    public void Growers_are_in_order_of_name_with_their_own_figures()
    {
        // The plan names Zinta first, so hers is row 0 of a season; in the result Ada comes first. 30 and 10 tray-days: shares 0.75 and
        // 0.25.
        var season = Seasons.Quiet(s_plan);
        season.TrayDays[0] = [10, 20, 0, 0];
        season.TrayDays[1] = [0, 0, 4, 6];
        season.HeldByGrower[0][3] = 9;
        season.HeldByGrower[1][6] = 2;

        var result = Count(season);

        Assert.Equal("Ada Zinta", string.Join(' ', result.Growers.Select(grower => grower.Grower)));
        Assert.Equal([1, 2], result.Growers.Select(grower => grower.Batches));
        Assert.Equal([0.25, 0.75], result.Growers.Select(grower => grower.Share));
        Assert.Equal([2.0, 9.0], result.Growers.Select(grower => grower.Peak.Mean));
        Assert.Equal([0, 0, 4, 6], result.Growers[0].TrayDaysBySpace.Select(days => days.Mean));
        Assert.Equal(30, result.Growers[1].TrayDays.Mean);
    }

    [Fact]
    public void Work_is_trays_times_minutes_by_week_from_day_0()
    {
        // Default minutes: sow 4, pot up 12, move 0.5, set out 0.5, carry in 1. Days 0-6 are week 1, day 7 is week 2.
        // Week 1: 10 x 4 + 5 x 12 + 4 x 0.5 = 102 minutes = 1.7 hours. Week 2: 6 x 0.5 + 3 x 1 = 6 minutes = 0.1 hours.
        var season = Seasons.Quiet(s_plan);
        season.Sown[0] = 10;
        season.Potted[6] = 5;
        season.Moved[3] = 4;
        season.SetOut[7] = 6;
        season.CarriedIn[7] = 3;

        var work = Count(season, Seasons.Quiet(s_plan)).Work;

        Assert.Equal((5.0, 2.5, 2.0, 3.0, 1.5), (work.Sown.Mean, work.Potted.Mean, work.Moved.Mean, work.SetOut.Mean, work.CarriedIn.Mean));
        Assert.Equal([0.85, 0.05], work.HoursByWeek.Select(week => week.Mean));
        Assert.Equal([1.7, 0.1], work.HoursByWeek.Select(week => week.P90));
        Assert.Equal((0.9, 1.8), (work.Hours.Mean, work.Hours.Most));
    }

    [Fact]
    public void Any_order_and_any_split_give_the_same_result()
    {
        // 60 drawn seasons (seeds fixed in Seasons.Draw), counted in one go, backwards, and dealt to 2, 3 and 7 tallies merged last to
        // first.
        int[] order = [.. Enumerable.Range(0, 60)];
        var inOneGo = ResultText.Of(Drawn(order).ToResult(1));

        Assert.Equal(inOneGo, ResultText.Of(Drawn([.. order.Reverse()]).ToResult(1)));
        foreach (var parts in new[] { 2, 3, 7 })
        {
            SeasonTally all = new(new PlanShape(s_plan));
            for (var part = parts - 1; part >= 0; part--)
            {
                all.Merge(Drawn([.. order.Where(season => season % parts == part)]));
            }

            Assert.Equal(inOneGo, ResultText.Of(all.ToResult(1)));
        }
    }

    [Fact]
    public void Once_warm_a_season_is_counted_without_allocation()
    {
        SeasonTally tally = new(new PlanShape(s_plan));
        SeasonResult asGiven = new();
        SeasonResult unlimited = new();
        Seasons.Draw(s_plan, 0, PlaceLimits.AsGiven, asGiven);
        Seasons.Draw(s_plan, 0, PlaceLimits.None, unlimited);
        tally.Add(asGiven, unlimited);

        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++)
        {
            tally.Add(asGiven, unlimited);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static SeasonTally Drawn(int[] seasons)
    {
        SeasonTally tally = new(new PlanShape(s_plan));
        SeasonResult asGiven = new();
        SeasonResult unlimited = new();
        foreach (var season in seasons)
        {
            Seasons.Draw(s_plan, season, PlaceLimits.AsGiven, asGiven);
            Seasons.Draw(s_plan, season, PlaceLimits.None, unlimited);
            tally.Add(asGiven, unlimited);
        }

        return tally;
    }

    private static StudyResult Count(params SeasonResult[] seasons) =>
        Count([.. seasons.Select(season => (season, Seasons.Quiet(s_plan)))]);

    private static StudyResult Count(params (SeasonResult AsGiven, SeasonResult Unlimited)[] seasons)
    {
        SeasonTally tally = new(new PlanShape(s_plan));
        foreach ((var asGiven, var unlimited) in seasons)
        {
            tally.Add(asGiven, unlimited);
        }

        return tally.ToResult(1);
    }
}
