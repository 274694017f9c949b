using BenchSim.Answers.Words;
using BenchSim.Report.Words;

namespace BenchSim.Cli.Terminal;

/// <summary>Sets passages as plain text: sentences broken at spaces, tables never squeezed, all made safe for a terminal.</summary>
internal static class Painter
{
    private const int LineWidth = 80;

    // Stands where a figure and its sign stay in one line.
    private const string Bound = "\u00A0%";

    public static void Paint(IEnumerable<Passage> passages, TextWriter output)
    {
        Paint(passages.SelectMany(Lines), output);
    }

    public static void Paint(IEnumerable<string> lines, TextWriter output)
    {
        foreach (var line in lines)
        {
            output.Write(PlainText.OneLine(line).TrimEnd() + "\n");
        }
    }

    /// <summary>The lines of a passage, not yet made safe.</summary>
    public static IEnumerable<string> Lines(Passage passage) =>
        passage switch
        {
            Heading heading => ["", heading.Text],
            Gap => [""],
            Line line => [new string(' ', line.Depth) + line.Text],
            Sentence sentence => Broken(sentence.Text, LineWidth - sentence.Depth).Select(line => new string(' ', sentence.Depth) + line),
            Point point => Marked(point.Text, point.IsSure ? "  * " : "  - "),
            Warning warning => Marked(warning.Text, "  ! "),
            Table table => Indented(new TextTable(table)),
            _ => throw new ArgumentOutOfRangeException(nameof(passage), passage, "An unknown passage."),
        };

    private static IEnumerable<string> Marked(string text, string mark) =>
        Broken(text, LineWidth - 4).Select((line, at) => (at > 0 ? "    " : mark) + line);

    /// <summary>The lines of a table whose names are cut where it would be wider than the screen.</summary>
    public static IEnumerable<string> Fitted(Table table) => Indented(new TextTable(table, LineWidth - 2));

    private static IEnumerable<string> Indented(TextTable table) => table.Lines().Select(line => "  " + line);

    private static IEnumerable<string> Broken(string text, int width) =>
        Paragraph
            .Lines(PlainText.OneLine(text).Replace(" %", Bound, StringComparison.Ordinal), width)
            .Select(line => line.Replace(Bound, " %", StringComparison.Ordinal));
}
