using BenchSim.Answers.Agreed;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Folder.Files;
using BenchSim.Report.Agreed;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Study.Billing;

namespace BenchSim.Answers.Agree;

/// <summary>Keeps the plan of a day and the rule for the bill, as they were agreed.</summary>
public sealed record AgreeQuestion
{
    /// <summary>The scenario, in a folder.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>The rule.</summary>
    public required BillRule Bill { get; init; }

    /// <summary>Whether an agreement of the same day is replaced.</summary>
    public bool Replace { get; init; }

    /// <summary>Reads and plans, and keeps both.</summary>
    /// <param name="watch">Stops it; nothing is left behind.</param>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    /// <exception cref="RefusedException">There is no folder, or an agreement of the day, which is not to be replaced.</exception>
    public AgreedAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        if (Scenario.Directory is not { } directory)
        {
            throw new RefusedException("The scenario is in no folder, so nothing of it can be kept. Save it first.");
        }

        var folder = Agreement.FolderOf(directory, On);
        if (!Replace && Path.Exists(folder))
        {
            throw new RefusedException(
                $"There is an agreement of {Dates.Iso(On)} already, and it stays as it is. Agree on another day with --on DATE, or write "
                    + "--replace to put this one in its place."
            );
        }

        AgreedFolder.Check(folder);
        var opened = Scenario.Open();
        ReportInput[] inputs =
        [
            .. opened.Inputs.Where(file => !FileNames.IsLog(file.Name)).Select(file => new ReportInput(file.Name, file.Bytes.AsMemory())),
        ];
        AgreedFolder.Write(folder, inputs, Agreement.Text(On, Bill), watch.Cancel);
        return new AgreedAnswer(opened.Plan, new Agreement(On, Bill, folder, [])) { ScenarioFolder = directory };
    }
}

/// <summary>What was agreed and kept.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Agreement">The agreement.</param>
public sealed record AgreedAnswer(SeasonPlan Plan, Agreement Agreement) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(AgreedDocument.Of(Plan, Agreement.On, Agreement.Rule, Agreement.Folder));

    private protected override void Tell(Passages passages)
    {
        passages.Sentence(
            $"{FirstScreen.Subject(Plan.Scenario.Name, null)}: agreed on {Dates.Full(Agreement.On)}, "
                + $"{Numbers.Count(Plan.Batches.Length, "sowing", "sowings")}; the bill is {BillWords.Divided(Agreement.Rule)}. "
                + "The files of the plan are kept in"
        );
        passages.Line(Agreement.Folder, 2);
        passages.Gap();
        passages.Sentence(
            "From now on \"check\" says what has changed since, \"print --today\" shows each grower the bill so far by this rule, and "
                + "\"review\" sets the season beside this plan."
        );
    }
}
