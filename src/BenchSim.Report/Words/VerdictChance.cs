using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>The part of the verdict that says how likely the plan is to fit.</summary>
internal static class VerdictChance
{
    public static string Headline(Chance chance, bool? fits)
    {
        if (chance.Seasons == 1)
        {
            return chance.Hits == 1 ? "The plan fits in the one season played." : "The plan does not fit in the one season played.";
        }

        if (chance.Hits == chance.Seasons)
        {
            return "The plan fits in every season played.";
        }

        if (chance.Hits == 0)
        {
            return "The plan does not fit in any season played.";
        }

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
        {
            yield return "Counting also the days on which only the weather held trays back, it fits in "
                + $"{Numbers.OfSeasons(result.FitsWeatherCounted)}.";
        }
    }
}
