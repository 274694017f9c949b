using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Folder.Plan;
using BenchSim.Study.Levelling;

namespace BenchSim.Answers.Level;

/// <summary>Asks which sowings to move within their tolerances, and what comes of it.</summary>
public sealed record LevelQuestion
{
    private const int Hundredths = 100;

    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>How both plans are played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Share of the places that the expected trays may fill, above 0 to 1.</summary>
    public double Fill { get; init; } = 1;

    /// <summary>True to write the levelled plan to plan-levelled.csv in the scenario folder; nothing is written unasked.</summary>
    public bool Write { get; init; }

    /// <summary>File for the levelled plan; null for the one of <see cref="Write"/>, or none.</summary>
    public string? Out { get; init; }

    /// <summary>Levels the plan, tries it, and writes the levelled plan where that is asked for.</summary>
    /// <param name="leveller">Finds the best choices.</param>
    /// <param name="watch">Watches the plays.</param>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    /// <exception cref="RefusedException">The file cannot be written.</exception>
    public LevelAnswer Ask(ILeveller leveller, PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(leveller);
        ArgumentNullException.ThrowIfNull(watch);
        var opened = Scenario.Open();
        var target = TargetOf(opened);
        target?.Check();
        var play = Play.Of(opened.Plan);
        var options = new LevelOptions
        {
            Seasons = play.Seasons,
            Seed = play.Seed,
            Threads = play.Threads,
            Fill = Fill,
        };
        var result = watch.Over(Hundredths, progress => LevelRunner.Run(opened.Plan, options, leveller, progress, watch.Cancel));
        if (target is null || result.Levelled is null)
        {
            return new LevelAnswer(result, null) { ScenarioFolder = Scenario.Directory, From = opened.From };
        }

        target.Write(result.Moves, watch.Cancel);
        return new LevelAnswer(result, target.Shown) { ScenarioFolder = Scenario.Directory, From = opened.From };
    }

    private LevelledPlanFile? TargetOf(OpenedScenario opened)
    {
        var path = Out ?? (Write && Scenario.Directory is { } directory ? Path.Combine(directory, LevelledPlanFile.UsualName) : null);
        var plan = opened.Inputs.First(input => FileNames.IsPlan(input.Name));
        return path is null ? null : new LevelledPlanFile(path, PlanAsCsv.Of(plan, opened.Plan.Scenario.DateOrder));
    }
}

/// <summary>Which sowings to move, and what comes of it.</summary>
/// <param name="Result">The moves and the trial.</param>
/// <param name="File">File of the levelled plan; null where none was written.</param>
public sealed record LevelAnswer(LevelResult Result, string? File) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(LevelDocument.Of(Result, File));

    /// <inheritdoc />
    public override FirstScreen? Screen => LevelScreen.Of(this);

    private protected override void Tell(Passages passages) => LevelTelling.Tell(passages, Result, File);
}
