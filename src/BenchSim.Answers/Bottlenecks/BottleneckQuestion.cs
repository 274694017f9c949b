using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Study.Bottlenecks;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Bottlenecks;

/// <summary>Asks which space holds a plan back.</summary>
public sealed record BottleneckQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>How it is played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Plays each space with more room.</summary>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    public BottleneckAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var opened = Scenario.Open();
        var plan = opened.Plan;
        var options = Play.Of(plan);
        var result = watch.Over(options.Seasons, progress => BottleneckRunner.Play(plan, options, progress, watch.Cancel));
        return new BottleneckAnswer(result) { ScenarioFolder = Scenario.Directory, From = opened.From };
    }
}

/// <summary>What more room in each space would save, and who waits for whom.</summary>
/// <param name="Result">The trials.</param>
public sealed record BottleneckAnswer(BottleneckResult Result) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(BottlenecksDocument.Of(Result));

    /// <inheritdoc />
    public override FirstScreen? Screen => BottleneckScreen.Of(this);

    private protected override void Tell(Passages passages) => BottleneckTelling.Tell(passages, Result);
}
