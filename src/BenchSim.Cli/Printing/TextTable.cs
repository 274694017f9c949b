using BenchSim.Answers.Words;
using Spectre.Console;

namespace BenchSim.Cli.Printing;

/// <summary>A table of plain text: columns as wide as they need, no colour, no frame.</summary>
internal sealed class TextTable
{
    // Wider than any line: a table is never squeezed, so that a cell stays in one piece and lines can be cut and searched.
    private const int Width = 2000;
    private const int LongestCell = 40;

    private readonly Table _table = new() { Border = TableBorder.None, UseSafeBorder = true };
    private readonly int _longestCell;

    /// <summary>A table.</summary>
    /// <param name="columns">Headings; one that begins with ">" stands over numbers, set to the right.</param>
    /// <param name="longestCell">Longest text of a cell.</param>
    public TextTable(IEnumerable<string> columns, int longestCell = LongestCell)
    {
        _longestCell = longestCell;
        foreach (var column in columns)
        {
            var isNumber = column.StartsWith('>');
            var made = new TableColumn(new Text(column.TrimStart('>'))) { NoWrap = true, Padding = new Padding(0, 0, 2, 0) };
            _table.AddColumn(isNumber ? made.RightAligned() : made);
        }
    }

    public void Add(params string[] cells) => _table.AddRow(cells.Select(cell => new Text(SafeText.Short(cell, _longestCell))));

    public void Print(Desk desk)
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
        console.Write(_table);
        foreach (var line in text.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            desk.Say("  " + line);
        }
    }
}
