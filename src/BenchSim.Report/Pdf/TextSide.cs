namespace BenchSim.Report.Pdf;

/// <summary>Which side text keeps to.</summary>
internal enum TextSide
{
    /// <summary>The left.</summary>
    Left,

    /// <summary>The middle.</summary>
    Middle,

    /// <summary>The right: numbers.</summary>
    Right,
}
