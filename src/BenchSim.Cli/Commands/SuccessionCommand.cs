using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using BenchSim.Answers;
using BenchSim.Answers.Words;
using BenchSim.Cli.Printing;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Succession;

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
        var json = CommonOptions.ForMachines("the schedules");
        var command = new Command(
            "succession",
            "Tries a crop sown every so many days, so many times, each schedule on the same luck: whether the plan still fits, how late plants are, and the gaps in supply."
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
            json,
        };
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
            Try(
                new SuccessionSettings(
                    parsed.GetRequiredValue(folder),
                    parsed.GetRequiredValue(batch)!,
                    [.. parsed.GetRequiredValue(every).Distinct().Order()],
                    [.. parsed.GetRequiredValue(times).Distinct().Order()],
                    parsed.GetValue(gap),
                    parsed.GetValue(json)
                ),
                play.Of(parsed),
                desk
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
                            $"{name} {SafeText.Quote(text)} cannot be used; write whole numbers from {least} to {most}, with spaces between."
                        );
                    }
                }

                return [.. numbers];
            },
        };

    private static int Try(SuccessionSettings settings, Func<SeasonPlan, StudyOptions> optionsOf, Desk desk)
    {
        var opened = OpenedScenario.Open(settings.Directory);
        if (opened.Plan is not { } plan)
        {
            return FaultList.Print(desk, settings.Json, opened.Faults);
        }

        var line = LineOf(plan, settings);
        var supply = SupplyOf(plan, line, settings);
        Schedule[] schedules = [.. settings.Every.SelectMany(every => settings.Times.Select(times => new Schedule(every, times)))];
        var options = optionsOf(plan);
        var seasons = (int)Math.Min(int.MaxValue, (long)options.Seasons * schedules.Length);
        var result = PlayProgress.Draw(desk, seasons, progress =>
            SuccessionRunner.Play(plan, line, schedules, supply, options, progress, desk.Cancel)
        );
        if (settings.Json)
        {
            SuccessionJson.Print(desk, result);
        }
        else
        {
            SuccessionPrinter.Print(desk, result);
        }

        return ExitCode.Done;
    }

    private static SuccessionLine LineOf(SeasonPlan plan, SuccessionSettings settings)
    {
        var batches = plan.Scenario.Batches;
        if (SuccessionLine.Find(plan.Scenario, settings.Batch) is not { } line)
        {
            var isOne = batches.Any(order => string.Equals(order.Id, settings.Batch, StringComparison.Ordinal));
            var near = NearNames.Of(settings.Batch, batches.GroupBy(order => order.Place).Select(Name));
            throw new RefusedException(
                isOne
                    ? $"{SafeText.Quote(settings.Batch)} is one succession of a line; name the line as plan.csv does, without its number."
                    : $"The plan has no line {SafeText.Quote(settings.Batch)}{(near.IsEmpty ? "; name a batch as plan.csv does." : $"; did you mean {string.Join(" or ", near.Select(SafeText.Quote))}?")}"
            );
        }

        for (var index = 0; index < settings.Times[^1]; index++)
        {
            var id = line.Succession(settings.Every[0], index).Id;
            if (batches.Any(order => string.Equals(order.Id, id, StringComparison.Ordinal) && !line.Orders.Contains(order)))
            {
                throw new RefusedException(
                    $"A succession would be named {SafeText.Quote(id)}, and another line has that name. Rename one of the two in plan.csv."
                );
            }
        }

        return line;

        static string Name(IEnumerable<BatchOrder> orders) => orders.Skip(1).Any() ? orders.First().Id[..^2] : orders.First().Id;
    }

    private static SupplyRule SupplyOf(SeasonPlan plan, SuccessionLine line, SuccessionSettings settings)
    {
        if (settings.Gap is { } gap)
        {
            return new SupplyRule(0, gap);
        }

        Crop crop = plan.Scenario.Crops.First(crop => string.Equals(crop.Id, line.Orders[0].CropId, StringComparison.Ordinal));
        if (crop is { HarvestAfterDays: { } after, HarvestDays: { } days })
        {
            return new SupplyRule(after, days);
        }

        throw new RefusedException(
            $"How long one set-out of {SafeText.Quote(crop.Id)} supplies is not known. Add --gap DAYS, or write harvest_after_days and harvest_days for it in crops.csv."
        );
    }
}
