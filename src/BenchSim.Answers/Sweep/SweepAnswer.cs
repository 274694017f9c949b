using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Words;
using BenchSim.Report;
using BenchSim.Report.Words;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Sweep;

/// <summary>What a sweep says.</summary>
/// <param name="Result">The sweep.</param>
/// <param name="Folder">The folder of the answer.</param>
public sealed record SweepAnswer(SweepResult Result, string Folder) : Answer
{
    internal string File { get; init; } = "";

    internal string? Out { get; init; }

    internal TasksPlayed? Played { get; init; }

    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(SweepDocument.Of(Result, SweepSentences.All(Result)));

    /// <inheritdoc />
    public override FirstScreen? Screen => SweepScreen.Of(this);

    private protected override void Tell(Passages passages)
    {
        foreach (var sentence in SweepSentences.All(Result))
        {
            passages.Sentence(sentence);
        }

        passages.Gap();
        passages.Heading("All plans, the folders that fit least first:");
        var table = passages.Table(SweepScreen.Heads(Result, isOfAll: true));
        foreach (var folder in Result.WorstFirst)
        {
            foreach (var plan in folder.Plans)
            {
                table.Add([.. SweepScreen.Cells(Result, folder, plan, isOfAll: true)]);
            }
        }

        passages.Gap();
        passages.Sentence(SweepWords.Played(Result));
        if (Played is { } played)
        {
            passages.Sentence(SweepSentences.Tasks(played));
        }

        passages.Line($"Page: {Path.Combine(Folder, SweepFolder.Page)}");
        passages.Line($"Table: {Path.Combine(Folder, SweepFolder.Table)}");
    }
}
