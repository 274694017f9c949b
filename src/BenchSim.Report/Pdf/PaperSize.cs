namespace BenchSim.Report.Pdf;

/// <summary>Size of a sheet of paper, upright.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="WidthMm">Width, millimetres.</param>
/// <param name="HeightMm">Height, millimetres.</param>
internal sealed record PaperSize(string Name, double WidthMm, double HeightMm)
{
    /// <summary>A4 (ISO 216).</summary>
    public static readonly PaperSize A4 = new("A4", 210, 297);

    /// <summary>Letter: 8.5 by 11 inches (ANSI/ASME Y14.1).</summary>
    public static readonly PaperSize Letter = new("Letter", 215.9, 279.4);
}
