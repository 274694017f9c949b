using System.CommandLine;
using BenchSim.Answers.Mend;
using BenchSim.Answers.Opening;
using BenchSim.Cli.Terminal;
using BenchSim.Level;

namespace BenchSim.Cli.Commands;

/// <summary><c>mend DIR</c>: looks for what to change so that the plan fits often enough, cheapest first.</summary>
internal static class MendCommand
{
    private const double UsualGoal = 0.9;

    public static readonly string[] Examples =
    [
        "benchsim mend spring",
        "benchsim mend spring --goal 95% --all",
        "benchsim mend spring --write mended",
        "benchsim mend spring --today 2027-04-20",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var goal = CommonOptions.Share(
            "--goal",
            "P",
            "Share of seasons in which the plan must fit, such as 0.9. Default: 90%.",
            endsOut: true
        );
        var write = CommonOptions.Text(
            "--write",
            "NAME",
            "Write what was chosen as a variant, variants/NAME.toml; it must not be there yet."
        );
        Option<bool> weather = new("--weather")
        {
            Description = "Count days on which only the weather kept trays as late too, which the rules of the site leave out.",
        };
        var today = DayOptions.Underway();
        var play = new PlayOptions("Seasons in which what was found is played.");
        var output = new OutputOptions("the changes and what they gain");
        var command = new Command(
            "mend",
            "Says what to change so that the plan fits often enough: what costs nothing first, then what to buy, with the gain of each."
        )
        {
            folder,
            goal,
            weather,
            write,
            today,
        };
        play.AddTo(command);
        output.AddTo(command);
        command.SetAction(parsed =>
            desk.Give(
                new MendQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)).On(parsed.GetValue(today)),
                    Goal = parsed.GetValue(goal) ?? UsualGoal,
                    CountsWeather = parsed.GetValue(weather),
                    Write = parsed.GetValue(write),
                    Play = play.Of(parsed),
                }.Ask(Leveller.IfHere, desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }
}
