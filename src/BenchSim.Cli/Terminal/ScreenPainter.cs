using System.Collections.Immutable;
using BenchSim.Answers.Words;

namespace BenchSim.Cli.Terminal;

/// <summary>
/// Sets the first screen of an answer: 24 lines of 80 columns, two of them kept for where a report was written. What does not fit is left
/// out: rows of the table from its end, then the table, then facts from the last on.
/// </summary>
internal static class ScreenPainter
{
    private const int MostLines = 22;
    private const int FewestRows = 3;
    private const string More = "Everything else: add --all.";

    /// <summary>The first screen, and how to get the rest.</summary>
    public static IEnumerable<string> Short(FirstScreen screen)
    {
        var facts = screen.Facts.Length;
        while (facts > 1 && Above(screen, facts).Count + Below(screen).Count + 1 > MostLines)
        {
            facts--;
        }

        var above = Above(screen, facts);
        var below = Below(screen);
        var room = MostLines - above.Count - below.Count - 1;
        return [.. above, .. Table(screen, room), .. below, More];
    }

    /// <summary>The first screen with all of its table.</summary>
    public static IEnumerable<string> Whole(FirstScreen screen) =>
        [.. Above(screen, screen.Facts.Length), .. Table(screen, int.MaxValue), .. Below(screen)];

    private static List<string> Above(FirstScreen screen, int facts)
    {
        List<string> lines = [.. Painter.Lines(new Sentence(screen.Headline, 0))];
        if (facts + screen.Warnings.Length > 0)
        {
            lines.Add("");
        }

        lines.AddRange(screen.Facts.Take(facts).SelectMany(fact => Painter.Lines(new Point(fact, IsSure: false))));
        lines.AddRange(screen.Warnings.SelectMany(warning => Painter.Lines(new Warning(warning))));
        if (screen.Next is { } next)
        {
            lines.AddRange(["", next.What + ":", "  " + next.Command]);
        }

        return lines;
    }

    private static List<string> Below(FirstScreen screen) =>
        [
            "",
            .. Painter.Lines(new Sentence(screen.Footnote ?? "", 0)).Where(_ => screen.Footnote is not null),
            .. Painter.Lines(new Line(screen.Written ?? "", 0)).Where(_ => screen.Written is not null),
        ];

    // A gap, the heads, and a few rows or none.
    private static ImmutableArray<string> Table(FirstScreen screen, int room)
    {
        if (screen.Table is not { Rows.Count: > 0 } table || room < 2 + Math.Min(FewestRows, table.Rows.Count))
        {
            return [];
        }

        string[] lines = [.. Painter.Fitted(table)];
        return ["", .. lines.Take(Math.Min(lines.Length, room - 1))];
    }
}
