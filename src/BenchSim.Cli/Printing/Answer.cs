using BenchSim.Report.Words;
using BenchSim.Study.Precision;
using BenchSim.Study.Results;

namespace BenchSim.Cli.Printing;

/// <summary>What came of a run.</summary>
/// <param name="Result">The seasons, counted.</param>
/// <param name="Verdict">The answer in words.</param>
/// <param name="Required">Share of seasons that had to fit, 0 to 1; null for no gate.</param>
internal sealed record Answer(StudyResult Result, Verdict Verdict, double? Required)
{
    /// <summary>How the number of seasons was found; null when it was given.</summary>
    public PrecisionResult? Precision { get; init; }

    /// <summary>True when fewer seasons fit than were asked for.</summary>
    public bool IsRequirementMissed => Required is { } required && Result.Fits.Share < required;

    /// <summary>True when the seasons played are too few to be sure on which side of the requirement the plan lies.</summary>
    public bool IsRequirementClose => Required is { } required && Result.Fits.Low < required && Result.Fits.High > required;
}
