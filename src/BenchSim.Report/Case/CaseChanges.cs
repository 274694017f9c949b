using BenchSim.Report.Words;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Case;

/// <summary>What a variant changes of its base: every key and column that differs, with both values.</summary>
internal static class CaseChanges
{
    private const int LongestValue = 80;
    private const int MostNamed = 6;

    /// <summary>The changes; at the end where all values stand.</summary>
    public static IReadOnlyList<string> Of(SeasonPlan basePlan, SeasonPlan changed) =>
        [.. Values(basePlan, changed), "Every value: in the variant's own file among the inputs kept beside this report."];

    /// <summary>The changes alone.</summary>
    public static IReadOnlyList<string> Values(SeasonPlan basePlan, SeasonPlan changed)
    {
        var (before, after) = (basePlan.Scenario, changed.Scenario);
        return
        [
            .. Houses(before, after),
            .. Spaces(before, after),
            .. Others(after.Mishaps, before.Mishaps, mishap => mishap.Id)
                .Select(mishap => $"The mishap {CaseWords.Name(mishap.Name)} is new."),
            .. Batches(basePlan, changed),
            .. ScenarioPart.Changes(before, after).GroupBy(change => (change.Part, change.Field)).Select(group => Sentence([.. group])),
        ];
    }

    // One key or column: both values where they are the same for all that change, else how many change.
    private static string Sentence(SettingChange[] changes)
    {
        var first = changes[0];
        var label = first.Field.Label;
        var values = $"{Value(first.After)} instead of {Value(first.Before)}";
        if (first.Owner.Length == 0)
        {
            return $"{label}: {values}.";
        }

        if (changes.Length == 1)
        {
            return $"{CaseWords.Name(first.Owner)}, {char.ToLowerInvariant(label[0])}{label[1..]}: {values}.";
        }

        var many = Numbers.Count(changes.Length, first.Part.One, first.Part.Many);
        if (changes.DistinctBy(change => (change.Before, change.After)).Count() == 1)
        {
            return $"{label}: {values}, for {many}.";
        }

        var each = changes
            .Take(MostNamed)
            .Select(change => $"{CaseWords.Name(change.Owner)} {Value(change.After)} instead of {Value(change.Before)}");
        var more = changes.Length > MostNamed ? $"; other values for {Numbers.Whole(changes.Length - MostNamed)} more" : "";
        return $"{label}, for {many}: {string.Join("; ", each)}{more}.";
    }

    private static string Value(string value) => value.Length == 0 ? "nothing" : PlainText.Short(value, LongestValue);

    private static IEnumerable<string> Houses(Scenario before, Scenario after)
    {
        foreach (var house in Others(after.Houses, before.Houses, house => house.Id))
        {
            yield return $"The house {CaseWords.Name(house.Name)} is new: {Air(house, after)}.";
        }

        foreach (var house in Others(before.Houses, after.Houses, house => house.Id))
        {
            yield return $"The house {CaseWords.Name(house.Name)} is gone.";
        }
    }

    private static string Air(House house, Scenario scenario) =>
        house.NightC is { } night
            ? $"heated to {Temperatures.Words(night, scenario.Units)} at night "
                + $"and {Temperatures.Words(house.DayC ?? night, scenario.Units)} by day"
            : "unheated";

    private static IEnumerable<string> Spaces(Scenario before, Scenario after)
    {
        foreach (var space in Others(after.Spaces, before.Spaces, space => space.Id))
        {
            var place = Trade.Place(space.Kind);
            yield return $"{CaseWords.Name(space.Name)} is new: {Numbers.Count(space.Places, place, place + "s")}.";
        }

        foreach (var space in Others(before.Spaces, after.Spaces, space => space.Id))
        {
            yield return $"{CaseWords.Name(space.Name)} is gone.";
        }
    }

    // What comes and goes, and what is planned otherwise though nothing is written otherwise for it.
    private static IEnumerable<string> Batches(SeasonPlan before, SeasonPlan after)
    {
        var old = before.Batches.ToDictionary(batch => batch.Order.Id, StringComparer.Ordinal);
        var both = after
            .Batches.Where(batch => old.ContainsKey(batch.Order.Id))
            .Select(batch => (Is: batch, Was: old[batch.Order.Id]))
            .ToArray();
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

        var dates = both.Count(pair =>
            (pair.Is.Order.Sow, pair.Is.Order.SetOut) == (pair.Was.Order.Sow, pair.Was.Order.SetOut)
            && (pair.Is.SowOn, pair.Is.SetOutOn) != (pair.Was.SowOn, pair.Was.SetOutOn)
        );
        if (dates > 0)
        {
            yield return $"{Numbers.Count(dates, "batch is", "batches are")} sown or set out on another date.";
        }

        var trays = both.Count(pair =>
            (pair.Is.Order.Trays, pair.Is.Order.Flats) == (pair.Was.Order.Trays, pair.Was.Order.Flats)
            && (pair.Is.Trays, pair.Is.Flats) != (pair.Was.Trays, pair.Was.Flats)
        );
        if (trays > 0)
        {
            yield return $"{Numbers.Count(trays, "batch takes", "batches take")} another number of trays or flats.";
        }
    }

    private static IEnumerable<T> Others<T>(IEnumerable<T> these, IEnumerable<T> those, Func<T, string> id) =>
        these.ExceptBy(those.Select(id), id, StringComparer.Ordinal);
}
