using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Mend;

/// <summary>One thing to do.</summary>
/// <param name="Short">In a few words.</param>
/// <param name="Deed">As a sentence.</param>
/// <param name="Gain">What it gains.</param>
/// <param name="Terms">What it costs, who gives way for it, by when to decide, and when it would be wrong.</param>
/// <param name="Parts">The single things to do where it is several at once; else none.</param>
/// <param name="Mark">What marks it as not to be had.</param>
/// <param name="Variant">The variant file that makes it so, with the steps before it where it is one of those chosen.</param>
public sealed record MendPoint(
    string Short,
    string Deed,
    string Gain,
    string Terms,
    ImmutableArray<string> Parts,
    string Mark,
    string Variant
);

/// <summary>What would mend a plan, point by point.</summary>
public sealed record MendList
{
    /// <summary>The answer.</summary>
    public required string Headline { get; init; }

    /// <summary>Whether the plan meets its goal as it is; then nothing was sought.</summary>
    public required bool IsMetBefore { get; init; }

    /// <summary>The changes chosen, each made after those before it.</summary>
    public ImmutableArray<MendPoint> Steps { get; init; } = [];

    /// <summary>Changes that help alone.</summary>
    public ImmutableArray<MendPoint> Singles { get; init; } = [];

    /// <summary>Changes of the order itself that help alone.</summary>
    public ImmutableArray<MendPoint> OfTheOrder { get; init; } = [];

    /// <summary>What would not help and why, and what is still in the way; a sentence each.</summary>
    public ImmutableArray<string> NoHelp { get; init; } = [];

    /// <summary>What must be said beside changes that could hurt someone.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>How it was found.</summary>
    public string Method { get; init; } = "";

    /// <summary>The variant file of the first changes chosen.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="count">How many of the changes, 1 or more.</param>
    internal static string TextOf(MendResult result, int count)
    {
        var words = new MendWords(result.Plan);
        MendStep[] steps = [.. result.Steps.Take(count)];
        return new MendVariant(result.Plan).Write(
            [.. steps.Select(step => step.Change)],
            steps.Select(step => PlainText.OneLine(words.Deed(step.Change, step.Plan)))
        );
    }

    /// <summary>The points of an answer.</summary>
    internal static MendList Of(MendResult result)
    {
        var headline = new MendList { Headline = MendSentences.Headline(result), IsMetBefore = result.IsMetBefore };
        if (result.IsMetBefore)
        {
            return headline;
        }

        return headline with
        {
            Steps = [.. result.Steps.Select((step, at) => Step(result, step, at))],
            Singles = [.. result.Singles.Select(option => Option(result, option))],
            OfTheOrder = [.. result.OfTheOrder.Select(option => Option(result, option))],
            NoHelp = [MendSentences.InTheWay(result), .. result.FullForNothing.Select(MendSentences.FullForNothing)],
            Cautions =
            [
                .. MendCautions.Of(result.Steps.Select(step => step.Change).Concat(result.Singles.Select(option => option.Change))),
            ],
            Method = MendSentences.Method(result),
        };
    }

    private static MendPoint Step(MendResult result, MendStep step, int at)
    {
        var before = at == 0 ? result.Before : result.Steps[at - 1].After;
        return Point(result, step.Change, step.Plan) with
        {
            Gain = MendSentences.Effect(before, step.After),
            Terms = MendSentences.StepTerms(result, step, before),
            Variant = TextOf(result, at + 1),
        };
    }

    private static MendPoint Option(MendResult result, MendOption option) =>
        Point(result, option.Change, option.Plan) with
        {
            Gain = MendSentences.Effect(result.BeforeAlone, option.After),
            Terms = MendSentences.OptionTerms(result, option),
        };

    private static MendPoint Point(MendResult result, MendChange change, Season.Inputs.SeasonPlan plan)
    {
        var words = new MendWords(result.Plan);
        var deed = words.Deed(change, plan);
        return new MendPoint(
            words.Short(change),
            deed,
            "",
            "",
            change is SowChange { Moves: { Length: > 1 } moves } ? [.. moves.Select(move => words.Deed(new SowChange([move]), plan))] : [],
            change.Mark,
            new MendVariant(result.Plan).Write([change], PlainText.OneLine(deed))
        );
    }
}
