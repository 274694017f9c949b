using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>The part of the verdict that says which space runs out first, when, and by how much.</summary>
internal static class VerdictSpaces
{
    // Spaces named in a sentence.
    private const int MostSpaces = 3;

    public static IEnumerable<string> Sentences(StudyResult result)
    {
        var first = FirstToRunOut(result);
        if (first is null)
        {
            foreach (var sentence in NothingRefused(result))
            {
                yield return sentence;
            }

            yield break;
        }

        GroupResult[] others = [.. result.Groups.Where(group => group != first && group.RunsOut.Hits > 0)];
        GroupResult[] shortToo = [.. others.Where(group => !IsOnlyBlocked(result, group))];
        yield return IsOnlyBlocked(result, first) ? Blocked(result, first) : RunsOut(result, first, shortToo.Length > 0);
        if (Elsewhere(result, first) is { } room)
        {
            yield return room;
        }

        foreach (var other in shortToo)
        {
            yield return RunsOutToo(result, other);
            if (Elsewhere(result, other) is { } more)
            {
                yield return more;
            }
        }

        foreach (var other in others.Except(shortToo))
        {
            yield return Blocked(result, other);
        }
    }

    /// <summary>
    /// True where trays are refused although the plan never wants more places than there are, of the kind as a whole and of each space: the
    /// trays that stand there cannot go on, so more places here are not what is missing.
    /// </summary>
    public static bool IsOnlyBlocked(StudyResult result, GroupResult group) =>
        group.RunsOut.Hits > 0
        && group.Shortage.Most == 0
        && result
            .Spaces.Where(space => space.Space.Kind == group.Kind)
            .All(space => space.Wanted.Zip(space.Places).All(day => day.First.Most <= day.Second));

    /// <summary>
    /// Which space of a kind is full while the kind as a whole has places enough in all seasons: what waits may not stand where there is
    /// room. Null where the whole kind is ever short, where none of its spaces is, and where whatever waits for one may stand in all the
    /// others too.
    /// </summary>
    public static string? Elsewhere(StudyResult result, GroupResult group)
    {
        if (group.RunsOut.Hits == 0 || group.Shortage.Most > 0 || IsOnlyBlocked(result, group))
        {
            return null;
        }

        SpaceResult[] full =
        [
            .. result
                .Spaces.Where(space =>
                    space.Space.Kind == group.Kind && space.WaitedDays.Mean > 0 && IsKeptFromOthers(result, group, space)
                )
                .OrderByDescending(space => space.WaitedDays.Mean),
        ];
        if (full.Length == 0)
        {
            return null;
        }

        var names = PlainText.List([.. full.Take(MostSpaces).Select(space => SavingWords.Name(space.Space))]);
        return $"All {Trade.Plural(group.Kind)} together have places enough: what waits is meant for {names}, and may not stand in every "
            + "other space (too cold for it, not on its list, or shut for a time).";
    }

    // Whether a batch that waits for a space may not stand in another of its kind, or another is shut on a day on which trays wait.
    private static bool IsKeptFromOthers(StudyResult result, GroupResult group, SpaceResult space)
    {
        var at = result.Plan.Scenario.Spaces.IndexOf(space.Space);
        SpaceResult[] others = [.. result.Spaces.Where(other => other.Space.Kind == group.Kind && other != space)];
        return others.Any(other => other.Places.Zip(group.Waiting).Any(day => day.First == 0 && day.Second.Most > 0))
            || result
                .Batches.Where(batch => batch.BlockedTrayDays[at].Mean > 0)
                .Any(batch =>
                    others.Any(other => !ListOf(batch.Plan, group.Kind).Contains(result.Plan.Scenario.Spaces.IndexOf(other.Space)))
                );
    }

    private static ImmutableArray<int> ListOf(BatchPlan batch, SpaceKind kind) =>
        kind switch
        {
            SpaceKind.Mat => batch.Mats,
            SpaceKind.Bench => batch.Benches,
            _ => batch.Tables,
        };

    /// <summary>
    /// The group that runs out first: of those that run out in at least half as many seasons as the one that runs out most often, the one
    /// with the earliest median day; so that one odd early season does not name the culprit. Kinds that are only blocked by what stands
    /// behind them count only when no other runs out. Null when none runs out.
    /// </summary>
    public static GroupResult? FirstToRunOut(StudyResult result)
    {
        GroupResult[] groups = [.. result.Groups.Where(group => group.RunsOut.Hits > 0)];
        if (groups.Length == 0)
        {
            return null;
        }

        GroupResult[] shorts = [.. groups.Where(group => !IsOnlyBlocked(result, group))];
        groups = shorts.Length > 0 ? shorts : groups;
        var most = groups.Max(group => group.RunsOut.Hits);
        return groups.Where(group => 2 * group.RunsOut.Hits >= most).MinBy(group => group.RunsOutOn.P50 ?? DateOnly.MaxValue);
    }

    /// <summary>"tray" where every tray takes one place; else "place".</summary>
    public static (string One, string Many) Unit(StudyResult result) =>
        result.Plan.Scenario.TrayTypes.All(tray => tray.PlacesEach == 1) ? ("tray", "trays") : ("place", "places");

    private static string RunsOut(StudyResult result, GroupResult group, bool othersToo)
    {
        var verb = Trade.IsOneTable(result.Plan.Scenario, group.Kind) ? "runs" : "run";
        var subject = group.Places.All(places => places == 0)
            ? $"The site has no {Trade.Place(group.Kind)}s, but trays ask for them:"
            : $"The {Trade.Spaces(result.Plan.Scenario, group.Kind)} {verb} out{(othersToo ? " first" : "")}:";
        return $"{subject} in {ChanceWords.OfSeasons(group.RunsOut)}, "
            + $"{new Dates(result.Plan).Typical(group.RunsOutOn)}; {Worst(result, group)}.";
    }

    private static string RunsOutToo(StudyResult result, GroupResult group)
    {
        var verb = Trade.IsOneTable(result.Plan.Scenario, group.Kind) ? "runs" : "run";
        return $"The {Trade.Spaces(result.Plan.Scenario, group.Kind)} {verb} out too: in {ChanceWords.OfSeasons(group.RunsOut)}, "
            + $"{new Dates(result.Plan).Typical(group.RunsOutOn)}; {Worst(result, group)}.";
    }

    private static string Blocked(StudyResult result, GroupResult group)
    {
        var verb = Trade.IsOneTable(result.Plan.Scenario, group.Kind) ? "is" : "are";
        var behind = result.Groups.Where(other => other.Kind > group.Kind && other.RunsOut.Hits > 0).MinBy(other => other.Kind);
        var why = behind is null
            ? "the trays there cannot leave in time"
            : $"the trays there find no place on the {Trade.Spaces(result.Plan.Scenario, behind.Kind)}";
        return $"The {Trade.Spaces(result.Plan.Scenario, group.Kind)} {verb} blocked, not short: "
            + $"in {ChanceWords.OfSeasons(group.RunsOut)} trays are refused a place, {new Dates(result.Plan).Typical(group.RunsOutOn)}, "
            + $"though the plan never takes more places than there are; {why}.";
    }

    private static string Worst(StudyResult result, GroupResult group)
    {
        (var one, var many) = Unit(result);
        var worst = group.WorstWaiting;
        var middle =
            one == "tray"
                ? $"{Numbers.Count(worst.P50, one, many)} {(worst.P50 == 1 ? "has" : "have")} no place"
                : $"{Numbers.Count(worst.P50, one, many)} {(worst.P50 == 1 ? "is" : "are")} missing";
        var on = group.WorstWaitingOn.P50 is { } date ? new Dates(result.Plan).Plain(date) : null;
        if (worst.Seasons == 1 || worst.Least.Equals(worst.Most))
        {
            return $"on the worst day{(on is null ? "" : $", {on},")} {middle}";
        }

        if (worst.P50 == 0)
        {
            return $"in most seasons no tray waits, in the worst of them {Numbers.Count(worst.Most, one, many)} "
                + $"{(one == "tray" ? "found no place" : "were missing")} on one day";
        }

        var day = $"on the worst day of a season{(on is null ? "" : $", typically {on},")}";
        if (worst.Seasons < Numbers.EnoughSeasons)
        {
            return $"{day} about {middle} ({Numbers.Whole(worst.Least)} to {Numbers.Whole(worst.Most)} over the "
                + $"{worst.Seasons} seasons)";
        }

        if (worst.P10.Equals(worst.P90))
        {
            return $"{day} {middle} in at least eight seasons of ten";
        }

        return $"{day} about {middle} ({Numbers.Whole(worst.P10)} to {Numbers.Whole(worst.P90)} in eight seasons of ten)";
    }

    private static IEnumerable<string> NothingRefused(StudyResult result)
    {
        var seasons = result.Seasons == 1 ? "the one season played" : $"any of the {Numbers.Whole(result.Seasons)} seasons";
        yield return $"No tray is refused a place in {seasons}.";
        foreach (var group in result.Groups.Where(group => group.Shortage.Most > 0))
        {
            yield return "Yet with places without limit the plan would use more of the "
                + $"{Trade.Spaces(result.Plan.Scenario, group.Kind)} than there are: the "
                + "largest shortage is "
                + $"{Spreads.Amount(group.Shortage, "place", "places")}. The trays find room by other ways here, so none waits; "
                + "keep an eye on it.";
        }
    }
}
