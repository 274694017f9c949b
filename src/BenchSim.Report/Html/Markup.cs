namespace BenchSim.Report.Html;

/// <summary>Text that is HTML already and is not escaped again.</summary>
/// <param name="Html">The HTML.</param>
internal readonly record struct Markup(string Html);
