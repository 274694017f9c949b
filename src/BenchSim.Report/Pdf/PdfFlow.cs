namespace BenchSim.Report.Pdf;

/// <summary>
/// Text, tables and pictures one below the other on as many pages as they need, with a line at the foot of each page that counts them.
/// Nothing is wider than the page between its margins, and nothing is cut off at its foot.
/// </summary>
internal sealed class PdfFlow
{
    private const double MarginMm = 20;
    private const double FootMm = 10;
    private const int MostLinesOfCell = 40;

    private static readonly TextStyle s_title = new(20, IsBold: true);
    private static readonly TextStyle s_heading = new(14, IsBold: true);
    private static readonly TextStyle s_smallHeading = new(11.5, IsBold: true);
    private static readonly TextStyle s_small = new(8.5, Ink: Ink.Grey);
    private static readonly TextStyle s_cell = new(9.5);
    private static readonly TextStyle s_cellHeading = new(9.5, IsBold: true);
    private static readonly TextStyle s_smallCell = new(8);
    private static readonly TextStyle s_smallCellHeading = new(8, IsBold: true);

    private readonly PdfBook _book;
    private readonly PaperSize _size;
    private readonly string _foot;
    private readonly int _firstSheet;
    private readonly TextStyle _text;
    private readonly TextStyle _bold;
    private PdfSheet _sheet;
    private double _top;

    /// <summary>Begins on a new page.</summary>
    /// <param name="book">Where pages are added.</param>
    /// <param name="size">Paper.</param>
    /// <param name="foot">Words at the left of each page's foot; "page 1 of 3" stands at its right.</param>
    /// <param name="textPoints">Size of ordinary text, points.</param>
    public PdfFlow(PdfBook book, PaperSize size, string foot, double textPoints = 10.5)
    {
        _text = new TextStyle(textPoints);
        _bold = new TextStyle(textPoints, IsBold: true);
        _book = book;
        _size = size;
        _foot = foot;
        _firstSheet = book.Sheets.Count;
        _sheet = book.Add(size);
        _top = MarginMm;
    }

    /// <summary>Width between the margins, millimetres.</summary>
    public double WidthMm => _size.WidthMm - (2 * MarginMm);

    /// <summary>Height left on the page, millimetres.</summary>
    public double LeftMm => Bottom - _top;

    private double Bottom => _size.HeightMm - MarginMm;

    /// <summary>The title of the whole, on two lines at most.</summary>
    public void Title(string text)
    {
        Set(PdfLetters.Lines(text, WidthMm, s_title, 2), MarginMm, s_title);
        Space(3);
    }

    /// <summary>A heading, kept on one page with the first lines of what follows, and listed in the contents that viewers show.</summary>
    /// <param name="text">Heading.</param>
    /// <param name="level">1 for a part, 2 for a smaller one within it.</param>
    public void Heading(string text, int level = 1)
    {
        var style = level > 1 ? s_smallHeading : s_heading;
        Space(level > 1 ? 2.5 : 5);
        var lines = PdfLetters.Lines(text, WidthMm, style, 4);
        Need((lines.Count * style.LineMm) + (3 * _text.LineMm));
        _book.AddToContents(text, _sheet, level);
        Set(lines, MarginMm, style);
        Space(1.5);
    }

    /// <summary>A paragraph.</summary>
    /// <param name="text">Text.</param>
    /// <param name="isBold">True where it must be seen first.</param>
    public void Paragraph(string text, bool isBold = false)
    {
        var style = isBold ? _bold : _text;
        Set(PdfLetters.Lines(text, WidthMm, style), MarginMm, style);
        Space(2);
    }

    /// <summary>Small print.</summary>
    public void Small(string text)
    {
        Set(PdfLetters.Lines(text, WidthMm, s_small), MarginMm, s_small);
        Space(2);
    }

    /// <summary>One point of a list.</summary>
    public void Point(string text)
    {
        const double indent = 5;
        var lines = PdfLetters.Lines(text, WidthMm - indent, _text);

        // As many as a paragraph needs in one piece, so that the mark stands with its words.
        Need(_text.LineMm * Math.Min(3, lines.Count));
        _sheet.Text("•", MarginMm + 1.5, _top, _text);
        Set(lines, MarginMm + indent, _text);
        Space(0.8);
    }

    /// <summary>A table. Its heading is repeated on each page it runs over; a row stays in one piece.</summary>
    /// <param name="columns">Columns.</param>
    /// <param name="rows">Rows, each with as many cells as there are columns.</param>
    /// <param name="isSmall">True for small print.</param>
    /// <exception cref="ArgumentException">A row has another number of cells.</exception>
    public void Table(IReadOnlyList<PdfColumn> columns, IEnumerable<IReadOnlyList<string>> rows, bool isSmall = false)
    {
        var table = new PdfTableLayout(
            columns,
            MarginMm,
            WidthMm,
            isSmall ? s_smallCell : s_cell,
            isSmall ? s_smallCellHeading : s_cellHeading
        );
        var most = Math.Min(MostLinesOfCell, table.LinesWithin(Bottom - MarginMm));
        var heading = table.Heading(4);
        var open = false;
        foreach (var cells in rows)
        {
            var row = table.Row(cells, most);
            if (!open || _top + row.HeightMm > Bottom)
            {
                Need(heading.HeightMm + row.HeightMm, fresh: open);
                _top = table.Draw(_sheet, heading, _top);
                open = true;
            }

            _top = table.Draw(_sheet, row, _top);
        }

        if (!open)
        {
            Need(heading.HeightMm);
            _top = table.Draw(_sheet, heading, _top);
        }

        Space(3);
    }

    /// <summary>Something drawn over the whole width, with small print below it, both on one page.</summary>
    /// <param name="heightMm">Height of the drawing, millimetres.</param>
    /// <param name="draw">Draws it on a sheet, from its left and its upper end.</param>
    /// <param name="caption">The small print; empty for none.</param>
    public void Drawing(double heightMm, Action<PdfSheet, double, double> draw, string caption)
    {
        var lines = PdfLetters.Lines(caption, WidthMm, s_small);
        Need(heightMm + (lines.Count * s_small.LineMm) + 1);
        draw(_sheet, MarginMm, _top);
        _top += heightMm + 1;
        Set(lines, MarginMm, s_small);
        Space(1.5);
    }

    /// <summary>Goes on at the top of a new page where less than that is left on this one.</summary>
    public void KeepTogether(double heightMm) => Need(heightMm);

    /// <summary>Room below what stands.</summary>
    public void Space(double millimetres) => _top = Math.Min(_top + millimetres, Bottom);

    /// <summary>Goes on at the top of a new page, unless this one is empty.</summary>
    public void PageBreak()
    {
        if (_top <= MarginMm)
        {
            return;
        }

        _sheet = _book.Add(_size);
        _top = MarginMm;
    }

    /// <summary>Writes the feet of the pages; to be called once, at the end.</summary>
    public void Finish()
    {
        var pages = _book.Sheets.Count - _firstSheet;
        for (var page = 0; page < pages; page++)
        {
            var sheet = _book.Sheets[_firstSheet + page];
            var top = _size.HeightMm - FootMm - s_small.BaselineMm;
            sheet.Rule(MarginMm, top - 1.5, _size.WidthMm - MarginMm, top - 1.5, 0.1, Ink.Grey);
            sheet.TextWithin(_foot, MarginMm, top, WidthMm * 0.75, s_small);
            sheet.TextWithin($"page {page + 1} of {pages}", MarginMm + (WidthMm * 0.75), top, WidthMm * 0.25, s_small, TextSide.Right);
        }
    }

    private void Set(IReadOnlyList<string> lines, double left, TextStyle style)
    {
        // A paragraph of a few lines stays in one piece; a longer one leaves no single line behind.
        Need(style.LineMm * Math.Min(lines.Count, 3));
        foreach (var line in lines)
        {
            Need(style.LineMm);
            _top = _sheet.Lines([line], left, _top, style);
        }
    }

    private void Need(double heightMm, bool fresh = false)
    {
        if (fresh || _top + heightMm > Bottom)
        {
            PageBreak();
        }
    }
}
