using BenchSim.Answers.Asking;
using BenchSim.Answers.Trust;
using BenchSim.Answers.Words;
using BenchSim.Report.Case;
using BenchSim.Season.Values;
using BenchSim.Study;
using BenchSim.Study.Compare;
using BenchSim.Study.Invest;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Case;

/// <summary>Brings together what a case report is made of.</summary>
internal static class CaseStudy
{
    /// <summary>The case of a plan by itself.</summary>
    /// <param name="result">The seasons, counted.</param>
    /// <param name="paper">Paper; null for the usual one of the site.</param>
    /// <param name="note">A remark; null for none.</param>
    /// <param name="known">How far the values may move the answer; null where it was not asked.</param>
    public static CaseInput OfRun(StudyResult result, CasePaper? paper, string? note, KnownRange? known) =>
        Case(result, paper, "run inputs", known) with
        {
            Note = note,
        };

    /// <summary>
    /// The case of a variant: plays the base and the variant day by day too, and works out the money where the variant has its terms.
    /// </summary>
    /// <param name="watch">Watches the plays.</param>
    /// <param name="comparison">The comparison, with one variant.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="paper">Paper; null for the usual one of the site.</param>
    /// <param name="known">How far the values may move the answer of the base; null where it was not asked.</param>
    /// <param name="replan">True when it was asked that the variant be planned anew.</param>
    public static CaseInput OfComparison(
        PlayWatch watch,
        CompareResult comparison,
        StudyOptions options,
        CasePaper? paper,
        KnownRange? known,
        bool replan
    )
    {
        var variant = comparison.Variants[0];
        var without = watch.Over(options.Seasons, progress => StudyRunner.Play(comparison.Base, options, progress, watch.Cancel));
        var with = watch.Over(options.Seasons, progress => StudyRunner.Play(variant.Plan, options, progress, watch.Cancel));
        var money = variant.Plan.Scenario.Invest is null
            ? null
            : watch.Over(options.Seasons, progress =>
                InvestRunner.Play(comparison.Base, (variant.Name, variant.Plan), options, progress, watch.Cancel)
            );
        return Case(without, paper, $"compare inputs --with {Shell.Word(variant.Name)}{(replan ? " --replan" : "")}", known) with
        {
            Comparison = comparison,
            Changed = with,
            Money = money,
        };
    }

    private static CaseInput Case(StudyResult result, CasePaper? asked, string command, KnownRange? known)
    {
        // The study of the values is made again first; its folder stands beside the inputs.
        var first = known is null ? "" : $"{Shell.Program} trust inputs {known.Options} --out trust && ";
        var with = known is null ? "" : " --trust trust";
        var usual = result.Plan.Scenario.Units == UnitSystem.Imperial ? CasePaper.Letter : CasePaper.A4;
        var paper = asked ?? usual;
        var page = paper == CasePaper.Letter ? "letter" : "a4";
        var seasons = result.Seasons.ToString(null, null);
        return new CaseInput
        {
            Base = result,
            Paper = paper,
            Command =
                $"{first}{Shell.Program} {command} --seasons {seasons} --seed {result.Seed.ToString(null, null)} --case "
                + $"--paper {page}{with}",
            OverValues = known?.Sentence,
            Version = typeof(CaseStudy).Assembly.GetName().Version!.ToString(3),
            Build = BuildMark.Text,
        };
    }
}
