using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>The part of the verdict about plants that are late or never reach the field.</summary>
internal static class VerdictPlants
{
    public static IEnumerable<string> Sentences(StudyResult result)
    {
        var wanted = $"{Numbers.Count(result.PlantsWanted, "plant", "plants")} wanted{ClusterWords.OfWhich(result.Plan)}";
        if (result.PlantsLate.Most == 0 && result.PlantsShort.Most == 0)
        {
            var seasons = result.Seasons == 1 ? "the one season played" : $"every one of {Numbers.Whole(result.Seasons)} seasons";
            yield return $"{wanted}: all are out in time in {seasons}. {InTime(result)}";
        }
        else
        {
            yield return $"{wanted}. In time: {Spreads.Amount(result.PlantsInTime, "plant", "plants")}. {InTime(result)}";
            yield return $"Out, but late: {Spreads.Amount(result.PlantsLate, "plant", "plants")}.";
            yield return $"Never out: {Spreads.Amount(result.PlantsShort, "plant", "plants")}.";
        }

        if (result.Discarded.Most > 0)
        {
            yield return $"Thrown out: {Spreads.Amount(result.Discarded, "tray or flat", "trays or flats")}.";
        }

        if (result.StillStanding.Most > 0)
        {
            yield return $"Still standing on the last day: {Spreads.Amount(result.StillStanding, "tray or flat", "trays or flats")}.";
        }
    }

    private static string InTime(StudyResult result)
    {
        var days = result.Plan.Scenario.Rules.LateDays;
        var when = days == 0 ? "on the planned day or before" : $"at most {Numbers.Count(days, "day", "days")} after the planned day";
        return $"(In time is {when}, days on which only the weather held them back not counted.)";
    }
}
