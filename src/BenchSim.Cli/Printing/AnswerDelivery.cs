using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Folder;
using BenchSim.Report;
using BenchSim.Report.Case;
using BenchSim.Report.Writing;

namespace BenchSim.Cli.Printing;

/// <summary>Hands over the answer of a run: prints the verdict and writes the report.</summary>
internal static class AnswerDelivery
{
    /// <summary>Hands it over.</summary>
    /// <param name="desk">Where to print.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="directory">Scenario folder, as the user would write it.</param>
    /// <param name="place">Report folder; null for none.</param>
    /// <param name="inputs">The files that were played.</param>
    /// <param name="json">True for output that machines read.</param>
    /// <param name="caseInput">The case report that goes into the report folder; null for none.</param>
    /// <returns>The exit code.</returns>
    public static int Give(
        Desk desk,
        Answer answer,
        string directory,
        string? place,
        ImmutableArray<InputFile> inputs,
        bool json,
        CaseInput? caseInput = null
    )
    {
        if (!json)
        {
            AnswerPrinter.Print(desk, answer, directory);
        }

        if (place is not null)
        {
            ReportFolder.Write(
                place,
                answer.Result,
                [.. inputs.Select(file => new ReportInput(file.Name, file.Bytes.AsMemory()))],
                NoteOf(answer),
                caseInput,
                desk.Cancel
            );
        }

        var casePlace = place is not null && caseInput is not null ? Path.Combine(place, CaseFolder.FileName) : null;
        if (json)
        {
            AnswerPrinter.PrintJson(desk, answer, place, casePlace);
        }
        else if (place is not null)
        {
            desk.Say($"Report: {Path.Combine(place, "report.html")}");
        }

        if (!json && casePlace is not null)
        {
            desk.Say($"Case report: {casePlace}");
        }

        return answer.IsRequirementMissed ? ExitCode.RequirementMissed : ExitCode.Done;
    }

    /// <summary>Why the play stopped where it did; null where the number of seasons was given.</summary>
    public static string? NoteOf(Answer answer) => answer.Precision is { } precision ? PrecisionWords.WhyItStopped(precision) : null;
}
