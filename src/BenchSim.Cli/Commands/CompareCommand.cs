using System.CommandLine;
using BenchSim.Answers.Compare;
using BenchSim.Answers.Opening;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Commands;

/// <summary><c>compare DIR --with NAME...</c>: plays the base and its variants on the same luck and prints the differences.</summary>
internal static class CompareCommand
{
    private const int MostVariants = 50;

    public static readonly string[] Examples =
    [
        "benchsim compare spring --with more-mats",
        "benchsim compare spring --with more-mats second-house --seasons 2000",
        "benchsim compare spring --with second-house --case",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv, with the variants in its folder \"variants\".");
        var with = new Option<string[]>("--with")
        {
            HelpName = "NAME",
            Description = "Variants to compare with the base: the names of files variants/NAME.toml, without the ending.",
            Required = true,
            AllowMultipleArgumentsPerToken = true,
        };
        with.Validators.Add(result =>
        {
            if (result.Tokens.Count > MostVariants)
            {
                result.AddError($"--with takes up to {MostVariants} variants; compare them in parts.");
            }
        });
        var play = new PlayOptions();
        var cases = new CaseOptions(
            "Also write a case report of the variant for a grant or an investment, case.pdf, into a folder with the files played."
        );
        var place = CommonOptions.Text(
            "--out",
            "DIR",
            "With --case: folder for the case report. Default: the scenario folder's name with \"-VARIANT-case\", beside it."
        );
        var json = CommonOptions.ForMachines("the differences");
        var command = new Command(
            "compare",
            "Plays the base and its variants on the same luck and says which differences are real and which cannot be told."
        )
        {
            folder,
            with,
            play.Seasons,
            play.Seed,
            play.Threads,
            place,
            json,
        };
        cases.AddTo(command);
        command.Validators.Add(result => cases.RefuseWithout(result, place));
        command.Validators.Add(result =>
        {
            if (cases.IsAsked(result) && result.GetResult(with)?.Tokens.Count > 1)
            {
                result.AddError(
                    "--case takes one variant, for a case is made for one change; write --with with one name, "
                        + "and the command once for each."
                );
            }
        });
        command.SetAction(parsed =>
            desk.Give(
                new CompareQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)),
                    Variants = [.. parsed.GetRequiredValue(with).Distinct(StringComparer.Ordinal)],
                    Play = play.Of(parsed),
                    Case = cases.IsAsked(parsed) ? new CaseWish(parsed.GetValue(place), cases.PaperOf(parsed)) : null,
                }.Ask(desk.Watch),
                parsed.GetValue(json)
            )
        );
        return command;
    }
}
