using BenchSim.Report.Html;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Morning;

/// <summary>Blank lines to write down what was done, in the order of the log's columns.</summary>
internal static class LinesPart
{
    private const int Lines = 14;

    public static void Write(HtmlText html)
    {
        html.Add($"<section class=\"sheet\" aria-labelledby=\"done\"><h2 id=\"done\">Done today</h2>\n");
        html.Add($"<p class=\"small\">In the order of {LogFields.File}; leave out what you do not know. ");
        html.Add($"<span class=\"narrow\">The blank lines are on the printed page.</span></p>\n");
        html.Add($"<table class=\"lines\"><thead><tr>");
        foreach (var name in LogFields.Table.Names)
        {
            html.Add($"<th scope=\"col\">{name}</th>");
        }

        html.Add($"</tr></thead><tbody>\n");
        for (var line = 0; line < Lines; line++)
        {
            html.Add($"<tr>{new Markup(string.Concat(Enumerable.Repeat("<td></td>", LogFields.Table.Names.Length)))}</tr>\n");
        }

        html.Add($"</tbody></table></section>\n");
    }
}
