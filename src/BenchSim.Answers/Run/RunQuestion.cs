using BenchSim.Answers.Asking;
using BenchSim.Answers.Case;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Trust;
using BenchSim.Answers.Words;
using BenchSim.Report;
using BenchSim.Report.Case;
using BenchSim.Report.Words;
using BenchSim.Study;
using BenchSim.Study.Bottlenecks;
using BenchSim.Study.Precision;

namespace BenchSim.Answers.Run;

/// <summary>Asks whether a plan fits.</summary>
public sealed record RunQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>Variant to play; null for the scenario as it is.</summary>
    public string? Variant { get; init; }

    /// <summary>How it is played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>How narrow the intervals are to be; null for a given number of seasons.</summary>
    public PrecisionGoal? Precision { get; init; }

    /// <summary>Share of seasons that must fit, 0 to 1; null for no gate.</summary>
    public double? Require { get; init; }

    /// <summary>True when each space is also played with more room.</summary>
    public bool Bottlenecks { get; init; }

    /// <summary>Folder of an earlier report, to say what has changed since; null for none.</summary>
    public string? Since { get; init; }

    /// <summary>An answer of <c>trust</c> on the same files, to say how far their values may move the share; null for none.</summary>
    public string? Trust { get; init; }

    /// <summary>
    /// Report folder; null for the scenario folder's name with "-report", "-VARIANT-report" or "-DATE-report", beside it.
    /// </summary>
    public string? Out { get; init; }

    /// <summary>True when no report is wanted.</summary>
    public bool NoReport { get; init; }

    /// <summary>True when the report folder also gets a case report; not of a variant, whose case sets it beside the base.</summary>
    public bool Case { get; init; }

    /// <summary>Paper of the case report; null for the usual one of the site.</summary>
    public CasePaper? Paper { get; init; }

    /// <summary>Plays the seasons. The report is written by the answer.</summary>
    /// <param name="watch">Watches the plays.</param>
    /// <exception cref="FaultsFoundException">The scenario or the variant has faults.</exception>
    /// <exception cref="RefusedException">
    /// No report can stand where it should, there is no earlier one, or the study of the values is of other files.
    /// </exception>
    public RunAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        // Before anything is written: the new report may take its place.
        var earlier = Since is { } folder ? EarlierReport.Read(folder) : null;
        var opened = Scenario.OpenWith(Variant);
        var plan = opened.Plan;
        var known = Trust is { } trust ? KnownRange.Read(trust, opened.Inputs, plan.Today) : null;
        var options = Play.Of(plan);
        BesideScenario.RefuseAround(Out, Scenario.Directory);
        var place = ReportPlace(Scenario.Directory, Out, NoReport, Variant, plan.Today);
        var precision = Precision is { } goal
            ? watch.Over(goal.Looks()[^1], progress =>
                PrecisionRunner.Play(plan, goal, options.Seed, options.Threads, progress, watch.Cancel)
            )
            : null;
        var result = precision?.Study ?? watch.Over(options.Seasons, progress => StudyRunner.Play(plan, options, progress, watch.Cancel));
        result = result with { Variant = Variant };
        if (Bottlenecks)
        {
            result = result with
            {
                Bottlenecks = watch.Over(result.Seasons, progress =>
                    BottleneckRunner.Play(plan, options with { Seasons = result.Seasons }, progress, watch.Cancel)
                ),
            };
        }

        var note = precision is null ? null : PrecisionWords.WhyItStopped(precision);
        return new RunAnswer(result, opened.Inputs)
        {
            ScenarioFolder = Scenario.Directory,
            From = opened.From,
            Since = earlier is null ? null : new SinceReport(earlier, result, opened.Inputs),
            Known = known,
            Required = Require,
            Precision = precision,
            Case = Case ? CaseStudy.OfRun(result, Paper, note, known) : null,
            Report = place,
        };
    }

    /// <summary>Where the report goes, found to be free for it; null when none is wanted.</summary>
    /// <exception cref="RefusedException">The scenario folder is the root of a disk, so that nothing can stand beside it.</exception>
    internal static string? ReportPlace(string? directory, string? asked, bool noReport, string? variant = null, DateOnly? today = null)
    {
        if (noReport)
        {
            return null;
        }

        var of = (variant is null ? "" : $"-{variant}") + (today is { } day ? $"-{Dates.Iso(day)}" : "");
        var place = asked ?? BesideScenario.Folder(directory, of + "-report");
        ReportFolder.Check(place);
        return place;
    }
}
