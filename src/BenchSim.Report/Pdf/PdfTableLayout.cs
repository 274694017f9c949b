namespace BenchSim.Report.Pdf;

/// <summary>Breaks the cells of a table into lines and draws its rows.</summary>
internal sealed class PdfTableLayout
{
    private const double PaddingMm = 1.2;

    private readonly IReadOnlyList<PdfColumn> _columns;
    private readonly double[] _widths;
    private readonly double _left;
    private readonly double _width;
    private readonly TextStyle _cell;
    private readonly TextStyle _heading;

    /// <summary>A table as wide as that.</summary>
    public PdfTableLayout(IReadOnlyList<PdfColumn> columns, double leftMm, double widthMm, TextStyle cell, TextStyle heading)
    {
        var shares = columns.Sum(column => column.Share);
        _columns = columns;
        _widths = [.. columns.Select(column => widthMm * column.Share / shares)];
        _left = leftMm;
        _width = widthMm;
        _cell = cell;
        _heading = heading;
    }

    /// <summary>Lines that a cell may have so that its row and the heading stand within that height.</summary>
    public int LinesWithin(double heightMm) => Math.Max(1, (int)((heightMm - Heading(4).HeightMm - (2 * PaddingMm)) / _cell.LineMm));

    /// <summary>The row of headings.</summary>
    public PdfTableRow Heading(int mostLines) => Make([.. _columns.Select(column => column.Heading)], _heading, mostLines, isHeading: true);

    /// <summary>A row of cells.</summary>
    /// <exception cref="ArgumentException">There is not one cell a column.</exception>
    public PdfTableRow Row(IReadOnlyList<string> cells, int mostLines)
    {
        if (cells.Count != _columns.Count)
        {
            throw new ArgumentException($"A row has {cells.Count} cells; the table has {_columns.Count} columns.", nameof(cells));
        }

        return Make(cells, _cell, mostLines, isHeading: false);
    }

    /// <summary>Draws a row.</summary>
    /// <returns>Its lower end.</returns>
    public double Draw(PdfSheet sheet, PdfTableRow row, double top)
    {
        if (row.IsHeading)
        {
            sheet.Fill(_left, top, _width, row.HeightMm, Ink.Pale);
        }

        var x = _left;
        for (var at = 0; at < _widths.Length; at++)
        {
            var place = _columns[at].Side switch
            {
                TextSide.Left => x + PaddingMm,
                TextSide.Middle => x + (_widths[at] / 2),
                _ => x + _widths[at] - PaddingMm,
            };
            sheet.Lines(row.Cells[at], place, top + PaddingMm, row.IsHeading ? _heading : _cell, _columns[at].Side);
            x += _widths[at];
        }

        var bottom = top + row.HeightMm;
        sheet.Rule(_left, bottom, _left + _width, bottom, row.IsHeading ? 0.3 : 0.1, row.IsHeading ? Ink.Black : Ink.Grey);
        return bottom;
    }

    private PdfTableRow Make(IReadOnlyList<string> cells, TextStyle style, int mostLines, bool isHeading)
    {
        IReadOnlyList<string>[] lines =
        [
            .. cells.Select((cell, at) => PdfLetters.Lines(cell, Math.Max(1, _widths[at] - (2 * PaddingMm)), style, mostLines)),
        ];
        return new PdfTableRow(lines, (lines.Max(cell => cell.Count) * style.LineMm) + (2 * PaddingMm), isHeading);
    }
}
