using BenchSim.Report.Pictures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>Cautions, and what else is in the folder.</summary>
internal static class CautionsSection
{
    private static readonly string[] s_cautions =
    [
        "This report counts places and days. It says nothing about whether a structure, a heater, a circuit or a bench is safe.",
        "Heat mats and other electrical equipment near water can kill. Have outlets, ground-fault protection and loads judged and "
            + "installed by licensed people.",
        "More benches, hanging racks or a second house put loads on structures, with snow and wind on top; heaters burn fuel and need "
            + "air. Local codes and licensed practice decide what may be built, wired, piped or fired, not these figures.",
        "Trays in an aisle can block the way out. Keep exits and access clear.",
        "Seasons played are not seasons to come. The report shows what follows from the files it ran.",
    ];

    public static void Write(HtmlText html, StudyResult result)
    {
        html.Add($"<section id=\"cautions\" aria-labelledby=\"cautions-title\"><h2 id=\"cautions-title\">Cautions</h2>\n<ul>\n");
        foreach (var caution in s_cautions)
        {
            html.Add($"<li>{caution}</li>\n");
        }

        html.Add($"</ul></section>\n");
        html.Add($"<section id=\"files\" aria-labelledby=\"files-title\"><h2 id=\"files-title\">Files beside this page</h2>\n<ul><li>");
        html.Add($"<a href=\"tables/daily.csv\">tables/daily.csv</a>, <a href=\"tables/batches.csv\">batches.csv</a>, <a ");
        html.Add(
            $"href=\"tables/spaces.csv\">spaces.csv</a>, <a href=\"tables/growers.csv\">growers.csv</a>, "
                + $"<a href=\"tables/fuel.csv\">fuel.csv</a>, <a href=\"tables/waits.csv\">waits.csv</a>: the "
        );
        html.Add($"figures as tables</li>");
        html.Add($"<li><a href=\"result.json\">result.json</a>: everything, for programs</li><li>Charts as pictures: ");
        var comma = "";
        foreach (var chart in ChartFiles.Of(result))
        {
            html.Add($"{comma}<a href=\"{chart.Name}\">{chart.Name["charts/".Length..]}</a>");
            comma = ", ";
        }

        html.Add($"</li></ul></section>\n");
    }
}
