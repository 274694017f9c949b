using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Study.Levelling;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Mend;

/// <summary>Asks what to change so that the plan fits often enough.</summary>
public sealed record MendQuestion
{
    /// <summary>Effort of levelling, in about seconds: a first good answer is enough, for the play decides.</summary>
    private const double LevelEffort = 1;

    private const double LevelFill = 0.9;
    private const int LevelSeasons = 60;

    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>
    /// The lines of what is not to be had, of a scenario that is in no folder; null for those of the folder's own file.
    /// </summary>
    public InputFile? NotHere { get; init; }

    /// <summary>Name of the file in a scenario folder that says what is not to be had.</summary>
    public static string NotHereFile => Mend.NotHere.FileName;

    /// <summary>How it is played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Share of seasons in which the plan must fit, between 0 and 1.</summary>
    public double Goal { get; init; } = 0.9;

    /// <summary>Whether days on which only the weather kept trays count as late too.</summary>
    public bool CountsWeather { get; init; }

    /// <summary>Name of the variant to write what was chosen to; null for none.</summary>
    public string? Write { get; init; }

    /// <summary>Looks for changes, and writes them where that is asked for.</summary>
    /// <param name="leveller">Finds sowings to move; null to move single ones alone.</param>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    /// <exception cref="RefusedException">The variant cannot be written.</exception>
    public MendAnswer Ask(ILeveller? leveller, PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var file = Write is null ? null : new VariantTarget(Scenario.Directory, Write);
        file?.Check();
        var opened = Scenario.Open();
        var plan = opened.Plan;
        var notHere = NotHere is { } marks ? Mend.NotHere.Of(marks, plan) : Mend.NotHere.Read(Scenario.Directory, plan);
        var left = 0;
        var play = Play.Of(plan);
        var options = new MendOptions
        {
            Seasons = play.Seasons,
            Seed = play.Seed,
            Threads = play.Threads,
            Goal = Goal,
            CountsWeather = CountsWeather,
        };
        var result = watch.Over(MendRunner.ProgressParts, progress =>
            MendRunner.Find(
                plan,
                () => notHere.Without(Changes(opened, options, leveller, watch.Cancel), out left),
                new MendPlanner(opened),
                options,
                progress,
                watch.Cancel
            )
        );
        result = result with { NotHere = left };
        var text = result.Steps.IsEmpty ? null : MendList.TextOf(result, result.Steps.Length);
        if (file is not null && text is not null)
        {
            file.Write(text, watch.Cancel);
        }

        return new MendAnswer(result, text, file is not null && text is not null ? file.Shown : null)
        {
            Directory = Scenario.Directory,
            From = opened.From,
            Variant = Write,
        };
    }

    /// <summary>The changes that may be made to a plan.</summary>
    internal static ImmutableArray<MendChange> Changes(
        OpenedScenario opened,
        MendOptions options,
        ILeveller? leveller,
        CancellationToken cancel
    )
    {
        var flat = opened.OpenFlats.IsEmpty ? null : opened.OpenFlats[0];
        var changes = MendCandidates.Of(opened.Plan, flat);
        if (leveller is null)
        {
            return changes;
        }

        var level = new LevelOptions
        {
            Seasons = options.Seasons,
            Seed = options.Seed,
            Threads = options.Threads,
            ExpectedSeasons = LevelSeasons,
            Fill = LevelFill,
            Effort = LevelEffort,
        };
        return [.. changes, .. MendCandidates.Levelled(opened.Plan, LevelRunner.Moves(opened.Plan, level, leveller, cancel))];
    }
}

/// <summary>What would mend a plan.</summary>
/// <param name="Result">What was found.</param>
/// <param name="Text">The variant file that makes the changes chosen; null where none were.</param>
/// <param name="File">The file as written; null where none was.</param>
public sealed record MendAnswer(MendResult Result, string? Text, string? File) : Answer
{
    /// <summary>The scenario folder; null for one in memory.</summary>
    public string? Directory { get; init; }

    /// <summary>Name of the variant that was asked for; null for none.</summary>
    public string? Variant { get; init; }

    /// <summary>The answer point by point, each with the variant that makes it so.</summary>
    public MendList List => MendList.Of(Result);

    /// <inheritdoc />
    public override FirstScreen? Screen => MendScreen.Of(this);

    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(MendDocument.Of(Result, Text, File));

    private protected override void Tell(Passages passages) => MendTelling.Tell(passages, this);
}
