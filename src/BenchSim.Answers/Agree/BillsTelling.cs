using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Billing;

namespace BenchSim.Answers.Agree;

/// <summary>Tells what each rule for the bill would ask of each grower, with the share of all.</summary>
internal static class BillsTelling
{
    public static void Tell(Passages words, BillsAnswer answer)
    {
        var bills = answer.Bills;
        var amounts = new BillWords(bills.Things.Unit, answer.Plan.Scenario.Rules.Prices.Currency);
        words.Heading("What falls to each grower");
        var table = words.Table(["grower", ">tray-days held", .. BillRules.All.SelectMany(rule => new[] { ">" + rule.Word(), ">share" })]);
        foreach (var grower in bills.Growers)
        {
            table.Add([
                grower.Grower,
                Numbers.Whole(grower.TrayDays),
                .. grower.Amounts.SelectMany(amount => new[] { amounts.Amount(amount), BillWords.Share(amount, bills.Mean) }),
            ]);
        }

        words.Heading("What is shared");
        foreach (var thing in bills.Things.All)
        {
            words.Point($"{PlainText.Short(thing.Name, 40)}: {(thing.House is null ? "electricity of its mats" : "its heat")}");
        }

        words.Sentence(
            "Each is divided by itself, among those who use it. A week, Monday to Sunday, is full where on one of its days no more than "
                + "one bench place of twenty is free. What nobody used falls to all alike. Labour, seed and mix are not in the bill.",
            2
        );
        words.Sentence(
            "Likely late: batches of which too few plants are out in time in at least half of the seasons, every late day counted.",
            2
        );
    }
}
