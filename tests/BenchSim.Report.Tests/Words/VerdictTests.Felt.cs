using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Words;

/// <summary>The first words of the verdict: how many plants are late, whose, when; and what decides, by name.</summary>
public partial class VerdictTests
{
    [Theory]
    [InlineData(700, 1200, 3000, "In a usual year 700 of 12,400 plants are late; in one year of ten 1,200 or more.")]
    [InlineData(1, 2, 9, "In a usual year 1 of 12,400 plants is late; in one year of ten 2 or more.")]
    [InlineData(0, 1200, 3000, "In a usual year no plant is late; in one year of ten 1,200 or more of 12,400 plants are.")]
    [InlineData(0, 0, 3000, "In nine years of ten no plant is late; in the worst of 1,000, 3,000 of 12,400 plants are.")]
    [InlineData(0, 0, 0, "No plant is late in any of 1,000 years played.")]
    public void The_first_sentence_counts_the_late_plants(int usual, int bad, int worst, string sentence) =>
        Assert.StartsWith(
            sentence,
            Verdict.Of(Short() with { PlantsLate = Estimate(usual, 0, bad, 0, worst) }).Headline,
            StringComparison.Ordinal
        );

    // 2 % of 12,400 are 248.
    [Theory]
    [InlineData(20, 249, "20 never get out; in one year of ten 249 or more.")]
    [InlineData(20, 248, null)]
    [InlineData(0, 249, "In one year of ten 249 or more of the plants never get out.")]
    public void Many_plants_that_never_get_out_are_told_after_more_late_ones(int usual, int bad, string? told)
    {
        var result = Short() with { PlantsLate = Estimate(30, 0, 60, 0, 90), PlantsShort = Estimate(usual, 0, bad, 0, 500) };
        var headline = Verdict.Of(result).Headline;
        Assert.Equal(told is not null, headline.Contains("never get out", StringComparison.Ordinal));
        Assert.EndsWith(told ?? "", headline, StringComparison.Ordinal);
    }

    [Fact]
    public void They_are_told_first_where_they_are_more_than_the_late_ones() =>
        Assert.StartsWith(
            "In a usual year 900 of 12,400 plants never get out; in one year of ten 950 or more. In nine years of ten no "
                + "other plant is late; in the worst of 1,000, 60 of 12,400 plants are.",
            Verdict.Of(Short() with { PlantsLate = Estimate(0, 0, 0, 0, 60), PlantsShort = Estimate(900, 0, 950, 0, 990) }).Headline,
            StringComparison.Ordinal
        );

    // Late on average: of the first batch 1,000 - 700 - 100 = 200 plants, of the second 400 - 390 - 0 = 10.
    [Fact]
    public void It_says_whose_the_late_plants_are_and_when_they_are_due()
    {
        var result = Late(200, 10);
        Assert.EndsWith(
            $"They are {result.Batches[0].Plan.Order.Id} (Ada) and {result.Batches[1].Plan.Order.Id} (Ben), due 1 to 20 May.",
            Verdict.Of(result).Headline,
            StringComparison.Ordinal
        );
    }

    // Waits: 60 tray-days over 12 trays are 5 days a tray; the other waits 0.4 days, too little to be named. The weather: 24 tray-days over
    // 12 trays. Slow: the one that hardly waits and has 10 of its 400 plants late, 2.5 %.
    [Fact]
    public void It_names_the_batches_that_wait_are_held_and_are_slow()
    {
        var result = Late(200, 10);
        var (first, second) = (result.Batches[0], result.Batches[1]);
        first = first with
        {
            Plan = first.Plan with { Trays = 12 },
            BlockedTrayDays = [.. first.BlockedTrayDays.Select((_, at) => Mean(at == 0 ? 60 : 0))],
            HoldTrayDays = Mean(24),
        };
        second = second with
        {
            Plan = second.Plan with { Trays = 10, ReadyOn = new(2027, 5, 17) },
            BlockedTrayDays = [.. second.BlockedTrayDays.Select((_, at) => Mean(at == 0 ? 4 : 0))],
            HoldTrayDays = Mean(0),
        };
        Assert.Equal(
            [
                "Out of room: heat mats in 94 % of seasons, from 5 April, 12 trays waiting on the worst day; hardening table in 3 % of "
                    + $"seasons, from 20 May. Longest wait: {first.Plan.Order.Id} 5 days a tray.",
                $"The weather holds longest: {first.Plan.Order.Id} 2 days a tray.",
                $"Slow: {second.Plan.Order.Id} (3 days in hand, 3 % of its plants late).",
            ],
            Verdict.Of(result with { Batches = [first, second] }).Decides.ToArray()
        );
    }

    private static StudyResult Late(int first, int second)
    {
        var result = Short();
        BatchResult Of(BatchResult batch, string grower, int plants, int late, DateOnly due) =>
            batch with
            {
                Plan = batch.Plan with { SetOutOn = due, Order = batch.Plan.Order with { Plants = plants, Grower = grower } },
                PlantsInTime = Mean(plants - late - (plants / 10)),
                PlantsShort = Mean(plants / 10),
            };
        return result with
        {
            Batches =
            [
                Of(result.Batches[0], "Ada", 1000, first, new(2027, 5, 1)),
                Of(result.Batches[1], "Ben", 400, second, new(2027, 5, 20)),
            ],
        };
    }

    private static Estimate Mean(double mean) => Estimate(0, 0, 0, 0, 0) with { Mean = mean };
}
