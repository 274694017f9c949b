using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Tests.Planning;

/// <summary>
/// What to buy for the three batches of <see cref="PlannedWorkTests"/>, counted by hand: A (Ana) sows 200 seeds in 4 trays and B (Mara) 100
/// in 2 on 1 March, P (Mara) 200 in a flat on 8 March, potted up into 3 trays on the 18th, when all 9 trays stand.
/// </summary>
public class PurchasesTests
{
    private static readonly DateOnly s_first = new(2027, 3, 1);
    private static readonly DateOnly s_last = new(2027, 4, 30);

    [Fact]
    public void What_is_not_on_hand_is_rounded_up_to_packs()
    {
        // 500 seeds less 120 are 380: 3 packs of 150, and 120 + 450 - 500 = 70 are left. Ten days before 1 March is 19 February.
        var seed = Assert.Single(Bought(Seed with { Pack = 150, Price = 4, OnHand = 120, DeliveryDays = 10 }));
        Assert.Equal((500, "seeds", 3, 70, 12.0), (seed.Needed, seed.Unit, seed.Packs, seed.LeftOver, seed.Cost));
        Assert.Equal((new DateOnly(2027, 3, 1), new DateOnly(2027, 2, 19)), (seed.NeededBy, seed.OrderBy));
        Assert.Equal([("Ana", 200L), ("Mara", 300L)], [.. seed.Growers]);
    }

    [Theory]
    [InlineData(499, 1, 499)]
    [InlineData(500, 0, 0)]
    [InlineData(700, 0, 200)]
    public void What_is_on_hand_is_not_bought(int onHand, long packs, long leftOver)
    {
        // A pack of 500: one seed short is a whole pack, and 499 are left.
        var seed = Assert.Single(Bought(Seed with { Pack = 500, Price = 4, OnHand = onHand }));
        Assert.Equal((packs, leftOver, packs * 4.0), (seed.Packs, seed.LeftOver, seed.Cost));
        Assert.Equal(packs == 0, seed.OrderBy is null);
    }

    [Fact]
    public void Trays_flats_and_carriers_are_bought_too()
    {
        // 9 trays filled are 3 cases of 4, 3 left; one flat of 5 on hand, 4 left; 9 carriers are one stack of 10.
        var bought = Bought(
            new Supply { Item = "50", Pack = 4 },
            new Supply { Item = "flat", OnHand = 5 },
            new Supply { Item = Supply.Carrier, Pack = 10 },
            new Supply { Item = "no such tray", Pack = 10 }
        );
        Assert.Equal(
            [("trays", 9L, 3L, 3L), ("flats", 1L, 0L, 4L), ("carriers", 9L, 1L, 1L)],
            bought.Select(each => (each.Unit, each.Needed, each.Packs, each.LeftOver))
        );
        Assert.Null(bought[0].Cost);
    }

    // From 18 March on three trays are filled, but nine stand: those are wanted where trays are used again.
    [Theory]
    [InlineData(false, 3)]
    [InlineData(true, 9)]
    public void Trays_that_are_used_again_are_counted_at_their_most(bool isReused, long needed)
    {
        var plan = Plan(new Supply { Item = "50", IsReused = isReused });
        var from = new DateOnly(2027, 3, 18);
        var tray = Assert.Single(Purchases.Of(plan, SupplyNeeds.Of(plan, from, s_last), from, s_last));
        Assert.Equal((needed, isReused), (tray.Needed, tray.Growers.IsEmpty));
    }

    [Fact]
    public void A_line_with_a_variety_takes_its_sowings_and_one_without_the_rest()
    {
        var bought = Bought(Seed, Seed with { Variety = "early RED" });
        Assert.Equal([("", 300L), ("early RED", 200L)], bought.Select(each => (each.Supply.Variety, each.Needed)));
    }

    [Fact]
    public void Lines_stand_by_supplier_and_those_without_one_last()
    {
        var bought = Bought(
            Seed,
            new Supply { Item = "flat", Supplier = "b" },
            new Supply { Item = "50", Supplier = "A" },
            new Supply { Item = Supply.Carrier, Supplier = "b" }
        );
        Assert.Equal(["A", "b", "b", ""], bought.Select(each => each.Supply.Supplier), StringComparer.Ordinal);
    }

    private static Supply Seed => new() { Item = PlannedWorkTests.Plan().Batches[0].Crop.Id };

    private static ImmutableArray<Purchase> Bought(params ImmutableArray<Supply> supplies)
    {
        var plan = Plan(supplies);
        return Purchases.Of(plan, SupplyNeeds.Of(plan, s_first, s_last), s_first, s_last);
    }

    private static SeasonPlan Plan(params ImmutableArray<Supply> supplies)
    {
        var plan = PlannedWorkTests.Plan();
        return plan with
        {
            Scenario = plan.Scenario with { Supplies = supplies },
            Batches =
            [
                .. plan.Batches.Select(batch =>
                    batch with
                    {
                        Order = batch.Order with
                        {
                            Grower = batch.Order.Id == "A" ? "Ana" : "Mara",
                            Variety = batch.Order.Id == "A" ? "Early red" : "",
                        },
                    }
                ),
            ],
        };
    }
}
