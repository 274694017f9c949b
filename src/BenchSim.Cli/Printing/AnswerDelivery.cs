using System.Collections.Immutable;
using BenchSim.Cli.Words;
using BenchSim.Folder;
using BenchSim.Report;

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
    /// <returns>The exit code.</returns>
    public static int Give(Desk desk, Answer answer, string directory, string? place, ImmutableArray<InputFile> inputs, bool json)
    {
        if (!json)
            AnswerPrinter.Print(desk, answer, directory);
        string? note = answer.Precision is { } precision ? PrecisionWords.WhyItStopped(precision) : null;
        if (place is not null)
            ReportFolder.Write(place, answer.Result, [.. inputs.Select(file => new ReportInput(file.Name, file.Bytes.AsMemory()))], note, desk.Cancel);
        if (json)
            AnswerPrinter.PrintJson(desk, answer, place);
        else if (place is not null)
            desk.Say($"Report: {Path.Combine(place, "report.html")}");
        return answer.IsRequirementMissed ? ExitCode.RequirementMissed : ExitCode.Done;
    }
}
