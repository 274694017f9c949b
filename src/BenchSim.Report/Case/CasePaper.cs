namespace BenchSim.Report.Case;

/// <summary>Paper of a case report.</summary>
public enum CasePaper
{
    /// <summary>A4, 210 by 297 mm.</summary>
    A4,

    /// <summary>Letter, 8.5 by 11 inches.</summary>
    Letter,
}
