using BenchSim.Answers.Words;

namespace BenchSim.Cli.Terminal;

/// <summary>Sets passages as plain text: sentences broken at spaces, tables never squeezed, all made safe for a terminal.</summary>
internal static class Painter
{
    private const int LineWidth = 80;

    public static void Paint(IEnumerable<Passage> passages, TextWriter output)
    {
        foreach (var line in passages.SelectMany(Lines))
        {
            output.Write(SafeText.OneLine(line).TrimEnd() + "\n");
        }
    }

    private static IEnumerable<string> Lines(Passage passage) =>
        passage switch
        {
            Heading heading => ["", heading.Text],
            Gap => [""],
            Line line => [new string(' ', line.Depth) + line.Text],
            Sentence sentence => Broken(sentence.Text, LineWidth - sentence.Depth).Select(line => new string(' ', sentence.Depth) + line),
            Point point => Broken(point.Text, LineWidth - 4)
                .Select(
                    (line, at) =>
                        (
                            at > 0 ? "    "
                            : point.IsSure ? "  * "
                            : "  - "
                        ) + line
                ),
            Table table => new TextTable(table).Lines().Select(line => "  " + line),
            _ => throw new ArgumentOutOfRangeException(nameof(passage), passage, "An unknown passage."),
        };

    private static IEnumerable<string> Broken(string text, int width) => Paragraph.Lines(SafeText.OneLine(text), width);
}
