using System.Collections.Immutable;
using BenchSim.Answers.Agreed;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Report.Json;
using BenchSim.Season.Air;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Check;

/// <summary>Asks what a scenario says: its plan as it is understood.</summary>
public sealed record CheckQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>True for every value with its source, not only those that rest on memory or assumption.</summary>
    public bool Sources { get; init; }

    /// <summary>True for the ways to each stand.</summary>
    public bool Stand { get; init; }

    /// <summary>Reads and plans.</summary>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    public CheckAnswer Ask()
    {
        var plan = Scenario.Open().Plan;

        // Hundreds of years of weather are drawn and counted while the plan is told.
        var climate = Task.Run(() => ClimateSummary.Of(plan));
        return new CheckAnswer(this, plan, climate)
        {
            ScenarioFolder = Scenario.Directory,
            Agreed = AgreedSince.Of(Scenario.Directory, plan),
        };
    }
}

/// <summary>A plan as it is understood.</summary>
public sealed record CheckAnswer : Answer
{
    private readonly CheckQuestion _question;
    private readonly Task<ClimateSummary> _climate;

    internal CheckAnswer(CheckQuestion question, SeasonPlan plan, Task<ClimateSummary> climate) =>
        (_question, Plan, _climate) = (question, plan, climate);

    /// <summary>The plan.</summary>
    public SeasonPlan Plan { get; }

    /// <summary>How far it is still the plan that was agreed; null where none was.</summary>
    public AgreedSince? Agreed { get; init; }

    /// <summary>What the site's weather means for it.</summary>
    public ClimateSummary Climate => _climate.GetAwaiter().GetResult();

    /// <summary>
    /// What the user should know that is no fault: of the heaters, of the plan, and of the weather in which it is to be worked.
    /// </summary>
    public ImmutableArray<Fault> Warnings =>
        [.. HeaterWarnings.Of(Plan.Scenario), .. Plan.Warnings, .. HoldWarnings.Of(Plan.Scenario, Climate)];

    /// <inheritdoc />
    public override byte[] Json()
    {
        var scenario = Plan.Scenario;
        return AnswerContext.Write(
            new CheckDocument(
                Version: JsonDialect.Version,
                Name: scenario.Name,
                Question: scenario.Question,
                Opens: scenario.Window.Opens,
                Closes: scenario.Window.Closes,
                LastDay: Plan.LastDay,
                Batches: [.. Plan.Batches.Select(batch => JsonPlannedBatch.Of(batch, scenario.Rules))],
                Spaces: [.. scenario.Spaces.Select(JsonGivenSpace.Of)],
                Mishaps: [.. scenario.Mishaps.Select(JsonGivenMishap.Of)],
                Climate: JsonClimate.Of(Climate),
                Air: [.. HouseAirNeed.Of(scenario).Select(JsonAir.Of)],
                StandWays: _question.Stand ? [.. JsonStandWay.Of(Plan)] : null,
                Values:
                [
                    .. SourcedValue
                        .Of(scenario)
                        .Where(value => _question.Sources || value.IsWeak)
                        .Select(value => new JsonValue(
                            value.Owner,
                            value.File,
                            value.Column,
                            value.Value,
                            value.TrustWords,
                            value.Provenance.Source
                        )),
                ],
                Agreed: Agreed is { } since ? JsonAgreed.Of(since.Agreement.On, since.Agreement.Rule, since.Changes) : null,
                Warnings: JsonFault.Of(Warnings),
                Faults: []
            )
        );
    }

    /// <inheritdoc />
    public override FirstScreen? Screen => CheckScreen.Of(this);

    /// <inheritdoc />
    public override Passages Asked
    {
        get
        {
            var passages = new Passages();
            PlanTelling.TellAsked(passages, Plan, _question);
            return passages;
        }
    }

    private protected override void Tell(Passages passages) => PlanTelling.Tell(passages, this, _question);
}
