using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using Spectre.Console;
using Table = BenchSim.Answers.Words.Table;

namespace BenchSim.Cli.Terminal;

/// <summary>A table of plain text: no colour, no frame, columns as wide as they need, or names cut to fit a width.</summary>
internal sealed class TextTable(Table table, int most = int.MaxValue)
{
    private const int Gap = 2;

    // Wider than any line: a table is never squeezed, so that a cell stays in one piece and lines can be cut and searched.
    private const int Width = 2000;

    public string[] Lines()
    {
        using var text = new StringWriter { NewLine = "\n" };
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = AnsiSupport.No,
                ColorSystem = ColorSystemSupport.NoColors,
                Interactive = InteractionSupport.No,
                Out = new AnsiConsoleOutput(text),
            }
        );
        console.Profile.Width = Width;
        console.Write(Set());
        return text.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private Spectre.Console.Table Set()
    {
        var set = new Spectre.Console.Table { Border = TableBorder.None, UseSafeBorder = true };
        foreach (var heading in table.Columns)
        {
            var column = new TableColumn(new Text(heading.TrimStart('>'))) { NoWrap = true, Padding = new Padding(0, 0, Gap, 0) };
            set.AddColumn(heading.StartsWith('>') ? column.RightAligned() : column);
        }

        var longest = Longest();
        foreach (var row in table.Rows)
        {
            set.AddRow(row.Select((cell, column) => new Text(PlainText.Short(cell, longest[column]))));
        }

        return set;
    }

    // The longest cell of each column. Where the table is too wide, the longest names lose most; figures and heads are never cut.
    private int[] Longest()
    {
        int[] heads = [.. table.Columns.Select(heading => heading.TrimStart('>').Length)];
        int[] cells =
        [
            .. heads.Select(
                (_, column) => table.Rows.Select(row => Math.Min(row[column].Length, table.LongestCell)).DefaultIfEmpty(0).Max()
            ),
        ];
        while (heads.Zip(cells, Math.Max).Sum() + (Gap * (heads.Length - 1)) > most)
        {
            int[] names =
            [
                .. Enumerable
                    .Range(0, heads.Length)
                    .Where(column => !table.Columns[column].StartsWith('>') && cells[column] > heads[column]),
            ];
            if (names.Length == 0)
            {
                break;
            }

            cells[names.MaxBy(column => cells[column])]--;
        }

        return [.. cells.Select(cell => Math.Max(1, cell))];
    }
}
