namespace BenchSim.Report.Charts;

/// <summary>A picture of the report.</summary>
/// <param name="Name">Name in the report folder.</param>
/// <param name="Draw">Draws it, as PNG.</param>
internal sealed record ChartFile(string Name, Func<byte[]> Draw);
