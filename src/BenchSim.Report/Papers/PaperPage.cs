using System.Text;
using BenchSim.Report.Html;
using BenchSim.Report.Words;
using BenchSim.Study.Marks;

namespace BenchSim.Report.Papers;

/// <summary>Head and foot of a paper that is an HTML page: one file with its style inside, no script, nothing fetched.</summary>
internal static class PaperPage
{
    /// <summary>Begins a page.</summary>
    /// <param name="html">The page.</param>
    /// <param name="title">Its title.</param>
    /// <param name="ownStyle">Style of its own, after that of all papers.</param>
    public static void Open(HtmlText html, string title, string ownStyle = "")
    {
        html.Add($"<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/>");
        html.Add($"<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>");
        html.Add($"<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\"/>");
        html.Add($"<title>{PlainText.Short(title, 120)}</title>\n<style>\n{new Markup(Style() + ownStyle)}</style></head>\n<body><main>\n");
    }

    /// <summary>Ends it.</summary>
    public static void Close(HtmlText html) => html.Add($"</main></body></html>\n");

    /// <summary>The style of a page, as a Content-Security-Policy names it.</summary>
    public static string StyleSource { get; } = StyleSourceWith("");

    /// <summary>The style of a page that has one of its own after that of all papers, likewise.</summary>
    /// <param name="ownStyle">Its own.</param>
    public static string StyleSourceWith(string ownStyle) =>
        $"'sha256-{Convert.ToBase64String(Sha256.HashData(Encoding.UTF8.GetBytes("\n" + Style() + ownStyle)))}'";

    private static string Style()
    {
        using var stream = typeof(PaperPage).Assembly.GetManifestResourceStream("Papers/papers.css")
            ?? throw new InvalidOperationException("The style of the papers is missing from the program.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
