using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Billing;

namespace BenchSim.Answers.Agree;

/// <summary>The rules for the bill side by side, on one screen.</summary>
internal static class BillsScreen
{
    private const int LongestName = 16;
    private const int MostNamed = 3;

    public static FirstScreen Of(BillsAnswer answer)
    {
        var bills = answer.Bills;
        return new FirstScreen($"{FirstScreen.Subject(answer.Plan.Scenario.Name, null)}: {Headline(answer)}")
        {
            Facts = [.. new[] { Widest(answer), Overruns(bills), NotCounted(bills) }.OfType<string>()],
            Next = answer.ScenarioFolder is { } folder
                ? NextStep.Of(
                    $"Keep the plan and a rule ({string.Join(", ", BillRules.All.Select(rule => rule.Word()))})",
                    "agree",
                    folder,
                    "--bill",
                    BillRule.TrayDays.Word()
                )
                : null,
            Table = Table(answer),
            Footnote =
                $"Mean of {Numbers.Count(bills.Seasons, "season", "seasons")}. equal: all growers alike. tray-days: by places held, each "
                + "day. full-weeks: those with trays in a house that week alike; by tray-days in a week in which it is full.",
        };
    }

    private static string Headline(BillsAnswer answer)
    {
        var bills = answer.Bills;
        var words = Words(answer);
        if (bills.Things.All.IsEmpty)
        {
            return "no house is heated and no mat draws a given number of watts, so there is nothing to divide.";
        }

        var spread = bills.P10.Equals(bills.P90) ? "" : $", {words.Amount(bills.P10)} to {words.Amount(bills.P90)} in eight of ten";
        var all = $"a season's {words.What} come to about {words.Amount(bills.Mean)}{spread}";
        return bills.Growers.Length == 1
            ? $"{all}. There is one grower, so every rule gives the same."
            : $"{all}, and {Numbers.Whole(bills.Growers.Length)} growers may divide that by three rules.";
    }

    // Whose bill hangs on the rule most.
    private static string? Widest(BillsAnswer answer)
    {
        var (bills, words) = (answer.Bills, Words(answer));
        var widest = bills.Growers.MaxBy(Width)!;
        if (bills.Growers.Length == 1 || Width(widest) <= 0)
        {
            return null;
        }

        var (least, most) = (
            Array.IndexOf([.. widest.Amounts], widest.Amounts.Min()),
            Array.IndexOf([.. widest.Amounts], widest.Amounts.Max())
        );
        return $"The rule matters most to {PlainText.Short(widest.Grower, LongestName)}: {words.Amount(widest.Amounts[least])} by "
            + $"{BillRules.All[least].Word()}, {words.Amount(widest.Amounts[most])} by {BillRules.All[most].Word()}.";
    }

    private static double Width(BilledGrower grower) => grower.Amounts.Max() - grower.Amounts.Min();

    // Trays that are late stand longer than planned; days in hand are what others could give.
    private static string? Overruns(BillForecast bills)
    {
        BilledGrower[] late = [.. bills.Growers.Where(grower => grower.LikelyLate > 0).OrderByDescending(grower => grower.LikelyLate)];
        if (late.Length == 0)
        {
            return null;
        }

        BilledGrower[] inHand = [.. bills.Growers.Where(grower => grower.DaysInHand > 0).OrderByDescending(grower => grower.DaysInHand)];
        var names = late.Take(MostNamed)
            .Select(grower =>
                $"{Name(grower)} with {Numbers.Whole(grower.LikelyLate)} of {Numbers.Count(grower.Batches, "batch", "batches")}"
            );
        var others =
            inHand.Length == 0
                ? "No grower has days in hand with every batch."
                : "Days in hand with every batch: "
                    + PlainText.List([.. inHand.Take(MostNamed).Select(grower => $"{Name(grower)} {Numbers.Whole(grower.DaysInHand)}")])
                    + ".";
        return $"Likely to stand longer than planned: {PlainText.List([.. names])}. {others}";
    }

    private static string? NotCounted(BillForecast bills) =>
        bills.Things.Unit == BillUnit.Days
            ? "Neither shell nor heater of a house is given, so each day on which trays stand in one counts alike. Give them for fuel."
        : bills.Things.NotCounted.IsEmpty ? null
        : "Not in the bill, as shell or heater is not given: "
            + PlainText.List([.. bills.Things.NotCounted.Take(MostNamed).Select(house => PlainText.Short(house.Name, LongestName))])
            + ".";

    /// <summary>The growers with what falls to each by each rule.</summary>
    public static Table Table(BillsAnswer answer)
    {
        var (bills, words) = (answer.Bills, Words(answer));
        var table = new Table(
            ["grower", ">batches", .. BillRules.All.Select(rule => ">" + rule.Word()), ">days in hand", ">likely late"],
            LongestName
        );
        foreach (var grower in bills.Growers)
        {
            table.Add([
                grower.Grower,
                Numbers.Whole(grower.Batches),
                .. grower.Amounts.Select(amount =>
                    bills.Things.Unit == BillUnit.Money ? words.Amount(amount) : BillWords.Share(amount, bills.Mean)
                ),
                Numbers.Whole(grower.DaysInHand),
                Numbers.Whole(grower.LikelyLate),
            ]);
        }

        return table;
    }

    private static BillWords Words(BillsAnswer answer) => new(answer.Bills.Things.Unit, answer.Plan.Scenario.Rules.Prices.Currency);

    private static string Name(BilledGrower grower) => PlainText.Short(grower.Grower, LongestName);
}
