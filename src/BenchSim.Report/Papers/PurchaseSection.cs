using System.Collections.Immutable;
using BenchSim.Report.Html;
using BenchSim.Report.Words;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>What to buy, on the page of the order: a table for each supplier.</summary>
internal static class PurchaseSection
{
    private const int LongestName = 120;

    private static readonly string[] s_numbers = ["Needed", "On hand", "Pack of", "Packs", "Left over", "Cost"];

    /// <summary>Writes the section; nothing where nothing is said of packs.</summary>
    public static void Write(HtmlText html, ImmutableArray<Purchase> purchases, Money money)
    {
        if (purchases.IsEmpty)
        {
            return;
        }

        html.Add($"<section><h2>To buy</h2>\n<p>{PaperWords.Purchases}</p>\n");
        foreach (var supplier in purchases.GroupBy(purchase => purchase.Supply.Supplier, StringComparer.Ordinal))
        {
            html.Add(
                $"<h3>{HtmlText.Name(supplier.Key.Length > 0 ? supplier.Key : "No supplier named", LongestName)}</h3>\n<table><thead><tr>"
            );
            html.Add($"<th scope=\"col\">Thing</th><th scope=\"col\">Variety</th>");
            foreach (var heading in s_numbers)
            {
                html.Add($"<th scope=\"col\" class=\"amount number\">{heading}</th>");
            }

            html.Add($"<th scope=\"col\">Needed by</th><th scope=\"col\">Order by</th><th scope=\"col\">For</th></tr></thead><tbody>\n");
            foreach (var purchase in supplier)
            {
                Row(html, purchase, money);
            }

            html.Add($"</tbody></table>\n");
            if (supplier.All(purchase => purchase.Cost is not null))
            {
                html.Add($"<p>Together: <b>{money.Exact(supplier.Sum(purchase => purchase.Cost ?? 0))}</b>.</p>\n");
            }
        }

        html.Add($"</section>\n");
    }

    private static void Row(HtmlText html, Purchase purchase, Money money)
    {
        var variety = purchase.Supply.Variety.Length > 0 ? purchase.Supply.Variety : "–";
        html.Add(
            $"<tr><th scope=\"row\">{HtmlText.Name(purchase.Name, LongestName)}</th><td>{HtmlText.Name(variety, LongestName)}</td>"
                + $"<td class=\"number\">{Numbers.Whole(purchase.Needed)} {purchase.Unit}</td>"
        );
        html.Add(
            $"<td class=\"number\">{Numbers.Whole(purchase.Supply.OnHand)}</td>"
                + $"<td class=\"number\">{Numbers.Whole(purchase.Supply.Pack)}</td>"
                + $"<td class=\"number\"><b>{Numbers.Whole(purchase.Packs)}</b></td>"
                + $"<td class=\"number\">{Numbers.Whole(purchase.LeftOver)}</td>"
        );
        html.Add(
            $"<td class=\"number\">{(purchase.Cost is { } cost ? money.Exact(cost) : "–")}</td><td>{Day(purchase.NeededBy)}</td>"
                + $"<td>{Day(purchase.OrderBy)}</td><td>{HtmlText.Name(Whose(purchase), LongestName)}</td></tr>\n"
        );
    }

    private static string Whose(Purchase purchase) => purchase.Growers.IsEmpty ? "–" : PurchaseTable.Growers(purchase);

    private static string Day(DateOnly? date) => date is { } day ? Dates.Full(day) : "–";
}
