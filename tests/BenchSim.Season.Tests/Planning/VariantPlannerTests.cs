using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Tests.Planning;

/// <summary>What a variant leaves alone keeps the base's dates and numbers; what it changes is planned anew.</summary>
public class VariantPlannerTests
{
    private static readonly Scenario Site = SmallSite.Scenario(
        [SmallSite.Mat(4), SmallSite.Bench(20), SmallSite.Table(20)],
        [SmallSite.Batch("a", 100, SmallSite.Monday), SmallSite.Batch("b", 100, SmallSite.Monday)]);

    private static readonly SeasonPlan Base = SmallSite.Plan(Site);

    [Fact]
    public void A_colder_house_moves_no_planned_date()
    {
        var colder = Site with { Houses = [Site.Houses[0] with { NightC = 15, DayC = 15, VentC = 15 }] };
        Assert.NotEqual(Dates(Base.Batches[0]), Dates(SmallSite.Plan(colder).Batches[0]));
        var plan = Make(colder);
        Assert.Equal(Base.Batches.Select(Dates), plan.Batches.Select(Dates));
        Assert.Equal(Base.Days, plan.Days);
        Assert.Same(colder, plan.Scenario);
    }

    [Fact]
    public void A_changed_batch_is_planned_in_the_variant_and_the_other_is_not()
    {
        // A week later: every date moves by seven days, and so does the last day of the play.
        var later = Site with { Batches = [Site.Batches[0] with { Sow = SmallSite.Monday.AddDays(7) }, Site.Batches[1]] };
        var plan = Make(later);
        Assert.Equal(Base.Batches[0].SowOn.AddDays(7), plan.Batches[0].SowOn);
        Assert.Equal(Base.Batches[0].SetOutOn.AddDays(7), plan.Batches[0].SetOutOn);
        Assert.Equal(Dates(Base.Batches[1]), Dates(plan.Batches[1]));
        Assert.Equal(Base.Days + 7, plan.Days);
    }

    [Fact]
    public void A_slower_crop_changes_its_dates_and_another_bench_does_not()
    {
        var crop = Site.Crops[0];
        Assert.True(Make(Site with { Crops = [crop with { GrowthDays = crop.GrowthDays + 7 }] }).Batches[0].ReadyOn > Base.Batches[0].ReadyOn);

        ImmutableArray<Space> spaces = [.. Site.Spaces, SmallSite.Bench(5, "other")];
        var plan = Make(Site with { Spaces = spaces, Crops = [crop with { Benches = ["other", "bench"] }] });
        Assert.Equal(Base.Batches.Select(Dates), plan.Batches.Select(Dates));
        Assert.Equal([3, 1], plan.Batches[0].Benches.ToArray());
    }

    [Fact]
    public void Spaces_are_found_by_their_place_in_the_variant()
    {
        ImmutableArray<Space> spaces = [SmallSite.Bench(5, "first"), .. Site.Spaces];
        var plan = Make(Site with { Spaces = spaces });
        Assert.Equal([1], plan.Batches[0].Mats.ToArray());
        Assert.Equal([0, 2], plan.Batches[0].Benches.ToArray());
        Assert.Equal([3], plan.Batches[0].Tables.ToArray());
    }

    [Fact]
    public void A_tolerance_for_levelling_changes_nothing_planned()
    {
        var colder = Site with
        {
            Houses = [Site.Houses[0] with { NightC = 15, DayC = 15, VentC = 15 }],
            Batches = [.. Site.Batches.Select(order => order with { EarlierDays = 3, LaterDays = 5 })],
        };
        Assert.Equal(Base.Batches.Select(Dates), Make(colder).Batches.Select(Dates));
    }

    [Fact]
    public void Another_assurance_changes_trays_and_no_dates()
    {
        // Half the seed comes up: a surer stand takes more trays.
        var site = Site with { Batches = [.. Site.Batches.Select(order => order with { Germination = 0.5 })] };
        var plan = SmallSite.Plan(site);
        var surer = VariantPlanner.Make(plan, site with { Rules = site.Rules with { StandAssurance = 0.999 } }).Plan!;
        Assert.True(surer.Batches[0].Trays > plan.Batches[0].Trays);
        Assert.Equal(plan.Batches.Select(Dates), surer.Batches.Select(Dates));
    }

    [Fact]
    public void A_changed_batch_that_cannot_be_planned_is_a_fault()
    {
        var early = Site with { Batches = [Site.Batches[0] with { Sow = null, SetOut = SmallSite.Monday.AddDays(3) }, Site.Batches[1]] };
        var made = VariantPlanner.Make(Base, early);
        Assert.Null(made.Plan);
        Assert.Contains("before the season opens", Assert.Single(made.Faults).What, StringComparison.Ordinal);
    }

    private static SeasonPlan Make(Scenario variant)
    {
        var made = VariantPlanner.Make(Base, variant);
        Assert.Empty(made.Faults);
        return made.Plan!;
    }

    private static (DateOnly, DateOnly, DateOnly?, DateOnly, DateOnly, DateOnly) Dates(BatchPlan batch) =>
        (batch.SowOn, batch.EmergeOn, batch.OffMatOn, batch.TableOn, batch.ReadyOn, batch.SetOutOn);
}
