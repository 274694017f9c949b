using BenchSim.Answers.Asking;
using BenchSim.Report.Words;

namespace BenchSim.Workbench.Showing;

/// <summary>What is told in the place of an answer: a fault of the program itself, or of the files.</summary>
internal static class FailureWords
{
    /// <summary>What stopped, and what to do.</summary>
    /// <param name="what">What stopped: "play".</param>
    /// <param name="kind">On which kind of fault.</param>
    public static string Of(string what, string kind) =>
        $"The {what} stopped on a fault of the program, not of your files ({kind}). Take the last change back, and report it.";

    /// <summary>The first fault of the files, and how many more there are.</summary>
    /// <param name="found">The faults.</param>
    public static string Mend(FaultsFoundException found)
    {
        var first = found.Faults[0];
        var line = first.Place.Line > 0 ? $", line {Numbers.Whole(first.Place.Line)}" : "";
        var more = found.Faults.Length > 1 ? $" And {Numbers.Count(found.Faults.Length - 1, "fault", "faults")} more." : "";
        return $"Mend the files first: {PlainText.Short(first.Place.File, 60)}{line}: {first.What}; {first.Instead}.{more}";
    }
}
