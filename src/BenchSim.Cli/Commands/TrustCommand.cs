using System.CommandLine;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Trust;
using BenchSim.Cli.Terminal;
using BenchSim.Report.Words;
using BenchSim.Study.Trust;

namespace BenchSim.Cli.Commands;

/// <summary><c>trust DIR</c>: how sure the answer is, where the values under it may be wrong.</summary>
internal static class TrustCommand
{
    private const int MostSets = 65_536;
    private const int MostSeasons = 10_000;

    public static readonly string[] Examples =
    [
        "benchsim trust spring",
        "benchsim trust spring --all",
        "benchsim trust spring --with second-house",
        "benchsim trust spring --sets 512 --seasons 200 --out spring-trust",
        "benchsim trust spring --today 2027-04-20",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv, and ranges.csv where you know what values may be.");
        var with = CommonOptions.Text(
            "--with",
            "VARIANT",
            "A variant that you may choose: says whether it stays the better choice, and what is worth knowing first."
        );
        var today = DayOptions.Underway();
        var sets = CommonOptions.Whole(
            "--sets",
            "N",
            TrustOptions.LeastSets,
            MostSets,
            $"Sets of values to play; a power of 2 is best. Default: {Numbers.Whole(TrustOptions.UsualSets)}."
        );
        var seasons = CommonOptions.Whole(
            "--seasons",
            "N",
            TrustOptions.LeastSeasons,
            MostSeasons,
            $"Seasons to play of each set. Default: {Numbers.Whole(TrustOptions.UsualSeasons)}."
        );
        var play = new PlayOptions();
        var place = CommonOptions.Text("--out", "DIR", "Folder for a picture, tables and trust.json. Default: none is written.");
        var output = new OutputOptions("the answer");
        var command = new Command(
            "trust",
            "Says how sure the answer is when the values under it may be wrong: plays the plan with many sets of values, and names those to "
                + "measure first."
        )
        {
            folder,
            with,
            today,
            sets,
            seasons,
            play.Seed,
            play.Threads,
            place,
        };
        output.AddTo(command);
        command.SetAction(parsed =>
            desk.Give(
                new TrustQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)).On(parsed.GetValue(today)),
                    Variant = parsed.GetValue(with),
                    Sets = parsed.GetValue(sets),
                    Play = new PlayWish(parsed.GetValue(seasons), parsed.GetValue(play.Seed), parsed.GetValue(play.Threads)),
                    Out = parsed.GetValue(place),
                }.Ask(desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }
}
