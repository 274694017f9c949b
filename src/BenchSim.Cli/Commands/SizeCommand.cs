using System.CommandLine;
using BenchSim.Answers;
using BenchSim.Answers.Words;
using BenchSim.Cli.Printing;
using BenchSim.Engine.Randomness;
using BenchSim.Report;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Sizing;

namespace BenchSim.Cli.Commands;

/// <summary><c>size DIR --space SPACE</c>: finds the smallest number of places with which the plan fits often enough.</summary>
internal static class SizeCommand
{
    private const double UsualGoal = 0.9;

    public static readonly string[] Examples =
    [
        "benchsim size spring --space table",
        "benchsim size spring --space second-bench --with second-house --goal 95%",
        "benchsim size spring --space mats --every --out mats-size",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var space = CommonOptions.Text("--space", "SPACE", "The space whose places are sought: its id in site.toml, or in the variant.");
        space.Required = true;
        var with = CommonOptions.Text("--with", "NAME", "A variant to play, variants/NAME.toml: for a space that is not there yet.");
        var goal = CommonOptions.Share(
            "--goal",
            "P",
            "Share of seasons in which the plan must fit, such as 0.9. Default: 90%.",
            endsOut: true
        );
        var confidence = CommonOptions.Share(
            "--confidence",
            "P",
            "Confidence of the interval that must lie above it. Default: 95%.",
            endsOut: true
        );
        Option<bool> every = new("--every") { Description = "Play every number of places, not only those that the search needs." };
        var place = CommonOptions.Text("--out", "DIR", "Write the curve there, as a table and a chart.");
        var options = new PlayOptions();
        var json = CommonOptions.ForMachines("the answer and the curve");
        var command = new Command(
            "size",
            "Finds the smallest number of places of a space with which the plan fits often enough, on the same luck, with the whole curve."
        )
        {
            folder,
            space,
            with,
            goal,
            confidence,
            every,
            place,
        };
        options.AddTo(command);
        command.Add(json);
        command.SetAction(parsed =>
            Size(
                new SizeSettings
                {
                    Directory = parsed.GetRequiredValue(folder),
                    Space = parsed.GetValue(space)!,
                    With = parsed.GetValue(with),
                    Goal = new SizeGoal
                    {
                        Share = parsed.GetValue(goal) ?? UsualGoal,
                        Confidence = parsed.GetValue(confidence) ?? 0.95,
                        Every = parsed.GetValue(every),
                    },
                    Out = parsed.GetValue(place),
                    Json = parsed.GetValue(json),
                },
                plan => options.Of(parsed, plan),
                desk
            )
        );
        return command;
    }

    private static int Size(SizeSettings settings, Func<SeasonPlan, StudyOptions> optionsOf, Desk desk)
    {
        if (settings.Out is { } place)
        {
            SizeFolder.Check(place);
        }

        var opened = OpenedScenario.Open(settings.Directory);
        if (opened.Plan is not { } plan)
        {
            return FaultList.Print(desk, settings.Json, opened.Faults);
        }

        var given = plan.Scenario;
        if (settings.With is { } variant)
        {
            var variants = OpenedVariants.Open(settings.Directory, plan, [variant]);
            if (variants.Plans.IsEmpty)
            {
                return FaultList.Print(desk, settings.Json, variants.Faults);
            }

            plan = variants.Plans[0].Plan;
        }

        var space = SpaceOf(plan.Scenario, settings);
        var options = optionsOf(plan);
        var result = PlayProgress.Draw(desk, SizeRunner.ProgressParts, progress =>
            SizeRunner.Find(plan, space, settings.Goal, options, progress, desk.Cancel)
        );
        if (settings.Out is { } directory)
        {
            SizeFolder.Write(directory, result, desk.Cancel);
        }

        if (settings.Json)
        {
            SizeJson.Print(desk, settings, result);
        }
        else
        {
            SizePrinter.Print(desk, settings, result, plan.Scenario.Houses.Length > given.Houses.Length);
        }

        return ExitCode.Done;
    }

    private static int SpaceOf(Scenario scenario, SizeSettings settings)
    {
        string[] ids = [.. scenario.Spaces.Select(space => space.Id)];
        var wanted = LatinAccents.Join(settings.Space);
        var at = Array.FindIndex(ids, id => string.Equals(LatinAccents.Join(id), wanted, StringComparison.Ordinal));
        if (at >= 0)
        {
            return at;
        }

        var near = string.Join(" or ", NearNames.Of(settings.Space, ids).Select(SafeText.Quote));
        var where = settings.With is { } variant ? $"in the variant {SafeText.Quote(variant)}" : "in site.toml";
        throw new RefusedException(
            $"There is no space {SafeText.Quote(settings.Space)} {where}; "
                + (near.Length > 0 ? $"did you mean {near}?" : $"its spaces are {Figures.List([.. ids.Select(SafeText.Quote)])}.")
        );
    }
}
