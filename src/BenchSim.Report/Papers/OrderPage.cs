using BenchSim.Report.Html;
using BenchSim.Report.Words;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>The order of seed, trays and mix as a page to print.</summary>
internal static class OrderPage
{
    private const int LongestName = 120;

    /// <summary>Writes the page.</summary>
    public static string Write(PaperContent content)
    {
        var needs = content.Needs;
        var money = new Money(needs.Prices.Currency);
        var html = new HtmlText();
        PaperPage.Open(html, $"Order: {content.SiteName}");
        html.Add($"<h1>Order: {HtmlText.Name(content.SiteName, LongestName)}</h1>\n");
        html.Add(
            $"<p>For everything sown or potted up from {Dates.Full(content.From)} to {Dates.Full(content.To)}.</p>\n"
                + $"<p>{PaperWords.Order}</p>\n"
        );
        Seeds(html, needs, money);
        Trays(html, needs);
        Mix(html, needs, money);
        PaperPage.Close(html);
        return html.ToString();
    }

    private static void Seeds(HtmlText html, SupplyNeeds needs, Money money)
    {
        html.Add($"<section><h2>Seed</h2>\n");
        if (needs.Seeds.IsEmpty)
        {
            html.Add($"<p>Nothing is sown.</p></section>\n");
            return;
        }

        html.Add(
            $"<table><thead><tr><th scope=\"col\">Crop</th><th scope=\"col\">Packet, or sowing</th>"
                + $"<th scope=\"col\" class=\"amount number\">Sowings</th>"
        );
        html.Add(
            $"<th scope=\"col\" class=\"amount number\">Seeds</th><th scope=\"col\" class=\"amount number\">A thousand</th>"
                + $"<th scope=\"col\" class=\"amount number\">Cost</th></tr></thead><tbody>\n"
        );
        foreach (var seed in needs.Seeds)
        {
            html.Add(
                $"<tr><th scope=\"row\">{HtmlText.Name(seed.Crop.Name, LongestName)}</th>"
                    + $"<td>{HtmlText.Name(seed.PacketId ?? seed.Sowing ?? "–", LongestName)}</td>"
            );
            html.Add($"<td class=\"number\">{Numbers.Whole(seed.Batches)}</td><td class=\"number\">{Numbers.Whole(seed.Seeds)}</td>");
            html.Add(
                $"<td class=\"number\">{(seed.ThousandSeeds is { } price ? money.Price(price) : "–")}</td>"
                    + $"<td class=\"number\">{Amount(money, seed.Cost)}</td></tr>\n"
            );
        }

        html.Add(
            $"</tbody><tfoot><tr><th scope=\"row\">All</th><td></td><td "
                + $"class=\"number\">{Numbers.Whole(needs.Seeds.Sum(seed => seed.Batches))}</td>"
        );
        html.Add(
            $"<td class=\"number\">{Numbers.Whole(needs.Seeds.Sum(seed => seed.Seeds))}</td><td></td>"
                + $"<td class=\"number\">{Amount(money, needs.SeedCost)}</td></tr></tfoot></table>\n"
        );
        if (needs.SeedCost is null)
        {
            html.Add($"<p>Where no price of a thousand seeds is given, there is no cost, and none for all.</p>\n");
        }

        html.Add($"</section>\n");
    }

    private static void Trays(HtmlText html, SupplyNeeds needs)
    {
        html.Add($"<section><h2>Trays, flats and carriers</h2>\n<table><thead><tr><th scope=\"col\">Type</th>");
        html.Add($"<th scope=\"col\" class=\"amount number\">Filled</th><th scope=\"col\" class=\"amount number\">Most at once</th>");
        html.Add(
            $"<th scope=\"col\" class=\"amount number\">Mix each, litres</th>"
                + $"<th scope=\"col\" class=\"amount number\">Mix, litres</th></tr></thead><tbody>\n"
        );
        foreach (var tray in needs.Trays)
        {
            html.Add(
                $"<tr><th scope=\"row\">{HtmlText.Name(tray.Type.Name, LongestName)}</th>"
                    + $"<td class=\"number\">{Numbers.Whole(tray.Filled)}</td>"
            );
            html.Add(
                $"<td class=\"number\">{Numbers.Whole(tray.MostAtOnce)}</td>"
                    + $"<td "
                    + $"class=\"number\">{(tray.Type.MediumLitres > 0 ? tray.Type.MediumLitres.ToString("0.##", null) : "not given")}</td>"
            );
            html.Add($"<td class=\"number\">{(tray.Type.MediumLitres > 0 ? tray.MixLitres.ToString("#,##0.0", null) : "–")}</td></tr>\n");
        }

        html.Add(
            $"<tr><th scope=\"row\">Carriers for cell trays</th><td class=\"number\">–</td>"
                + $"<td class=\"number\">{Numbers.Whole(needs.Carriers)}</td><td></td><td></td></tr>"
        );
        html.Add($"</tbody></table>\n<p class=\"small\">{PaperWords.Trays}</p></section>\n");
    }

    private static void Mix(HtmlText html, SupplyNeeds needs, Money money)
    {
        html.Add($"<section><h2>Potting mix</h2>\n<p><b>{needs.MixLitres.ToString("#,##0.0", null)} litres</b>, which is ");
        html.Add(
            $"<b>{needs.MixCubicFeet.ToString("#,##0.0", null)} cubic feet</b> (a cubic foot is 28.317 litres), each rounded to one "
                + $"decimal."
        );
        if (needs.MixCost is { } cost)
        {
            html.Add($" At {money.Price(needs.Prices.MixLitre!.Value)} a litre: {Exact(money, cost)}.");
        }
        else
        {
            html.Add($" No price of a litre is given, so there is no cost.");
        }

        html.Add($"</p>\n");
        if (needs.Trays.Any(tray => tray.Type.MediumLitres <= 0))
        {
            html.Add($"<p>Tray types whose volume is not given are not counted in.</p>\n");
        }

        if (needs is { MixCost: { } mix, SeedCost: { } seed })
        {
            html.Add($"<p>Seed and mix together: <b>{Exact(money, mix + seed)}</b>. Trays and carriers have no price here.</p>\n");
        }

        html.Add($"</section>\n");
    }

    private static string Amount(Money money, double? value) => value is { } amount ? Exact(money, amount) : "–";

    // A bill is added up to the hundredth.
    private static string Exact(Money money, double amount) => money.Price(Math.Round(amount, 2, MidpointRounding.AwayFromZero));
}
