using System.Collections.Immutable;
using System.CommandLine;
using BenchSim.Cli.Printing;
using BenchSim.Report.Case;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Compare;

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
                    "--case takes one variant, for a case is made for one change; write --with with one name, and the command once for each."
                );
            }
        });
        command.SetAction(parsed =>
            Compare(
                parsed.GetRequiredValue(folder),
                [.. parsed.GetRequiredValue(with).Distinct(StringComparer.Ordinal)],
                cases.IsAsked(parsed) ? new CaseWish(parsed.GetValue(place), cases.PaperOf(parsed)) : null,
                play.Of(parsed),
                parsed.GetValue(json),
                desk
            )
        );
        return command;
    }

    /// <summary>A case report that is asked for.</summary>
    /// <param name="Out">Its folder; null for the usual place.</param>
    /// <param name="Paper">Its paper; null for the usual one of the site.</param>
    private sealed record CaseWish(string? Out, CasePaper? Paper);

    private static int Compare(
        string directory,
        ImmutableArray<string> names,
        CaseWish? wish,
        Func<SeasonPlan, StudyOptions> optionsOf,
        bool json,
        Desk desk
    )
    {
        var place = wish is null ? null : wish.Out ?? BesideScenario.Folder(directory, $"-{names[0]}-case");
        if (place is not null)
        {
            CaseFolder.Check(place);
        }

        var opened = OpenedScenario.Open(directory);
        if (opened.Plan is not { } plan)
        {
            return FaultList.Print(desk, json, opened.Faults);
        }

        var variants = OpenedVariants.Open(directory, plan, names);
        if (variants.Plans.IsEmpty)
        {
            return FaultList.Print(desk, json, variants.Faults);
        }

        var options = optionsOf(plan);
        var result = PlayProgress.Draw(desk, options.Seasons, progress =>
            CompareRunner.Play(plan, variants.Plans, options, progress, desk.Cancel)
        );
        string? file = null;
        if (place is not null)
        {
            CaseFolder.Write(
                place,
                CaseStudy.OfComparison(desk, result, options, wish!.Paper),
                [.. variants.Inputs.Select(input => new ReportInput(input.Name, input.Bytes.AsMemory()))],
                desk.Cancel
            );
            file = Path.Combine(place, CaseFolder.FileName);
        }

        if (json)
        {
            CompareJson.Print(desk, result, file);
        }
        else
        {
            ComparePrinter.Print(desk, result, file);
        }

        return ExitCode.Done;
    }
}
