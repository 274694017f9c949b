using System.CommandLine;
using BenchSim.Cli.Printing;
using BenchSim.Folder;
using BenchSim.Report;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study;
using BenchSim.Study.Invest;

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
        var json = CommonOptions.ForMachines("the case");
        var command = new Command(
            "invest",
            "Says whether a variant pays: what it saves and costs a year, its net present value, internal rate and payback with their spread, and what one must believe for it to pay."
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
        command.SetAction(parsed =>
            Invest(
                parsed.GetRequiredValue(folder),
                parsed.GetRequiredValue(with)!,
                play.Of(parsed),
                parsed.GetValue(place),
                parsed.GetValue(json),
                desk
            )
        );
        return command;
    }

    private static int Invest(string directory, string name, Func<SeasonPlan, StudyOptions> optionsOf, string? place, bool json, Desk desk)
    {
        if (place is not null)
        {
            InvestFolder.Check(place);
        }

        var opened = OpenedScenario.Open(directory);
        if (opened.Plan is not { } plan)
        {
            return FaultList.Print(desk, json, opened.Faults);
        }

        var variants = OpenedVariants.Open(directory, plan, [name]);
        if (variants.Plans.IsEmpty)
        {
            return FaultList.Print(desk, json, variants.Faults);
        }

        if (variants.Plans[0].Plan.Scenario.Invest is null)
        {
            return FaultList.Print(
                desk,
                json,
                [
                    new Fault(
                        new SourcePlace($"{FolderReference.VariantFolder}/{name}.toml", 0, 0),
                        "there is no table [invest], so nothing says what the variant costs",
                        "add [invest] with capital, life_years and discount_rate"
                    ),
                ]
            );
        }

        var options = optionsOf(plan);
        var result = PlayProgress.Draw(desk, options.Seasons, progress =>
            InvestRunner.Play(plan, variants.Plans[0], options, progress, desk.Cancel)
        );
        if (place is not null)
        {
            InvestFolder.Write(place, result, desk.Cancel);
        }

        if (json)
        {
            InvestJson.Print(desk, result, place);
        }
        else
        {
            InvestPrinter.Print(desk, result, place);
        }

        return ExitCode.Done;
    }
}
