using System.Collections.Immutable;
using BenchSim.Report.Html;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Report.Morning;

/// <summary>What would come of it if a heater stopped tonight; what it takes to begin again stands with the last days to sow.</summary>
internal static class HeaterOutPart
{
    private const int MostNamed = 6;

    public static void Write(HtmlText html, TodaySheet sheet)
    {
        if (sheet.HeaterOut.IsEmpty)
        {
            return;
        }

        html.Add($"<section aria-labelledby=\"heater\"><h2 id=\"heater\">If a heater stops tonight</h2>\n");
        html.Add(
            $"<p class=\"small\">Should it stop at the night’s set-point, with the forecast low outdoors all the while, less what the "
        );
        html.Add($"advice above keeps in hand; from a house that holds no warmth to one with a damp floor. Too cold: below the ");
        html.Add($"<i>damage_below</i> of the crop, by the air. Wind and an open door are not counted. Sown again by when, and with room ");
        html.Add($"or not: below.</p>\n");
        foreach (var house in sheet.HeaterOut)
        {
            House(html, sheet, house);
        }

        html.Add($"</section>\n");
    }

    private static void House(HtmlText html, TodaySheet sheet, HeaterOut house)
    {
        html.Add($"<h3>{HtmlText.Name(house.House.Name, SheetWords.LongestName)}: {Freezes(house)}</h3>\n");
        if (house.Noticed.All(noticed => noticed.Hurt.IsEmpty && noticed.Perhaps.IsEmpty))
        {
            html.Add($"<p>Nothing that stands in it would be too cold within {house.Noticed[^1].Hours} hours.</p>\n");
            return;
        }

        html.Add($"<table class=\"heater\"><thead><tr><th scope=\"col\">Noticed after</th><th scope=\"col\">Inside</th>");
        html.Add($"<th scope=\"col\">Too cold</th><th scope=\"col\">Perhaps</th></tr></thead><tbody>\n");
        foreach (var noticed in house.Noticed)
        {
            html.Add($"<tr><th scope=\"row\">{Numbers.Count(noticed.Hours, "hour", "hours")}</th>");
            html.Add($"<td>{Temperatures.Words(noticed.InsideC.Low, sheet.Plan.Scenario.Units)} to ");
            html.Add($"{Temperatures.Words(noticed.InsideC.High, sheet.Plan.Scenario.Units)}</td>");
            html.Add($"<td>{Pieces(sheet.Plan, noticed.Hurt)}</td><td>{Pieces(sheet.Plan, noticed.Perhaps)}</td></tr>\n");
        }

        html.Add($"</tbody></table>\n");
    }

    private static string Freezes(HeaterOut house) =>
        house.FreezesAfter is { } hours
            ? $"freezing inside after {Numbers.Short(hours.Low)} to {Numbers.Short(hours.High)} hours"
            : "no frost inside";

    private static Markup Pieces(SeasonPlan plan, ImmutableArray<HousePieces> all)
    {
        if (all.IsEmpty)
        {
            return new("none");
        }

        var (trays, flats) = (all.Sum(each => each.Trays), all.Sum(each => each.Flats));
        string[] sums =
        [
            .. trays > 0 ? [TaskWords.Pieces(trays, areFlats: false)] : Array.Empty<string>(),
            .. flats > 0 ? [TaskWords.Pieces(flats, areFlats: true)] : Array.Empty<string>(),
        ];
        var names = all.Take(MostNamed).Select(each => HtmlText.Name(plan.Batches[each.Batch].Order.Id, SheetWords.LongestName).Html);
        var more = all.Length > MostNamed ? $" and {Numbers.Whole(all.Length - MostNamed)} more" : "";
        return new($"<b>{HtmlText.Escape(PlainText.List(sums))}</b>: {string.Join(", ", names)}{more}");
    }
}
