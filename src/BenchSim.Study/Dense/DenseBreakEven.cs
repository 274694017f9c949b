namespace BenchSim.Study.Dense;

/// <summary>
/// Seeds a flat at which dense sowing breaks even with direct sowing, by planned dates and numbers. The formulas are worked out in
/// docs/dense.md.
/// </summary>
public sealed record DenseBreakEven
{
    /// <summary>
    /// Seeds a flat at which flats hold the mats as long as trays would, flats counted in fractions and without assurance (closed form).
    /// Denser frees mats. NaN when direct sowing holds no mat.
    /// </summary>
    public required double MatSeeds { get; init; }

    /// <summary>
    /// Fewest seeds a flat at which the planned whole flats hold the mats for fewer tray-days than the trays; null when no density up to
    /// <see cref="MostSeeds"/> does.
    /// </summary>
    public required int? MatSeedsWhole { get; init; }

    /// <summary>
    /// Seeds a flat at which dense sowing takes as much work as direct sowing, flats in fractions (closed form). Denser takes less. Null
    /// when the trays' potting up alone takes more than all the work of direct sowing, so that no density is enough.
    /// </summary>
    public required double? LabourSeeds { get; init; }

    /// <summary>
    /// Fewest seeds a flat at which the planned whole flats take no more work than direct sowing; null when no density up to <see
    /// cref="MostSeeds"/> does.
    /// </summary>
    public required int? LabourSeedsWhole { get; init; }

    /// <summary>Planned minutes of work sown directly: sowing, moving off the mat and to the table, loading.</summary>
    public required double DirectMinutes { get; init; }

    /// <summary>Planned minutes of work of the dense trays alone: potting up, moving to the table, loading.</summary>
    public required double PottedMinutes { get; init; }

    /// <summary>Densest sowing tried, seeds a flat.</summary>
    public const int MostSeeds = 5000;
}
