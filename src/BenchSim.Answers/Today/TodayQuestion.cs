using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Answers.Today;

/// <summary>Asks how the benches stand on a day by the log, and what is due.</summary>
public sealed record TodayQuestion
{
    /// <summary>The scenario, with its log.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>The day: rows of that day have been done before its round.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Reads, plans, and keeps the ledger up to the day.</summary>
    /// <exception cref="FaultsFoundException">The scenario or its log has faults, or a row is of a later day.</exception>
    /// <exception cref="RefusedException">The day is not of the season.</exception>
    public TodayAnswer Ask()
    {
        var today = OpenedToday.Of(Scenario, Today);
        return new TodayAnswer
        {
            Plan = today.Opened.Plan,
            Today = Today,
            Ledger = today.Ledger,
            Due = today.Due,
            HasLog = today.HasLog,
            ScenarioFolder = Scenario.Directory,
        };
    }
}

/// <summary>How the benches stand on a day.</summary>
public sealed record TodayAnswer : Answer
{
    /// <summary>The plan.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>What stands where.</summary>
    public required BenchLedger Ledger { get; init; }

    /// <summary>What is due and has no row.</summary>
    public required ImmutableArray<DueJob> Due { get; init; }

    /// <summary>Whether the folder has a log.</summary>
    public required bool HasLog { get; init; }

    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(TodayDocument.Of(Plan, Today, Ledger, Due));

    /// <inheritdoc />
    public override FirstScreen? Screen => TodayScreen.Of(this);

    private protected override void Tell(Passages passages) => TodayTelling.Tell(passages, this);
}
