namespace BenchSim.Report.Pdf;

/// <summary>How text is set.</summary>
/// <param name="Points">Size of the letters, points (1/72 inch).</param>
/// <param name="IsBold">True for the heavier face.</param>
/// <param name="Ink">Colour.</param>
internal sealed record TextStyle(double Points, bool IsBold = false, Ink Ink = default)
{
    private const double LineSpacing = 1.25;

    /// <summary>From one line to the next, millimetres.</summary>
    public double LineMm => Points * LineSpacing * PdfSheet.MmAPoint;

    /// <summary>From the top of a line to the foot of its letters, millimetres.</summary>
    public double BaselineMm => Points * PdfSheet.MmAPoint;
}
