using System.Collections.Immutable;

namespace BenchSim.Answers.Json;

/// <summary>What has changed since an earlier report.</summary>
/// <param name="Today">The day for which it was made; null for a play of the whole season.</param>
/// <param name="Seasons">Seasons it played.</param>
/// <param name="Seed">Its seed, as text.</param>
/// <param name="Nothing">True where the files, the day and the play are the same, and so is the answer.</param>
/// <param name="FilesChanged">Files that are not as they were.</param>
/// <param name="FilesNew">Files that were not there.</param>
/// <param name="FilesGone">Files that are there no more.</param>
/// <param name="FitsThen">Share of seasons that fitted then, 0 to 1.</param>
/// <param name="FitsNow">Share of seasons that fit, 0 to 1.</param>
/// <param name="PlantsLateThen">Plants that missed their date then, late or never out, mean of a season.</param>
/// <param name="PlantsLateNow">Plants that miss their date now.</param>
/// <param name="Batches">Batches of which more or fewer plants miss their date, the largest change first.</param>
internal sealed record JsonSince(
    DateOnly? Today,
    int Seasons,
    string Seed,
    bool Nothing,
    ImmutableArray<string> FilesChanged,
    ImmutableArray<string> FilesNew,
    ImmutableArray<string> FilesGone,
    double FitsThen,
    double FitsNow,
    double PlantsLateThen,
    double PlantsLateNow,
    ImmutableArray<JsonSinceBatch> Batches
);

/// <summary>A batch of which more or fewer plants miss their date than an earlier report said.</summary>
/// <param name="Batch">Id.</param>
/// <param name="PlantsLateThen">Plants that missed their date then, mean of a season.</param>
/// <param name="PlantsLateNow">Plants that miss their date now.</param>
internal sealed record JsonSinceBatch(string Batch, double PlantsLateThen, double PlantsLateNow);
