using System.Collections.Immutable;
using BenchSim.Report.Json;
using BenchSim.Report.Morning;
using BenchSim.Report.Papers;

namespace BenchSim.Answers.Json;

/// <summary>The page of a day that was written.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Today">The day.</param>
/// <param name="Folder">Folder of the page.</param>
/// <param name="File">Name of the page.</param>
/// <param name="Seasons">Seasons played on from the day.</param>
/// <param name="Jobs">The jobs with their numbers on the page.</param>
internal sealed record TodayPaperDocument(
    int Version,
    string Name,
    DateOnly Today,
    string Folder,
    string File,
    int Seasons,
    ImmutableArray<JsonNumberedJob> Jobs
)
{
    public static TodayPaperDocument Of(TodaySheet sheet, string folder) =>
        new(
            Version: JsonDialect.Version,
            Name: sheet.Plan.Scenario.Name,
            Today: sheet.Today,
            Folder: folder,
            File: TodayFolder.PageName,
            Seasons: sheet.Coming.Seasons,
            Jobs: [.. sheet.Jobs.Select(job => JsonNumberedJob.Of(sheet, job))]
        );
}

/// <summary>A job of the page.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Job">The job, in the words of the work list.</param>
/// <param name="Batch">Batch.</param>
/// <param name="Grower">Grower.</param>
/// <param name="Pieces">Trays or flats; null where it is not due in any season on these days.</param>
/// <param name="AreFlats">Whether they are flats.</param>
/// <param name="Likelihood">"sure", "likely" or "maybe"; null where it is due without a line alone.</param>
/// <param name="First">First day on which it may begin; null likewise.</param>
/// <param name="Last">Last day on which it may begin; null likewise.</param>
/// <param name="DueSince">The day on which it was due, where no line says that it was done; else null.</param>
internal sealed record JsonNumberedJob(
    int Number,
    string Job,
    string Batch,
    string Grower,
    int? Pieces,
    bool AreFlats,
    string? Likelihood,
    DateOnly? First,
    DateOnly? Last,
    DateOnly? DueSince
)
{
    public static JsonNumberedJob Of(TodaySheet sheet, NumberedJob job)
    {
        var order = sheet.Plan.Batches[job.Batch].Order;
        return new(
            Number: job.Number,
            Job: TaskWords.Job(job.Kind),
            Batch: order.Id,
            Grower: order.Grower,
            Pieces: job.Coming?.Pieces,
            AreFlats: job.AreFlats,
            Likelihood: job.Coming is { } coming ? SheetWords.Of(coming.Likelihood) : null,
            First: job.Coming?.First,
            Last: job.Coming?.Last,
            DueSince: job.Due.IsEmpty ? null : job.Due.Min(due => due.On)
        );
    }
}
