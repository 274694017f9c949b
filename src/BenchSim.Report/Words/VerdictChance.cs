using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>The part of the verdict that says how likely the plan is to fit.</summary>
internal static class VerdictChance
{
    /// <summary>Both chances where they differ, and what fails in the seasons that do not fit.</summary>
    public static string Headline(StudyResult result)
    {
        (var room, var weather) = (result.Fits, result.FitsWeatherCounted);
        var chance = room.Seasons switch
        {
            1 => room.Hits == 1 ? "The plan fits in the one season played" : "The plan does not fit in the one season played",
            < Numbers.EnoughSeasons when room.Hits > 0 && room.Hits < room.Seasons =>
                $"The plan fits in {room.Hits} of {room.Seasons} seasons",
            _ => $"The plan fits in {ChanceWords.Brief(room)} {(room.Hits == room.Seasons ? "" : "of ")}"
                + Numbers.Count(room.Seasons, "season", "seasons"),
        };
        if (room.Hits != weather.Hits)
        {
            chance += $" for room, in {ChanceWords.Brief(weather)} for room and weather";
        }

        var failed = VerdictCauses.Failed(result);
        return failed.Length == 0 ? chance + "." : $"{chance}. {Rest(room, failed)}";
    }

    /// <summary>
    /// How far the share may be off by luck, and how many values behind it nobody measured; null where the seasons are few, or all alike:
    /// then they are counted.
    /// </summary>
    public static string? Spread(StudyResult result) =>
        result.Seasons < Numbers.EnoughSeasons || result.Fits.Hits == 0 || result.Fits.Hits == result.Seasons
            ? null
            : $"By luck alone {ChanceWords.FineInterval(result.Fits)}. {Weak(result)}".TrimEnd();

    /// <summary>How many values behind the share nobody measured; null where all were.</summary>
    public static string? Weak(StudyResult result)
    {
        var values = SourcedValue.Of(result.Plan.Scenario);
        return values.Count(value => value.IsWeak) is > 0 and var weak
            ? $"From memory or assumption: {Numbers.Whole(weak)} of {Numbers.Count(values.Length, "value", "values")}."
            : null;
    }

    private static string Rest(Chance room, (int Seasons, string What)[] failed)
    {
        var misses = room.Seasons - room.Hits;
        var where = (room.Seasons, room.Hits, 2 * failed[0].Seasons > misses) switch
        {
            (1, _, _) => "",
            _ when failed[0].Seasons == misses => room.Hits == 0 ? "In all of them, " : "In the rest, ",
            (_, _, true) => "In most of the rest, ",
            _ => "In some of the rest, ",
        };
        var sentence = $"{where}{failed[0].What}";
        return $"{char.ToUpperInvariant(sentence[0])}{sentence[1..]}.";
    }

    public static IEnumerable<string> Sentences(StudyResult result)
    {
        yield return $"The plan fits in {ChanceWords.OfAllSeasons(result.Fits)}.";
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
                + $"{ChanceWords.OfAllSeasons(result.FitsWeatherCounted)}.";
        }
    }
}
