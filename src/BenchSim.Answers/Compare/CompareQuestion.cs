using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Case;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Trust;
using BenchSim.Answers.Words;
using BenchSim.Report.Case;
using BenchSim.Report.Writing;
using BenchSim.Study.Compare;

namespace BenchSim.Answers.Compare;

/// <summary>Asks what variants change.</summary>
public sealed record CompareQuestion
{
    /// <summary>The scenario, with its variants.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>Names of the variants, each once.</summary>
    public required ImmutableArray<string> Variants { get; init; }

    /// <summary>True when the variants may move their sow dates: they are planned anew, to the set-out dates of the base.</summary>
    public bool Replan { get; init; }

    /// <summary>How they are played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>A case report of the one variant; null for none.</summary>
    public CaseWish? Case { get; init; }

    /// <summary>Plays the base and the variants on the same luck, and writes the case report where one is asked for.</summary>
    /// <param name="watch">Watches the plays.</param>
    /// <exception cref="FaultsFoundException">The scenario or a variant has faults.</exception>
    /// <exception cref="RefusedException">No case report can stand where it should.</exception>
    public CompareAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var place = Case is null ? null : Case.Out ?? BesideScenario.Folder(Scenario.Directory, $"-{Variants[0]}-case");
        if (place is not null)
        {
            BesideScenario.RefuseAround(Case?.Out, Scenario.Directory);
            CaseFolder.Check(place);
        }

        var opened = Scenario.Open();
        var plan = opened.Plan;
        var known = Case?.Trust is { } trust ? KnownRange.Read(trust, opened.Inputs, plan.Today) : null;
        var variants = Scenario.OpenVariants(plan, Variants, Replan);
        var options = Play.Of(plan);
        var result = watch.Over(options.Seasons, progress => CompareRunner.Play(plan, variants.Plans, options, progress, watch.Cancel));
        if (place is null)
        {
            return new CompareAnswer(result, null)
            {
                ScenarioFolder = Scenario.Directory,
                From = opened.From,
                Replan = Replan,
            };
        }

        CaseFolder.Write(
            place,
            CaseStudy.OfComparison(watch, result, options, Case!.Paper, known, Replan),
            [.. variants.Inputs.Select(input => new ReportInput(input.Name, input.Bytes.AsMemory()))],
            watch.Cancel
        );
        return new CompareAnswer(result, Path.Combine(place, CaseFolder.FileName)) { ScenarioFolder = Scenario.Directory, Replan = Replan };
    }
}

/// <summary>A case report that is asked for.</summary>
/// <param name="Out">Its folder; null for the scenario folder's name with "-VARIANT-case", beside it.</param>
/// <param name="Paper">Its paper; null for the usual one of the site.</param>
/// <param name="Trust">
/// An answer of <c>trust</c> on the same files, to say how far their values may move the answer; null for none.
/// </param>
public sealed record CaseWish(string? Out, CasePaper? Paper, string? Trust);

/// <summary>What variants change.</summary>
/// <param name="Result">The comparison.</param>
/// <param name="CaseFile">The case report; null where none was written.</param>
public sealed record CompareAnswer(CompareResult Result, string? CaseFile) : Answer
{
    /// <summary>True when it was asked that the variants be planned anew.</summary>
    public bool Replan { get; init; }

    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(CompareDocument.Of(Result, CaseFile));

    /// <inheritdoc />
    public override FirstScreen? Screen => CompareScreen.Of(this);

    private protected override void Tell(Passages passages) => CompareTelling.Tell(passages, Result, CaseFile);
}
