namespace BenchSim.Report.Writing;

/// <summary>A file of the scenario folder, kept in the report as it was read.</summary>
/// <param name="Name">Name relative to the scenario folder, with forward slashes: <c>site.toml</c>, <c>weather/daily.csv</c>.</param>
/// <param name="Bytes">Its bytes.</param>
public sealed record ReportInput(string Name, ReadOnlyMemory<byte> Bytes);
