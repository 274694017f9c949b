using System.Collections.Immutable;
using BenchSim.Answers.Agreed;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Check;

/// <summary>The first screen of a check: the plan in a sentence, the batches that decide, and what to know.</summary>
internal static class CheckScreen
{
    private const int MostNamed = 3;
    private const int MostWarnings = 2;
    private const int MostRows = 10;
    private const int LongestName = 20;
    private const int LongestWarning = 132;

    private static readonly string[] s_ends = [": ", " (", ", "];

    public static FirstScreen Of(CheckAnswer answer)
    {
        var plan = answer.Plan;
        return new FirstScreen(Headline(answer))
        {
            Facts =
            [
                .. new[]
                {
                    answer.Agreed is { } agreed ? agreed.Words : null,
                    Waits(plan),
                    Held(answer.Climate),
                    Slow(plan),
                }.OfType<string>(),
            ],
            Warnings = [.. answer.Warnings.Take(MostWarnings).Select(Short)],
            Next = answer.ScenarioFolder is { } folder ? NextStep.Of("Play it", "run", folder) : null,
            Table = plan.Batches.Length > MostRows ? null : Dated(plan),
            Footnote = "Days in hand: from the day a batch is ready, in normal weather and with room, to its set-out date.",
        };
    }

    private static string Headline(CheckAnswer answer)
    {
        var plan = answer.Plan;
        var dates = new Dates(plan);
        var flats = plan.Batches.Sum(batch => (long)batch.Flats);
        var warnings = answer.Warnings.Length;
        return $"{PlainText.Short(plan.Scenario.Name, 60)}: no faults. "
            + $"{Numbers.Count(plan.Batches.Length, "batch", "batches")}, "
            + $"{Numbers.Count(plan.Batches.Sum(batch => (long)batch.Order.Plants), "plant", "plants")}, "
            + $"{Numbers.Count(plan.Batches.Sum(batch => (long)batch.Trays), "tray", "trays")}"
            + (flats > 0 ? $", {Numbers.Count(flats, "flat", "flats")}" : "")
            + $", out from {dates.Plain(plan.Batches.Min(batch => batch.SetOutOn))} to "
            + $"{dates.Plain(plan.Batches.Max(batch => batch.SetOutOn))}. "
            + (warnings == 0 ? "Nothing else to know." : $"{Numbers.Count(warnings, "thing", "things")} you should know.");
    }

    // The worst day by the planned dates of each kind, and the largest batches that stand there that day.
    private static string? Waits(SeasonPlan plan)
    {
        var dates = new Dates(plan);
        string[] kinds =
        [
            .. PlannedRoom
                .Shortages(plan)
                .GroupBy(shortage => shortage.Kind)
                .Select(kind => kind.MaxBy(shortage => shortage.Wanted - shortage.Places)!)
                .OrderByDescending(worst => worst.Wanted - worst.Places)
                .Take(MostNamed)
                .Select(worst =>
                    $"the {Trade.Spaces(plan.Scenario, worst.Kind)} "
                    + $"{(Trade.IsOneTable(plan.Scenario, worst.Kind) ? "lacks" : "lack")} "
                    + $"{Numbers.Count(worst.Wanted - worst.Places, "place", "places")} on {dates.Plain(worst.On)} "
                    + $"({Names(PlannedRoom.Standing(plan, worst.On, worst.Kind))})"
                ),
        ];
        return kinds.Length == 0 ? null : $"Even on the planned dates {PlainText.List([.. kinds])}.";
    }

    private static string? Held(ClimateSummary climate)
    {
        BatchHold[] held = [.. climate.Held.OrderByDescending(hold => hold.Mean).Take(MostNamed)];
        return held.Length == 0
            ? null
            : "The weather holds longest: "
                + PlainText.List([
                    .. held.Select(hold =>
                        $"{Name(hold.Batch)} (from the {(hold.Kind == HoldKind.Table ? "table" : "field")}, about "
                        + $"{Numbers.Whole(hold.Mean)} of the {hold.Days} days after its date)"
                    ),
                ])
                + ".";
    }

    private static string Slow(SeasonPlan plan)
    {
        var least = plan.Batches.Min(batch => batch.DaysInHand);
        return $"Fewest days in hand: {Numbers.Whole(least)}, of {Names([.. plan.Batches.Where(batch => batch.DaysInHand == least)])}.";
    }

    private static Table Dated(SeasonPlan plan)
    {
        var table = new Table(["batch", "grower", "sow", "ready", "set out", ">trays", ">days in hand"], LongestName - 4);
        foreach (var batch in plan.Batches)
        {
            table.Add(
                batch.Order.Id,
                batch.Order.Grower,
                Dates.Iso(batch.SowOn),
                Dates.Iso(batch.ReadyOn),
                Dates.Iso(batch.SetOutOn),
                Numbers.Whole(batch.Trays),
                Numbers.Whole(batch.DaysInHand)
            );
        }

        return table;
    }

    // Where it is long, up to the colon, bracket or comma that ends what can stand in two lines.
    private static string Short(Fault warning)
    {
        var what = warning.What;
        if (what.Length > LongestWarning)
        {
            var end = s_ends.Max(mark => what.LastIndexOf(mark, LongestWarning, StringComparison.Ordinal));
            what = end > 0 ? what[..end] : what;
        }

        return PlainText.Short($"{warning.Place}: {what}", LongestWarning + LongestName);
    }

    private static string Names(ImmutableArray<BatchPlan> batches) =>
        batches.Length > MostNamed
            ? $"{string.Join(", ", batches.Take(MostNamed).Select(Name))} and {Numbers.Whole(batches.Length - MostNamed)} more"
            : PlainText.List([.. batches.Select(Name)]);

    private static string Name(BatchPlan batch) => PlainText.Short(batch.Order.Id, LongestName);
}
