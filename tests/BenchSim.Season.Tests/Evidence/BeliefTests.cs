using System.Collections.Immutable;
using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Evidence;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Stands;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Evidence;

/// <summary>
/// What was seen changes the luck by Bayes' rule. The small site gains 10 degree-days a day everywhere; batches are sown at 08:00 of day 0,
/// a Monday. Half the seedlings of a usual batch are up at 30 degree-days, and its trays are grown after 140 more.
/// </summary>
public class BeliefTests
{
    private const int MatSpace = 0;
    private const int BenchSpace = 1;
    private const double Cv = 0.2;

    private static readonly double[] s_grid = [.. Enumerable.Range(0, 41).Select(point => (point + 0.5) / 41)];
    private static readonly double[] s_factors = [.. s_grid.Select(chance => Lognormal.MeanOne(chance, Cv))];

    // A packet that was tested with 16 of 20, and seeds of which all that ever come are up: the beta law with the new seeds added.
    [Theory]
    [InlineData(40, 50)]
    [InlineData(36, 50)]
    [InlineData(10, 10)]
    public void Germination_is_that_of_a_larger_test(int count, int of)
    {
        var beliefs = Of(9, Crop(), Looked(Seen(LogKind.Up, 9, count, of)));
        Assert.Equal((16.0 + count) / (20 + of), MeanGermination(beliefs, 0), 0.005);
    }

    // The grid ends where one in 82 lies beyond it.
    [Fact]
    public void What_the_law_hardly_allows_is_not_believed() =>
        Assert.Equal(new BetaLaw(0.8, 20).Quantile(0.5 / 41), MeanGermination(Of(9, Crop(), Looked(Seen(LogKind.Up, 9, 0, 50))), 0), 0.005);

    [Fact]
    public void Batches_of_a_packet_tell_of_it_together()
    {
        var beliefs = Of(9, Crop(), Looked(Seen(LogKind.Up, 9, 40, 50)), Looked(Seen(LogKind.Up, 9, 20, 40)), Looked());
        Assert.Equal((16.0 + 60) / (20 + 90), MeanGermination(beliefs, 0), 0.005);
        Assert.Equal(MeanGermination(beliefs, 0), MeanGermination(beliefs, 2));
        Assert.Null(beliefs.OfBatch(2));
    }

    // Of 20 seeds few are up to 5, half up to 15, most up to 19 and all 20: any number of those, and one word in twenty of any number.
    [Theory]
    [InlineData(CountWord.Few, 0, 5)]
    [InlineData(CountWord.Half, 6, 15)]
    [InlineData(CountWord.Most, 16, 19)]
    [InlineData(CountWord.All, 20, 20)]
    public void A_word_is_any_of_the_numbers_that_it_stands_for(CountWord word, int least, int most)
    {
        var law = new BetaLaw(0.8, 20);
        double[] germination = [.. s_grid.Select(law.Quantile)];
        double[] weights = [.. germination.Select(chance => InWords(20, chance, least, most))];
        var expected = weights.Zip(germination, (weight, chance) => weight * chance).Sum() / weights.Sum();
        var beliefs = Of(9, Crop(), Looked(new Sighting(LogKind.Up, 9, Of: 20, Word: word)));
        Assert.Equal(expected, MeanGermination(beliefs, 0), 0.001);
    }

    [Fact]
    public void What_is_told_in_words_is_taken_by_itself()
    {
        var crop = Crop() with { EmergeCv = Cv, EmergeSigma = 0.1 };
        var word = new Sighting(LogKind.Up, 3, Of: 30, Word: CountWord.Half);
        var alone = MeanFactor(Of(5, crop, 1, Looked(word)).OfBatch(0)!);
        Assert.Equal(MeanOf(s_factors.Select(factor => InWords(30, Up(30, factor), 8, 22))), alone, 0.001);
        Assert.Equal(alone, MeanFactor(Of(5, crop, 1, Looked(Seen(LogKind.Up, 2, 4, 30), word)).OfBatch(0)!));
        var number = Seen(LogKind.Up, 4, 25, 30);
        Assert.Equal(MeanFactor(Of(5, crop, 1, Looked(number)).OfBatch(0)!), MeanFactor(Of(5, crop, 1, Looked(word, number)).OfBatch(0)!));
    }

    // Losses of mean 0.1 and sample 9; most of 40 cells, 31 to 38, have a plant.
    [Fact]
    public void Words_of_cells_tell_of_the_losses_of_the_batch()
    {
        var crop = Crop() with { StandLoss = 0.1, StandLossCorrelation = 0.1 };
        var belief = Of(9, crop, 1, Looked(new Sighting(LogKind.Good, 9, Of: 40, Word: CountWord.Most))).OfBatch(0)!;
        double[] losses = [.. s_grid.Select(new BetaLaw(0.1, 9).Quantile)];
        double[] weights = [.. losses.Select(loss => InWords(40, 1 - loss, 31, 38))];
        Assert.Equal(
            weights.Zip(losses, (weight, loss) => weight * loss).Sum() / weights.Sum(),
            Mean(u => belief.Cells!.Loss(0, 0, u)),
            0.001
        );
    }

    // With 12 of 30 up at 30 degree-days, by Bayes' rule on the 41 factors: one seed in 500 is counted as it comes.
    [Fact]
    public void Seedlings_up_tell_how_soon_the_batch_comes_up()
    {
        var crop = Crop() with { EmergeCv = Cv, EmergeSigma = 0.1 };
        var belief = Of(5, crop, 1, Looked(Seen(LogKind.Up, 3, 12, 30))).OfBatch(0)!;
        var weights = s_factors.Select(factor => Chance([12, 18], [Up(30, factor)]));
        Assert.Equal(MeanOf(weights), MeanFactor(belief), 0.001);
    }

    // Of the same 30 seeds 4 by day 2 and 13 more by day 3: one multinomial, 4, 13 and 13.
    [Fact]
    public void Looks_at_the_same_cells_are_one_count()
    {
        var crop = Crop() with { EmergeCv = Cv, EmergeSigma = 0.4 };
        var belief = Of(5, crop, 1, Looked(Seen(LogKind.Up, 2, 4, 30), Seen(LogKind.Up, 3, 17, 30))).OfBatch(0)!;
        var weights = s_factors.Select(factor => Chance([4, 13, 13], [Up(20, factor, 0.4), Up(30, factor, 0.4)]));
        Assert.Equal(MeanOf(weights), MeanFactor(belief), 0.001);
    }

    // Other cells, or fewer than before: the last row alone. Two rows of a day are of different cells.
    [Fact]
    public void Looks_at_other_cells_are_not()
    {
        var crop = Crop() with { EmergeCv = Cv, EmergeSigma = 0.1 };
        var last = MeanFactor(Of(5, crop, 1, Looked(Seen(LogKind.Up, 3, 12, 30))).OfBatch(0)!);
        Assert.Equal(last, MeanFactor(Of(5, crop, 1, Looked(Seen(LogKind.Up, 2, 5, 25), Seen(LogKind.Up, 3, 12, 30))).OfBatch(0)!));
        Assert.Equal(last, MeanFactor(Of(5, crop, 1, Looked(Seen(LogKind.Up, 2, 13, 30), Seen(LogKind.Up, 3, 12, 30))).OfBatch(0)!));
        Assert.Equal(last, MeanFactor(Of(5, crop, 1, Looked(Seen(LogKind.Up, 3, 5, 20), Seen(LogKind.Up, 3, 7, 10))).OfBatch(0)!));
    }

    // What is looked at today is looked at before its round, at the heat of the midnight before: 26 2/3 of day 3.
    [Fact]
    public void A_count_of_nothing_is_a_count()
    {
        var crop = Crop() with { EmergeCv = Cv, EmergeSigma = 0.1 };
        var belief = Of(3, crop, 1, Looked(Seen(LogKind.Up, 3, 0, 30))).OfBatch(0)!;
        Assert.Equal(MeanOf(s_factors.Select(factor => Chance([0, 30], [Up(80 / 3.0, factor)]))), MeanFactor(belief), 0.001);
        Assert.True(MeanFactor(belief) > 1.1);
    }

    // Losses of mean 0.1 and sample 9, and of 60 cells 42 with a plant: Beta(0.9 + 18, 8.1 + 42).
    [Fact]
    public void Cells_with_a_plant_tell_of_the_losses_of_the_batch()
    {
        var crop = Crop() with { StandLoss = 0.1, StandLossCorrelation = 0.1 };
        var belief = Of(9, crop, 1, Looked(Seen(LogKind.Good, 9, 42, 60))).OfBatch(0)!;
        Assert.Equal((0.9 + 18) / (9 + 60), Mean(u => belief.Cells!.Loss(0, 0, u)), 0.01);
    }

    // Two seeds a cell, no losses: v is drawn to where 1 - (1 - v)^2 is 0.91.
    [Fact]
    public void Cells_with_a_plant_tell_of_the_packet_too()
    {
        var plan = SeedsPerCell(2);
        Assert.Equal(0.7, MeanGermination(Of(plan, 9, Looked(Seen(LogKind.Good, 9, 9100, 10000))), 0), 0.02);
    }

    // Up at 08:00 of day 3. Not ready on day 15, at 120 degree-days of 140, and ready on day 18, at 150: the law is cut off at both.
    [Fact]
    public void Trays_judged_cut_the_law_of_growth_off()
    {
        var crop = Crop() with { GrowthCv = Cv };
        var growth = Of(20, crop, 1, Looked(Seen(LogKind.NotReady, 15), Seen(LogKind.Ready, 18))).OfBatch(0)!.GrowthAt(0)!;
        var (low, high) = (Normal.Cumulative(Score(120 / 140.0)), Normal.Cumulative(Score(150 / 140.0)));
        foreach (var u in s_grid)
        {
            Assert.Equal(Lognormal.MeanOne(low + (u * (high - low)), Cv), growth.Quantile(u), 1e-5);
        }
    }

    // Ready on day 15, and not ready on day 18 after all.
    [Fact]
    public void The_last_word_holds()
    {
        var crop = Crop() with { GrowthCv = Cv };
        var growth = Of(20, crop, 1, Looked(Seen(LogKind.Ready, 15), Seen(LogKind.NotReady, 18))).OfBatch(0)!.GrowthAt(0)!;
        var low = Normal.Cumulative(Score(150 / 140.0));
        Assert.Equal(Lognormal.MeanOne(low + (0.5 * (1 - low)), Cv), growth.Quantile(0.5), 1e-5);
    }

    // Off the mat on day 4, at 40 degree-days: up to a factor of 4/3 enough are up; since day 3 for one of up to 1, since day 2 for one of
    // up to 2/3.
    [Fact]
    public void A_move_off_the_mat_bounds_its_stage()
    {
        var crop = Crop() with { EmergeCv = Cv };
        var belief = Of(9, crop, 1, Looked() with { Trays = [Trays((MatSpace, 0), (BenchSpace, 4))] }).OfBatch(0)!;
        var weights = s_factors.Select(factor =>
            factor > 4 / 3.0 ? 0.01
            : factor > 1 ? 1
            : factor > 2 / 3.0 ? 1 / 4.0
            : 1 / 9.0
        );
        Assert.Equal(MeanOf(weights), MeanFactor(belief), 0.001);
    }

    // Grown by day 18 at the latest, at 150 of 140 degree-days, wherever they waited for their date.
    [Fact]
    public void A_move_to_the_table_bounds_growth_from_above()
    {
        var crop = Crop() with { GrowthCv = Cv };
        var trays = Trays((MatSpace, 0), (BenchSpace, 4), (2, 18));
        var growth = Of(20, crop, 1, Looked() with { Trays = [trays] }).OfBatch(0)!.GrowthAt(0)!;
        var below = Normal.Cumulative(Score(150 / 140.0));
        var whole = below + (0.01 * (1 - below));
        Assert.Equal(Lognormal.MeanOne(0.5 * whole, Cv), growth.Quantile(0.5), 1e-9);
    }

    // Up on day 3, the pot-up stage at 70 degree-days: potted up on day 11, a Friday, at 80. On Thursday it was at 70, on Wednesday at 60.
    [Fact]
    public void Potting_up_bounds_its_stage_on_both_sides()
    {
        var crop = Crop() with { GrowthCv = Cv };
        var flats = Trays((MatSpace, 0), (BenchSpace, 4)) with { AreFlats = true, End = TrayEnd.UsedUp, EndDay = 11 };
        var plan = Plan(Scenario([Mat(20), Bench(60), Table(60)], [PotUpBatch("b0", 200, Monday)], crops: [crop]));
        var growth = Of(plan, 20, Looked() with { Trays = [flats] }).OfBatch(0)!.GrowthAt(0)!;
        (double UpTo, double Weight)[] steps =
        [
            (10 / 70.0, 1 / 36.0),
            (40 / 70.0, 1 / 25.0),
            (50 / 70.0, 1 / 16.0),
            (60 / 70.0, 1 / 9.0),
            (1, 1 / 4.0),
            (80 / 70.0, 1),
            (double.PositiveInfinity, 0.01),
        ];
        var (whole, upToHigh, before) = (0.0, 0.0, 0.0);
        foreach (var (upTo, weight) in steps)
        {
            var chance = double.IsInfinity(upTo) ? 1 : Normal.Cumulative(Score(upTo));
            whole += weight * (chance - before);
            upToHigh = weight == 1 ? whole : upToHigh;
            before = chance;
        }

        Assert.Equal(whole, growth.Mass, 1e-9);
        Assert.Equal(80 / 70.0, growth.Quantile(upToHigh / whole), 1e-6);
    }

    // Seedlings that are potted up as soon as they are up tell nothing of growth.
    [Fact]
    public void A_stage_of_no_days_says_nothing()
    {
        var crop = Crop() with { GrowthCv = Cv, PotUpDays = 0 };
        var flats = Trays((MatSpace, 0), (BenchSpace, 4)) with { AreFlats = true, End = TrayEnd.UsedUp, EndDay = 8 };
        var plan = Plan(Scenario([Mat(20), Bench(60), Table(60)], [PotUpBatch("b0", 200, Monday)], crops: [crop]));
        var growth = Of(plan, 20, Looked() with { Trays = [flats] }).OfBatch(0)!.GrowthAt(0)!;
        Assert.Equal(Lognormal.MeanOne(0.3, Cv), growth.Quantile(0.3), 1e-9);
    }

    // Of two batches one is looked at.
    [Fact]
    public void The_luck_of_a_batch_that_nobody_looked_at_is_as_it_was()
    {
        var crop = Crop() with { EmergeCv = Cv, GrowthCv = Cv, StandLoss = 0.1, StandLossCorrelation = 0.1 };
        var plan = Site(crop, [null, null]);
        var beliefs = Of(plan, 9, Looked(Seen(LogKind.Up, 9, 30, 50)), Looked());
        var (before, after) = (
            BatchStates.Lucks(plan.Scenario, plan.Batches, 7),
            BatchStates.Lucks(plan.Scenario, plan.Batches, 7, beliefs)
        );
        for (var season = 0; season < 50; season++)
        {
            Assert.Equal(before[1].Of(season), after[1].Of(season));
            Assert.NotEqual(before[0].Of(season), after[0].Of(season));
        }
    }

    private static Beliefs Of(int today, Crop crop, params BatchPast[] batches) =>
        Of(Site(crop, [.. batches.Select(_ => "p")]), today, batches);

    private static Beliefs Of(int today, Crop crop, double germination, BatchPast batch) =>
        Of(Site(crop, ["p"], germination), today, batch);

    private static Beliefs Of(SeasonPlan plan, int today, params BatchPast[] batches)
    {
        using var climate = new PlanClimates(plan.Scenario, plan.Days, 7).Borrow(0);
        var past = new SeasonPast
        {
            Today = today,
            TellsOfLuck = true,
            Batches = [.. batches],
        };
        return Beliefs.Of(plan, past, climate.Climate);
    }

    private static SeasonPlan Site(Crop crop, string?[] packets, double germination = 0.8) =>
        Plan(
            Scenario(
                [Mat(40), Bench(60), Table(60)],
                packets.Select((packet, index) => Batch($"b{index}", 100, Monday) with { PacketId = packet, Germination = germination }),
                new SiteRules { GerminationSample = 20 },
                [crop]
            )
        );

    private static SeasonPlan SeedsPerCell(int seeds) =>
        Plan(
            Scenario(
                [Mat(40), Bench(60), Table(60)],
                [Batch("b0", 100, Monday) with { Germination = 0.8, SeedsPerCell = seeds }],
                new SiteRules { GerminationSample = 20 },
                [Crop() with { KeepPerCell = 1 }]
            )
        );

    // Six trays on the mat, and what was seen of them.
    private static BatchPast Looked(params Sighting[] seen) =>
        new()
        {
            Unsown = 0,
            LastSown = 0,
            NextSown = 6,
            Trays = [Trays((MatSpace, 0))],
            Sightings = [.. seen],
        };

    private static TrayPast Trays(params ImmutableArray<(int Space, int Day)> path) =>
        new()
        {
            AreFlats = false,
            First = 0,
            Count = 6,
            SowDay = 0,
            Path = path,
        };

    private static Sighting Seen(LogKind what, int day, int count = 0, int of = 0) => new(what, day, null, count, of);

    private static double Up(double heat, double factor, double spread = 0.1) => Normal.Cumulative(Math.Log(heat / (30 * factor)) / spread);

    // Of so many by each look and the rest never, with one in 500 counted as it comes.
    private static double Chance(int[] counts, double[] by)
    {
        var parts = by.Append(1).Zip(by.Prepend(0), (until, before) => until - before);
        return counts
            .Zip(parts, (count, part) => Math.Pow((0.998 * part) + (0.002 / counts.Length), count))
            .Aggregate((one, other) => one * other);
    }

    // By the binomial law, term by term.
    private static double InWords(int of, double by, int least, int most)
    {
        var (chance, sum) = ((0.998 * by) + 0.001, 0.0);
        for (var count = least; count <= most; count++)
        {
            var orders = Enumerable.Range(1, count).Aggregate(1.0, (product, at) => product * (of - count + at) / at);
            sum += orders * Math.Pow(chance, count) * Math.Pow(1 - chance, of - count);
        }

        return (0.95 * sum) + (0.05 * (most - least + 1) / (of + 1));
    }

    private static double Score(double factor)
    {
        var sigma = Math.Sqrt(Math.Log(1 + (Cv * Cv)));
        return (Math.Log(factor) + (sigma * sigma / 2)) / sigma;
    }

    private static double MeanOf(IEnumerable<double> weights)
    {
        double[] all = [.. weights];
        return all.Zip(s_factors, (weight, factor) => weight * factor).Sum() / all.Sum();
    }

    private static double MeanFactor(BatchBelief belief) => Mean(u => belief.EmergenceAt(belief.Emergence(0, u)));

    private static double MeanGermination(Beliefs beliefs, int batch)
    {
        var law = new BetaLaw(0.8, 20);
        return Mean(u => law.Quantile(s_grid[beliefs.OfPacket(batch)!.Germination(u)]));
    }

    private static double Mean(Func<double, double> of) => Enumerable.Range(0, 5000).Average(each => of((each + 0.5) / 5000));
}
