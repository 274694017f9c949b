using System.CommandLine;
using System.CommandLine.Parsing;
using BenchSim.Cli.Parts;
using BenchSim.Cli.Printing;
using BenchSim.Report;
using BenchSim.Report.Case;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Bottlenecks;
using BenchSim.Study.Precision;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;

namespace BenchSim.Cli.Commands;

/// <summary><c>run DIR</c>: plays the seasons, prints the verdict and writes the report; or tells the story of one batch.</summary>
internal static class RunCommand
{
    public static readonly string[] Examples =
    [
        "benchsim run spring",
        "benchsim run spring --seasons 200 --out answers/spring --require 0.9",
        "benchsim run spring --precision 2%",
        "benchsim run spring --seasons 100000 --shard 2/8",
        "benchsim run spring --case",
        "benchsim run spring --season 17 --batch broccoli-2",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var place = CommonOptions.Text(
            "--out",
            "DIR",
            "Report folder, or with --shard the file of the part. Default: the scenario folder's name with \"-report\", or with \".K-of-N.part\", beside it."
        );
        var play = new PlayOptions("Seasons to play.");
        var require = CommonOptions.Share("--require", "P", "Share of seasons that must fit, such as 0.9; exit code 1 when fewer do.");
        var season = CommonOptions.Whole(
            "--season",
            "N",
            1,
            PlayOptions.MostSeasons,
            "With --batch: tell the story of that batch in season N instead, N counting from 1."
        );
        var batch = CommonOptions.Text("--batch", "ID", "With --season: the batch whose story is told.");
        Option<bool> bottlenecks = new("--bottlenecks") { Description = "Also play each space with more room, and say what that saves." };
        var shard = PartOptions.Shard();
        var precision = new PrecisionOptions();
        var cases = new CaseOptions("Also write a case report for a grant or an investment, case.pdf, into the report folder.");
        var json = CommonOptions.ForMachines("the answer");
        Option<bool> noReport = new("--no-report") { Description = "Write no report folder." };
        var command = new Command(
            "run",
            "Plays the seasons, prints the verdict and writes the report folder. Every season draws its own luck: how seed comes up, how plants grow, which weather comes."
        )
        {
            folder,
            place,
            play.Seasons,
            play.Seed,
            play.Threads,
            require,
            season,
            batch,
            shard,
            bottlenecks,
            json,
            noReport,
        };
        precision.AddTo(command);
        cases.AddTo(command);
        command.Validators.Add(result =>
            RefuseContradictions(result, season, batch, noReport, [place, play.Threads, require, bottlenecks, .. cases.All])
        );
        command.Validators.Add(result => cases.RefuseWithout(result));
        command.Validators.Add(result =>
            PartOptions.RefuseContradictions(result, shard, [season, batch, require, noReport, bottlenecks, .. precision.All, .. cases.All])
        );
        command.Validators.Add(result => precision.RefuseContradictions(result, [play.Seasons, season, batch]));
        command.SetAction(parsed =>
            Run(
                new RunSettings
                {
                    Directory = parsed.GetRequiredValue(folder),
                    Out = parsed.GetValue(place),
                    Require = parsed.GetValue(require),
                    Shard = parsed.GetValue(shard),
                    Precision = precision.GoalOf(parsed),
                    Season = parsed.GetValue(season),
                    Batch = parsed.GetValue(batch),
                    Bottlenecks = parsed.GetValue(bottlenecks),
                    Case = cases.IsAsked(parsed),
                    Paper = cases.PaperOf(parsed),
                    Json = parsed.GetValue(json),
                    NoReport = parsed.GetValue(noReport),
                },
                play.Of(parsed),
                desk
            )
        );
        return command;
    }

    private static void RefuseContradictions(CommandResult result, Option season, Option batch, Option noReport, Option[] ofReports)
    {
        if (result.IsGiven(season) != result.IsGiven(batch))
        {
            result.AddError("--season and --batch go together; write both to read the story of one batch in one season.");
        }

        foreach (
            var option in ofReports.Where(option =>
                option.Name is "--out" or "--case" && result.IsGiven(option) && result.IsGiven(noReport)
            )
        )
        {
            result.AddError($"{option.Name} and --no-report contradict each other; leave one out.");
        }

        foreach (var option in ofReports)
        {
            if ((result.IsGiven(season) || result.IsGiven(batch)) && result.IsGiven(option))
            {
                result.AddError(
                    $"{option.Name} does not go with --season and --batch: a story plays one season and writes no report; leave it out."
                );
            }
        }
    }

    private static int Run(RunSettings settings, Func<SeasonPlan, StudyOptions> optionsOf, Desk desk)
    {
        var opened = OpenedScenario.Open(settings.Directory);
        if (opened.Plan is not { } plan)
        {
            return FaultList.Print(desk, settings.Json, opened.Faults);
        }

        var options = optionsOf(plan);
        return settings is { Season: { } season, Batch: { } batch }
            ? BatchStory.Print(desk, settings.Json, plan, options, season, batch)
            : Play(settings, opened, plan, options, desk);
    }

    private static int Play(RunSettings settings, OpenedScenario opened, SeasonPlan plan, StudyOptions options, Desk desk)
    {
        if (settings.Shard is { } share)
        {
            return PartPlay.Play(settings, share, opened, plan, options, desk);
        }

        var place = settings.ReportPlace();
        if (place is not null)
        {
            ReportFolder.Check(place);
        }

        var precision = settings.Precision is { } goal
            ? PlayProgress.Draw(desk, goal.Looks()[^1], progress =>
                PrecisionRunner.Play(plan, goal, options.Seed, options.Threads, progress, desk.Cancel)
            )
            : null;
        var result = precision?.Study ?? PlayProgress.Play(plan, options, desk);
        if (settings.Bottlenecks)
        {
            result = result with
            {
                Bottlenecks = PlayProgress.Draw(desk, result.Seasons, progress =>
                    BottleneckRunner.Play(plan, options with { Seasons = result.Seasons }, progress, desk.Cancel)
                ),
            };
        }

        var answer = new Answer(result, Verdict.Of(result), settings.Require) { Precision = precision };
        var caseInput = settings.Case ? CaseStudy.OfRun(result, settings.Paper, AnswerDelivery.NoteOf(answer)) : null;
        return AnswerDelivery.Give(desk, answer, settings.Directory, place, opened.Inputs, settings.Json, caseInput);
    }
}
