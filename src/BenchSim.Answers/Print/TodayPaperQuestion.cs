using BenchSim.Answers.Agreed;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Report.Morning;
using BenchSim.Season.Inputs;
using BenchSim.Study.Billing;

namespace BenchSim.Answers.Print;

/// <summary>Asks for the page of a day, for the clipboard and the telephone.</summary>
public sealed record TodayPaperQuestion
{
    /// <summary>The scenario, with its log.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>The day: rows of that day have been done before its round.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Folder for the page; null for the scenario folder's name with "-today" beside it.</summary>
    public string? Out { get; init; }

    /// <summary>Plays the seasons on from the day, and writes the page.</summary>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The scenario, its log or what was agreed has faults, or a row is of a later day.</exception>
    /// <exception cref="RefusedException">The day is not of the season.</exception>
    public TodayPaperAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var today = OpenedToday.Of(Scenario, Today);
        var place = Out ?? BesideScenario.Folder(Scenario.Directory, "-today");
        BesideScenario.RefuseAround(Out, Scenario.Directory);
        TodayFolder.Check(place);
        var sheet = Sheet(today, watch);
        TodayFolder.Write(place, sheet, watch.Cancel);
        return new TodayPaperAnswer(sheet, place);
    }

    /// <summary>Works the page out, and writes nothing.</summary>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The scenario, its log or what was agreed has faults, or a row is of a later day.</exception>
    /// <exception cref="RefusedException">The day is not of the season.</exception>
    public TodaySheet Make(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        return Sheet(OpenedToday.Of(Scenario, Today), watch);
    }

    private TodaySheet Sheet(OpenedToday today, PlayWatch watch)
    {
        var plan = today.Underway().Plan;
        return TodaySheet.Of(today.Opened.Plan, today.Today, today.Ledger, today.Due, ComingQuestion.Play(today, 0, watch)) with
        {
            Bill = Bill(plan),
        };
    }

    // Of several growers alone: a single one has nobody to share with.
    private BillSoFar? Bill(SeasonPlan plan) =>
        plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal).Skip(1).Any()
        && Agreement.Latest(Scenario.Directory) is { } agreement
            ? BillRunner.SoFar(plan, Today, agreement.Rule, plan.Scenario.Play.Seed)
            : null;
}

/// <summary>The page of a day that was written.</summary>
/// <param name="Sheet">What it holds.</param>
/// <param name="Folder">Its folder.</param>
public sealed record TodayPaperAnswer(TodaySheet Sheet, string Folder) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(TodayPaperDocument.Of(Sheet, Folder));

    private protected override void Tell(Passages passages) => TodayPaperTelling.Tell(passages, Sheet, Folder);
}
