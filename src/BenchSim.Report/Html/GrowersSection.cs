using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>How much of the site each grower uses.</summary>
internal static class GrowersSection
{
    private const double RowHeight = 26;

    public static void Write(HtmlText html, StudyResult result)
    {
        html.Add($"<section id=\"growers\" aria-labelledby=\"growers-title\"><h2 id=\"growers-title\">The growers’ shares</h2>\n<figure>");
        html.Add($"<figcaption><p>{Reading(result)}</p></figcaption>\n");
        Chart(html, result);
        html.Add($"<details><summary>Table of the growers</summary>");
        html.Add($"<p>A tray-day is one place held for one day. Of {Numbers.Count(result.Seasons, "season", "seasons")}: the median, and ");
        html.Add($"in brackets eight seasons of ten; by space the mean. {FuelShares(result)} Also in <a ");
        html.Add($"href=\"tables/growers.csv\">tables/growers.csv</a>.</p>");
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Growers\"><table><thead><tr>");
        html.Add($"<th scope=\"col\">Grower</th><th scope=\"col\">Batches</th><th scope=\"col\">Share</th><th scope=\"col\">Fuel share</th>");
        html.Add($"<th scope=\"col\">Tray-days</th><th scope=\"col\">Most places on a day</th>");
        foreach (SpaceResult space in result.Spaces)
            html.Add($"<th scope=\"col\">{HtmlText.Name(space.Space.Name, 30)}</th>");
        html.Add($"</tr></thead><tbody>\n");
        foreach (GrowerResult grower in result.Growers)
        {
            html.Add($"<tr><th scope=\"row\">{HtmlText.Name(grower.Grower, 40)}</th><td>{Numbers.Whole(grower.Batches)}</td><td>");
            html.Add($"{Numbers.Percent(grower.Share)} %</td><td>{(double.IsNaN(grower.FuelShare) ? "–" : Numbers.Percent(grower.FuelShare) + " %")}</td><td>");
            html.Add($"{Spreads.Cell(grower.TrayDays)}</td><td>{Spreads.Cell(grower.Peak)}</td>");
            foreach (double days in grower.TrayDaysBySpace)
                html.Add($"<td>{Numbers.Whole(days)}</td>");
            html.Add($"</tr>\n");
        }

        html.Add($"</tbody></table></div></details></figure></section>\n");
    }

    private static string FuelShares(StudyResult result)
    {
        if (result.Growers.All(grower => double.IsNaN(grower.FuelShare)))
            return "There are no shares of fuel, because no house has fuel.";
        return "The fuel share divides the fuel of each house (its cost, or its heat where a price is missing) by the place-days that each grower holds in it.";
    }

    private static string Reading(StudyResult result)
    {
        GrowerResult? most = result.Growers.IsEmpty ? null : result.Growers.MaxBy(grower => grower.Share);
        return most is null
            ? "The plan names no grower."
            : $"{PlainText.Short(most.Grower, 60)} holds the largest share: {Numbers.Percent(most.Share)} % of all tray-days (mean of "
                + $"{Numbers.Count(result.Seasons, "season", "seasons")}). A tray-day is one place held for one day.";
    }

    private static void Chart(HtmlText html, StudyResult result)
    {
        const double left = 190;
        const double width = 760;
        const double room = width - left - 60;
        double most = Math.Max(1e-9, result.Growers.Select(grower => grower.Share).DefaultIfEmpty(1).Max());
        double height = 8 + (RowHeight * result.Growers.Length);
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Share of tray-days by grower\">");
        html.Add($"<svg class=\"chart\" role=\"img\" aria-label=\"Share of all tray-days by grower\" viewBox=\"0 0 {width} {height}\" ");
        html.Add($"width=\"{width}\" height=\"{height}\">\n");
        double y = 4;
        foreach (GrowerResult grower in result.Growers)
        {
            double length = grower.Share / most * room;
            html.Add($"<svg x=\"0\" y=\"{y}\" width=\"{left - 8}\" height=\"{RowHeight}\"><text x=\"0\" y=\"17\">");
            html.Add($"{PlainText.Short(grower.Grower, 27)}</text></svg>");
            html.Add($"<rect class=\"bench\" x=\"{left}\" y=\"{y + 4}\" width=\"{length}\" height=\"{RowHeight - 9}\"/>");
            html.Add($"<text x=\"{left + length + 6}\" y=\"{y + 17}\">{Numbers.Percent(grower.Share)} %</text>\n");
            y += RowHeight;
        }

        html.Add($"</svg></div>\n");
    }
}
