using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Report;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Sizing;

namespace BenchSim.Answers.Size;

/// <summary>Asks how many places a space needs for the plan to fit often enough.</summary>
public sealed record SizeQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>Id of the space.</summary>
    public required string Space { get; init; }

    /// <summary>Variant to play; null for the scenario as it is.</summary>
    public string? Variant { get; init; }

    /// <summary>What has to be met.</summary>
    public required SizeGoal Goal { get; init; }

    /// <summary>How it is played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Folder for the curve; null for none.</summary>
    public string? Out { get; init; }

    /// <summary>Searches, and writes the folder where one is asked for.</summary>
    /// <param name="watch">Watches the plays.</param>
    /// <exception cref="FaultsFoundException">The scenario or the variant has faults.</exception>
    /// <exception cref="RefusedException">There is no such space.</exception>
    public SizeAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        if (Out is not null)
        {
            SizeFolder.Check(Out);
        }

        var opened = Scenario.Open();
        var given = opened.Plan;
        var plan = Variant is null ? given : Scenario.OpenVariants(given, [Variant]).Plans[0].Plan;
        var space = SpaceOf(plan.Scenario);
        var result = watch.Over(SizeRunner.ProgressParts, progress =>
            SizeRunner.Find(plan, space, Goal, Play.Of(plan), progress, watch.Cancel)
        );
        if (Out is not null)
        {
            SizeFolder.Write(Out, result, watch.Cancel);
        }

        return new SizeAnswer(result)
        {
            ScenarioFolder = Scenario.Directory,
            From = opened.From,
            Variant = Variant,
            HasNewHouse = plan.Scenario.Houses.Length > given.Scenario.Houses.Length,
            Folder = Out,
        };
    }

    private int SpaceOf(Scenario scenario)
    {
        string[] ids = [.. scenario.Spaces.Select(space => space.Id)];
        if (KnownNames.Find(Space, ids) is { } id)
        {
            return Array.IndexOf(ids, id);
        }

        var where = Variant is null ? "in site.toml" : $"in the variant {PlainText.Quote(Variant)}";
        throw new RefusedException($"There is no space {PlainText.Quote(Space)} {where}; {KnownNames.Meant(Space, ids, "its spaces are")}");
    }
}

/// <summary>How many places a space needs.</summary>
/// <param name="Result">The search.</param>
public sealed record SizeAnswer(SizeResult Result) : Answer
{
    /// <summary>Variant that was played; null for the scenario as it is.</summary>
    public string? Variant { get; init; }

    /// <summary>True when the variant has a house more.</summary>
    public bool HasNewHouse { get; init; }

    /// <summary>Folder of the curve; null where none was written.</summary>
    public string? Folder { get; init; }

    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(SizeDocument.Of(Result, Variant, Folder));

    /// <inheritdoc />
    public override FirstScreen? Screen => SizeScreen.Of(this);

    private protected override void Tell(Passages passages) => SizeTelling.Tell(passages, this);
}
