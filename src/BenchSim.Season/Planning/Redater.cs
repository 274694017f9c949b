using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>Plans one batch of a plan again for another sow date, as reading that date from the plan would.</summary>
internal sealed class Redater
{
    private readonly SeasonPlan _plan;
    private readonly BatchDater _dater;

    public Redater(SeasonPlan plan)
    {
        _plan = plan;
        var horizon = SeasonPlanner.HorizonOf(plan.Scenario);
        var tables = new SiteTables(plan.Scenario, horizon);
        var store = new PlanClimates(plan.Scenario, horizon, plan.Scenario.Play.Seed);
        _dater = new BatchDater(plan.Scenario, tables, store);
    }

    /// <summary>The batch with its dates and numbers; null where it cannot be planned so.</summary>
    public BatchPlan? At(int index, DateOnly day)
    {
        var faults = ImmutableArray.CreateBuilder<Fault>();
        if (Dated(index, day, faults) is not { } dated)
        {
            return null;
        }

        var moved = BatchNumbers.Work(_plan.Scenario, dated.Plan, dated.PathMeanC, faults);
        return faults.Count == 0 ? moved : null;
    }

    /// <summary>The first date on which it would be ready for the field; null where it never would.</summary>
    public DateOnly? ReadyOn(int index, DateOnly day) => Dated(index, day, ImmutableArray.CreateBuilder<Fault>())?.Plan.ReadyOn;

    private (BatchPlan Plan, double PathMeanC)? Dated(int index, DateOnly day, ImmutableArray<Fault>.Builder faults)
    {
        var draft = Draft(_plan.Batches[index]);
        return _dater.Date(draft with { Order = draft.Order with { Sow = day } }, faults, ImmutableArray.CreateBuilder<Fault>());
    }

    // One tray is walked, whatever the plan's number: the dates do not depend on it.
    private static BatchPlan Draft(BatchPlan batch) =>
        batch with
        {
            Trays = 1,
            Flats = batch.Flat is null ? 0 : 1,
            Germination = batch.Order.Germination,
        };
}
