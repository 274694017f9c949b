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
        "benchsim compare spring --with cooler-house --replan",
        "benchsim compare spring --with second-house --case",
        "benchsim compare spring --with second-house --today 2027-04-20",
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
        var replan = new Option<bool>("--replan")
        {
            Description =
                "Plan the variants anew: sow dates that are worked out from a set-out date may move with what a variant changes; "
                + "the set-out dates stay.",
        };
        var today = DayOptions.Underway();
        var play = new PlayOptions();
        var cases = new CaseOptions(
            "Also write a case report of the variant for a grant or an investment, case.pdf, into a folder with the files played."
        );
        var place = CommonOptions.Text(
            "--out",
            "DIR",
            "With --case: folder for the case report. Default: the scenario folder's name with \"-VARIANT-case\", beside it."
        );
        var trust = CommonOptions.Text(
            "--trust",
            "FILE",
            "With --case: an answer of \"trust\" on the same files, trust.json, to say how far their values may move the answer."
        );
        var output = new OutputOptions("the differences");
        var command = new Command(
            "compare",
            "Plays the base and its variants in the same seasons and says which differences are real and which may be chance."
        )
        {
            folder,
            with,
            replan,
            today,
            play.Seasons,
            play.Seed,
            play.Threads,
            place,
            trust,
        };
        output.AddTo(command);
        cases.AddTo(command);
        command.Validators.Add(result => cases.RefuseWithout(result, place, trust));
        command.Validators.Add(result => DayOptions.RefuseBeside(result, today, cases.All));
        command.Validators.Add(result =>
        {
            if (cases.IsAsked(result) && result.GetResult(with)?.Tokens.Count > 1)
            {
                result.AddError(
                    "--case takes one variant, since a case is made for one change; write --with with one name, "
                        + "and run the command once for each."
                );
            }
        });
        command.SetAction(parsed =>
            desk.Give(
                new CompareQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)).On(parsed.GetValue(today)),
                    Variants = [.. parsed.GetRequiredValue(with).Distinct(StringComparer.Ordinal)],
                    Replan = parsed.GetValue(replan),
                    Play = play.Of(parsed),
                    Case = cases.IsAsked(parsed)
                        ? new CaseWish(parsed.GetValue(place), cases.PaperOf(parsed), parsed.GetValue(trust))
                        : null,
                }.Ask(desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }
}
