using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Billing;

namespace BenchSim.Answers.Agree;

/// <summary>Asks what each rule for the bill would ask of each grower.</summary>
public sealed record BillsQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>How it is played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Plays the seasons, and divides each by every rule.</summary>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    public BillsAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var plan = Scenario.Open().Plan;
        var options = Play.Of(plan);
        var bills = watch.Over(options.Seasons, progress => BillRunner.Play(plan, options, progress, watch.Cancel));
        return new BillsAnswer(plan, bills) { ScenarioFolder = Scenario.Directory };
    }
}

/// <summary>What each rule for the bill would ask of each grower.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Bills">The bills.</param>
public sealed record BillsAnswer(SeasonPlan Plan, BillForecast Bills) : Answer
{
    /// <inheritdoc />
    public override FirstScreen? Screen => BillsScreen.Of(this);

    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(BillsDocument.Of(Plan, Bills));

    private protected override void Tell(Passages passages) => BillsTelling.Tell(passages, this);
}
