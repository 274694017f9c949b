using System.CommandLine;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Size;
using BenchSim.Answers.Words;
using BenchSim.Cli.Terminal;
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
        "benchsim size spring --space table --today 2027-04-20",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var space = CommonOptions.Text("--space", "SPACE", "The space to size: its id in site.toml, or in the variant.");
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
        var today = DayOptions.Underway();
        var play = new PlayOptions();
        var output = new OutputOptions("the answer and the curve");
        var command = new Command(
            "size",
            "Finds the smallest number of places of a space with which the plan fits often enough, and shows the chance for each number "
                + "it played."
        )
        {
            folder,
            space,
            with,
            goal,
            confidence,
            every,
            place,
            today,
        };
        play.AddTo(command);
        output.AddTo(command);
        command.SetAction(parsed =>
            desk.Give(
                new SizeQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)).On(parsed.GetValue(today)),
                    Space = parsed.GetRequiredValue(space)!,
                    Variant = parsed.GetValue(with),
                    Goal = new SizeGoal
                    {
                        Share = parsed.GetValue(goal) ?? UsualGoal,
                        Confidence = parsed.GetValue(confidence) ?? 0.95,
                        Every = parsed.GetValue(every),
                    },
                    Play = play.Of(parsed),
                    Out = parsed.GetValue(place),
                }.Ask(desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }
}
