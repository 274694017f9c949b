using BenchSim.Report.Html;
using BenchSim.Report.Words;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

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
        PaperPage.Open(html, $"Order: {content.Title}");
        html.Add($"<h1>Order: {HtmlText.Name(content.Title, LongestName)}</h1>\n");
        html.Add(
            $"<p>For everything sown or potted up from {Dates.Full(content.From)} to {Dates.Full(content.To)}.</p>\n"
                + $"<p>{PaperWords.Order}</p>\n"
        );
        if (content.Grower is not null)
        {
            html.Add($"<p>{PaperWords.OrderOfOne}</p>\n");
        }

        PurchaseSection.Write(html, content.Purchases, money);
        Seeds(html, needs, money);
        var isImperial = content.Plan.Scenario.Units == UnitSystem.Imperial;
        Trays(html, needs, isImperial);
        Mix(html, content, money);
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
            $"<table><thead><tr><th scope=\"col\">Crop</th><th scope=\"col\">Variety</th><th scope=\"col\">Packet, or sowing</th>"
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
                    + $"<td>{HtmlText.Name(seed.Variety.Length > 0 ? seed.Variety : "–", LongestName)}</td>"
                    + $"<td>{HtmlText.Name(seed.PacketId ?? seed.Sowing ?? "–", LongestName)}</td>"
            );
            html.Add($"<td class=\"number\">{Numbers.Whole(seed.Batches)}</td><td class=\"number\">{Numbers.Whole(seed.Seeds)}</td>");
            html.Add(
                $"<td class=\"number\">{(seed.ThousandSeeds is { } price ? money.Price(price) : "–")}</td>"
                    + $"<td class=\"number\">{Amount(money, seed.Cost)}</td></tr>\n"
            );
        }

        html.Add(
            $"</tbody><tfoot><tr><th scope=\"row\">All</th><td></td><td></td><td "
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

    private static void Trays(HtmlText html, SupplyNeeds needs, bool isImperial)
    {
        var unit = isImperial ? "cubic feet" : "litres";
        string MixOf(TrayType type) =>
            type.MediumLitres > 0 ? Volume(type.MediumLitres).ToString(isImperial ? "0.000" : "0.##", null) : "not given";
        double Volume(double litres) => isImperial ? litres / Volumes.LitresACubicFoot : litres;
        html.Add($"<section><h2>Trays, flats and carriers</h2>\n<table><thead><tr><th scope=\"col\">Type</th>");
        html.Add($"<th scope=\"col\" class=\"amount number\">Filled</th><th scope=\"col\" class=\"amount number\">Most at once</th>");
        html.Add(
            $"<th scope=\"col\" class=\"amount number\">Mix each, {unit}</th>"
                + $"<th scope=\"col\" class=\"amount number\">Mix, {unit}</th></tr></thead><tbody>\n"
        );
        foreach (var tray in needs.Trays)
        {
            html.Add(
                $"<tr><th scope=\"row\">{HtmlText.Name(tray.Type.Name, LongestName)}</th>"
                    + $"<td class=\"number\">{Numbers.Whole(tray.Filled)}</td>"
            );
            html.Add($"<td class=\"number\">{Numbers.Whole(tray.MostAtOnce)}</td>" + $"<td " + $"class=\"number\">{MixOf(tray.Type)}</td>");
            html.Add(
                $"<td class=\"number\">{(tray.Type.MediumLitres > 0 ? Volume(tray.MixLitres).ToString("#,##0.0", null) : "–")}</td></tr>\n"
            );
        }

        html.Add(
            $"<tr><th scope=\"row\">Carriers for cell trays</th><td class=\"number\">–</td>"
                + $"<td class=\"number\">{Numbers.Whole(needs.Carriers)}</td><td></td><td></td></tr>"
        );
        html.Add($"</tbody></table>\n<p class=\"small\">{PaperWords.Trays}</p></section>\n");
    }

    private static void Mix(HtmlText html, PaperContent content, Money money)
    {
        var needs = content.Needs;
        var units = content.Plan.Scenario.Units;
        var litres = $"{needs.MixLitres.ToString("#,##0.0", null)} litres";
        var feet = $"{needs.MixCubicFeet.ToString("#,##0.0", null)} cubic feet";
        var (first, second) = units == UnitSystem.Imperial ? (feet, litres) : (litres, feet);
        html.Add($"<section><h2>Potting mix</h2>\n<p><b>{first}</b> of loose mix, which is {second} or ");
        html.Add(
            $"<b>{Numbers.Count(needs.MixUnits, needs.Mix.SoldIn, $"{needs.Mix.SoldIn}s")}</b> of "
                + $"{Quantity.Volume.Show(needs.Mix.YieldLitres, units)} loose, rounded up. Mix loses "
                + $"{(needs.Mix.Settling * 100).ToString("0.##", null)} % of its loose volume as it is firmed and watered in."
        );
        if (needs.MixCost is { } cost)
        {
            html.Add($" At {money.Price(needs.Prices.MixLitre!.Value)} a litre: {money.Exact(cost)}.");
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
            html.Add($"<p>Seed and mix together: <b>{money.Exact(mix + seed)}</b>. Trays and carriers have no price here.</p>\n");
        }

        html.Add($"</section>\n");
    }

    private static string Amount(Money money, double? value) => value is { } amount ? money.Exact(amount) : "–";
}
