using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>The part of the verdict that says which condition of a fit is not met, and why.</summary>
internal static class VerdictCauses
{
    public static IEnumerable<string> Sentences(StudyResult result)
    {
        if (Conditions(result) is { } conditions)
        {
            yield return conditions;
        }

        if (Leading(result) is not { Length: > 0 } leading)
        {
            yield break;
        }

        yield return MainCause(result, leading);
        if (RoomShortAsWell(result, leading[0]) is { } room)
        {
            yield return room;
        }
    }

    private static int Misses(StudyResult result) => result.Fits.Seasons - result.Fits.Hits;

    /// <summary>The conditions that are not met, most often first, with the seasons of each.</summary>
    public static (int Seasons, string What)[] Failed(StudyResult result)
    {
        var goal = (result.Plan.Scenario.Rules.ServiceGoal * 100).ToString("0.##", null);
        return
        [
            .. new (int Seasons, string What)[]
            {
                (result.OverHeldForPlace.Hits, "trays stood too long without a place to go to"),
                (result.TooFewInTime.Hits, $"fewer than {goal} % of the plants were in time"),
                (result.SownTooLate.Hits, "a batch was sown too late or not in full"),
            }
                .Where(condition => condition.Seasons > 0)
                .OrderByDescending(condition => condition.Seasons),
        ];
    }

    /// <summary>"Of the 455 seasons that do not fit, in 200 trays stood too long without a place to go to, ...".</summary>
    private static string? Conditions(StudyResult result)
    {
        var misses = Misses(result);
        var failed = Failed(result);
        if (misses == 0 || failed.Length == 0)
        {
            return null;
        }

        if (misses == 1)
        {
            return $"In the one season that does not fit, {string.Join(", and ", failed.Select(condition => condition.What))}.";
        }

        string[] had =
        [
            .. failed.Select(condition =>
                $"in {(condition.Seasons == misses ? "all" : Numbers.Whole(condition.Seasons))} {condition.What}"
            ),
        ];
        var more = failed.Sum(condition => condition.Seasons) > misses ? "; a season can fail in more than one way" : "";
        return $"Of the {Numbers.Whole(misses)} seasons that do not fit, {PlainText.List(had)}{more}.";
    }

    /// <summary>
    /// The most frequent causes, the first of equals first. Seasons that only the weather makes late are told in a sentence of their own:
    /// they fit, days of weather hold excepted, so they are none of the seasons that do not.
    /// </summary>
    private static Cause[] Leading(StudyResult result)
    {
        KeyValuePair<Cause, int>[] causes = [.. result.Causes.Where(pair => pair.Key != Cause.Hold && pair.Value > 0)];
        return Misses(result) == 0 || causes.Length == 0
            ? []
            : [.. causes.Where(pair => pair.Value == causes.Max(other => other.Value)).Select(pair => pair.Key)];
    }

    private static string MainCause(StudyResult result, Cause[] leading)
    {
        var misses = Misses(result);
        var most = result.Causes[leading[0]];
        var seasons =
            misses == 1
                ? "In the one season that does not fit"
                : $"In {Numbers.Whole(most)} of the {Numbers.Whole(misses)} " + "seasons that do not fit";
        var first = $"{seasons}, {Reason(result, leading[0])}.";
        if (leading.Length > 1)
        {
            return $"{first} As often, {Reason(result, leading[1])}.";
        }

        // A second cause with a quarter of the seasons or more is worth a grower's time as well.
        var second = result.Causes.Where(pair => pair.Key != Cause.Hold && pair.Key != leading[0]).MaxBy(pair => pair.Value);
        return 4 * second.Value < misses || second.Value == 0
            ? first
            : $"{first} In another {Numbers.Whole(second.Value)}, {Reason(result, second.Key)}.";
    }

    // A cause other than lack of room hides a shortage of room in the same season; a grower has to mend both.
    private static string? RoomShortAsWell(StudyResult result, Cause cause)
    {
        var shortest = result.Groups.Where(group => group.Shortage.P50 > 0 && group.RunsOut.Hits > 0).MaxBy(group => group.Shortage.P50);
        return cause == Cause.Place || shortest is null
            ? null
            : "So more room alone would not mend it. Yet room is short as well: the largest shortage is "
                + $"{Spreads.Amount(shortest.Shortage, Trade.Place(shortest.Kind), Trade.Place(shortest.Kind) + "s")}.";
    }

    // Hands are a reason only where the site limits them.
    private static string Reason(StudyResult result, Cause cause) =>
        cause switch
        {
            Cause.Place => "the cause is lack of room: with places without limit the same season would have fitted",
            Cause.ThrownOut => "the cause is trays thrown out: even with room for all, they stood too long for the weather"
                + (result.Plan.Scenario.Rules.LimitsHands ? ", the date or lack of hands" : " or the date"),
            Cause.Germination => "the cause is loss of plants: even with room for all, too few come up or live",
            Cause.SlowGrowth => "the cause is slow growth: plants are not ready in time even with room for all",
            Cause.Hold => "the cause is the weather: it holds trays back even with room for all",
            _ => throw new ArgumentOutOfRangeException(nameof(cause)),
        };
}
