using BenchSim.Season.Inputs;

namespace BenchSim.Study.Mending;

/// <summary>Until when a change can be decided: the last day before the first thing that it changes.</summary>
internal static class MendDeadline
{
    /// <summary>The last day; today, where that is over.</summary>
    /// <param name="basePlan">The plan as it is.</param>
    /// <param name="plan">The plan with the change.</param>
    /// <param name="change">The change.</param>
    /// <param name="firstWait">By space, the first day on which a place was ever refused, as it is.</param>
    public static DateOnly Of(SeasonPlan basePlan, SeasonPlan plan, MendChange change, int[] firstWait)
    {
        var last = LastOf(basePlan, plan, change, firstWait);
        return basePlan.Today is { } today && last < today ? today : last;
    }

    private static DateOnly LastOf(SeasonPlan basePlan, SeasonPlan plan, MendChange change, int[] firstWait) =>
        change switch
        {
            SowChange sow => sow.Moves.Min(move => move.From < move.To ? move.From : move.To),
            OpeningChange opening => opening.From,
            PlacesChange places => DayOf(basePlan, firstWait[SpaceAt(basePlan, places.Space.Id)]),
            ReliefChange => DayOf(basePlan, firstWait.Min()),
            CoverChange => basePlan.Batches.Min(batch => batch.TableOn),
            SetPointChange heat => basePlan
                .Batches.Where(batch => batch.Benches.Concat(batch.Mats).Any(space => IsIn(basePlan, space, heat.House)))
                .Select(batch => batch.SowOn)
                .DefaultIfEmpty(basePlan.FirstDay)
                .Min(),
            FinishChange finish => basePlan
                .Batches.Where(batch => string.Equals(batch.Order.CropId, finish.CropId, StringComparison.Ordinal))
                .Min(batch => batch.EmergeOn),
            _ => FirstChanged(basePlan, plan),
        };

    // Of a plan with other sow dates: the first sowing that has another.
    private static DateOnly FirstChanged(SeasonPlan basePlan, SeasonPlan plan) =>
        basePlan
            .Batches.Zip(plan.Batches)
            .Where(pair => pair.First.SowOn != pair.Second.SowOn || pair.First.Order != pair.Second.Order)
            .Select(pair => pair.First.SowOn < pair.Second.SowOn ? pair.First.SowOn : pair.Second.SowOn)
            .DefaultIfEmpty(basePlan.FirstDay)
            .Min();

    private static int SpaceAt(SeasonPlan plan, string id) =>
        Enumerable
            .Range(0, plan.Scenario.Spaces.Length)
            .First(at => string.Equals(plan.Scenario.Spaces[at].Id, id, StringComparison.Ordinal));

    private static bool IsIn(SeasonPlan plan, int space, House house) =>
        string.Equals(plan.Scenario.Spaces[space].HouseId, house.Id, StringComparison.Ordinal);

    private static DateOnly DayOf(SeasonPlan plan, int day) => plan.FirstDay.AddDays(Math.Min(day, plan.Days - 1));
}
