namespace BenchSim.Report.Pdf;

/// <summary>A row of a table, its cells broken into lines.</summary>
/// <param name="Cells">Lines of each cell.</param>
/// <param name="HeightMm">Height, millimetres.</param>
/// <param name="IsHeading">True for the row of headings.</param>
internal sealed record PdfTableRow(IReadOnlyList<IReadOnlyList<string>> Cells, double HeightMm, bool IsHeading);
