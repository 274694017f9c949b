using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Report.Html;

/// <summary>Where each value of a crop, tray or house comes from; first those that rest on memory or assumption.</summary>
internal static class SourcesPart
{
    // Longer than what any honest value takes.
    private const int LongestValue = 300;

    public static void Write(HtmlText html, Scenario scenario)
    {
        html.Add($"<h3>Where the values come from</h3>\n");
        var values = SourcedValue.Of(scenario);
        if (values.IsEmpty)
        {
            html.Add($"<p>No sources are recorded.</p>\n");
            return;
        }

        Weak(html, values);
        foreach (var file in values.GroupBy(value => value.File, StringComparer.Ordinal))
        {
            var what = file.Key switch
            {
                CropFields.File => "crops",
                TrayFields.File => "tray types",
                _ => "houses",
            };
            All(html, what, file);
        }
    }

    private static void Weak(HtmlText html, ImmutableArray<SourcedValue> values)
    {
        // The same column with the same source often holds for many crops: one row, with all of them named.
        var rows = values
            .Where(value => value.IsWeak)
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
        html.Add($"<details class=\"sources\"><summary>Values from memory or assumption</summary>");
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
                        : string.Create(CultureInfo.InvariantCulture, $"{PlainText.Short(entry.Owner, 40)} ({Value(entry)})")
                )
            );
            html.Add($"<tr><th scope=\"row\"><code>{row.Key.Column}</code></th><td><b class=\"flag\">");
            html.Add($"{Trade.Words(row.Key.Provenance.Trust)}</b></td><td>{HtmlText.Name(owners)}</td><td>");
            html.Add($"{HtmlText.Name(row.Key.Provenance.Source)}</td></tr>\n");
        }

        html.Add($"</tbody></table></div></details>\n");
    }

    private static void All(HtmlText html, string what, IEnumerable<SourcedValue> entries)
    {
        html.Add($"<details class=\"sources\"><summary>All values of the {what}, with their sources</summary>");
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"All values of the {what}\"><table class=\"words\">");
        html.Add($"<thead><tr><th scope=\"col\">Of</th><th scope=\"col\">Column</th><th scope=\"col\">Value</th>");
        html.Add($"<th scope=\"col\">Trust</th><th scope=\"col\">Source</th></tr></thead><tbody>\n");
        foreach (var entry in entries)
        {
            var weak = entry.IsWeak;
            var trust = Trade.Words(entry.Provenance.Trust);
            html.Add($"<tr><th scope=\"row\">{HtmlText.Name(entry.Owner, 40)}</th><td><code>{entry.Column}</code></td><td>");
            html.Add($"{Value(entry)}</td><td>{(weak ? new Markup($"<b class=\"flag\">{trust}</b>") : new Markup(trust))}</td><td>");
            html.Add($"{HtmlText.Name(entry.Provenance.Source)}</td></tr>\n");
        }

        html.Add($"</tbody></table></div></details>\n");
    }

    private static string Value(SourcedValue value) => PlainText.Short(value.Value, LongestValue);
}
