using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Json;
using BenchSim.Report.Papers;
using BenchSim.Season.Inputs;
using BenchSim.Study.Review;

namespace BenchSim.Answers.Json;

/// <summary>A season that is over, beside the plan that was agreed.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="AgreedOn">The day of the agreement; null where none is kept, and the plan as it is stands in its place.</param>
/// <param name="Seasons">Seasons played of the agreed plan, and on from each Monday.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="BatchesAgreed">Batches that were agreed.</param>
/// <param name="Figures">The figures, and where each comes from.</param>
/// <param name="Batches">The batches: those of the plan in its order, then those that are no longer in it.</param>
/// <param name="Weeks">What was forecast each Monday, against what came.</param>
/// <param name="Timed">Work that was timed, by what was done.</param>
/// <param name="FuelLinesUnread">Lines of fuel that name no house that burns any, or no unit of its fuel.</param>
/// <param name="DaysTakenAsNormal">Days up to the last line whose weather was not observed.</param>
/// <param name="Purchase">What a variant would have changed on top of what would have cost nothing; null where none was named.</param>
internal sealed record ReviewDocument(
    int Version,
    string Name,
    DateOnly? AgreedOn,
    int Seasons,
    string Seed,
    int BatchesAgreed,
    ImmutableArray<JsonReviewFigure> Figures,
    ImmutableArray<JsonReviewedBatch> Batches,
    ImmutableArray<JsonForecastWeek> Weeks,
    ImmutableArray<JsonTimed> Timed,
    int FuelLinesUnread,
    int DaysTakenAsNormal,
    JsonPurchase? Purchase
)
{
    public static ReviewDocument Of(SeasonReview review, DateOnly? agreedOn, PurchaseJudged? purchase) =>
        new(
            Version: JsonDialect.Version,
            Name: review.Plan.Scenario.Name,
            AgreedOn: agreedOn,
            Seasons: review.Agreed.Seasons,
            Seed: review.Agreed.Seed.ToString(CultureInfo.InvariantCulture),
            BatchesAgreed: review.AgreedBatches,
            Figures: [.. ReviewFigure.All(review).Select(JsonReviewFigure.From)],
            Batches: [.. review.Batches.Select(JsonReviewedBatch.Of)],
            Weeks: [.. review.Weeks.Select(week => JsonForecastWeek.Of(review.Plan, week))],
            Timed:
            [
                .. review.Minutes.Select(each => new JsonTimed(
                    LogFields.What[each.What],
                    each.Rows,
                    each.Timed,
                    each.Minutes,
                    each.ByTheRules
                )),
            ],
            FuelLinesUnread: review.FuelRowsUnread,
            DaysTakenAsNormal: review.DaysLacking,
            Purchase: purchase is null ? null : JsonPurchase.Of(purchase)
        );
}

/// <summary>A figure of a review.</summary>
/// <param name="Figure">Its name.</param>
/// <param name="Of">Of what it is, where there are several: the id of a house, a job; empty for the season.</param>
/// <param name="Value">Value; a mean where it was played.</param>
/// <param name="P10">One season in ten is at or below this; null where it is one value.</param>
/// <param name="P90">Nine seasons in ten are at or below this; null likewise.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Basis">"counted" by lines of the log, "played" by seasons, or "assumed" by values of the site.</param>
internal sealed record JsonReviewFigure(string Figure, string Of, double Value, double? P10, double? P90, string Unit, string Basis)
{
    public static JsonReviewFigure From(ReviewFigure figure) =>
        new(
            figure.Name,
            figure.Of,
            figure.Value,
            figure.Low,
            figure.High,
            figure.Unit,
            figure.Basis switch
            {
                Study.Review.Basis.Counted => "counted",
                Study.Review.Basis.Played => "played",
                _ => "assumed",
            }
        );
}

/// <summary>A batch of a review.</summary>
/// <param name="Id">Id.</param>
/// <param name="Grower">Grower.</param>
/// <param name="Agreed">Whether it was agreed.</param>
/// <param name="Planned">Whether it is still planned.</param>
/// <param name="Begun">Whether anything of it was sown, or counted, by the log.</param>
/// <param name="Jobs">Its jobs.</param>
internal sealed record JsonReviewedBatch(
    string Id,
    string Grower,
    bool Agreed,
    bool Planned,
    bool Begun,
    ImmutableArray<JsonReviewedJob> Jobs
)
{
    public static JsonReviewedBatch Of(ReviewedBatch batch) =>
        new(
            batch.Order.Id,
            batch.Order.Grower,
            batch.Agreed is not null,
            batch.Now is not null,
            batch.IsBegun,
            [.. batch.Jobs.Select(JsonReviewedJob.Of)]
        );
}

/// <summary>A job on a batch.</summary>
/// <param name="Job">Job, as the work list names it.</param>
/// <param name="Agreed">The day that was agreed; null where the batch was not.</param>
/// <param name="Done">The day by which half of the pieces with a line were done; null where there is no line.</param>
/// <param name="DaysLate">Days later than agreed, below 0 for earlier; null where one of the two is not known.</param>
/// <param name="PiecesAgreed">Trays or flats agreed; for potting up the trays filled.</param>
/// <param name="PiecesDone">The same by the log.</param>
/// <param name="AreFlats">Whether they are flats.</param>
internal sealed record JsonReviewedJob(
    string Job,
    DateOnly? Agreed,
    DateOnly? Done,
    int? DaysLate,
    int PiecesAgreed,
    int PiecesDone,
    bool AreFlats
)
{
    public static JsonReviewedJob Of(ReviewedJob job) =>
        new(TaskWords.Job(job.Kind), job.Planned, job.Done, job.DaysLate, job.PiecesPlanned, job.PiecesDone, job.AreFlats);
}

/// <summary>What was forecast on a Monday of the days on which batches go out, against what came.</summary>
/// <param name="Monday">The day.</param>
/// <param name="InRange">Batches that went out within the range of eight seasons of ten.</param>
/// <param name="Earlier">Batches that went out before it.</param>
/// <param name="Later">Batches that went out after it.</param>
/// <param name="Batches">The batches that had still to go out then and did.</param>
internal sealed record JsonForecastWeek(DateOnly Monday, int InRange, int Earlier, int Later, ImmutableArray<JsonForecastBatch> Batches)
{
    public static JsonForecastWeek Of(SeasonPlan plan, ForecastWeek week) =>
        new(
            week.Day,
            week.InRange,
            week.Earlier,
            week.Later,
            [.. week.Cases.Select(one => new JsonForecastBatch(plan.Batches[one.Batch].Order.Id, one.P10, one.P50, one.P90, one.OutOn))]
        );
}

/// <summary>What one forecast said of a batch.</summary>
/// <param name="Batch">Id.</param>
/// <param name="P10">In one season of ten half of its trays were out by that day; null where in fewer any went out.</param>
/// <param name="P50">In half of them; null likewise.</param>
/// <param name="P90">In nine of ten; null likewise.</param>
/// <param name="Out">The day by which half of its trays that went out had gone, by the log.</param>
internal sealed record JsonForecastBatch(string Batch, DateOnly? P10, DateOnly? P50, DateOnly? P90, DateOnly Out);

/// <summary>Work that was timed.</summary>
/// <param name="What">What was done, as the log says it.</param>
/// <param name="Lines">Lines of that.</param>
/// <param name="WithMinutes">Those with minutes.</param>
/// <param name="Minutes">Their minutes.</param>
/// <param name="BySite">Minutes that the site gives for the same trays; null where it says nothing of such work.</param>
internal sealed record JsonTimed(string What, int Lines, int WithMinutes, double Minutes, double? BySite);
