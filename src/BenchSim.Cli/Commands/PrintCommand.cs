using System.CommandLine;
using System.CommandLine.Parsing;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Print;
using BenchSim.Answers.Words;
using BenchSim.Cli.Terminal;
using BenchSim.Report.Labels;
using BenchSim.Report.Papers;
using BenchSim.Season.Planning;

namespace BenchSim.Cli.Commands;

/// <summary><c>print DIR</c>: writes the papers of the season: work list, tray labels, order, calendar and workbook.</summary>
internal static class PrintCommand
{
    private const int MostUsed = 10_000;

    public static readonly string[] Examples =
    [
        "benchsim print spring",
        "benchsim print spring --week 2027-03-15 --what list,labels --labels a4-21",
        "benchsim print spring --grower Mara",
        "benchsim print spring --today 2027-04-20",
        "benchsim print spring --labels letter:66.7x25.4/3x10/3.2x0 --out papers",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var place = CommonOptions.Text(
            "--out",
            "DIR",
            "Folder for the papers. Default: the scenario folder's name with \"-papers\", \"-papers-GROWER\" or \"-today\", beside it."
        );
        var from = DayOptions.Date("--from", "First date. Default: the season's first.");
        var to = DayOptions.Date("--to", "Last date. Default: the plan's last.");
        var week = DayOptions.Date("--week", "The week, Monday to Sunday, that holds this date; in place of --from and --to.");
        var grower = CommonOptions.Text("--grower", "NAME", "The papers of one grower alone. Default: of all growers.");
        var what = PrintOptions.Kinds("--what", "Papers: list, labels, order, calendar, workbook, with commas between them. Default: all.");
        var labels = PrintOptions.Sheet(
            "--labels",
            $"Sheet of labels: {string.Join(", ", LabelSheets.Known.Select(sheet => sheet.Name))}; or a size in millimetres such as "
                + "70x30, or 70x30/2x8 for 2 columns and 8 rows, or 70x30/2x8/3x0 with the gaps between them; "
                + "\"letter:\" in front for that paper. Default: a4-21, or letter-30 where the units are imperial."
        );
        var used = CommonOptions.Whole("--used", "N", 0, MostUsed, "Labels already used of the first sheet. Default: 0.");
        var today = DayOptions.Today(
            "Instead of the papers of the season, the page of that day by log.csv: what to do, what stands where, what is late, the "
                + "card for cold nights; without a date, of today."
        );
        var output = new OutputOptions("what was written");
        var command = new Command(
            "print",
            "Writes the papers of the season, on the dates of the plan: a work list by week, a label for each tray, "
                + "the order of seed, trays and mix, a calendar file and a workbook."
        )
        {
            folder,
            place,
            from,
            to,
            week,
            grower,
            what,
            labels,
            used,
            today,
        };
        output.AddTo(command);
        command.Validators.Add(result => RefuseContradictions(result, from, to, week));
        command.Validators.Add(result =>
        {
            foreach (var option in new Option[] { from, to, week, grower, what, labels, used })
            {
                if (result.IsGiven(today) && result.IsGiven(option))
                {
                    result.AddError($"{option.Name} does not go with --today: the page is of one day and of all growers; leave it out.");
                }
            }
        });
        command.SetAction(parsed =>
            desk.Give(
                parsed.GetValue(today) is { } day
                    ? new TodayPaperQuestion
                    {
                        Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)),
                        Today = day,
                        Out = parsed.GetValue(place),
                    }.Ask(desk.Watch)
                    : new PrintQuestion
                    {
                        Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)),
                        Papers = new PaperSettings
                        {
                            From = parsed.GetValue(week) is { } first ? TableNights.MondayOf(first) : parsed.GetValue(from),
                            To = parsed.GetValue(week) is { } last ? TableNights.MondayOf(last).AddDays(6) : parsed.GetValue(to),
                            Grower = parsed.GetValue(grower),
                            Kinds = parsed.GetValue(what),
                            Sheet = parsed.GetValue(labels),
                            LabelsUsed = parsed.GetValue(used) ?? 0,
                        },
                        Out = parsed.GetValue(place),
                    }.Ask(desk.Watch),
                output.Of(parsed)
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
}
