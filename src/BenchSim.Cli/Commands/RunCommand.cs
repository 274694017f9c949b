using System.CommandLine;
using System.CommandLine.Parsing;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Parts;
using BenchSim.Answers.Run;
using BenchSim.Cli.Terminal;

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
        "benchsim run spring --with longer-table",
        "benchsim run spring --case",
        "benchsim run spring --today 2027-04-20",
        "benchsim run spring --today 2027-04-27 --since spring-2027-04-20-report",
        "benchsim run spring --season 17 --batch broccoli-2",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var place = CommonOptions.Text(
            "--out",
            "DIR",
            "Report folder, or with --shard the file of the part. Default: the scenario folder's name with \"-report\", "
                + "\"-VARIANT-report\", \"-DATE-report\" or \".K-of-N.part\", beside it."
        );
        var play = new PlayOptions("Seasons to play.");
        var today = DayOptions.Underway();
        var with = CommonOptions.Text("--with", "VARIANT", "The variant to play, variants/VARIANT.toml, in place of the plan as it is.");
        var since = CommonOptions.Text("--since", "REPORT", "The folder of an earlier report: also say what has changed since.");
        var trust = CommonOptions.Text(
            "--trust",
            "FILE",
            "An answer of \"trust\" on the same files, trust.json: also say how far their values may move the share of seasons."
        );
        var require = CommonOptions.Share("--require", "P", "Share of seasons that must fit, such as 0.9; exit code 1 when fewer do.");
        var season = CommonOptions.Whole(
            "--season",
            "N",
            1,
            PlayOptions.MostSeasons,
            "With --batch: tell the story of that batch in season N instead, N counting from 1."
        );
        var batch = CommonOptions.Text("--batch", "ID", "With --season: the batch whose story you want.");
        Option<bool> bottlenecks = new("--bottlenecks") { Description = "Also play each space with more room, and say what that saves." };
        var shard = PartOptions.Shard();
        var precision = new PrecisionOptions();
        var cases = new CaseOptions("Also write a case report for a grant or an investment, case.pdf, into the report folder.");
        var output = new OutputOptions("the answer");
        Option<bool> noReport = new("--no-report") { Description = "Write no report folder." };
        var command = new Command(
            "run",
            "Plays the seasons, prints the verdict and writes the report folder. Every season has its own "
                + "weather, and its own draws of how seed comes up and how plants grow."
        )
        {
            folder,
            with,
            today,
            since,
            trust,
            place,
            play.Seasons,
            play.Seed,
            play.Threads,
            require,
            season,
            batch,
            shard,
            bottlenecks,
            noReport,
        };
        output.AddTo(command);
        precision.AddTo(command);
        cases.AddTo(command);
        command.Validators.Add(result =>
            RefuseContradictions(result, season, batch, noReport, [place, since, trust, play.Threads, require, bottlenecks, .. cases.All])
        );
        command.Validators.Add(result => DayOptions.RefuseBeside(result, today, [season, batch, shard, .. cases.All]));
        command.Validators.Add(result => cases.RefuseWithout(result));
        command.Validators.Add(result => RefuseVariant(result, with, cases, shard));
        command.Validators.Add(result =>
            PartOptions.RefuseContradictions(
                result,
                shard,
                [season, batch, since, trust, require, noReport, bottlenecks, .. precision.All, .. cases.All]
            )
        );
        command.Validators.Add(result => precision.RefuseContradictions(result, [play.Seasons, season, batch]));
        command.SetAction(parsed =>
        {
            var scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)).On(parsed.GetValue(today));
            var form = output.Of(parsed);
            if (parsed.GetValue(season) is { } number && parsed.GetValue(batch) is { } id)
            {
                var story = new StoryQuestion
                {
                    Scenario = scenario,
                    Variant = parsed.GetValue(with),
                    Play = play.Of(parsed),
                    Season = number,
                    Batch = id,
                };
                return desk.Give(story.Ask(desk.Watch), form);
            }

            if (parsed.GetValue(shard) is { } share)
            {
                var part = new PartQuestion
                {
                    Scenario = scenario,
                    Share = share,
                    Play = play.Of(parsed),
                    Out = parsed.GetValue(place),
                };
                return desk.Give(part.Ask(desk.Watch), form);
            }

            var run = new RunQuestion
            {
                Scenario = scenario,
                Variant = parsed.GetValue(with),
                Play = play.Of(parsed),
                Precision = precision.GoalOf(parsed),
                Since = parsed.GetValue(since),
                Trust = parsed.GetValue(trust),
                Require = parsed.GetValue(require),
                Bottlenecks = parsed.GetValue(bottlenecks),
                Out = parsed.GetValue(place),
                NoReport = parsed.GetValue(noReport),
                Case = cases.IsAsked(parsed),
                Paper = cases.PaperOf(parsed),
            };
            return Give(desk, run.Ask(desk.Watch), form);
        });
        return command;
    }

    private static void RefuseVariant(CommandResult result, Option with, CaseOptions cases, Option shard)
    {
        if (!result.IsGiven(with))
        {
            return;
        }

        if (cases.IsAsked(result))
        {
            result.AddError(
                "--case does not go with --with; \"benchsim compare DIR --with VARIANT --case\" sets the variant beside the plan as it is."
            );
        }

        if (result.IsGiven(shard))
        {
            result.AddError("--with does not go with --shard: parts are played of the plan as it is; leave one out.");
        }
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

    /// <summary>Gives the answer of a run: says it, and writes the report that goes with it.</summary>
    /// <returns>The exit code.</returns>
    public static int Give(Desk desk, RunAnswer answer, AnswerForm form)
    {
        // The report first: seasons that were played must not be lost because nobody could be told of them.
        answer.WriteReport(desk.Cancel);
        try
        {
            desk.Give(answer, form);
            if (form != AnswerForm.Json)
            {
                SayWhere(desk.Say, "Report", answer.PageFile);
                SayWhere(desk.Say, "Case report", answer.CaseFile);
            }
        }
        catch (OutputFailedException)
        {
            SayWhere(desk.Complain, "Report", answer.PageFile);
            SayWhere(desk.Complain, "Case report", answer.CaseFile);
            throw;
        }

        return answer.IsRequirementMissed ? ExitCode.RequirementMissed : ExitCode.Done;
    }

    private static void SayWhere(Action<string> say, string what, string? path)
    {
        if (path is not null)
        {
            say($"{what}: {path}");
        }
    }
}
