using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>The part of the verdict that says how likely the plan is to fit, and why it does not.</summary>
internal static class VerdictChance
{
    public static string Headline(Chance chance, bool? fits)
    {
        if (chance.Seasons == 1)
            return chance.Hits == 1 ? "The plan fits in the one season played." : "The plan does not fit in the one season played.";
        if (chance.Hits == chance.Seasons)
            return "The plan fits in every season played.";
        if (chance.Hits == 0)
            return "The plan does not fit in any season played.";
        return (fits, chance.Share) switch
        {
            (true, _) => "The plan fits in nearly every season.",
            (null, _) => "The plan may fit, but the seasons played are too few to say whether it fits in nine seasons of ten.",
            (false, >= 0.5) => "The plan fits more often than not, but not reliably.",
            _ => "The plan does not fit in most seasons.",
        };
    }

    public static IEnumerable<string> Sentences(StudyResult result)
    {
        yield return $"The plan fits in {Numbers.OfSeasons(result.Fits)}.";
        if (result.Seasons < Numbers.EnoughSeasons)
        {
            yield return result.Seasons == 1
                ? "One season says nothing about another: play at least 30, better 1,000, before deciding anything."
                : $"These are only {result.Seasons} seasons: take every figure as a rough guide, and play at least 30, better 1,000, "
                    + "before deciding anything.";
        }

        if (result.FitsWeatherCounted.Hits != result.Fits.Hits)
            yield return "Counting also the days on which only the weather held trays back, it fits in "
                + $"{Numbers.OfSeasons(result.FitsWeatherCounted)}.";
        if (MainCause(result) is { } cause)
            yield return cause;
    }

    private static string? MainCause(StudyResult result)
    {
        int misses = result.Fits.Seasons - result.Fits.Hits;
        int most = result.Causes.IsEmpty ? 0 : result.Causes.Values.Max();
        if (misses == 0 || most == 0)
            return null;

        // Enumeration follows the order of the causes: the first of equals is named first.
        Cause[] leading = [.. result.Causes.Where(pair => pair.Value == most).Select(pair => pair.Key)];
        string seasons = misses == 1 ? "In the one season that does not fit" : $"In {Numbers.Whole(most)} of the {Numbers.Whole(misses)} "
            + "seasons that do not fit";
        string first = $"{seasons}, {Reason(leading[0])}.";
        return leading.Length == 1 ? first : $"{first} As often, {Reason(leading[1])}.";
    }

    private static string Reason(Cause cause) => cause switch
    {
        Cause.Place => "the cause is want of room: with places without limit the same season would have fitted",
        Cause.Germination => "the cause is loss of plants: even with room for all, too few come up or too many are thrown out on the way",
        Cause.SlowGrowth => "the cause is slow growth: plants are not ready in time even with room for all",
        Cause.Hold => "the cause is the weather: it holds trays back even with room for all",
        _ => throw new ArgumentOutOfRangeException(nameof(cause)),
    };
}
