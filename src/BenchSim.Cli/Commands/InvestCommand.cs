using System.CommandLine;
using BenchSim.Answers.Invest;
using BenchSim.Answers.Opening;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Commands;

/// <summary><c>invest DIR --with VARIANT</c>: the money case of a variant.</summary>
internal static class InvestCommand
{
    public static readonly string[] Examples =
    [
        "benchsim invest spring --with second-house",
        "benchsim invest spring --with second-house --seasons 2000 --out second-house-case",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv, with the variant in its folder \"variants\".");
        var with = CommonOptions.Text(
            "--with",
            "VARIANT",
            "The variant: the name of a file variants/VARIANT.toml with a table [invest], without the ending."
        );
        with.Required = true;
        var play = new PlayOptions();
        var place = CommonOptions.Text("--out", "DIR", "Folder for a chart and tables. Default: none is written.");
        var output = new OutputOptions("the case");
        var command = new Command(
            "invest",
            "Says whether a variant pays: what it saves and costs a year, its net present value, "
                + "internal rate and payback with their spread, and what would have to be true for it to pay."
        )
        {
            folder,
            with,
            play.Seasons,
            play.Seed,
            play.Threads,
            place,
        };
        output.AddTo(command);
        command.SetAction(parsed =>
            desk.Give(
                new InvestQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)),
                    Variant = parsed.GetRequiredValue(with)!,
                    Play = play.Of(parsed),
                    Out = parsed.GetValue(place),
                }.Ask(desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }
}
