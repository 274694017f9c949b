using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>The first sentence of the verdict, what a grower feels: how many plants are late in a usual year and in a bad one, whose, and
/// when.</summary>
internal static class VerdictFelt
{
    private const int MostNamed = 3;
    private const int LongestName = 20;

    // Above this share of the wanted plants those that never get out are told beside the late ones.
    private const double ManyMissing = 0.02;

    public static string Headline(StudyResult result)
    {
        var isMissingFirst = result.PlantsShort.P50 > result.PlantsLate.P50;
        var missing = Missing(result, isMissingFirst);
        isMissingFirst = isMissingFirst && missing is not null;
        var felt =
            result.PlantsLate.Most == 0
                ? NoneLate(result, isMissingFirst)
                : $"{HowMany(result, isMissingFirst ? "other plant" : "plant")} {Whose(result)}".TrimEnd();
        return isMissingFirst ? $"{missing} {felt}"
            : missing is not null ? $"{felt} {missing}"
            : felt;
    }

    /// <summary>Mean plants of a batch that get out, but late.</summary>
    public static double MeanLate(BatchResult batch) =>
        Math.Max(0, batch.Plan.Order.Plants - batch.PlantsInTime.Mean - batch.PlantsShort.Mean);

    private static string NoneLate(StudyResult result, bool isOther) =>
        $"No {(isOther ? "other plant" : "plant")} is late in "
        + $"{(result.Seasons == 1 ? "the one season played" : $"any of {Numbers.Whole(result.Seasons)} years played")}.";

    private static string HowMany(StudyResult result, string plant)
    {
        var late = result.PlantsLate;
        var of = Numbers.Count(result.PlantsWanted, "plant", "plants");
        if (late.Seasons == 1)
        {
            return $"In the one season played {Numbers.Whole(late.P50)} of {of} {Are(late.P50)} late.";
        }

        if (late.Seasons < Numbers.EnoughSeasons)
        {
            return late.P50 == 0
                ? $"In a usual year no {plant} is late; in the worst of {late.Seasons} played, {Numbers.Whole(late.Most)} of {of} "
                    + $"{Are(late.Most)}."
                : $"In a usual year {Numbers.Whole(late.P50)} of {of} {Are(late.P50)} late; in the worst of {late.Seasons} played, "
                    + $"{Numbers.Whole(late.Most)}.";
        }

        if (late.P90 == 0)
        {
            return $"In nine years of ten no {plant} is late; in the worst of {Numbers.Whole(late.Seasons)}, {Numbers.Whole(late.Most)} of "
                + $"{of} {Are(late.Most)}.";
        }

        return late.P50 == 0
            ? $"In a usual year no {plant} is late; in one year of ten {Numbers.Whole(late.P90)} or more of {of} are."
            : $"In a usual year {Numbers.Whole(late.P50)} of {of} {Are(late.P50)} late; in one year of ten {Numbers.Whole(late.P90)} or "
                + "more.";
    }

    // The batches with most late plants, by grower where there is more than one, and the dates on which they are due.
    private static string Whose(StudyResult result)
    {
        BatchResult[] late = [.. result.Batches.Where(batch => MeanLate(batch) > 0).OrderByDescending(MeanLate)];
        if (late.Length == 0)
        {
            return "";
        }

        BatchResult[] worst = [.. late.Take(MostNamed)];
        var growers = result.Batches.Select(batch => batch.Plan.Order.Grower).Distinct(StringComparer.Ordinal).Count();
        string[] names =
        [
            .. worst
                .GroupBy(batch => batch.Plan.Order.Grower, StringComparer.Ordinal)
                .Select(own =>
                    PlainText.List([.. own.Select(batch => PlainText.Short(batch.Plan.Order.Id, LongestName))])
                    + (growers > 1 && own.Key.Length > 0 ? $" ({PlainText.Short(own.Key, LongestName)})" : "")
                ),
        ];
        var all = late.Length == worst.Length ? "They are" : "Most are";
        if (late.Length > worst.Length && 2 * worst.Sum(MeanLate) < late.Sum(MeanLate))
        {
            all = $"{Numbers.Whole(late.Length)} batches are late at times, most of all";
        }

        return $"{all} {PlainText.List([.. names])}, due {Due(worst, new Dates(result.Plan))}.";
    }

    private static string Due(BatchResult[] batches, Dates dates)
    {
        (var first, var last) = (batches.Min(batch => batch.Plan.SetOutOn), batches.Max(batch => batch.Plan.SetOutOn));
        return first == last ? dates.Plain(first) : dates.Between(first, last).Replace(" and ", " to ", StringComparison.Ordinal);
    }

    private static string? Missing(StudyResult result, bool isFirst)
    {
        var missing = result.PlantsShort;
        var many = ManyMissing * result.PlantsWanted;
        if (missing.P90 <= many)
        {
            return null;
        }

        return missing.Seasons switch
        {
            1 => $"{Numbers.Whole(missing.P50)} never get out.",
            < Numbers.EnoughSeasons =>
                $"Never out: {Numbers.Whole(missing.P50)} in a usual year, {Numbers.Whole(missing.Most)} in the worst.",
            _ => missing.P50 == 0
                ? $"In one year of ten {Numbers.Whole(missing.P90)} or more of the plants never get out."
                : (isFirst ? "In a usual year " : "")
                    + Numbers.Whole(missing.P50)
                    + (isFirst ? $" of {Numbers.Count(result.PlantsWanted, "plant", "plants")}" : "")
                    + $" never get out; in one year of ten {Numbers.Whole(missing.P90)} or more.",
        };
    }

    private static string Are(double plants) => plants == 1 ? "is" : "are";
}
