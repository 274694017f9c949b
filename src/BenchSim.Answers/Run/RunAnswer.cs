using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Trust;
using BenchSim.Answers.Words;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Report;
using BenchSim.Report.Case;
using BenchSim.Report.Json;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Study.Precision;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Run;

/// <summary>What came of a run.</summary>
/// <param name="Result">The seasons, counted.</param>
/// <param name="Inputs">The files that were played.</param>
public sealed record RunAnswer(StudyResult Result, ImmutableArray<InputFile> Inputs) : Answer
{
    /// <summary>What has changed since an earlier report; null where none was named.</summary>
    internal SinceReport? Since { get; init; }

    /// <summary>How far the values behind it may move the share; null where that was not asked.</summary>
    internal KnownRange? Known { get; init; }

    /// <summary>Share of seasons that had to fit, 0 to 1; null for no gate.</summary>
    public double? Required { get; init; }

    /// <summary>How the number of seasons was found; null when it was given.</summary>
    public PrecisionResult? Precision { get; init; }

    /// <summary>What the case report is made of; null for none.</summary>
    public CaseInput? Case { get; init; }

    /// <summary>Report folder to write; null for none.</summary>
    public string? Report { get; init; }

    /// <summary>The answer in short.</summary>
    public Verdict Verdict { get; } = Verdict.Of(Result);

    /// <summary>True when fewer seasons fit than were asked for.</summary>
    public bool IsRequirementMissed => Required is { } required && Result.Fits.Share < required;

    /// <summary>True when the seasons played are too few to be sure on which side of the requirement the plan lies.</summary>
    public bool IsRequirementClose => Required is { } required && Result.Fits.Low < required && Result.Fits.High > required;

    /// <summary>Case report, where one is written.</summary>
    public string? CaseFile => Report is not null && Case is not null ? Path.Combine(Report, CaseFolder.FileName) : null;

    /// <summary>The page of the report, where one is written.</summary>
    public string? PageFile => Report is null ? null : Path.Combine(Report, "report.html");

    /// <summary>The case report by itself; null where none was asked for.</summary>
    public byte[]? CaseReport() => Case is { } asked ? CaseFolder.Book(asked, [.. ReportInputs]) : null;

    private IEnumerable<ReportInput> ReportInputs => Inputs.Select(file => new ReportInput(file.Name, file.Bytes.AsMemory()));

    private string? Note =>
        From is null && Precision is null && Known is null
            ? null
            : string.Join(
                ' ',
                [
                    .. From is { } from ? UnderwayWords.Of(from) : [],
                    .. Known is { } known ? [known.Sentence] : Array.Empty<string>(),
                    .. Precision is { } precision ? [PrecisionWords.WhyItStopped(precision)] : Array.Empty<string>(),
                ]
            );

    /// <summary>Writes the report folder, where one is asked for.</summary>
    /// <param name="cancel">Stops it; nothing is left behind.</param>
    public void WriteReport(CancellationToken cancel)
    {
        if (Report is not null)
        {
            ReportFolder.Write(Report, Result, [.. ReportInputs], Note, Case, cancel);
        }
    }

    /// <inheritdoc />
    public override byte[] Json() =>
        AnswerContext.Write(
            new RunDocument(
                Version: JsonDialect.Version,
                Name: Result.Plan.Scenario.Name,
                Variant: Result.Variant,
                Seasons: Result.Seasons,
                Seed: Result.Seed.ToString(CultureInfo.InvariantCulture),
                Fits: JsonChance.Of(Result.Fits),
                FitsWeatherCounted: JsonChance.Of(Result.FitsWeatherCounted),
                Require: Required is { } required ? new JsonRequirement(required, !IsRequirementMissed) : null,
                Precision: Precision is { } precision ? JsonPrecision.Of(precision) : null,
                Verdict: JsonVerdict.Of(Verdict),
                Bottlenecks: Result.Bottlenecks is { } bottlenecks ? BottleneckSentences.Of(bottlenecks) : null,
                Warnings: JsonFault.Of(Result.Plan.Warnings),
                Report: Report,
                Case: CaseFile,
                Since: Since?.Document,
                Trust: Known is { } known ? new JsonKnownRange(known.Values, known.Low, known.Middle, known.High) : null
            )
        );

    /// <inheritdoc />
    public override FirstScreen? Screen => RunScreen.Of(this);

    private protected override void Tell(Passages passages) => RunTelling.Tell(passages, this);
}
