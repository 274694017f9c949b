using System.Collections.Immutable;
using BenchSim.Study.Results;
using BenchSim.Study.Sizing;

namespace BenchSim.Report.Words;

/// <summary>How large a space has to be, in plain words. Safe to show anywhere, as the names in it are
/// shortened, on one line and without control characters.</summary>
public static class SizeSentences
{
    /// <summary>The answer, most important first.</summary>
    /// <param name="result">What was played.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static ImmutableArray<string> Of(SizeResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Answer is { } answer ? [Found(result, answer), .. Below(result, answer), .. Above(result)] : [.. None(result)];
    }

    /// <summary>Numbers of places below the answer, or all of them where there is none, of which the seasons played cannot say whether they
    /// are enough.</summary>
    /// <param name="result">What was played.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static ImmutableArray<SizePoint> OpenPoints(SizeResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return [.. result.Curve.Where(point => IsOpen(result, point) && !(point.Places > result.Answer?.Places))];
    }

    /// <summary>Whether a number of places is enough, in a word or two: "enough", "too few", "open".</summary>
    /// <param name="result">What was played.</param>
    /// <param name="point">The number.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static string Word(SizeResult result, SizePoint point)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(point);
        return point.IsMet ? "enough"
            : IsOpen(result, point) ? "open"
            : "not enough";
    }

    /// <summary>The number tried that brings most plants out in time, the fewest places where several do.</summary>
    /// <param name="result">What was played.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static SizePoint MostInTime(SizeResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Curve.MaxBy(point => point.PlantsInTime) ?? result.Unlimited;
    }

    private static bool IsOpen(SizeResult result, SizePoint point) => !point.IsMet && point.Fits.High >= result.Goal.Share;

    /// <summary>What was played, on what luck, and why the search stopped.</summary>
    /// <param name="result">What was played.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static string Effort(SizeResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var played =
            $"Played: {Numbers.Count(result.Curve.Length, "number", "numbers")} of places and two plays without limit, "
            + $"{Numbers.Count(result.Seasons, "season", "seasons")} of each, the same ones, {Numbers.Whole(result.SeasonsInAll)} "
            + "seasons in all.";
        var range = $"from 0 to {Numbers.Whole(result.Largest)}, beyond which more places change nothing";
        var stopped = (result.IsWhole, result.Answer) switch
        {
            (true, _) => $"It stopped because every number {range}, was tried.",
            (_, { Places: 0 }) => "It stopped because no places at all meet the goal.",
            (_, { Places: { } places }) =>
                $"It stopped because {Numbers.Count(places, "place meets", "places meet")} the goal and the next smaller numbers, "
                    + "which were tried too, are not shown to.",
            _ => $"It stopped because none of the numbers tried {range}, meets the goal.",
        };
        return $"{played} {stopped}";
    }

    private static string Found(SizeResult result, SizePoint answer)
    {
        var places = answer.Places ?? 0;
        var more = places - result.Space.Places;
        var against = more switch
        {
            0 => "as many as there are",
            > 0 => $"{Numbers.Whole(more)} more than there are",
            _ => $"{Numbers.Whole(-more)} fewer than there are",
        };
        return $"{Numbers.Count(places, "place", "places")} on {SavingWords.Name(result.Space)} {Verb(places, "is", "are")} enough, "
            + $"{against}: the plan then fits in {Fits(result, answer)}, so in at least the {Goal(result)} asked for.";
    }

    private static IEnumerable<string> Below(SizeResult result, SizePoint answer)
    {
        if (result.Curve.LastOrDefault(point => point.Places < answer.Places) is not { } next)
        {
            yield break;
        }

        yield return IsOpen(result, next)
            ? $"{Open(result)} may be enough too: {Numbers.Count(result.Seasons, "season", "seasons")} are too few to say."
            : $"With {Numbers.Count(next.Places ?? 0, "place", "places")} it fits in {Fits(result, next)}: that is too few.";
    }

    // "From 21 to 60 places", "60 places".
    private static string Open(SizeResult result)
    {
        var open = OpenPoints(result);
        (var first, var last) = (open[0].Places ?? 0, open[^1].Places ?? 0);
        return first == last ? Numbers.Count(last, "place", "places") : $"From {Numbers.Whole(first)} to {Numbers.Whole(last)} places";
    }

    private static IEnumerable<string> Above(SizeResult result)
    {
        int[] missed = [.. result.MissedAbove.Select(point => point.Places ?? 0)];
        if (missed.Length > 0)
        {
            var others =
                missed.Length == 1 ? "" : $" and {Numbers.Count(missed.Length - 1, "other larger number", "other larger numbers")}";
            yield return $"More is not always better here: with {Numbers.Whole(missed[0])}{others} of places the goal is missed again.";
        }
    }

    private static IEnumerable<string> None(SizeResult result)
    {
        var best = result.Curve.Append(result.Unlimited).MaxBy(point => point.Fits.Share)!;
        var canTell = best.Fits.High < result.Goal.Share;
        yield return (canTell, OpenPoints(result).IsEmpty) switch
        {
            (true, _) =>
                $"No number of places on {SavingWords.Name(result.Space)} meets the goal of {Goal(result)}: with no limit there the "
                    + $"plan fits in {Fits(result, result.Unlimited)}.",
            (_, true) => $"No number of places on {SavingWords.Name(result.Space)} is sure to meet the goal of {Goal(result)}: at best, "
                + $"{Room(best)}, the plan fits in {Fits(result, best)}. Play more seasons to know.",
            _ => $"{Open(result)} on {SavingWords.Name(result.Space)} may be enough for the goal of {Goal(result)}: "
                + $"{Numbers.Count(result.Seasons, "season", "seasons")} are too few to say. At best, {Room(best)}, the plan fits in "
                + $"{Fits(result, best)}.",
        };
        if (Brings(result) is { } brings)
        {
            yield return brings;
        }

        if (result.Seasons < result.FewestSeasons)
        {
            yield return $"Even if every season fitted, {Numbers.Count(result.Seasons, "season", "seasons")} could not show it: "
                + $"play {Numbers.Whole(result.FewestSeasons)} or more.";
            yield break;
        }

        if (canTell && best.Fits.Share > result.Unlimited.Fits.Share)
        {
            yield return $"The best of the numbers tried is {Numbers.Count(best.Places ?? 0, "place", "places")}: in {Fits(result, best)}.";
        }

        yield return Elsewhere(result);
    }

    // A goal that is out of reach says nothing of the plants that more room brings in time all the same.
    private static string? Brings(SizeResult result)
    {
        var asItIs = result.Curve.FirstOrDefault(point => point.Places == result.Space.Places);
        var best = MostInTime(result);
        if (asItIs is null || !(best.Places > asItIs.Places) || !(best.PlantsInTime >= asItIs.PlantsInTime + 1))
        {
            return null;
        }

        var wanted = result.Plan.Batches.Sum(batch => (long)batch.Order.Plants);
        return $"Still, more of it brings plants in time: {Numbers.Whole(asItIs.PlantsInTime)} of {Numbers.Whole(wanted)} a season "
            + $"as it is, {Numbers.Whole(best.PlantsInTime)} with {Numbers.Count(best.Places ?? 0, "place", "places")}, "
            + "the best number tried.";
    }

    private static string Elsewhere(SizeResult result)
    {
        var open = $"with no limit on any space it fits in {Fits(result, result.Everywhere)}";
        if (result.Everywhere.Fits.Low > result.Unlimited.Fits.High)
        {
            return $"Other spaces stand in the way: with no limit on any space it would fit in {Fits(result, result.Everywhere)}. "
                + $"{WaitSentences.Reading(result.Waits, result.Plan)}";
        }

        return result.Everywhere.Fits.High >= result.Goal.Share
            ? $"Whether more room elsewhere would do it is not clear either: {open}."
            : $"More room elsewhere would not do it either: {open}. What is missing then is not room but plants or time: germination, "
                + "growth, weather or dates.";
    }

    private static string Room(SizePoint point) =>
        point.Places is { } places ? $"with {Numbers.Count(places, "place", "places")}" : "with no limit";

    private static string Verb(int places, string one, string many) => places == 1 ? one : many;

    private static string Goal(SizeResult result) => ChanceWords.Setting(result.Goal.Share);

    private static string Fits(SizeResult result, SizePoint point) =>
        $"{ChanceWords.Fine(point.Fits.Share)} of {Numbers.Count(result.Seasons, "season", "seasons")} "
        + $"({ChanceWords.Setting(result.Goal.Confidence)} interval {ChanceWords.FineInterval(point.Fits)})";
}
