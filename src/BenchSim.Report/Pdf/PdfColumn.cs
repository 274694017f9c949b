namespace BenchSim.Report.Pdf;

/// <summary>A column of a table in a PDF.</summary>
/// <param name="Heading">Heading.</param>
/// <param name="Share">Width beside the other columns', above 0: a column of 2 is twice as wide as one of 1.</param>
/// <param name="Side">Side its text keeps to; numbers keep to the right.</param>
internal sealed record PdfColumn(string Heading, double Share, TextSide Side = TextSide.Left);
