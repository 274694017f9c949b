using BenchSim.Report.Words;

namespace BenchSim.Report.Html;

/// <summary>The words of the page, folded at its foot.</summary>
internal static class GlossaryPart
{
    public static void Write(HtmlText html)
    {
        html.Add($"<details id=\"words\"><summary>The words on this page</summary><dl>");
        foreach (var entry in Glossary.Words)
        {
            html.Add($"<div><dt>{entry.Word}</dt><dd>{WithKeys(entry.Meaning)}</dd></div>\n");
        }

        html.Add($"</dl></details>\n");
    }

    // Every second piece between backquotes is a key.
    private static Markup WithKeys(string meaning) =>
        new(string.Concat(HtmlText.Escape(meaning).Split('`').Select((piece, at) => at % 2 == 1 ? $"<code>{piece}</code>" : piece)));
}
