using System.CommandLine;
using System.CommandLine.Parsing;
using BenchSim.Answers;
using BenchSim.Answers.Words;
using BenchSim.Cli.Printing;
using BenchSim.Report.Labels;
using BenchSim.Report.Papers;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Cli.Commands;

/// <summary><c>print DIR</c>: writes the papers of the season: work list, tray labels, order, calendar and workbook.</summary>
internal static class PrintCommand
{
    private const int MostUsed = 10_000;

    public static readonly string[] Examples =
    [
        "benchsim print spring",
        "benchsim print spring --week 2027-03-15 --what list,labels --labels a4-21",
        "benchsim print spring --labels letter:66.7x25.4/3x10/3.2x0 --out papers",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var place = CommonOptions.Text(
            "--out",
            "DIR",
            "Folder for the papers. Default: the scenario folder's name with \"-papers\", beside it."
        );
        var from = PrintOptions.Date("--from", "First date. Default: the season's first.");
        var to = PrintOptions.Date("--to", "Last date. Default: the plan's last.");
        var week = PrintOptions.Date("--week", "The week, Monday to Sunday, that holds this date; in place of --from and --to.");
        var what = PrintOptions.Kinds("--what", "Papers: list, labels, order, calendar, workbook, with commas between them. Default: all.");
        var labels = PrintOptions.Sheet(
            "--labels",
            $"Sheet of labels: {string.Join(", ", LabelSheets.Known.Select(sheet => sheet.Name))}; or a size in millimetres such as 70x30, or 70x30/2x8 for 2 columns and 8 rows, or 70x30/2x8/3x0 with the gaps between them; \"letter:\" in front for that paper. Default: a4-21, or letter-30 where the units are imperial."
        );
        var used = CommonOptions.Whole("--used", "N", 0, MostUsed, "Labels already used of the first sheet. Default: 0.");
        var json = CommonOptions.ForMachines("what was written");
        var command = new Command(
            "print",
            "Writes the papers of the season, on the dates of the plan: a work list by week, a label for each tray, the order of seed, trays and mix, a calendar file and a workbook."
        )
        {
            folder,
            place,
            from,
            to,
            week,
            what,
            labels,
            used,
            json,
        };
        command.Validators.Add(result => RefuseContradictions(result, from, to, week));
        command.SetAction(parsed =>
            Print(
                new PrintSettings(
                    parsed.GetRequiredValue(folder),
                    parsed.GetValue(place),
                    new PaperSettings
                    {
                        From = parsed.GetValue(week) is { } first ? TableNights.MondayOf(first) : parsed.GetValue(from),
                        To = parsed.GetValue(week) is { } last ? TableNights.MondayOf(last).AddDays(6) : parsed.GetValue(to),
                        Kinds = parsed.GetValue(what),
                        Sheet = parsed.GetValue(labels),
                        LabelsUsed = parsed.GetValue(used) ?? 0,
                    },
                    parsed.GetValue(json)
                ),
                desk
            )
        );
        return command;
    }

    private static void RefuseContradictions(CommandResult result, Option<DateOnly?> from, Option<DateOnly?> to, Option<DateOnly?> week)
    {
        if (result.IsGiven(week) && (result.IsGiven(from) || result.IsGiven(to)))
        {
            result.AddError("--week does not go with --from and --to; leave one or the other out.");
        }
    }

    // Not among the contradictions above: a date that cannot be read has no value to compare there.
    private static void RefuseReversed(PaperSettings papers)
    {
        if (papers is { From: { } first, To: { } last } && last < first)
        {
            throw new RefusedException(
                $"--to {Figures.Date(last)} is before --from {Figures.Date(first)}; write them the other way round."
            );
        }
    }

    private static int Print(PrintSettings settings, Desk desk)
    {
        RefuseReversed(settings.Papers);
        var opened = OpenedScenario.Open(settings.Directory);
        if (opened.Plan is not { } plan)
        {
            return FaultList.Print(desk, settings.Json, opened.Faults);
        }

        var sheet = settings.Papers.Sheet ?? LabelSheets.Usual(plan.Scenario.Units == UnitSystem.Imperial);
        if (settings.Papers.LabelsUsed >= sheet.Count)
        {
            throw new RefusedException(
                $"--used {settings.Papers.LabelsUsed} cannot be used; a sheet {sheet.Name} has {sheet.Count} labels, so write a number below that."
            );
        }

        var place = settings.Out ?? BesideScenario.Folder(settings.Directory, "-papers");
        var summary = PapersFolder.Write(place, plan, settings.Papers with { Sheet = sheet }, desk.Cancel);
        if (settings.Json)
        {
            PaperPrinter.PrintJson(desk, plan, place, summary);
        }
        else
        {
            PaperPrinter.Print(desk, plan, place, summary);
        }

        return ExitCode.Done;
    }
}
