using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>The part of the verdict about sowings that are late or given up unsown.</summary>
internal static class VerdictSowing
{
    private const int MostNamed = 3;

    public static IEnumerable<string> Sentences(StudyResult result)
    {
        BatchResult[] unsown = [.. result.Batches.Where(batch => !batch.SownFirst.IsUsual()).OrderBy(batch => batch.SownFirst.Happened)];
        if (unsown.Length > 0)
        {
            yield return "Hardly or never sown: "
                + $"{Names(unsown, batch => $" (in {Spreads.OfAll(batch.SownFirst.Happened, result.Seasons)})")}.";
        }

        var rules = result.Plan.Scenario.Rules;
        BatchResult[] late =
        [
            .. result.Batches.Where(batch =>
                batch.SownLast.IsUsual() && batch.SownLast.P50 > rules.WorkDayFrom(batch.Plan.SowOn.AddDays(result.Plan.SownInTimeDays + 1))
            ),
        ];
        if (late.Length > 0)
        {
            var dates = new Dates(result.Plan);
            var typically = result.Seasons == 1 ? "" : "typically ";
            string Last(BatchResult batch) =>
                $" (the last {typically}on {dates.Plain(batch.SownLast.P50!.Value)}, planned for {dates.Plain(batch.Plan.SowOn)})";
            yield return $"Sown later than the plan allows: {Names(late, Last)}.";
        }

        var mostly = result.Batches.Count(batch => batch.GivenUp.P50 > 0);
        var ever = result.Batches.Count(batch => batch.GivenUp.Most > 0);
        if (ever == 0)
        {
            yield break;
        }

        var batches = Numbers.Count(result.Batches.Length, "batch", "batches");
        var given = $"Sowings had to wait too long and are given up unsown, all or a part, in {Numbers.Whole(ever)} of {batches}";
        if (result.Seasons == 1 || mostly == ever)
        {
            yield return $"{given}{(result.Seasons == 1 ? "" : " in most seasons")}.";
        }
        else
        {
            yield return mostly == 0
                ? $"{given}, in fewer than half of the seasons."
                : $"{given}; in most seasons in {Numbers.Whole(mostly)} of them.";
        }
    }

    /// <summary>The first few batches by name: "B7, B9, B12 and 2 more". Safe to show anywhere: shortened, one
    /// line, no control characters.</summary>
    public static string Names(IReadOnlyList<BatchResult> batches, Func<BatchResult, string> after)
    {
        ImmutableArray<string> names =
        [
            .. batches.Take(MostNamed).Select(batch => PlainText.Short(batch.Plan.Order.Id, 30) + after(batch)),
        ];
        if (batches.Count > MostNamed)
        {
            return $"{string.Join(", ", names)} and {Numbers.Whole(batches.Count - MostNamed)} more";
        }

        return PlainText.List(names);
    }
}
