using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using static BenchSim.Season.Tests.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>Stories of seasons that were drawn by hand in <see cref="GanttTests"/>: the lines follow from the dates there.</summary>
public class StoryTests
{
    [Fact]
    public void Trays_that_move_alike_on_a_day_share_a_line_and_a_potted_tray_has_its_bench() => Assert.Equal<string[]>(
        [
            "2027-03-01: flat 1 sown on Mat.",
            "2027-03-04: flat 1 moved from Mat to bench.",
            "2027-03-11: flat 1 gave 120 seedlings, potted up into trays 1 to 3: 2 on bench and 1 on second.",
            "2027-03-22: trays 1 to 2 moved from bench to Table.",
            "2027-03-22: tray 3 moved from second to Table.",
            "2027-03-25: trays 1 to 3 set out from Table with 120 plants, on time.",
        ],
        Dated(Scenario([Mat(1), Bench(2), Bench(1, "second"), Table(3)], [PotUpBatch("p", 120, Monday, seedsPerFlat: 120)]), "p"));

    // Batch a's tray leaves its bench place on day 17. Until then the flat needs 3 places and its own and one more can be had.
    [Fact]
    public void A_flat_that_waits_says_how_many_places_it_needs()
    {
        var scenario = Scenario([Mat(2), Bench(3), Table(4)], [Batch("a", 50, Monday), PotUpBatch("p", 120, Monday, seedsPerFlat: 120)]);
        Assert.Contains(
            "2027-03-11: 1 flat on bench ready, waiting for room on bench (2 of 3 places held by a 1, p 1); "
            + "one flat needs 3 places for its trays at once, its own among them, and keeps the free place of its benches until then.",
            Dated(scenario, "p"), StringComparer.Ordinal);
        Assert.Contains("2027-03-18: that wait has lasted 7 days.", Dated(scenario, "p"), StringComparer.Ordinal);
    }

    // Sown on Tuesday day 8 and off the mat on day 11, while the flat of p keeps the free bench place from day 10 to day 17.
    [Fact]
    public void A_place_that_looks_free_is_said_to_be_kept()
    {
        var scenario = Scenario(
            [Mat(2), Bench(3), Table(4)],
            [Batch("a", 50, Monday), PotUpBatch("p", 120, Monday, seedsPerFlat: 120), Batch("z", 50, Monday.AddDays(8))]);
        Assert.Contains(
            "2027-03-12: 1 tray on Mat ready, waiting for room on bench (2 of 3 places held by a 1, p 1); "
            + "what is free is kept for a flat of p, which needs 3 places for its trays at once.",
            Dated(scenario, "z"), StringComparer.Ordinal);
    }

    // Ready on Monday day 21 and wanted on day 49: on day 42 the trays have been ready for 21 days and are thrown out.
    [Fact]
    public void Trays_thrown_out_were_ready_so_many_days_before()
    {
        var scenario = Scenario([Mat(4), Bench(4), Table(4)], [Batch("a", 200, Monday) with { SetOut = Monday.AddDays(49) }]);
        Assert.Contains("2027-04-12: trays 1 to 4 thrown out 21 days after they were ready for the field.", Dated(scenario, "a"), StringComparer.Ordinal);
    }

    [Fact]
    public void A_sowing_given_up_is_told() => Assert.Contains(
        "2027-03-03: 1 tray given up unsown after 2 days without a place.",
        Dated(Scenario([Mat(0), Bench(0), Table(1)], [Batch("a", 50, Monday)], new SiteRules { SowWaitDays = 0, SowGiveUpDays = 2 }), "a"), StringComparer.Ordinal);

    // The lines with a date: what happened, and when.
    private static string[] Dated(Scenario scenario, string batch) =>
        [.. SeasonStory.Tell(Plan(scenario), 1, 0, batch).Lines.Where(line => line.StartsWith("2027-", StringComparison.Ordinal))];
}
