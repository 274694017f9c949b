using System.CommandLine;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Level;
using BenchSim.Answers.Opening;
using BenchSim.Cli.Terminal;
using BenchSim.Level;

namespace BenchSim.Cli.Commands;

/// <summary><c>level DIR</c>: moves sowings within their tolerances, tries the levelled plan, and writes it where asked.</summary>
internal static class LevelCommand
{
    public static readonly string[] Examples =
    [
        "benchsim level spring",
        "benchsim level spring --write",
        "benchsim level spring --fill 90% --out spring/plan-level-90.csv",
        "benchsim level spring --today 2027-04-20",
    ];

    private const string NoSolver =
        "The solver that this command needs was left out of this program. The downloaded archive has it in its folder \"solver\": "
        + "keep that beside the program.";

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv, with the columns earlier and later in the plan.");
        var write = new Option<bool>("--write")
        {
            Description = "Write the levelled plan to plan-levelled.csv in the scenario folder. Without it nothing is written.",
        };
        var to = CommonOptions.Text("--out", "FILE", "Write the levelled plan to this file.");
        var today = DayOptions.Underway();
        var play = new PlayOptions("Seasons in which both plans are played.");
        var fill = CommonOptions.Share(
            "--fill",
            "SHARE",
            "Share of the places that the trays may be planned to fill, such as 90%; the rest stays free. Default: all of them."
        );
        fill.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && result.Tokens[0].Value.Trim().TrimEnd('%').TrimEnd().All(character => character is '0' or '.'))
            {
                result.AddError("--fill is 0; write a share above 0.");
            }
        });
        var output = new OutputOptions("the moves and what came of them");
        var command = new Command(
            "level",
            "Moves sowings within the days that the plan allows (its columns earlier and later), so that as few trays as "
                + "possible are likely to be without a place; plays the levelled plan and the plan as it is in the same seasons, and "
                + "says whether to adopt it."
        )
        {
            folder,
            write,
            to,
            today,
            play.Seasons,
            play.Seed,
            play.Threads,
            fill,
        };
        output.AddTo(command);
        command.SetAction(parsed =>
            desk.Give(
                new LevelQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)).On(parsed.GetValue(today)),
                    Play = play.Of(parsed),
                    Fill = parsed.GetValue(fill) ?? 1,
                    Write = parsed.GetValue(write),
                    Out = parsed.GetValue(to),
                }.Ask(Leveller.IfHere ?? throw new RefusedException(NoSolver), desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }
}
