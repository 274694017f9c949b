using System.CommandLine;
using System.Globalization;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Succession;
using BenchSim.Answers.Words;
using BenchSim.Cli.Terminal;
using BenchSim.Report.Words;

namespace BenchSim.Cli.Commands;

/// <summary><c>succession DIR</c>: tries schedules of successions for one line of the plan.</summary>
internal static class SuccessionCommand
{
    private const int MostSchedules = 100;

    public static readonly string[] Examples =
    [
        "benchsim succession spring --batch lettuce --every 7 10 14 --times 4 6 --gap 12",
        "benchsim succession spring --batch broccoli --every 10 14 --times 3 --seasons 2000 --gap 14",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var batch = CommonOptions.Text("--batch", "ID", "Line of the plan whose successions are tried: its id in plan.csv.");
        batch.Required = true;
        var every = Numbers("--every", 1, 120, "Days from one sowing to the next; one number or more.");
        var times = Numbers("--times", 2, 100, "Sowings in all; one number or more.");
        var gap = CommonOptions.Whole(
            "--gap",
            "DAYS",
            1,
            365,
            "Days that one set-out supplies: longer between two is a gap. Default: what crops.csv says of the crop's harvest."
        );
        var play = new PlayOptions("Seasons to play of each schedule.");
        var output = new OutputOptions("the schedules");
        var command = new Command(
            "succession",
            "Tries a crop sown every so many days, so many times, each schedule in the same seasons: whether the plan still fits, "
                + "how late plants are, and the gaps in supply."
        )
        {
            folder,
            batch,
            every,
            times,
            gap,
            play.Seasons,
            play.Seed,
            play.Threads,
        };
        output.AddTo(command);
        command.Validators.Add(result =>
        {
            if (
                result.GetResult(every) is { Errors: var first } days
                && result.GetResult(times) is { Errors: var second } numbers
                && !first.Any()
                && !second.Any()
                && (long)days.Tokens.Count * numbers.Tokens.Count > MostSchedules
            )
            {
                result.AddError($"--every and --times make more than {MostSchedules} schedules; try them in parts.");
            }
        });
        command.SetAction(parsed =>
            desk.Give(
                new SuccessionQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)),
                    Batch = parsed.GetRequiredValue(batch)!,
                    Every = [.. parsed.GetRequiredValue(every).Distinct().Order()],
                    Times = [.. parsed.GetRequiredValue(times).Distinct().Order()],
                    Gap = parsed.GetValue(gap),
                    Play = play.Of(parsed),
                }.Ask(desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }

    private static Option<int[]> Numbers(string name, int least, int most, string what) =>
        new(name)
        {
            HelpName = "N...",
            Description = what,
            Required = true,
            AllowMultipleArgumentsPerToken = true,
            CustomParser = result =>
            {
                var numbers = new List<int>();
                foreach (var text in result.Tokens.Select(token => token.Value))
                {
                    if (
                        int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
                        && number >= least
                        && number <= most
                    )
                    {
                        numbers.Add(number);
                    }
                    else
                    {
                        result.AddError(
                            $"{name} {PlainText.Quote(text)} cannot be used; "
                                + $"write whole numbers from {least} to {most}, with spaces between."
                        );
                    }
                }

                return [.. numbers];
            },
        };
}
