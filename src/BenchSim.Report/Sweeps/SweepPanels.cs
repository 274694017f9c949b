using BenchSim.Report.Charts;
using BenchSim.Report.Html;
using BenchSim.Report.Words;
using BenchSim.Study.Sweeps;

namespace BenchSim.Report.Sweeps;

/// <summary>A small chart for each folder of a sweep, all on the same scale: a dot and a bar for each plan.</summary>
internal static class SweepPanels
{
    private const double Width = 340;
    private const double Names = 128;
    private const double Figures = 52;
    private const double RowHeight = 20;
    private const double Head = 4;
    private const double Foot = 18;
    private const double Plot = Width - Names - Figures;

    /// <summary>Writes the charts, the folder whose best plan fits least first.</summary>
    public static void Write(HtmlText html, SweepResult result)
    {
        html.Add($"<p class=\"key\"><span><i class=\"dot\"></i>at the values as given</span><span><i class=\"reach\"></i>");
        html.Add($"{(result.ValueSets > 0 ? "nine in ten of the sets of values" : "95 % interval of the seasons")}</span>");
        html.Add($"<span><i class=\"goal\"></i>goal: {ChanceWords.Setting(result.Goal)}</span></p>\n<ul class=\"panels\">\n");
        foreach (var folder in result.WorstFirst)
        {
            html.Add(
                $"<li class=\"panel\"><h3>{HtmlText.Name(folder.Name, 60)}</h3><p class=\"small\">{HtmlText.Name(folder.Site, 60)}</p>"
            );
            Panel(html, folder, result.Goal);
            html.Add($"</li>\n");
        }

        html.Add($"</ul>\n");
    }

    private static void Panel(HtmlText html, SweptFolder folder, double goal)
    {
        var bottom = Head + (RowHeight * folder.Plans.Length);
        var label = $"Seasons that fit, by plan: {PlainText.Short(folder.Name, 60)}";
        html.Add($"<svg role=\"img\" aria-label=\"{label}\" viewBox=\"0 0 {Width} {bottom + Foot}\">");
        html.Add($"<line class=\"edge\" x1=\"{Names}\" y1=\"{bottom}\" x2=\"{Names + Plot}\" y2=\"{bottom}\"/>");
        html.Add($"<text x=\"{Names}\" y=\"{bottom + 14}\">0</text>");
        html.Add($"<text class=\"end\" x=\"{Names + Plot}\" y=\"{bottom + 14}\">100 %</text>");
        html.Add($"<line class=\"goal\" x1=\"{X(goal)}\" y1=\"{Head}\" x2=\"{X(goal)}\" y2=\"{bottom}\"/>");
        for (var at = 0; at < folder.Plans.Length; at++)
        {
            var plan = folder.Plans[at];
            var (low, high) = SweepChart.Bar(plan);
            var middle = Head + (RowHeight * (at + 0.5));
            html.Add($"<g><title>{Told(plan)}</title>");
            html.Add($"<text x=\"0\" y=\"{middle + 4}\">{PlainText.Short(SweepWords.Plan(plan), 19)}</text>");
            html.Add($"<rect class=\"reach\" x=\"{X(low)}\" y=\"{middle - 5}\" width=\"{Math.Max(1, X(high) - X(low))}\" height=\"10\"/>");
            html.Add($"<circle class=\"dot\" cx=\"{X(plan.Fits.Share)}\" cy=\"{middle}\" r=\"4\"/>");
            html.Add($"<text class=\"end\" x=\"{Width}\" y=\"{middle + 4}\">{ChanceWords.Fine(plan.Fits.Share)}</text></g>");
        }

        html.Add($"</svg>");
    }

    private static string Told(SweptPlan plan)
    {
        var sets = SweepWords.OverSets(plan);
        return $"{PlainText.Short(SweepWords.Plan(plan), 60)}: fits in {ChanceWords.OfAllSeasons(plan.Fits)}"
            + (sets.Length == 0 ? "" : $"; over the sets of values {sets}");
    }

    private static double X(double share) => Names + (share * Plot);
}
