using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Report.Labels;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Print;

/// <summary>Asks for the papers of the season.</summary>
public sealed record PrintQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>
    /// Which papers, for which dates and grower, the grower's name as the user wrote it; a sheet of labels of null is the usual one of the
    /// site.
    /// </summary>
    public required PaperSettings Papers { get; init; }

    /// <summary>Folder for the papers; null for the scenario folder's name with "-papers", or "-papers-GROWER", beside it.</summary>
    public string? Out { get; init; }

    /// <summary>Writes the papers.</summary>
    /// <param name="watch">Stops it.</param>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    /// <exception cref="RefusedException">The dates are the wrong way round, more labels are used than a sheet has, or there is no such
    /// grower.</exception>
    public PrintAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var (plan, settings, growers) = Settled();
        var place = Out ?? BesideScenario.Folder(Scenario.Directory, settings.Grower is { } grower ? EndingOf(grower, growers) : "-papers");
        return new PrintAnswer(plan, place, PapersFolder.Write(place, plan, settings, watch.Cancel));
    }

    /// <summary>Works the papers out, and writes nothing.</summary>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    /// <exception cref="RefusedException">The dates are the wrong way round, more labels are used than a sheet has, or there is no such
    /// grower.</exception>
    public MadePapers Make()
    {
        var (plan, settings, _) = Settled();
        return new MadePapers(plan, PaperSet.Of(plan, settings));
    }

    private (SeasonPlan Plan, PaperSettings Settings, string[] Growers) Settled()
    {
        if (Papers is { From: { } first, To: { } last } && last < first)
        {
            throw new RefusedException($"--to {Dates.Iso(last)} is before --from {Dates.Iso(first)}; write them the other way round.");
        }

        var plan = Scenario.Open().Plan;
        var sheet = Papers.Sheet ?? LabelSheets.Usual(plan.Scenario.Units == UnitSystem.Imperial);
        if (Papers.LabelsUsed >= sheet.Count)
        {
            throw new RefusedException(
                $"--used {Papers.LabelsUsed} cannot be used; a sheet {sheet.Name} has {sheet.Count} labels, so write a number below that."
            );
        }

        var growers = MadePapers.GrowersOf(plan);
        var grower = Papers.Grower is { } written ? GrowerOf(growers, written) : null;
        return (plan, Papers with { Sheet = sheet, Grower = grower }, growers);
    }

    private static string GrowerOf(string[] growers, string written) =>
        KnownNames.Find(written, growers)
        ?? throw new RefusedException(
            $"The plan has no grower {PlainText.Quote(written)}; {KnownNames.Meant(written, growers, "its growers are")}"
        );

    // Only letters a to z and digits go into the name of a folder, so that two growers may come to the same.
    private static string EndingOf(string grower, string[] growers)
    {
        static string Ending(string name) => $"-papers-{PlainText.FilePart(name, "grower")}";
        var ending = Ending(grower);
        return growers.Count(name => string.Equals(Ending(name), ending, StringComparison.Ordinal)) == 1
            ? ending
            : throw new RefusedException(
                $"The papers of {PlainText.Quote(grower)} and of another grower would have the same folder. Name one with --out."
            );
    }
}

/// <summary>Papers that were worked out, each to be made when it is asked for.</summary>
/// <param name="Plan">The plan they are of.</param>
/// <param name="Set">The papers.</param>
public sealed record MadePapers(SeasonPlan Plan, PaperSet Set)
{
    /// <summary>The growers of the plan, in order of name.</summary>
    public ImmutableArray<string> Growers => [.. GrowersOf(Plan)];

    /// <summary>What they hold and what to know of them, a sentence each.</summary>
    public ImmutableArray<string> Sentences => [.. PaperTelling.Sentences(Plan, Set.Summary)];

    internal static string[] GrowersOf(SeasonPlan plan) =>
        [.. plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
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
