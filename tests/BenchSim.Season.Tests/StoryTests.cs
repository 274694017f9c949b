using System.Globalization;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Weather;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>Stories of seasons that were drawn by hand in <see cref="GanttTests"/>: the lines follow from the dates there.</summary>
public class StoryTests
{
    [Fact]
    public void Trays_that_move_alike_on_a_day_share_a_line_and_a_potted_tray_has_its_bench() =>
        Assert.Equal<string[]>(
            [
                "2027-03-01: flat 1 sown on Mat.",
                "2027-03-04: flat 1 moved from Mat to bench.",
                "2027-03-11: flat 1 gave 120 seedlings, potted up into trays 1 to 3: 2 on bench and 1 on second.",
                "2027-03-22: trays 1 to 2 moved from bench to Table.",
                "2027-03-22: tray 3 moved from second to Table.",
                "2027-03-25: trays 1 to 3 set out from Table with 120 plants, on time.",
            ],
            Dated(Scenario([Mat(1), Bench(2), Bench(1, "second"), Table(3)], [PotUpBatch("p", 120, Monday, seedsPerFlat: 120)]), "p")
        );

    // Batch a's tray leaves its bench place on day 17. Until then the flat needs 3 places and its own and one more can be had.
    [Fact]
    public void A_flat_that_waits_says_how_many_places_it_needs()
    {
        var scenario = Scenario([Mat(2), Bench(3), Table(4)], [Batch("a", 50, Monday), PotUpBatch("p", 120, Monday, seedsPerFlat: 120)]);
        Assert.Contains(
            "2027-03-11: 1 flat on bench ready, waiting for room on bench (2 of 3 places held by a 1, p 1); "
                + "one flat needs 3 places for its trays at once, its own among them, and keeps the free place of its benches until then.",
            Dated(scenario, "p"),
            StringComparer.Ordinal
        );
        Assert.Contains("2027-03-18: that wait has lasted 7 days.", Dated(scenario, "p"), StringComparer.Ordinal);
    }

    // Sown on Tuesday day 8 and off the mat on day 11, while the flat of p keeps the free bench place from day 10 to day 17.
    [Fact]
    public void A_place_that_looks_free_is_said_to_be_kept()
    {
        var scenario = Scenario(
            [Mat(2), Bench(3), Table(4)],
            [Batch("a", 50, Monday), PotUpBatch("p", 120, Monday, seedsPerFlat: 120), Batch("z", 50, Monday.AddDays(8))]
        );
        Assert.Contains(
            "2027-03-12: 1 tray on Mat ready, waiting for room on bench (2 of 3 places held by a 1, p 1); "
                + "what is free is kept for a flat of p, which needs 3 places for its trays at once.",
            Dated(scenario, "z"),
            StringComparer.Ordinal
        );
    }

    // Ready on Monday day 21 and wanted on day 49: on day 42 the trays have been ready for 21 days and are thrown out.
    [Fact]
    public void Trays_thrown_out_were_ready_so_many_days_before()
    {
        var scenario = Scenario([Mat(4), Bench(4), Table(4)], [Batch("a", 200, Monday) with { SetOut = Monday.AddDays(49) }]);
        Assert.Contains(
            "2027-04-12: trays 1 to 4 thrown out 21 days after they were ready for the field.",
            Dated(scenario, "a"),
            StringComparer.Ordinal
        );
    }

    [Fact]
    public void A_sowing_given_up_is_told() =>
        Assert.Contains(
            "2027-03-03: 1 tray given up unsown, more than 2 days after the planned date.",
            Dated(
                Scenario([Mat(0), Bench(0), Table(1)], [Batch("a", 50, Monday)], new SiteRules { SowWaitDays = 0, SowGiveUpDays = 2 }),
                "a"
            ),
            StringComparer.Ordinal
        );

    // Sown on day 0, up on day 3, grown on day 17, on the table for 3 nights to day 20, a Sunday.
    [Fact]
    public void A_whole_story_of_a_batch_that_nothing_hinders() =>
        Assert.Equal<string[]>(
            [
                "Season 1, batch a: 50 plants of plain for Ada, 1 tray sown directly.",
                "Planned: sow 2027-03-01, table 2027-03-18, set out 2027-03-22.",
                "Drawn for it: emergence takes 1.00 times its usual heat, growth 1.00 times; the packet germinates 100 % at its "
                    + "best (stated 100 %).",
                "2027-03-01: tray 1 sown on Mat.",
                "2027-03-04: tray 1 moved from Mat to bench.",
                "2027-03-18: tray 1 moved from bench to Table.",
                "2027-03-22: tray 1 set out from Table with 50 plants, on time.",
                "In the end 50 plants went out, 50 of the 50 wanted in time.",
            ],
            Told(Scenario([Mat(1), Bench(1), Table(1)], [Batch("a", 50, Monday)]), "a")
        );

    // 250 plants are 5 trays of 50, from two flats of 200 seeds.
    [Fact]
    public void A_story_begins_with_the_flats_and_the_trays_they_fill()
    {
        var plan = Scenario([Mat(9), Bench(9), Table(9)], [PotUpBatch("p", 250, Monday), PotUpBatch("q", 50, Monday)]);
        Assert.Equal<string[]>(
            [
                "Season 1, batch p: 250 plants of plain for Ada, 2 flats sown dense for 5 trays.",
                "Planned: sow 2027-03-01, pot up 2027-03-11, table 2027-03-22, set out 2027-03-25.",
            ],
            Told(plan, "p")[..2]
        );
        Assert.Equal("Season 1, batch q: 50 plants of plain for Ada, 1 flat sown dense for 1 tray.", Told(plan, "q")[0]);
        Assert.StartsWith(
            "Season 2, batch a: 100 plants of plain for Ada, 2 trays sown",
            SeasonStory.Tell(Plan(Scenario([Mat(9), Bench(9), Table(9)], [Batch("a", 100, Monday)])), 1, 1, "a").Lines[0],
            StringComparison.Ordinal
        );
    }

    // The draws themselves are held by BatchLuckTests.
    [Fact]
    public void The_luck_of_a_batch_is_told_as_it_was_drawn()
    {
        var crop = Crop() with { EmergeCv = 0.3, GrowthCv = 0.2, Germination = 0.8 };
        var plan = Plan(Scenario([Mat(9), Bench(9), Table(9)], [Batch("a", 50, Monday) with { Germination = 0.8 }], crops: [crop]));
        var luck = BatchStates.Lucks(plan.Scenario, plan.Batches, 1)[0];
        var (emergence, growth, packet) = (luck.Emergence(5), luck.Growth(5), luck.Packet(5));
        Assert.All([emergence, growth], factor => Assert.False(Math.Abs(factor - 1) < 0.01));
        Assert.Equal(
            string.Create(
                CultureInfo.InvariantCulture,
                $"Drawn for it: emergence takes {emergence:0.00} times its usual heat, growth {growth:0.00} times; "
                    + $"the packet germinates {100 * packet:0.#} % at its best (stated 80 %)."
            ),
            SeasonStory.Tell(plan, 1, 5, "a").Lines[2]
        );
    }

    // 30 mm keep the field too wet on the two days after: on Saturday day 19 to Monday, on Sunday to Tuesday.
    [Theory]
    [InlineData(19, "2027-03-23", "1 day")]
    [InlineData(20, "2027-03-24", "2 days")]
    public void What_the_weather_holds_is_told_when_it_begins_and_when_it_is_over(int rain, string over, string held)
    {
        var weather = new RecordedWeather(
            [.. Enumerable.Range(-7, 200).Select(day => new DailyWeather(Monday.AddDays(day), 10, 10, day == rain ? 30 : 0))],
            null,
            "record.csv"
        );
        Assert.Equal<string[]>(
            [
                "2027-03-22: 2 trays on Table held by the weather.",
                $"{over}: that wait has lasted {held}.",
                $"{over}: trays 1 to 2 set out from Table with 100 plants, {held} after the planned date; held {held} by the "
                    + "weather alone.",
            ],
            Dated(Scenario([Mat(2), Bench(2), Table(2)], [Batch("a", 100, Monday)], weather: weather), "a")[^3..]
        );
    }

    // One mat: the second tray is sown when the first leaves it, on day 3. That wait is over at once, and another begins: for the bench, to
    // day 17; it is grown on Saturday day 20, goes to the table on Monday, while the first goes out, and follows on day 24.
    [Fact]
    public void A_sowing_that_waits_for_a_mat_and_then_for_a_bench() =>
        Assert.Equal<string[]>(
            [
                "2027-03-01: tray 1 sown on Mat.",
                "2027-03-01: 1 tray unsown, waiting for room on Mat (1 of 1 places held by a 1).",
                "2027-03-04: that wait has lasted 3 days.",
                "2027-03-04: tray 1 moved from Mat to bench.",
                "2027-03-04: tray 2 sown on Mat.",
                "2027-03-08: 1 tray on Mat ready, waiting for room on bench (1 of 1 places held by a 1).",
                "2027-03-18: that wait has lasted 10 days.",
                "2027-03-18: tray 1 moved from bench to Table.",
                "2027-03-18: tray 2 moved from Mat to bench.",
                "2027-03-22: tray 1 set out from Table with 50 plants, on time.",
                "2027-03-22: tray 2 moved from bench to Table.",
                "2027-03-25: tray 2 set out from Table with 50 plants, 3 days after the planned date.",
            ],
            Dated(
                Scenario([Mat(1), Bench(1), Table(1)], [Batch("a", 100, Monday)], new SiteRules { SowWaitDays = 30, SowGiveUpDays = 40 }),
                "a"
            )
        );

    // Both grown on day 17; the one place of the table is free again on day 21, and on day 24.
    [Fact]
    public void Trays_on_the_bench_that_wait_for_the_table() =>
        Assert.Equal<string[]>(
            [
                "2027-03-18: tray 1 moved from bench to Table.",
                "2027-03-18: 1 tray on bench ready, waiting for room on Table (1 of 1 places held by a 1).",
                "2027-03-22: that wait has lasted 4 days.",
                "2027-03-22: tray 1 set out from Table with 50 plants, on time.",
                "2027-03-22: tray 2 moved from bench to Table.",
                "2027-03-25: tray 2 set out from Table with 50 plants, 3 days after the planned date.",
            ],
            Dated(Scenario([Mat(2), Bench(2), Table(1)], [Batch("a", 100, Monday)]), "a")[^6..]
        );

    // Without bottom heat a sowing waits for the benches: for the second first, which is its own first choice.
    [Fact]
    public void A_sowing_that_waits_for_a_bench_names_the_bench_it_asks_first()
    {
        var scenario = Scenario(
            [Mat(9), Bench(1), Bench(1, "second"), Table(9)],
            [Batch("a", 150, Monday)],
            crops: [Crop() with { BottomHeat = false, Benches = ["second", "bench"] }]
        );
        Assert.Contains(
            "2027-03-01: 1 tray unsown, waiting for room on second (1 of 1 places held by a 1).",
            Dated(scenario, "a"),
            StringComparer.Ordinal
        );
    }

    // The first choice has no place, so what is full is the other bench.
    [Fact]
    public void A_bench_without_a_place_is_not_called_full()
    {
        var scenario = Scenario(
            [Mat(9), Bench(1), Bench(0, "second"), Table(9)],
            [Batch("a", 100, Monday)],
            crops: [Crop() with { BottomHeat = false, Benches = ["second", "bench"] }]
        );
        Assert.Contains(
            "2027-03-01: 1 tray unsown, waiting for room on bench (1 of 1 places held by a 1); second has no place open.",
            Dated(scenario, "a"),
            StringComparer.Ordinal
        );
    }

    // Seven batches for seven mats, one of two trays and one of a tray of two places: by places, then by name, five by name.
    [Fact]
    public void Those_who_hold_a_space_are_named_by_their_places_and_the_rest_are_counted()
    {
        var scenario = Scenario(
            [Mat(9), Bench(9), Table(9)],
            [
                Batch("a", 50, Monday),
                Batch("b", 20, Monday) with
                {
                    TrayId = "big",
                },
                Batch("c", 50, Monday),
                Batch("d", 100, Monday),
                Batch("e", 50, Monday),
                Batch("f", 50, Monday),
                Batch("g", 50, Monday),
                Batch("z", 50, Monday.AddDays(1)),
            ],
            new SiteRules { SowWaitDays = 30, SowGiveUpDays = 40 }
        );
        Assert.Contains(
            "2027-03-02: 1 tray unsown, waiting for room on Mat (9 of 9 places held by b 2, d 2, a 1, c 1, e 1, others 2).",
            Dated(scenario, "z"),
            StringComparer.Ordinal
        );
    }

    // The flat's five trays find its own place, one of the first bench and two of the second; batch a holds two to day 17.
    [Fact]
    public void A_flat_keeps_the_free_places_of_all_its_benches()
    {
        var scenario = Scenario(
            [Mat(9), Bench(4), Bench(2, "second"), Table(9)],
            [Batch("a", 100, Monday), PotUpBatch("p", 250, Monday, seedsPerFlat: 250), Batch("z", 50, Monday.AddDays(8))]
        );
        Assert.Contains(
            "2027-03-11: 1 flat on bench ready, waiting for room on bench (3 of 4 places held by a 2, p 1); "
                + "one flat needs 5 places for its trays at once, its own among them, and keeps the 3 free places of its benches "
                + "until then.",
            Dated(scenario, "p"),
            StringComparer.Ordinal
        );
        Assert.Contains(
            "2027-03-12: 1 tray on Mat ready, waiting for room on bench (3 of 4 places held by a 2, p 1); what is free is kept "
                + "for a flat of p, which needs 5 places for its trays at once.",
            Dated(scenario, "z"),
            StringComparer.Ordinal
        );
    }

    [Fact]
    public void A_flat_that_keeps_nothing_says_nothing_of_it() =>
        Assert.Contains(
            "2027-03-11: 1 flat on bench ready, waiting for room on bench (1 of 1 places held by p 1); one flat needs 3 places "
                + "for its trays at once, its own among them.",
            Dated(Scenario([Mat(9), Bench(1), Table(9)], [PotUpBatch("p", 120, Monday, seedsPerFlat: 120)]), "p"),
            StringComparer.Ordinal
        );

    // The tray of b takes two places and there is one: it is refused, and nobody overtakes it, not even when those on the bench wait for a
    // table from day 17 on.
    [Fact]
    public void A_place_kept_for_a_larger_tray_is_said_to_be()
    {
        var told = Dated(
            Scenario(
                [Mat(9), Bench(3), Table(0)],
                [Batch("a", 100, Monday), Batch("b", 20, Monday) with { TrayId = "big" }, Batch("z", 50, Monday.AddDays(1))]
            ),
            "z"
        );
        Assert.Contains(
            "2027-03-05: 1 tray on Mat ready, waiting for room on bench (2 of 3 places held by a 2); what is free is kept for "
                + "trays before these in the order of work.",
            told,
            StringComparer.Ordinal
        );
        Assert.DoesNotContain(told, line => line.Contains("flat of", StringComparison.Ordinal));
    }

    [Fact]
    public void A_space_that_nobody_holds_names_nobody() =>
        Assert.Contains(
            "2027-03-01: 1 tray unsown, waiting for room; Mat has no place open.",
            Dated(Scenario([Mat(0), Bench(0), Table(1)], [Batch("a", 50, Monday)]), "a"),
            StringComparer.Ordinal
        );

    // Four flats of 30 seedlings for two trays of 50: 30, 60, 40 and 70 plants, the rest passed on each time.
    [Fact]
    public void A_flat_of_too_few_seedlings_passes_them_on() =>
        Assert.Equal<string[]>(
            [
                "2027-03-11: flat 1 gave 30 seedlings, too few for a tray; they are passed on.",
                "2027-03-11: flat 2 gave 30 seedlings, potted up into tray 1 on bench.",
                "2027-03-11: flat 3 gave 30 seedlings, too few for a tray; they are passed on.",
                "2027-03-11: flat 4 gave 30 seedlings, potted up into tray 2 on bench.",
            ],
            [
                .. Dated(Scenario([Mat(9), Bench(9), Table(9)], [PotUpBatch("p", 100, Monday, seedsPerFlat: 30)]), "p")
                    .Where(line => line.StartsWith("2027-03-11", StringComparison.Ordinal)),
            ]
        );

    // Ready to pot up on day 10, thrown out 14 days later; the bench has a place for each flat and none for the trays.
    [Theory]
    [InlineData(1, "flat 1 thrown out 14 days after it was ready to pot up.")]
    [InlineData(2, "flats 1 to 2 thrown out 14 days after they were ready to pot up.")]
    public void A_flat_thrown_out_was_ready_so_many_days_before(int flats, string told) =>
        Assert.Contains(
            $"2027-03-25: {told}",
            Dated(Scenario([Mat(9), Bench(flats), Table(9)], [PotUpBatch("p", 120 * flats, Monday, seedsPerFlat: 120)]), "p"),
            StringComparer.Ordinal
        );

    // Sown on Tuesday at half past eight and grown on Friday day 18 at that time; due three nights later, on Monday, and thrown out 21 days
    // after.
    [Fact]
    public void The_days_since_a_tray_was_ready_count_from_the_round_of_that_day()
    {
        var scenario = Scenario(
            [Mat(4), Bench(4), Table(4)],
            [Batch("a", 50, Monday.AddDays(1)) with { SetOut = Monday.AddDays(49) }],
            new SiteRules { RoundAt = new TimeOnly(8, 30) }
        );
        Assert.Contains(
            "2027-04-12: tray 1 thrown out 21 days after it was ready for the field.",
            Dated(scenario, "a"),
            StringComparer.Ordinal
        );
    }

    // One place of each kind, so that trays come through one by one; the play ends on day 56, 35 days after the planned date. Out on days
    // 21, 24, 38, 41 and 55; in time are those of the first two, three days late at most. The sixth stands on the table by then, and the
    // seventh on the bench.
    [Fact]
    public void What_never_went_out_and_what_still_stands_is_told_at_the_end()
    {
        var scenario = Scenario(
            [Mat(1), Bench(1), Table(1)],
            [Batch("a", 350, Monday)],
            new SiteRules { SowWaitDays = 100, SowGiveUpDays = 100 }
        );
        Assert.Equal<string[]>(
            [
                "In the end 250 plants went out, 100 of the 350 wanted in time; 100 never went out.",
                "Still standing on the last day: 2 trays, 0 flats.",
            ],
            Told(scenario, "a")[^2..]
        );
    }

    // The benches are full from day 17 on, when a tray of c comes after that of b has gone to the table. On day 18 the trays of a, grown
    // and before their table date, ask one by one and are refused at the first; on day 21 that first one finds the place of b, and then the
    // benches are not full any more.
    [Fact]
    public void Trays_that_are_refused_one_by_one_stay_together()
    {
        var scenario = Scenario(
            [Mat(5), Bench(4), Table(1)],
            [
                Batch("a", 150, Monday) with
                {
                    SetOut = Monday.AddDays(28),
                },
                Batch("b", 50, Monday) with
                {
                    SetOut = Monday.AddDays(21),
                },
                Batch("c", 50, Monday) with
                {
                    SetOut = Monday.AddDays(35),
                },
            ]
        );
        var told = Dated(scenario, "a");
        Assert.Contains(
            "2027-03-19: 3 trays on bench ready, waiting for room on Table (1 of 1 places held by b 1).",
            told,
            StringComparer.Ordinal
        );
        Assert.Contains("2027-03-22: tray 1 moved from bench to Table.", told, StringComparer.Ordinal);
    }

    [Fact]
    public void Trays_by_number_in_words()
    {
        Assert.Equal("tray 3", Runs(flat: false, (2, 1)));
        Assert.Equal("trays 1 to 3", Runs(flat: false, (0, 2), (2, 1)));
        Assert.Equal("flats 1 and 3", Runs(flat: true, (2, 1), (0, 1)));
        Assert.Equal("trays 1, 3 and 5 to 7", Runs(flat: false, (0, 1), (2, 1), (4, 3)));

        static string Runs(bool flat, params (int First, int Count)[] runs)
        {
            var all = new TrayRuns(flat);
            foreach (var (first, count) in runs)
            {
                all.Add(first, count);
            }

            return all.ToString();
        }
    }

    // Thirty flats, one sown each work day, none of which ever finds the places for its trays: those of the last four days stand at the end
    // (LedgerTests).
    [Fact]
    public void Flats_that_still_stand_are_told_too()
    {
        var scenario = Scenario(
            [Mat(40), Bench(11), Table(40)],
            [PotUpBatch("p", 120, Monday, seedsPerFlat: 120) with { TrayId = "big", Flats = 30 }],
            new SiteRules
            {
                SowTraysADay = 1,
                SowWaitDays = 60,
                SowGiveUpDays = 60,
            }
        );
        Assert.Equal("Still standing on the last day: 0 trays, 4 flats.", Told(scenario, "p")[^1]);
    }

    [Fact]
    public void A_batch_that_the_plan_lacks_has_no_story() =>
        Assert.Throws<ArgumentException>(() => Told(Scenario([Mat(1), Bench(1), Table(1)], [Batch("a", 50, Monday)]), "b"));

    private static string[] Told(Scenario scenario, string batch) => [.. SeasonStory.Tell(Plan(scenario), 1, 0, batch).Lines];

    // The lines with a date: what happened, and when.
    private static string[] Dated(Scenario scenario, string batch) =>
        [.. Told(scenario, batch).Where(line => line.StartsWith("2027-", StringComparison.Ordinal))];
}
