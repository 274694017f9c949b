using System.CommandLine;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Review;
using BenchSim.Cli.Terminal;
using BenchSim.Level;

namespace BenchSim.Cli.Commands;

/// <summary><c>review DIR</c>: sets a season that is over beside the plan that was agreed.</summary>
internal static class ReviewCommand
{
    public static readonly string[] Examples =
    [
        "benchsim review spring",
        "benchsim review spring --all",
        "benchsim review spring --with more-mats",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml, plan.csv, and log.csv of the season.");
        var with = CommonOptions.Text(
            "--with",
            "VARIANT",
            "Judge a purchase, variants/VARIANT.toml, on top of what would have cost nothing."
        );
        var play = new PlayOptions(
            "Seasons to play of the agreed plan, and on from each Monday.",
            $"Default: {ReviewQuestion.UsualSeasons}."
        );
        var output = new OutputOptions("the review");
        var command = new Command(
            "review",
            "Says how a season that is over went by its log, beside the plan that was agreed: what was late, what was forecast each week "
                + "and what came, hours and fuel, and which jobs have a line. Each figure says whether it was counted, played or assumed."
        )
        {
            folder,
            with,
        };
        play.AddTo(command);
        output.AddTo(command);
        command.SetAction(parsed =>
            desk.Give(
                new ReviewQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)),
                    Purchase = parsed.GetValue(with),
                    Play = play.Of(parsed),
                }.Ask(desk.Watch, Leveller.IfHere),
                output.Of(parsed)
            )
        );
        return command;
    }
}
