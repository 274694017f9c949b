namespace BenchSim.Season.Values;

/// <summary>A place in a file of the scenario folder.</summary>
/// <param name="File">File name, relative to the folder.</param>
/// <param name="Line">Line, from 1; 0 for the file as a whole.</param>
/// <param name="Column">Column in characters, from 1; 0 for the line as a whole.</param>
public readonly record struct SourcePlace(string File, int Line, int Column)
{
    private const int Alphabet = 26;

    /// <summary>file:line:column; in a workbook file:cell, such as plan.xlsx:C7.</summary>
    public override string ToString() =>
        Line > 0 && Column > 0 && File.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase)
            ? $"{File}:{Letters(Column)}{Line}"
            : $"{File}:{Line}:{Column}";

    /// <summary>A column as spreadsheets name it: A to Z, then AA.</summary>
    /// <param name="column">Its number, from 1.</param>
    public static string Letters(int column) =>
        (column > Alphabet ? Letters((column - 1) / Alphabet) : "") + (char)('A' + ((column - 1) % Alphabet));
}
