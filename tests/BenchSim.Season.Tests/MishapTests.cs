using BenchSim.Engine.Randomness;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>
/// Mishaps (docs/model.md section 2), by hand. 100 plants in two trays: sown on Monday 1 March on the mat, on the bench from 4 March, on
/// the table from 18 March, out on 22 March. Every seed comes up and nothing else is lost.
/// </summary>
public class MishapTests
{
    // Midnight of the days on which the trays stand on the mat: 2 to 4 March.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 2)]
    [InlineData(3, 2)]
    [InlineData(4, 0)]
    public void It_strikes_what_stands_in_its_space_at_the_midnight_that_opens_its_day(int day, int trays)
    {
        var result = Played(Mishap(day) with { SpaceId = "mat" });
        Assert.Equal([trays], result.MishapTrays);
        Assert.Equal(trays == 0 ? 100 : 0, result.Batches[0].PlantsOut);
        Assert.Equal(trays == 0 ? 0 : 100, result.PlantsLostToMishaps);
    }

    [Theory]
    [InlineData("main", null, null, 2)]
    [InlineData("other", null, null, 0)]
    [InlineData(null, "bench", null, 2)]
    [InlineData(null, "table", null, 0)]
    [InlineData(null, null, "plain", 2)]
    [InlineData(null, null, "another", 0)]
    [InlineData("main", "bench", "plain", 2)]
    [InlineData("other", "bench", "plain", 0)]
    public void All_that_it_names_must_hold(string? house, string? space, string? crop, int trays) =>
        Assert.Equal([trays], Played(Mishap(10) with { HouseId = house, SpaceId = space, CropId = crop }).MishapTrays);

    // The table is outdoors: what strikes a house spares it, what names nothing does not.
    [Fact]
    public void On_the_table_only_what_names_no_house_strikes()
    {
        Assert.Equal([0, 2], Played(Mishap(19) with { HouseId = "main" }, Mishap(19) with { Id = "all" }).MishapTrays);
        Assert.Equal([2], Played(Mishap(21)).MishapTrays);
        Assert.Equal([0], Played(Mishap(22)).MishapTrays);
    }

    // Two that spare a half and four fifths: a plant is left with 0.4. A tray's plants are read at that chance from the number it has
    // anyway: the fewest whose chance is reached, by the sum of C(50, k) 0.4^k 0.6^(50 - k).
    [Fact]
    public void What_they_spare_is_multiplied_and_read_from_the_trays_own_number()
    {
        var result = Played(Mishap(8) with { Loss = 0.5 }, Mishap(12) with { Id = "second", Loss = 0.2 });
        Assert.Equal([2, 2], result.MishapTrays);
        var block = Philox.Block(new PhiloxBlock(0, 0, 6, 0), PhiloxKey.Of(7, "a"));
        Assert.Equal(Coins(block.Uniform0) + Coins(block.Uniform1), result.Batches[0].PlantsOut);
        Assert.Equal(100 - result.Batches[0].PlantsOut, result.PlantsLostToMishaps);

        static int Coins(double u)
        {
            var (sum, one, plants) = (0.0, Math.Pow(0.6, 50), 0);
            while (sum + one < u)
            {
                sum += one;
                one *= (50 - plants) / (plants + 1.0) * (0.4 / 0.6);
                plants++;
            }

            return plants;
        }
    }

    // Seedlings of a flat struck before it is potted up: none are left, so no tray is filled. Trays filled before it strikes are what it
    // takes then.
    [Fact]
    public void A_flat_loses_its_seedlings_and_trays_filled_from_a_flat_begin_anew()
    {
        var (flats, trays) = (Played(pottedUp: true, Mishap(5)), Played(pottedUp: true, Mishap(14)));
        Assert.Equal((1, 0, 0), (flats.MishapTrays[0], flats.Batches[0].TraysStarted, flats.PlantsLostToMishaps));
        Assert.Equal((2, 2, 0), (trays.MishapTrays[0], trays.Batches[0].TraysStarted, trays.Batches[0].PlantsOut));
        var half = Played(pottedUp: true, Mishap(5) with { Loss = 0.5 });
        Assert.Equal(half.Batches[0].PlantsOut, Math.Min(100, Seedlings()));

        // Binomial(200, 1/2) at the flat's own number.
        static int Seedlings()
        {
            var u = Philox.Block(new PhiloxBlock(0, 0, 7, 0), PhiloxKey.Of(7, "a")).Uniform0;
            var (sum, one, plants) = (0.0, Math.Pow(0.5, 200), 0);
            while (sum + one < u)
            {
                sum += one;
                one *= (200 - plants) / (plants + 1.0);
                plants++;
            }

            return plants;
        }
    }

    // In half of the seasons, on one of ten days; on three of them the trays stand on the mat: 3 in 20. 4,000 seasons, within four standard
    // errors (chance of error under 1 in 10,000).
    [Fact]
    public void Chance_and_day_are_those_given()
    {
        const int Seasons = 4000;
        var mishap = Mishap(0) with { SpaceId = "mat", To = Monday.AddDays(9), Chance = 0.5 };
        var player = new SeasonPlayer(Planned(pottedUp: false, mishap), 7);
        var result = new SeasonResult();
        var struck = 0;
        for (var season = 0; season < Seasons; season++)
        {
            player.Play(season, PlaceLimits.AsGiven, result);
            struck += result.MishapTrays[0] > 0 ? 1 : 0;
        }

        Assert.Equal(0.15, struck / (double)Seasons, 4 * Math.Sqrt(0.15 * 0.85 / Seasons));
    }

    [Fact]
    public void The_story_tells_of_it()
    {
        var plan = Planned(pottedUp: false, Mishap(10) with { Name = "Mice", Loss = 0.25 });
        Assert.Contains(
            "2027-03-11: Mice: 25 % of the plants lost of trays 1 to 2 on bench.",
            SeasonStory.Tell(plan, 7, 0, "a").Lines,
            StringComparer.Ordinal
        );
    }

    private static Mishap Mishap(int day) =>
        new()
        {
            Id = "mishap",
            Name = "Mishap",
            Chance = 1,
            From = Monday.AddDays(day),
            To = Monday.AddDays(day),
            Loss = 1,
        };

    private static SeasonPlan Planned(bool pottedUp, params Mishap[] mishaps) =>
        Plan(
            Scenario([Mat(9), Bench(9), Table(9)], [pottedUp ? PotUpBatch("a", 100, Monday) : Batch("a", 100, Monday)]) with
            {
                Mishaps = [.. mishaps],
            }
        );

    private static SeasonResult Played(params Mishap[] mishaps) => Played(pottedUp: false, mishaps);

    private static SeasonResult Played(bool pottedUp, params Mishap[] mishaps)
    {
        var result = new SeasonResult();
        new SeasonPlayer(Planned(pottedUp, mishaps), 7).Play(0, PlaceLimits.AsGiven, result);
        return result;
    }
}
