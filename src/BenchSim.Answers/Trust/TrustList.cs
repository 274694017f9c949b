using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Study.Trust;

namespace BenchSim.Answers.Trust;

/// <summary>What hangs on the values of a plan, in words: for a screen and for a page.</summary>
/// <param name="Headline">The answer.</param>
/// <param name="Facts">What decides it, what to measure first among them.</param>
/// <param name="Columns">Heads of the rows.</param>
/// <param name="Rows">Values that move the answer when they alone are wrong, those that move it most first.</param>
/// <param name="Played">What was played, and what the ranges are; null where no value may be wrong.</param>
public sealed record TrustList(
    string Headline,
    ImmutableArray<string> Facts,
    ImmutableArray<string> Columns,
    ImmutableArray<ImmutableArray<string>> Rows,
    string? Played
)
{
    /// <summary>The study in words.</summary>
    /// <param name="result">The study.</param>
    /// <param name="most">Rows at most.</param>
    internal static TrustList Of(TrustResult result, int most) =>
        new(
            TrustSentences.Headline(result),
            result.Values.IsEmpty ? [] : [.. Decides(result).OfType<string>()],
            ["wrong alone", result.IsFitStill ? "plants in time at the low end" : "fits at the low end", "at the high end"],
            [.. result.InOrder.Take(most).Select(value => Row(result, value))],
            result.Values.IsEmpty ? null : TrustSentences.Played(result)
        );

    private static IEnumerable<string?> Decides(TrustResult result)
    {
        yield return TrustSentences.First(result) ?? "No value moves the answer much when it alone is wrong.";
        yield return result.Choice is { } choice ? TrustSentences.Choice(result, choice) : null;
        yield return TrustSentences.Widths(result);
    }

    private static ImmutableArray<string> Row(TrustResult result, TrustValue value)
    {
        var (of, measure) = (value.Value, result.Decides.Measure);
        return
        [
            TrustTelling.Name(of),
            $"{DoubtWords.Figure(measure, value.AtLow[result.DecidesAt])} ({of.At(0.05)})",
            $"{DoubtWords.Figure(measure, value.AtHigh[result.DecidesAt])} ({of.At(0.95)})",
        ];
    }
}
