using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Report.Labels;
using BenchSim.Report.Papers;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Print;

/// <summary>Asks for the papers of the season.</summary>
public sealed record PrintQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>Which papers, for which dates; a sheet of labels of null is the usual one of the site.</summary>
    public required PaperSettings Papers { get; init; }

    /// <summary>Folder for the papers; null for the scenario folder's name with "-papers", beside it.</summary>
    public string? Out { get; init; }

    /// <summary>Writes the papers.</summary>
    /// <param name="watch">Stops it.</param>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    /// <exception cref="RefusedException">The dates are the wrong way round, or more labels are used than a sheet has.</exception>
    public PrintAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        if (Papers is { From: { } first, To: { } last } && last < first)
        {
            throw new RefusedException(
                $"--to {Figures.Date(last)} is before --from {Figures.Date(first)}; write them the other way round."
            );
        }

        var plan = Scenario.Open().Plan;
        var sheet = Papers.Sheet ?? LabelSheets.Usual(plan.Scenario.Units == UnitSystem.Imperial);
        if (Papers.LabelsUsed >= sheet.Count)
        {
            throw new RefusedException(
                $"--used {Papers.LabelsUsed} cannot be used; a sheet {sheet.Name} has {sheet.Count} labels, so write a number below that."
            );
        }

        var place = Out ?? BesideScenario.Folder(Scenario.Directory, "-papers");
        return new PrintAnswer(plan, place, PapersFolder.Write(place, plan, Papers with { Sheet = sheet }, watch.Cancel));
    }
}

/// <summary>Papers that were written.</summary>
/// <param name="Plan">The plan they are of.</param>
/// <param name="Folder">Their folder.</param>
/// <param name="Summary">What they hold.</param>
public sealed record PrintAnswer(SeasonPlan Plan, string Folder, PaperSummary Summary) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(PapersDocument.Of(Plan.Scenario.Name, Folder, Summary));

    private protected override void Tell(Passages passages) => PaperTelling.Tell(passages, Plan, Folder, Summary);
}
