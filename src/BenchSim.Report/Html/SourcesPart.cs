using System.Globalization;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Report.Html;

/// <summary>Where each value of a crop, tray or house comes from; first those that rest on memory or assumption.</summary>
internal static class SourcesPart
{
    private sealed record Entry(string Owner, string Column, string Value, Provenance Provenance);

    public static void Write(HtmlText html, Scenario scenario)
    {
        Entry[] crops =
        [
            .. scenario.Crops.SelectMany(crop =>
                crop.Sources.Select(pair => new Entry(crop.Name, pair.Key, CropValues.Of(crop, pair.Key, scenario.Units), pair.Value))
            ),
        ];
        Entry[] trays =
        [
            .. scenario.TrayTypes.SelectMany(tray =>
                tray.Sources.Select(pair => new Entry(tray.Name, pair.Key, CropValues.Of(tray, pair.Key), pair.Value))
            ),
        ];
        Entry[] houses = [.. scenario.Houses.SelectMany(house => Entries(house, scenario.Units))];
        html.Add($"<h3>Where the values come from</h3>\n");
        if (crops.Length + trays.Length + houses.Length == 0)
        {
            html.Add($"<p>No sources are recorded.</p>\n");
            return;
        }

        Weak(html, [.. crops, .. trays, .. houses]);
        All(html, "crops", crops);
        All(html, "tray types", trays);
        All(html, "houses", houses);
    }

    private static IEnumerable<Entry> Entries(House house, UnitSystem units) =>
        house.Heat is { } heat
            ? heat
                .Sources.Select(pair => new Entry(house.Name, pair.Key, HouseValues.Of(heat, pair.Key, units), pair.Value))
                .Append(new Entry(house.Name, "heat_content", HouseValues.Of(heat, "heat_content", units), heat.Fuel.ContentSource))
            : [];

    private static void Weak(HtmlText html, Entry[] entries)
    {
        // The same column with the same source often holds for many crops: one row, with all of them named.
        var rows = entries
            .Where(entry => entry.Provenance.Trust is Trust.Memory or Trust.Assumption)
            .GroupBy(entry => (entry.Column, entry.Provenance))
            .OrderBy(group => group.Key.Column, StringComparer.Ordinal)
            .ThenBy(group => group.Key.Provenance.Trust)
            .ThenBy(group => group.Key.Provenance.Source, StringComparer.Ordinal)
            .ToArray();
        if (rows.Length == 0)
        {
            html.Add($"<p>No value rests on memory or assumption.</p>\n");
            return;
        }

        var count = rows.Sum(row => row.Count());
        html.Add($"<p>");
        html.Add($"{Numbers.Count(count, "value rests", "values rest")} <strong>on memory or assumption</strong>. Check those that ");
        html.Add($"matter to you, and write your own into <code>crops.csv</code>, <code>trays.csv</code> or <code>site.toml</code>.</p>\n");
        html.Add($"<details><summary>Values from memory or assumption</summary>");
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Values from memory or assumption\">");
        html.Add($"<table class=\"words\"><thead><tr><th scope=\"col\">Column</th><th scope=\"col\">Trust</th><th scope=\"col\">For</th>");
        html.Add($"<th scope=\"col\">Why</th></tr></thead><tbody>\n");
        foreach (var row in rows)
        {
            var owners = string.Join(
                ", ",
                row.Select(entry =>
                    entry.Value.Length == 0
                        ? PlainText.Short(entry.Owner, 40)
                        : string.Create(CultureInfo.InvariantCulture, $"{PlainText.Short(entry.Owner, 40)} ({entry.Value})")
                )
            );
            html.Add($"<tr><th scope=\"row\"><code>{row.Key.Column}</code></th><td><b class=\"flag\">");
            html.Add($"{Trade.Words(row.Key.Provenance.Trust)}</b></td><td>{HtmlText.Name(owners)}</td><td>");
            html.Add($"{HtmlText.Name(row.Key.Provenance.Source)}</td></tr>\n");
        }

        html.Add($"</tbody></table></div></details>\n");
    }

    private static void All(HtmlText html, string what, Entry[] entries)
    {
        if (entries.Length == 0)
        {
            return;
        }

        html.Add($"<details><summary>All values of the {what}, with their sources</summary>");
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"All values of the {what}\"><table class=\"words\">");
        html.Add($"<thead><tr><th scope=\"col\">Of</th><th scope=\"col\">Column</th><th scope=\"col\">Value</th>");
        html.Add($"<th scope=\"col\">Trust</th><th scope=\"col\">Source</th></tr></thead><tbody>\n");
        foreach (var entry in entries)
        {
            var weak = entry.Provenance.Trust is Trust.Memory or Trust.Assumption;
            var trust = Trade.Words(entry.Provenance.Trust);
            html.Add($"<tr><th scope=\"row\">{HtmlText.Name(entry.Owner, 40)}</th><td><code>{entry.Column}</code></td><td>");
            html.Add($"{entry.Value}</td><td>{(weak ? new Markup($"<b class=\"flag\">{trust}</b>") : new Markup(trust))}</td><td>");
            html.Add($"{HtmlText.Name(entry.Provenance.Source)}</td></tr>\n");
        }

        html.Add($"</tbody></table></div></details>\n");
    }
}
