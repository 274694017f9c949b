using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Folder.Files;
using BenchSim.Report;
using BenchSim.Study.Trust;

namespace BenchSim.Answers.Trust;

/// <summary>Asks how sure an answer is, where the values under it may be wrong.</summary>
public sealed record TrustQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>A variant that is to be chosen or not; null for none.</summary>
    public string? Variant { get; init; }

    /// <summary>Seed and threads; its seasons are those of each set.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Sets of values; null for the usual number.</summary>
    public int? Sets { get; init; }

    /// <summary>Folder for a picture, a table and the answer as JSON; null for none.</summary>
    public string? Out { get; init; }

    /// <summary>Plays the sets, and writes the folder where one is asked for.</summary>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The scenario or the variant has faults.</exception>
    public TrustAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        BesideScenario.RefuseAround(Out, Scenario.Directory);
        if (Out is not null)
        {
            TrustFolder.Check(Out);
        }

        var opened = Scenario.Open();
        var plan = opened.Plan;
        var variants = Variant is { } name ? Scenario.OpenVariants(plan, [name]) : null;
        var play = Play.Of(plan);
        var options = new TrustOptions
        {
            Sets = Sets ?? TrustOptions.UsualSets,
            Seasons = Play.Seasons ?? TrustOptions.UsualSeasons,
            GivenSeasons = plan.Scenario.Play.Seasons,
            Seed = play.Seed,
            Threads = play.Threads,
        };
        var variant = variants?.Plans[0];
        var sets = TrustRunner.SetsOf(plan, variant, options);
        var result = watch.Over(sets, progress => TrustRunner.Play(plan, variant, options, progress, watch.Cancel));
        var answer = new TrustAnswer(result, opened.Inputs, Out) { ScenarioFolder = Scenario.Directory, From = opened.From };
        if (Out is not null)
        {
            TrustFolder.Write(Out, result, answer.Json(), watch.Cancel);
        }

        return answer;
    }
}

/// <summary>What hangs on the values of a plan that may be wrong.</summary>
/// <param name="Result">The study.</param>
/// <param name="Inputs">The files of the plan.</param>
/// <param name="Folder">The folder that was written; null for none.</param>
public sealed record TrustAnswer(TrustResult Result, ImmutableArray<InputFile> Inputs, string? Folder) : Answer
{
    private const int MostRows = 12;

    /// <summary>The answer in words, for a page.</summary>
    public TrustList List => TrustList.Of(Result, MostRows);

    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(TrustDocument.Of(Result, Inputs));

    /// <inheritdoc />
    public override FirstScreen? Screen => TrustScreen.Of(this);

    private protected override void Tell(Passages passages) => TrustTelling.Tell(passages, Result, Folder);
}
