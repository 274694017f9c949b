using BenchSim.Answers.Words;
using BenchSim.Cli.Parts;
using BenchSim.Cli.Printing;
using BenchSim.Report.Case;
using BenchSim.Study;
using BenchSim.Study.Compare;
using BenchSim.Study.Invest;
using BenchSim.Study.Results;

namespace BenchSim.Cli.Commands;

/// <summary>Brings together what a case report is made of.</summary>
internal static class CaseStudy
{
    /// <summary>The case of a plan by itself.</summary>
    /// <param name="result">The seasons, counted.</param>
    /// <param name="paper">Paper; null for the usual one of the site.</param>
    /// <param name="note">A remark; null for none.</param>
    public static CaseInput OfRun(StudyResult result, CasePaper? paper, string? note) =>
        Case(result, paper, "run inputs") with
        {
            Note = note,
        };

    /// <summary>The case of a variant: plays the base and the variant day by day too, and reckons the money where the variant has its terms.</summary>
    /// <param name="desk">Where progress is drawn.</param>
    /// <param name="comparison">The comparison, with one variant.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="paper">Paper; null for the usual one of the site.</param>
    public static CaseInput OfComparison(Desk desk, CompareResult comparison, StudyOptions options, CasePaper? paper)
    {
        var variant = comparison.Variants[0];
        var without = PlayProgress.Play(comparison.Base, options, desk);
        var with = PlayProgress.Play(variant.Plan, options, desk);
        var money = variant.Plan.Scenario.Invest is null
            ? null
            : PlayProgress.Draw(desk, options.Seasons, progress =>
                InvestRunner.Play(comparison.Base, (variant.Name, variant.Plan), options, progress, desk.Cancel)
            );
        return Case(without, paper, $"compare inputs --with {Shell.Word(variant.Name)}") with
        {
            Comparison = comparison,
            Changed = with,
            Money = money,
        };
    }

    private static CaseInput Case(StudyResult result, CasePaper? asked, string command)
    {
        var paper = asked ?? CaseOptions.Usual(result.Plan.Scenario.Units);
        var page = paper == CasePaper.Letter ? "letter" : "a4";
        return new CaseInput
        {
            Base = result,
            Paper = paper,
            Command =
                $"{RootMenu.ProgramName} {command} --seasons {result.Seasons.ToString(null, null)} --seed {result.Seed.ToString(null, null)} --case --paper {page}",
            Version = typeof(CaseStudy).Assembly.GetName().Version!.ToString(3),
            Build = BuildMark.Text,
        };
    }
}
