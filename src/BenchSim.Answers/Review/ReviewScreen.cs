using BenchSim.Answers.Words;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Planning;
using BenchSim.Study.Review;

namespace BenchSim.Answers.Review;

/// <summary>The first screen of a review: what went out in time, what was late, what was written down, what forecasts were worth.</summary>
internal static class ReviewScreen
{
    private const int LongestName = 20;
    private const int LongestPlan = 36;
    private const int MostNamed = 3;

    public static FirstScreen Of(ReviewAnswer answer)
    {
        var review = answer.Result;
        return new FirstScreen($"{FirstScreen.Subject(review.Plan.Scenario.Name, null)}: {Headline(answer)}")
        {
            Facts = [.. (answer.Purchase is { } asked ? OfPurchase(asked) : Facts(review)).OfType<string>()],
            Warnings = answer.Agreement is null
                ? ["No agreement of this season is kept in the folder, so it is set beside the plan as it is now, later edits included."]
                : [],
            Table = answer.Purchase is { } bought ? Plans(bought) : Kinds(review),
            Footnote = answer.Purchase is { } judged
                ? PurchaseSentences.Method(judged)
                : "Days late: of the middle tray, against the agreed date; middle and latest of the batches with a line.",
        };
    }

    // Who asks of a purchase has read the rest, or finds it in the whole answer.
    private static IEnumerable<string?> OfPurchase(PurchaseJudged purchase) =>
        [PurchaseSentences.Judgement(purchase), PurchaseSentences.Free(purchase.Sought)];

    private static IEnumerable<string?> Facts(SeasonReview review) =>
        [ReviewSentences.Forecast(review), Latest(review), Fuel(review), ReviewSentences.Work(review), Changed(review)];

    private static Table Plans(PurchaseJudged purchase)
    {
        var table = new Table(PurchaseSentences.Columns, LongestPlan);
        PurchaseSentences.Fill(table, purchase);
        return table;
    }

    /// <summary>The jobs by kind.</summary>
    public static Table Kinds(SeasonReview review)
    {
        var table = new Table(["job", ">jobs", ">with a line", ">share", ">middle days late", ">latest"], LongestName);
        foreach (var kind in review.Kinds)
        {
            table.Add(
                TaskWords.Job(kind.Kind),
                Numbers.Whole(kind.Jobs),
                Numbers.Whole(kind.WithRow),
                ChanceWords.Percent((double)kind.WithRow / kind.Jobs),
                kind.Middle is { } middle ? Numbers.Whole(middle) : "-",
                kind.DaysLate.IsEmpty ? "-" : Numbers.Whole(kind.DaysLate[^1])
            );
        }

        return table;
    }

    private static string Headline(ReviewAnswer answer)
    {
        var review = answer.Result;
        var plan = answer.Agreement is { } agreement ? $"agreed on {Dates.Full(agreement.On)}" : "planned";
        var (late, dates) = (review.Plan.Scenario.Rules.LateDays, new Dates(review.Plan));
        var (jobs, rows) = (review.Kinds.Sum(kind => kind.Jobs), review.Kinds.Sum(kind => kind.WithRow));
        var isWhole = review.DueOut == review.AgreedBatches;
        var due = isWhole
            ? ""
            : $"{Numbers.Whole(review.DueOut)} were to be in the field by the last line, {dates.Plain(review.LastRow)}; ";
        return $"of {Numbers.Count(review.AgreedBatches, "batch", "batches")} {plan}, {due}{Numbers.Whole(review.OutBatches)} are "
            + $"{(isWhole ? "in the field " : "")}by the log, {Numbers.Whole(review.OutInTime)} of them no more than "
            + $"{Numbers.Count(late, "day", "days")} late."
            + (
                jobs == 0
                    ? ""
                    : $" {Numbers.Whole(rows)} of {Numbers.Count(jobs, "job", "jobs")} due on what was begun have a line "
                        + $"({ChanceWords.Percent((double)rows / jobs)}); of the others nobody knows the day."
            );
    }

    private static string? Latest(SeasonReview review)
    {
        ReviewedBatch[] late =
        [
            .. review
                .Batches.Where(batch => batch.Job(WorkKind.SetOut)?.DaysLate > review.Plan.Scenario.Rules.LateDays)
                .OrderByDescending(batch => batch.Job(WorkKind.SetOut)!.DaysLate)
                .Take(MostNamed),
        ];
        return late.Length == 0
            ? null
            : "Latest in the field: "
                + PlainText.List([
                    .. late.Select(batch =>
                        $"{PlainText.Short(batch.Order.Id, LongestName)} "
                        + $"({Numbers.Count(batch.Job(WorkKind.SetOut)!.DaysLate!.Value, "day", "days")}{Sown(batch)})"
                    ),
                ])
                + ".";
    }

    private static string Sown(ReviewedBatch batch) =>
        batch.Job(WorkKind.Sow)?.DaysLate is > 0 and var days ? $", sown {Numbers.Whole(days)} late" : "";

    private static string? Fuel(SeasonReview review)
    {
        FuelSpent[] counted = [.. review.Fuel.Where(fuel => fuel.Counted is not null)];
        return counted.Length == 0
            ? null
            : "Fuel: " + string.Join("; ", counted.Take(MostNamed).Select(fuel => ReviewSentences.Fuel(review, fuel))) + ".";
    }

    private static string? Changed(SeasonReview review)
    {
        var (gone, added) = (review.Batches.Count(batch => batch.Now is null), review.Batches.Count(batch => batch.Agreed is null));
        return gone + added == 0
            ? null
            : $"{Numbers.Count(added, "batch", "batches")} came to the plan after it was agreed, and {Numbers.Whole(gone)} left it.";
    }
}
