namespace BenchSim.Season.Weather;

/// <summary>One figure of the springs of a record beside generated springs.</summary>
/// <param name="Kind">What is compared.</param>
/// <param name="Record">Of the record.</param>
/// <param name="Generated">As generated.</param>
/// <param name="MeanChance">Chance that a record of as many generated springs has a mean as far out, 0 to 1; 1 where there is none.</param>
/// <param name="SpreadChance">The same of the spread between years.</param>
/// <param name="WithoutChance">The same of the number of springs without such a night.</param>
public sealed record SpringFigure(
    SpringKind Kind,
    SpringSide Record,
    SpringSide Generated,
    double MeanChance,
    double SpreadChance,
    double WithoutChance
)
{
    // Five means, five spreads and two counts are looked at: together they blame a right generator once in twenty records at most
    // (Bonferroni).
    private const double Threshold = 0.05 / 12;

    /// <summary>Whether record and generator lie further apart than the luck of the record's springs explains.</summary>
    public bool IsOutside => Math.Min(MeanChance, Math.Min(SpreadChance, WithoutChance)) < Threshold;
}
