using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Mend;

/// <summary>The first screen of an answer.</summary>
internal static class MendScreen
{
    public static FirstScreen Of(MendAnswer answer)
    {
        var result = answer.Result;
        var headline = MendSentences.Headline(result);
        return result.IsMetBefore
            ? new FirstScreen(answer.Variant is not null ? $"{headline} No variant was written." : headline)
            : new FirstScreen(headline)
            {
                Facts = [.. Facts(result)],
                Warnings = [.. MendCautions.Of(result.Steps.Select(step => step.Change)).Take(2)],
                Next = Next(answer),
                Footnote = Footnote(answer),
                Written = answer.File is { } file ? $"Variant: {file}" : null,
            };
    }

    private static IEnumerable<string> Facts(MendResult result)
    {
        var before = result.Before;
        foreach (var step in result.Steps)
        {
            yield return MendSentences.Step(result, step, before);
            before = step.After;
        }

        if (MendSentences.Moves(result) is { } moves)
        {
            yield return moves;
        }

        yield return MendSentences.InTheWay(result);
        if (!result.FullForNothing.IsEmpty)
        {
            yield return MendSentences.FullForNothing(result.FullForNothing[0]);
        }
    }

    private static NextStep? Next(MendAnswer answer) =>
        answer.Directory is not { } directory || answer.Result.Steps.IsEmpty ? null
        : answer.Variant is { } name ? NextStep.Of("See all that it changes", "compare", directory, "--with", name)
        : NextStep.Of("Write the changes as a variant", "mend", directory, "--write", "mended");

    private static string? Footnote(MendAnswer answer) =>
        answer.File is not null ? null
        : answer.Variant is not null ? "No variant was written: no change helps."
        : answer.Result.Options.Seasons < Numbers.EnoughSeasons
            ? $"{Numbers.Count(answer.Result.Options.Seasons, "season", "seasons")} played: too few to rely on."
        : null;
}
