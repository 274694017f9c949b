using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests.Planning;

/// <summary>A variant of a season under way changes what is done from today on, and nothing of what is over.</summary>
public class VariantPastTests
{
    private static readonly DateOnly s_monday = SmallSite.Monday;

    private static readonly Scenario s_site = SmallSite.Scenario(
        [SmallSite.Mat(8), SmallSite.Bench(20), SmallSite.Table(20)],
        [SmallSite.Batch("a", 100, s_monday), SmallSite.Batch("b", 100, s_monday.AddDays(28))]
    );

    // By hand: a stood on the mat from the Monday on and on the bench from day 4 on; b is still to be sown on day 28.
    private const int Today = 10;
    private static readonly SeasonPlan s_base = Under(SmallSite.Plan(s_site));

    // At 24 C growth is faster than at 20 C, which is what the first ten days were spent at.
    [Fact]
    public void A_house_is_as_it_was_until_today()
    {
        var house = s_site.Houses[0];
        var warmer = house with { NightC = 24, DayC = 24, VentC = 24 };
        var plan = Make(s_base.Scenario with { Houses = [warmer] });
        Assert.Equal(new HouseWas(house, Today), plan.Scenario.Houses[0].Was);
        var (before, after) = (Play(s_base), Play(plan));
        for (var day = 0; day < Today; day++)
        {
            Assert.Equal(before.Held.Select(space => space[day]), after.Held.Select(space => space[day]));
            Assert.Equal(before.HeatWattHours.Select(each => each[day]), after.HeatWattHours.Select(each => each[day]));
        }

        // A season in which the house was warmer all along has a ready sooner.
        var all = Play(s_base with { Scenario = s_base.Scenario with { Houses = [warmer] } });
        Assert.True(all.Batches[0].GrowingHours < after.Batches[0].GrowingHours, "grown in a house that was not as warm yet");
        Assert.True(after.Batches[0].GrowingHours <= before.Batches[0].GrowingHours, "grown in a house that is warmer now");
    }

    [Fact]
    public void A_mat_is_as_warm_as_it_was_until_today()
    {
        var mat = s_site.Spaces[0];
        var plan = Make(s_base.Scenario with { Spaces = [mat with { MatC = 30 }, .. s_base.Scenario.Spaces[1..]] });
        Assert.Equal(new MatWas(mat.MatC!.Value, Today), plan.Scenario.Spaces[0].MatWas);
        Assert.Equal(Play(s_base).Batches[0].OffMat, Play(plan).Batches[0].OffMat);
        Assert.Equal(Play(s_base).Batches[0].OutLast, Play(plan).Batches[0].OutLast);
    }

    // A house that a variant adds is not open before today, and its bench may stand before the others.
    [Fact]
    public void What_is_built_is_built_today()
    {
        var (house, bench) = (s_site.Houses[0] with { Id = "new" }, SmallSite.Bench(30) with { Id = "new-bench", HouseId = "new" });
        var plan = Make(s_base.Scenario with { Houses = [.. s_base.Scenario.Houses, house], Spaces = [bench, .. s_base.Scenario.Spaces] });
        Assert.Equal((HouseOpening.FromDate, s_monday.AddDays(Today)), (plan.Scenario.Houses[1].Opening, plan.Scenario.Houses[1].OpensOn));

        // The spaces of the past are found again one further on.
        Assert.Equal([1, 2], plan.Past!.Batches[0].Trays[0].Path.Select(stay => stay.Space));
        var (before, after) = (Play(s_base), Play(plan));
        Assert.Equal(before.Held[1][..Today], after.Held[2][..Today]);
        Assert.Equal(before.Batches[0].OutLast, after.Batches[0].OutLast);
    }

    // What a variant says of how plants grow goes for those that stand too; the dates that were promised stay.
    [Fact]
    public void A_sowing_that_was_made_keeps_its_dates_and_numbers()
    {
        var (crop, rules) = (s_site.Crops[0], s_base.Scenario.Rules);
        var slower = Make(
            s_base.Scenario with
            {
                Crops = [crop with { GrowthDays = crop.GrowthDays + 10 }],
                Rules = rules with { StandAssurance = 0.999, SlackDays = rules.SlackDays + 5 },
            }
        );
        Assert.Equal(Dates(s_base.Batches[0]), Dates(slower.Batches[0]));
        Assert.Equal(crop.GrowthDays + 10, slower.Batches[0].Crop.GrowthDays);
        Assert.True(slower.Batches[1].ReadyOn > s_base.Batches[1].ReadyOn);

        // The field may want it on another day, and other plants of it.
        var order = s_base.Batches[0].Order with { SetOut = s_base.Batches[0].SetOutOn.AddDays(7), Plants = 80 };
        var later = Make(s_base.Scenario with { Batches = [order, s_base.Scenario.Batches[1]] });
        Assert.Equal(s_base.Batches[0].SetOutOn.AddDays(7), later.Batches[0].SetOutOn);
        Assert.Equal((s_base.Batches[0].Trays, 80), (later.Batches[0].Trays, later.Batches[0].Order.Plants));
    }

    // Trays that are not sown yet are those of the variant, whatever the base would have sown.
    [Fact]
    public void What_is_still_to_be_sown_is_sown_as_the_variant_has_it()
    {
        var order = s_base.Scenario.Batches[1] with { Plants = 300 };
        var plan = Make(s_base.Scenario with { Batches = [s_base.Scenario.Batches[0], order] });
        Assert.True(plan.Batches[1].Trays > s_base.Batches[1].Trays);
        Assert.Equal(plan.Batches[1].Trays, Play(plan).Batches[1].TraysStarted);
    }

    private static object Dates(BatchPlan batch) =>
        (batch.SowOn, batch.EmergeOn, batch.OffMatOn, batch.TableOn, batch.ReadyOn, batch.SetOutOn, batch.Trays, batch.Seeds);

    private static SeasonPlan Make(Scenario variant) => VariantPlanner.Make(s_base, variant).Plan!;

    private static SeasonResult Play(SeasonPlan plan)
    {
        var result = new SeasonResult();
        new SeasonPlayer(plan, 3).Play(1, PlaceLimits.AsGiven, result);
        return result;
    }

    private static SeasonPlan Under(SeasonPlan plan) =>
        plan with
        {
            Past = new SeasonPast
            {
                Today = Today,
                Batches =
                [
                    new BatchPast
                    {
                        Unsown = 0,
                        LastSown = 0,
                        NextSown = plan.Batches[0].Trays,
                        Trays =
                        [
                            new TrayPast
                            {
                                AreFlats = false,
                                First = 0,
                                Count = plan.Batches[0].Trays,
                                SowDay = 0,
                                Path = [(0, 0), (1, 4)],
                            },
                        ],
                    },
                    BatchPast.NotBegun,
                ],
            },
        };
}
