using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Season.Tests.Planning;

/// <summary>The order for the three batches of <see cref="PlannedWorkTests"/>, counted by hand.</summary>
public class SupplyNeedsTests
{
    private static readonly DateOnly s_first = new(2027, 3, 1);
    private static readonly DateOnly s_last = new(2027, 4, 30);

    [Fact]
    public void Trays_flats_mix_and_carriers_are_counted_with_the_most_at_once()
    {
        var needs = SupplyNeeds.Of(Priced(), s_first, s_last);

        // A 4 + B 2 until 22 March, P 3 from 18 March to 1 April: 9 filled, all 9 stand from the 18th to the 21st. One flat.
        Assert.Equal([("50", 9, 9), ("flat", 1, 1)], needs.Trays.Select(tray => (tray.Type.Id, tray.Filled, tray.MostAtOnce)));
        Assert.Equal(9, needs.Carriers);

        // 9 trays of 3.5 litres and a flat of 7.5: 39 litres in the cells. A quarter of the loose volume is lost: 39 / 0.75 = 52 litres
        // loose, at 0.20 a litre 10.40. A cubic foot is (0.3048 m)^3 = 28.3168... litres. Bags of 20 litres loose: 2.6, so three.
        Assert.Equal(39, needs.FilledLitres, 1e-9);
        Assert.Equal(52, needs.MixLitres, 1e-9);
        Assert.Equal(52 / 28.316846592, needs.MixCubicFeet, 1e-12);
        Assert.Equal(10.4, needs.MixCost!.Value, 1e-9);
        Assert.Equal(3, needs.MixUnits);
    }

    [Fact]
    public void A_tray_that_leaves_is_free_for_one_filled_the_same_day()
    {
        // A leaves on 22 March, C of three trays is sown that day: never more than A's four at once.
        var plan = PlannedWorkTests.Plan(
            SmallSite.Batch("A", 200, SmallSite.Monday),
            SmallSite.Batch("C", 150, SmallSite.Monday.AddDays(21))
        );
        Assert.Equal(
            (7, 4),
            (SupplyNeeds.Of(plan, s_first, s_last).Trays[0].Filled, SupplyNeeds.Of(plan, s_first, s_last).Trays[0].MostAtOnce)
        );
    }

    // P is potted up on 18 March and was wanted before or on that day: its three trays stand beside A's four.
    [Theory]
    [InlineData(15)]
    [InlineData(18)]
    public void Trays_that_are_potted_up_after_the_date_they_were_wanted_stand_too(int wanted)
    {
        var plan = PlannedWorkTests.Plan(
            SmallSite.Batch("A", 200, SmallSite.Monday),
            SmallSite.PotUpBatch("P", 150, SmallSite.Monday.AddDays(7)) with
            {
                SetOut = new DateOnly(2027, 3, wanted),
            }
        );
        Assert.Equal((new DateOnly(2027, 3, 18), new DateOnly(2027, 3, wanted)), (plan.Batches[1].PotUpOn, plan.Batches[1].SetOutOn));
        Assert.Equal(
            (7, 7),
            (SupplyNeeds.Of(plan, s_first, s_last).Trays[0].Filled, SupplyNeeds.Of(plan, s_first, s_last).Trays[0].MostAtOnce)
        );
    }

    [Fact]
    public void Seed_is_counted_by_crop_packet_and_price()
    {
        var needs = SupplyNeeds.Of(Priced(), s_first, s_last);

        // A: 4 trays of 50 seeds from packet L1 at 30 a thousand; B 2 x 50 and P 200 in its flat at the site's 10 a thousand.
        Assert.Equal(
            [(null, 2, 300L, 3.0), ("L1", 1, 200L, 6.0)],
            needs.Seeds.Select(seed => (seed.PacketId, seed.Batches, seed.Seeds, Math.Round(seed.Cost!.Value, 9)))
        );
        Assert.Equal(9, needs.SeedCost!.Value, 1e-9);
    }

    [Fact]
    public void Seed_without_a_packet_is_told_by_line_of_the_plan()
    {
        // Line 2 sows three successions of 50 seeds, line 3 one batch of 100 that may be another variety; line 4 and 5 share a packet.
        static BatchOrder Of(string id, int plants, int line, string? packet = null) =>
            SmallSite.Batch(id, plants, SmallSite.Monday) with
            {
                Place = new SourcePlace("plan.csv", line, 1),
                PacketId = packet,
            };
        var plan = PlannedWorkTests.Plan(
            Of("mini-1", 50, 2),
            Of("mini-2", 50, 2),
            Of("mini-3", 50, 2),
            Of("big", 100, 3),
            Of("x", 50, 4, "L1"),
            Of("y", 50, 5, "L1")
        );
        Assert.Equal(
            [("mini", null, 3, 150L), ("big", null, 1, 100L), (null, "L1", 2, 100L)],
            SupplyNeeds.Of(plan, s_first, s_last).Seeds.Select(seed => (seed.Sowing, seed.PacketId, seed.Batches, seed.Seeds))
        );
    }

    [Fact]
    public void Only_what_is_sown_or_potted_in_the_time_counts()
    {
        // From 18 March on only P's three trays are filled; nothing is sown. A's and B's six still stand beside them.
        var needs = SupplyNeeds.Of(Priced(), new DateOnly(2027, 3, 18), s_last);
        Assert.Empty(needs.Seeds);
        Assert.Equal([("50", 3, 9)], needs.Trays.Select(tray => (tray.Type.Id, tray.Filled, tray.MostAtOnce)));
        Assert.Equal(14, needs.MixLitres, 1e-9); // 3 x 3.5 / 0.75
        Assert.Equal(1, needs.MixUnits);
    }

    // Whole bags are not rounded up to one more for the last digit of a sum: 39 litres that do not settle are three bags of 13.
    [Theory]
    [InlineData(13, 3)]
    [InlineData(12.999, 4)]
    [InlineData(39, 1)]
    public void Bags_are_rounded_up(double yield, int bags)
    {
        var plan = Priced();
        var rules = plan.Scenario.Rules with
        {
            Mix = new PottingMix { Settling = 0, YieldLitres = yield },
        };
        Assert.Equal(bags, SupplyNeeds.Of(plan with { Scenario = plan.Scenario with { Rules = rules } }, s_first, s_last).MixUnits);
    }

    // A and B are sown on 1 March, P on the 8th and potted up on the 18th: the first and the last day of the time asked for both count.
    [Theory]
    [InlineData("03-01", "03-01", 2, 6, 0, 6)]
    [InlineData("03-02", "03-07", 0, 0, 0, 6)]
    [InlineData("03-02", "03-08", 1, 0, 1, 6)]
    [InlineData("03-09", "03-17", 0, 0, 0, 6)]
    [InlineData("03-09", "03-18", 0, 3, 0, 9)]
    [InlineData("03-22", "03-31", 0, 0, 0, 3)] // A and B left on the 22nd
    [InlineData("04-01", "04-30", 0, 0, 0, 0)] // P left on the 1st
    public void The_first_and_last_day_count(string from, string to, int sowings, int trays, int flats, int carriers)
    {
        var needs = SupplyNeeds.Of(
            Priced(),
            DateOnly.ParseExact("2027-" + from, "yyyy-MM-dd"),
            DateOnly.ParseExact("2027-" + to, "yyyy-MM-dd")
        );
        Assert.Equal(sowings, needs.Seeds.Sum(seed => seed.Batches));
        Assert.Equal(
            (trays, flats),
            (
                needs.Trays.Where(tray => !tray.Type.IsFlat).Sum(tray => tray.Filled),
                needs.Trays.Where(tray => tray.Type.IsFlat).Sum(tray => tray.Filled)
            )
        );
        Assert.Equal(carriers, needs.Carriers);
    }

    [Fact]
    public void Trays_come_before_flats_each_in_order_of_id()
    {
        var plan = PlannedWorkTests.Plan(
            SmallSite.PotUpBatch("P", 120, SmallSite.Monday),
            SmallSite.Batch("B", 40, SmallSite.Monday) with
            {
                TrayId = "big",
            },
            SmallSite.Batch("A", 50, SmallSite.Monday)
        );
        Assert.Equal("50 big flat", string.Join(' ', SupplyNeeds.Of(plan, s_first, s_last).Trays.Select(tray => tray.Type.Id)));
    }

    [Fact]
    public void Seed_is_told_in_order_of_crop_packet_and_price()
    {
        var order = SmallSite.Batch("1", 50, SmallSite.Monday);
        var plan = SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(9), SmallSite.Bench(9), SmallSite.Table(9)],
                [
                    order with
                    {
                        CropId = "z",
                    },
                    order with
                    {
                        Id = "2",
                        PacketId = "L2",
                    },
                    order with
                    {
                        Id = "3",
                        PacketId = "L1",
                        ThousandSeeds = 5,
                    },
                    order with
                    {
                        Id = "4",
                        PacketId = "L1",
                        ThousandSeeds = 4,
                    },
                    order with
                    {
                        Id = "5",
                    },
                ],
                crops: [SmallSite.Crop("z"), SmallSite.Crop()]
            )
        );
        Assert.Equal(
            [("plain", null, null), ("plain", "L1", 4.0), ("plain", "L1", 5.0), ("plain", "L2", null), ("z", null, null)],
            SupplyNeeds.Of(plan, s_first, s_last).Seeds.Select(seed => (seed.Crop.Id, seed.PacketId, seed.ThousandSeeds))
        );
    }

    [Fact]
    public void One_price_that_is_missing_leaves_no_cost_of_all_seed()
    {
        var plan = PlannedWorkTests.Plan(
            SmallSite.Batch("A", 50, SmallSite.Monday) with
            {
                ThousandSeeds = 10,
            },
            SmallSite.Batch("B", 50, SmallSite.Monday)
        );
        var needs = SupplyNeeds.Of(plan, s_first, s_last);
        Assert.Null(needs.SeedCost);
        Assert.Equal([null, 0.5], needs.Seeds.Select(seed => seed.Cost));
    }

    [Fact]
    public void Without_prices_there_is_no_cost()
    {
        var needs = SupplyNeeds.Of(PlannedWorkTests.Plan(), s_first, s_last);
        Assert.Null(needs.MixCost);
        Assert.Null(needs.SeedCost);
        Assert.All(needs.Seeds, seed => Assert.Null(seed.Cost));
    }

    private static SeasonPlan Priced()
    {
        var plan = PlannedWorkTests.Plan();
        return plan with
        {
            Scenario = plan.Scenario with
            {
                Rules = plan.Scenario.Rules with
                {
                    Prices = new Prices { MixLitre = 0.2, ThousandSeeds = 10 },
                    Mix = new PottingMix { Settling = 0.25, YieldLitres = 20 },
                },
            },
            Batches =
            [
                .. plan.Batches.Select(batch =>
                    batch with
                    {
                        Tray = batch.Tray with { MediumLitres = 3.5 },
                        Flat = batch.Flat is { } flat ? flat with { MediumLitres = 7.5 } : null,
                        Order = batch.Order.Id == "A" ? batch.Order with { PacketId = "L1", ThousandSeeds = 30 } : batch.Order,
                    }
                ),
            ],
        };
    }
}
