namespace BenchSim.Folder.Sheets;

/// <summary>One field of a row, of a CSV text or of a workbook; the place of one in a workbook is its row and column.</summary>
/// <param name="Text">Its text without quotes and without spaces around it.</param>
/// <param name="Line">Line of its first character, from 1.</param>
/// <param name="Column">Column of its first character, from 1.</param>
/// <param name="Start">Position in the CSV text at which it begins, quotation mark and all.</param>
/// <param name="End">Position just behind it: that of the separator, the line end or the end of the text.</param>
internal readonly record struct SheetField(string Text, int Line, int Column, int Start, int End)
{
    /// <summary>What a workbook knows to be wrong with the cell.</summary>
    public CellFlaw Flaw { get; init; }
}

/// <summary>What a workbook knows to be wrong with a cell.</summary>
internal enum CellFlaw
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Its formula ends in an error.</summary>
    Error,

    /// <summary>It is merged with another, which has its value.</summary>
    Merged,
}
