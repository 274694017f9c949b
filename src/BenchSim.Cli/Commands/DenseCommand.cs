using System.CommandLine;
using BenchSim.Answers.Dense;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Cli.Terminal;
using BenchSim.Study.Dense;

namespace BenchSim.Cli.Commands;

/// <summary><c>dense DIR</c>: direct sowing against dense sowing with later pot-up.</summary>
internal static class DenseCommand
{
    public static readonly string[] Examples =
    [
        "benchsim dense spring",
        "benchsim dense spring --crop tomato --seeds-per-flat 200 --out tomato-dense",
        "benchsim dense spring --today 2027-04-20",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var crop = CommonOptions.Text("--crop", "CROP", "The one crop to look at. Default: every crop that stands on a heat mat.");
        var flat = CommonOptions.Text(
            "--flat",
            "FLAT",
            "Open flat for sowings that the plan sows directly. Default: the first open flat by id."
        );
        var density = CommonOptions.Whole(
            "--seeds-per-flat",
            "N",
            1,
            DenseBreakEven.MostSeeds,
            "Seeds a flat. Default: what the plan says of sowings it pots up, and the flat of the others."
        );
        var today = DayOptions.Underway();
        var play = new PlayOptions("Seasons to play of each way.");
        var place = CommonOptions.Text("--out", "DIR", "Folder for a chart and tables. Default: none is written.");
        var output = new OutputOptions("the differences");
        var command = new Command(
            "dense",
            "Plays each crop of the heat mats sown directly, and sown dense and potted up later, and says what mats that frees, "
                + "what benches and work it takes, and from which density on."
        )
        {
            folder,
            crop,
            flat,
            density,
            today,
            play.Seasons,
            play.Seed,
            play.Threads,
            place,
        };
        output.AddTo(command);
        command.SetAction(parsed =>
            desk.Give(
                new DenseQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)).On(parsed.GetValue(today)),
                    Crop = parsed.GetValue(crop),
                    Flat = parsed.GetValue(flat),
                    SeedsPerFlat = parsed.GetValue(density),
                    Play = play.Of(parsed),
                    Out = parsed.GetValue(place),
                }.Ask(desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }
}
