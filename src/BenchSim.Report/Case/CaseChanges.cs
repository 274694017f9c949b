using BenchSim.Report.Words;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Case;

/// <summary>What a variant changes of its base, as far as it can be said in a few sentences; the rest is in its file.</summary>
internal static class CaseChanges
{
    private const int Most = 8;

    /// <summary>The changes, spaces and houses first; at the end where all of them stand.</summary>
    public static IReadOnlyList<string> Of(SeasonPlan basePlan, SeasonPlan changed)
    {
        string[] found =
        [
            .. Houses(basePlan.Scenario, changed.Scenario),
            .. Spaces(basePlan.Scenario, changed.Scenario),
            .. Batches(basePlan, changed),
            .. Rules(basePlan.Scenario.Rules, changed.Scenario.Rules),
        ];
        var rest =
            found.Length > Most ? $"{Numbers.Count(found.Length - Most, "change", "changes")} more, and every value: " : "Every value: ";
        return [.. found.Take(Most), rest + "in the variant's own file among the inputs kept beside this report."];
    }

    private static IEnumerable<string> Spaces(Scenario before, Scenario after)
    {
        foreach (var space in after.Spaces)
        {
            var old = before.Spaces.FirstOrDefault(other => string.Equals(other.Id, space.Id, StringComparison.Ordinal));
            var name = CaseWords.Name(space.Name);
            if (old is null)
            {
                yield return $"{name} is new: {Numbers.Count(space.Places, Trade.Place(space.Kind), Trade.Place(space.Kind) + "s")}.";
            }
            else if (old.Places != space.Places)
            {
                yield return $"{name} has {Numbers.Count(space.Places, "place", "places")} instead of {Numbers.Whole(old.Places)}.";
            }
            else if (!old.Changes.SequenceEqual(space.Changes))
            {
                yield return $"{name} has other numbers of places on some dates.";
            }
        }

        foreach (
            var space in before.Spaces.Where(space =>
                after.Spaces.All(other => !string.Equals(other.Id, space.Id, StringComparison.Ordinal))
            )
        )
        {
            yield return $"{CaseWords.Name(space.Name)} is gone.";
        }
    }

    private static IEnumerable<string> Houses(Scenario before, Scenario after)
    {
        foreach (var house in after.Houses)
        {
            var old = before.Houses.FirstOrDefault(other => string.Equals(other.Id, house.Id, StringComparison.Ordinal));
            if (old is null)
            {
                yield return $"The house {CaseWords.Name(house.Name)} is new{(house.IsHeated ? "" : ", unheated")}.";
            }
            else if (!Nullable.Equals(old.NightC, house.NightC) || !Nullable.Equals(old.DayC, house.DayC))
            {
                yield return $"The house {CaseWords.Name(house.Name)} is kept at other temperatures.";
            }
            else if (old.Opening != house.Opening || old.OpensOn != house.OpensOn)
            {
                yield return $"The house {CaseWords.Name(house.Name)} is open at other times.";
            }
        }

        foreach (
            var house in before.Houses.Where(house =>
                after.Houses.All(other => !string.Equals(other.Id, house.Id, StringComparison.Ordinal))
            )
        )
        {
            yield return $"The house {CaseWords.Name(house.Name)} is gone.";
        }
    }

    private static IEnumerable<string> Batches(SeasonPlan before, SeasonPlan after)
    {
        var old = before.Batches.ToDictionary(batch => batch.Order.Id, StringComparer.Ordinal);
        BatchPlan[] both = [.. after.Batches.Where(batch => old.ContainsKey(batch.Order.Id))];
        var added = after.Batches.Length - both.Length;
        var gone = before.Batches.Length - both.Length;
        if (added > 0)
        {
            yield return $"{Numbers.Count(added, "batch", "batches")} more in the plan.";
        }

        if (gone > 0)
        {
            yield return $"{Numbers.Count(gone, "batch", "batches")} fewer in the plan.";
        }

        var dates = both.Count(batch => batch.SowOn != old[batch.Order.Id].SowOn || batch.SetOutOn != old[batch.Order.Id].SetOutOn);
        if (dates > 0)
        {
            yield return $"{Numbers.Count(dates, "batch is", "batches are")} sown or set out on another date.";
        }

        var trays = both.Count(batch => batch.Trays != old[batch.Order.Id].Trays || batch.Flats != old[batch.Order.Id].Flats);
        if (trays > 0)
        {
            yield return $"{Numbers.Count(trays, "batch takes", "batches take")} another number of trays or flats.";
        }

        var plants = both.Count(batch => batch.Order.Plants != old[batch.Order.Id].Order.Plants);
        if (plants > 0)
        {
            yield return $"{Numbers.Count(plants, "batch is", "batches are")} for another number of plants.";
        }
    }

    private static IEnumerable<string> Rules(SiteRules before, SiteRules after)
    {
        if (!before.Reliefs.SequenceEqual(after.Reliefs))
        {
            yield return after.Reliefs.IsEmpty
                ? "No way of making room is in force."
                : $"Ways of making room: {string.Join(", ", after.Reliefs.Select(ReliefFields.Deed))}.";
        }

        if (before.Minutes != after.Minutes)
        {
            yield return "Jobs take other times.";
        }

        if (
            before.SowTraysADay != after.SowTraysADay
            || before.PotUpTraysADay != after.PotUpTraysADay
            || before.SetOutTraysADay != after.SetOutTraysADay
        )
        {
            yield return "Other numbers of trays can be handled a day.";
        }

        if (!before.WorkDays.SequenceEqual(after.WorkDays) || !before.DaysOff.SequenceEqual(after.DaysOff))
        {
            yield return "Other days are worked.";
        }

        if (before.LateDays != after.LateDays || !before.ServiceGoal.Equals(after.ServiceGoal) || before.SowWaitDays != after.SowWaitDays)
        {
            yield return "What counts as in time differs.";
        }
    }
}
