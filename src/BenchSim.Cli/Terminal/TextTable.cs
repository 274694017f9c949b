using BenchSim.Answers.Words;
using Spectre.Console;
using Table = BenchSim.Answers.Words.Table;

namespace BenchSim.Cli.Terminal;

/// <summary>A table of plain text: columns as wide as they need, no colour, no frame.</summary>
internal sealed class TextTable(Table table)
{
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
            var column = new TableColumn(new Text(heading.TrimStart('>'))) { NoWrap = true, Padding = new Padding(0, 0, 2, 0) };
            set.AddColumn(heading.StartsWith('>') ? column.RightAligned() : column);
        }

        foreach (var row in table.Rows)
        {
            set.AddRow(row.Select(cell => new Text(SafeText.Short(cell, table.LongestCell))));
        }

        return set;
    }
}
