using System.Collections.Immutable;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Words;

/// <summary>Why a plan does not fit: conditions, causes, blocked room, sowings given up.</summary>
public partial class VerdictTests
{
    [Fact]
    public void Trays_thrown_out_even_with_room_are_called_so()
    {
        var causes = Causes(0).SetItem(Cause.ThrownOut, 660);

        const string thrownOut =
            "In 660 of the 660 seasons that do not fit, the cause is trays thrown out: even with room for all, they stood too long for ";
        var result = Short() with { Causes = causes };
        Assert.Equal(thrownOut + "the weather or the date.", Verdict.Of(result).Sentences[2]);

        // Hands are named only where the site limits them.
        var scenario = result.Plan.Scenario;
        var hands = scenario with { Rules = scenario.Rules with { SetOutTraysADay = 40 } };
        Assert.Equal(
            thrownOut + "the weather, the date or lack of hands.",
            Verdict.Of(result with { Plan = result.Plan with { Scenario = hands } }).Sentences[2]
        );
    }

    [Fact]
    public void Where_room_alone_would_not_mend_it_a_shortage_is_told_as_well()
    {
        var causes = Causes(60).SetItem(Cause.SlowGrowth, 600);

        Assert.Equal(
            [
                "In 600 of the 660 seasons that do not fit, the cause is slow growth: plants are not ready in time even with room for all.",
                "So more room alone would not mend it. Yet room is short as well: the largest shortage is typically "
                    + "12 heat mat places (between 8 and 17 in eight seasons of ten).",
            ],
            Verdict.Of(Short() with { Causes = causes }).Sentences.Skip(2).Take(2).ToArray()
        );
    }

    [Theory]
    // A quarter of 660 is 165.
    [InlineData(165, " In another 165, the cause is slow growth: plants are not ready in time even with room for all.")]
    [InlineData(164, "")]
    public void A_second_cause_of_a_quarter_of_the_seasons_is_named(int slow, string more) =>
        Assert.Equal(
            $"In {660 - slow} of the 660 seasons that do not fit, the cause is lack of room: with places without limit the same "
                + $"season would have fitted.{more}",
            Verdict.Of(Short() with { Causes = Causes(660 - slow).SetItem(Cause.SlowGrowth, slow) }).Sentences[2]
        );

    [Fact]
    public void Seasons_that_only_the_weather_makes_late_are_not_counted_among_those_that_do_not_fit()
    {
        // 660 do not fit; 200 more do not only when days of weather hold are counted, more than any cause of the 660 has.
        var result = Short() with
        {
            FitsWeatherCounted = Figures.Chance(140, 1000),
            Causes = Causes(180).SetItem(Cause.SlowGrowth, 190).SetItem(Cause.Hold, 200),
        };

        Assert.Contains(Verdict.Of(result).Sentences, sentence =>
            sentence.StartsWith("In 190 of the 660 seasons that do not fit, the cause is slow growth", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(Verdict.Of(result).Sentences, sentence => sentence.StartsWith("In 200", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(660, 0, 0, "Of the 660 seasons that do not fit, in all trays stood too long without a place to go to.")]
    [InlineData(
        0,
        600,
        60,
        "Of the 660 seasons that do not fit, in 600 fewer than 95 % of the plants were in time and in 60 a batch was sown too late "
            + "or not in full."
    )]
    public void Conditions_that_fail_are_told_the_most_frequent_first(int overHeld, int tooFew, int late, string sentence) =>
        Assert.Equal(
            sentence,
            Verdict
                .Of(
                    Short() with
                    {
                        OverHeldForPlace = Figures.Chance(overHeld, 1000),
                        TooFewInTime = Figures.Chance(tooFew, 1000),
                        SownTooLate = Figures.Chance(late, 1000),
                    }
                )
                .Sentences[1]
        );

    [Fact]
    public void One_season_that_does_not_fit_is_told_with_all_its_conditions()
    {
        var one = Figures.Chance(1, 1000);
        var result = Short() with { Fits = Figures.Chance(999, 1000), FitsWeatherCounted = Figures.Chance(999, 1000), Causes = Causes(1) };

        Assert.Equal(
            "In the one season that does not fit, trays stood too long without a place to go to, and fewer than 95 % of the plants were "
                + "in time.",
            Verdict.Of(result with { OverHeldForPlace = one, TooFewInTime = one, SownTooLate = Figures.Chance(0, 1000) }).Sentences[1]
        );
    }

    [Fact]
    public void A_space_that_only_waits_for_the_one_behind_it_is_called_blocked()
    {
        // The plan never takes more mat places than there are, yet trays are refused there while the table is full and short.
        var result = Roomy(Short());
        var mats = result.Groups[0] with { Shortage = Estimate(0, 0, 0, 0, 0) };

        var verdict = Verdict.Of(result with { Groups = result.Groups.SetItem(0, mats) });

        Assert.StartsWith("The hardening table runs out: in 3 % of seasons", verdict.Sentences[3], StringComparison.Ordinal);
        Assert.Equal(
            "The heat mats are blocked, not short: in 94 % of seasons (95 % interval 92.4 to 95.3 %) trays are refused a place, "
                + "typically on 5 April (between 1 and 11 April in eight seasons of ten), though the plan never takes more places than "
                + "there are; the trays there find no place on the hardening table.",
            verdict.Sentences[4]
        );
    }

    [Fact]
    public void A_space_that_one_crop_overfills_is_not_called_blocked()
    {
        // All mats together have places enough, but one of them would be asked for one place more than it has.
        var result = Roomy(Short());
        var mat = result.Spaces[0];
        mat = mat with { Wanted = mat.Wanted.SetItem(3, mat.Wanted[3] with { Most = mat.Places[3] + 1 }) };
        var mats = result.Groups[0] with { Shortage = Estimate(0, 0, 0, 0, 0) };

        Assert.StartsWith(
            "The heat mats run out first",
            Verdict.Of(result with { Spaces = result.Spaces.SetItem(0, mat), Groups = result.Groups.SetItem(0, mats) }).Sentences[3],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_bench_that_is_full_beside_one_its_trays_may_not_use_is_named()
    {
        // Two benches, and all of a batch's benches is the first; it waits for it while both together have places enough.
        var plan = SyntheticPlan.Make(
            [
                SyntheticPlan.Space("mats", "Heat mats", SpaceKind.Mat, 6),
                SyntheticPlan.Space("warm", "Warm bench", SpaceKind.Bench, 20),
                SyntheticPlan.Space("cold", "Cold bench", SpaceKind.Bench, 20),
                SyntheticPlan.Space("table", "Table", SpaceKind.Table, 8),
            ],
            batches: 2,
            days: 90
        );
        var result = Roomy(SyntheticStudy.Of(plan, 1000));
        var group = result.Groups[1] with { RunsOut = Figures.Chance(30, 1000), Shortage = Estimate(0, 0, 0, 0, 0) };
        var warm = result.Spaces[1];
        warm = warm with
        {
            WaitedDays = Estimate(3, 3, 3, 3, 3) with { Mean = 3 },
            Wanted = warm.Wanted.SetItem(3, warm.Wanted[3] with { Most = warm.Places[3] + 1 }),
        };
        var batch = result.Batches[0];
        batch = batch with
        {
            Plan = batch.Plan with { Benches = [1] },
            BlockedTrayDays = batch.BlockedTrayDays.SetItem(1, Estimate(3, 3, 3, 3, 3) with { Mean = 3 }),
        };
        result = result with
        {
            Groups = result.Groups.SetItem(1, group),
            Spaces = result.Spaces.SetItem(1, warm),
            Batches = result.Batches.SetItem(0, batch),
        };

        Assert.Equal(
            "All benches together have places enough: what waits is meant for \"Warm bench\", and may not stand in every other space (too "
                + "cold for it, not on its list, or shut for a time).",
            VerdictSpaces.Elsewhere(result, group)
        );
    }

    [Theory]
    [InlineData(5, 5, 5, 1000, "on the worst day of a season, typically 20 April, 5 trays have no place in at least eight seasons of ten.")]
    [InlineData(0, 0, 5, 7, "in most seasons no tray waits, in the worst of them 9 trays found no place on one day.")]
    public void The_worst_day_is_told_without_odd_ranges(int p50, int p10, int p90, int seasons, string end)
    {
        var result = Short();
        var mats = result.Groups[0] with { WorstWaiting = Estimate(p50, p10, p90, 0, 9) with { Seasons = seasons } };

        Assert.EndsWith(end, Verdict.Of(result with { Groups = result.Groups.SetItem(0, mats) }).Sentences[3], StringComparison.Ordinal);
    }

    [Fact]
    public void Sowings_given_up_are_told_and_a_batch_that_is_hardly_sown_is_named()
    {
        // Of two batches the first is sown in 4 of 1,000 seasons, the second in all, in some of them not in full.
        var result = Short();
        DateSpread rare = new(s_fifth, s_fifth, s_fifth, 4, 1000);
        var always = rare with { Happened = 1000 };
        var hardly = result.Batches[0] with { SownFirst = rare, GivenUp = Estimate(5, 5, 5, 0, 5) };
        var partly = result.Batches[1] with { SownFirst = always, GivenUp = Estimate(0, 0, 0, 0, 1) };

        var verdict = Verdict.Of(result with { Batches = [hardly, partly] });

        Assert.Contains(
            $"Hardly or never sown: {hardly.Plan.Order.Id} (in 4 of 1,000 seasons).",
            verdict.Sentences,
            StringComparer.Ordinal
        );
        Assert.Contains(
            "Sowings had to wait too long and are given up unsown, all or a part, in 2 of 2 batches; in most seasons in 1 of them.",
            verdict.Sentences,
            StringComparer.Ordinal
        );
    }

    // Three days of waiting are allowed: sown on Friday 9 April what is planned for Monday 5 is in time, a day later it is not.
    [Theory]
    [InlineData(9, false)]
    [InlineData(10, true)]
    public void A_batch_that_is_mostly_sown_too_late_is_named(int last, bool isNamed)
    {
        var result = Short();
        DateSpread first = new(s_fifth, s_fifth, s_fifth, 1000, 1000);
        DateOnly end = new(2027, 4, last);
        var batch = result.Batches[0] with
        {
            Plan = result.Batches[0].Plan with { SowOn = s_fifth },
            SownFirst = first,
            SownLast = first with { P50 = end, P90 = end },
        };

        var said = $"Sown later than the plan allows: {batch.Plan.Order.Id} (the last typically on {last} April, planned for 5 April).";
        Assert.Equal(isNamed, Verdict.Of(result with { Batches = [batch] }).Sentences.Contains(said, StringComparer.Ordinal));
    }

    /// <summary>The same, but no space is ever asked for more places than it has.</summary>
    private static StudyResult Roomy(StudyResult result) =>
        result with
        {
            Spaces =
            [
                .. result.Spaces.Select(space => space with { Wanted = [.. space.Wanted.Select(_ => new DaySpread(0, 0, 0, 0, 0, 0))] }),
            ],
        };
}
