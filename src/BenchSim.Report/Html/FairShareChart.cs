using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>The fair-share chart: beside what each grower uses, what of the fuel and of the cost falls to each,
/// and what equal shares would be.</summary>
internal static class FairShareChart
{
    private const double Left = 190;
    private const double Width = 760;
    private const double Pitch = 15;
    private const double Gap = 10;

    public static void Write(HtmlText html, StudyResult result, ImmutableArray<GrowerCost> costs)
    {
        (string Kind, string Words, double[] Shares)[] bars =
        [
            .. new (string Kind, string Words, double[] Shares)[]
            {
                ("days", "of the tray-days", [.. result.Growers.Select(grower => grower.Share)]),
                ("fuel", "of the fuel", [.. result.Growers.Select(grower => grower.FuelShare)]),
                ("cost", "of the cost of fuel and mats", [.. costs.Select(cost => cost.Share)]),
            }.Where(bar => !bar.Shares.All(double.IsNaN)),
        ];
        var severalGrowers = result.Growers.Length > 1;
        html.Add($"<p class=\"key\">");
        foreach (var (kind, words, _) in bars)
        {
            html.Add($"<span><i class=\"sw {kind}\"></i>share {words}</span>");
        }

        if (severalGrowers)
        {
            html.Add($"<span><i class=\"sw equal\"></i>equal shares</span>");
        }

        html.Add($"</p>\n");

        var row = (Pitch * bars.Length) + Gap;
        var height = 8 + (row * result.Growers.Length);
        var most = Math.Max(1e-9, bars.SelectMany(bar => bar.Shares).Where(double.IsFinite).DefaultIfEmpty(1).Max());
        const double room = Width - Left - 60;
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Shares by grower\"><svg class=\"chart\" role=\"img\" ");
        html.Add(
            $"aria-label=\"Shares of tray-days, fuel and cost by grower\" viewBox=\"0 0 {Width} {height}\" width=\"{Width}\" "
                + $"height=\"{height}\">\n"
        );
        for (var grower = 0; grower < result.Growers.Length; grower++)
        {
            var y = 4 + (row * grower);
            html.Add($"<svg x=\"0\" y=\"{y}\" width=\"{Left - 8}\" height=\"{row}\"><text x=\"0\" y=\"13\">");
            html.Add($"{PlainText.Short(result.Growers[grower].Grower, 27)}</text></svg>");
            foreach (var (kind, words, shares) in bars)
            {
                Bar(html, kind, shares[grower], shares[grower] / most * room, y, words);
                y += Pitch;
            }

            html.Add($"\n");
        }

        var equal = Left + (1.0 / Math.Max(1, result.Growers.Length) / most * room);
        if (severalGrowers)
        {
            html.Add($"<line class=\"equal\" x1=\"{equal}\" y1=\"2\" x2=\"{equal}\" y2=\"{height - 2}\"/>");
        }

        html.Add($"</svg></div>\n");
    }

    private static void Bar(HtmlText html, string kind, double share, double length, double y, string words)
    {
        if (double.IsNaN(share))
        {
            return;
        }

        html.Add(
            $"<g><title>{ChanceWords.Percent(share)} {words}</title><rect class=\"{kind}\" x=\"{Left}\" y=\"{y + 2}\" "
                + $"width=\"{length}\" height=\"{Pitch - 3}\"/>"
        );
        html.Add($"<text x=\"{Left + length + 6}\" y=\"{y + 12.5}\">{ChanceWords.Percent(share)}</text></g>");
    }
}
