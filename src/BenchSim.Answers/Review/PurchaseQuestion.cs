using BenchSim.Answers.Agreed;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Mend;
using BenchSim.Answers.Opening;
using BenchSim.Folder.Files;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Levelling;
using BenchSim.Study.Mending;
using BenchSim.Study.Review;

namespace BenchSim.Answers.Review;

/// <summary>Asks of a review what a purchase, a variant, would have changed on top of what would have cost nothing.</summary>
/// <param name="scenario">The scenario, with its log.</param>
/// <param name="name">Name of the variant.</param>
/// <param name="leveller">Finds sowings to move; null to move single ones alone.</param>
internal sealed class PurchaseQuestion(ScenarioSource scenario, string name, ILeveller? leveller)
{
    private const string OnAgreed = "The variant was laid over the plan that is reviewed.";

    /// <summary>Judges it.</summary>
    /// <param name="agreement">What was agreed; null for the plan as it is.</param>
    /// <param name="now">The plan as it is, with its log.</param>
    /// <param name="play">How it is played.</param>
    /// <param name="watch">Watches the plays.</param>
    /// <exception cref="FaultsFoundException">The variant has faults, or cannot be laid over the agreed plan.</exception>
    /// <exception cref="RefusedException">The variant has other sowings.</exception>
    public PurchaseJudged Ask(Agreement? agreement, SeasonPlan now, StudyOptions play, PlayWatch watch)
    {
        var variant = scenario.OpenVariants(now, [name]).Inputs.First(file => IsVariant(file.Name));
        var opened = agreement?.Open() ?? scenario.Open();
        var alone = Plan(opened, "", variant);
        if (!PurchaseRunner.HasSowingsOf(alone, opened.Plan))
        {
            throw new RefusedException(
                $"The variant {PlainText.Quote(PlainText.Short(name, 40))} has other sowings than the plan, so it is more than a purchase. "
                    + "\"compare\" says what it changes."
            );
        }

        var options = new MendOptions
        {
            Seasons = play.Seasons,
            Seed = play.Seed,
            Threads = play.Threads,
        };
        var notHere = NotHere.Read(scenario.Directory, opened.Plan);
        var sought = watch.Over(MendRunner.ProgressParts, progress =>
            PurchaseRunner.Free(
                opened.Plan,
                () => notHere.Without(MendQuestion.Changes(opened, options, leveller, watch.Cancel), out _),
                new MendPlanner(opened),
                options,
                progress,
                watch.Cancel
            )
        );
        var bought = sought.Steps.IsEmpty ? alone : Plan(opened, MendList.TextOf(sought, sought.Steps.Length), variant);
        return PurchaseRunner.Judge(name, sought, bought, alone, now.Scenario.Seen, now.Scenario.Log.Max(row => row.Date), watch.Cancel);
    }

    private bool IsVariant(string file) => string.Equals(file, FileNames.OfVariant(name), StringComparison.Ordinal);

    private static SeasonPlan Plan(OpenedScenario opened, string below, InputFile variant)
    {
        var planned = ScenarioSource.OpenText(opened, below, variant);
        return planned.Plan ?? throw new FaultsFoundException(planned.Faults) { Note = OnAgreed };
    }
}
