namespace BenchSim.Season.Climate;

/// <summary>What an hour at a temperature adds to a running sum.</summary>
internal enum HeatKind
{
    /// <summary>Degrees of the medium above -100 C, for means along a path.</summary>
    Warmth,

    /// <summary>
    /// Emergence: rises from the base to the optimum, is level to the end of the plateau, falls to the ceiling (docs/model.md section 4).
    /// </summary>
    Emergence,

    /// <summary>Growth: degrees of the air above a base, capped, by the light of the month (docs/model.md section 5).</summary>
    Growth,
}

/// <summary>A law by which heat is summed; two crops with equal numbers have one law.</summary>
/// <param name="Kind">What it sums.</param>
/// <param name="BaseC">Temperature at and below which nothing is added, degrees Celsius.</param>
/// <param name="OptimumC">Coolest temperature of the fastest emergence, or the cap of growth, degrees Celsius.</param>
/// <param name="PlateauC">Warmest temperature of the fastest emergence, degrees Celsius.</param>
/// <param name="CeilingC">Temperature at and above which nothing comes up, degrees Celsius.</param>
internal readonly record struct HeatLaw(HeatKind Kind, double BaseC, double OptimumC, double PlateauC, double CeilingC)
{
    /// <summary>Shift that keeps running temperature sums from falling.</summary>
    public const double WarmthShift = 100;

    /// <summary>The sum of the temperature itself, above -100 C.</summary>
    public static HeatLaw Warmth { get; } = Straight(HeatKind.Warmth, -WarmthShift, double.PositiveInfinity);

    /// <summary>The law of emergence with its cardinal temperatures.</summary>
    public static HeatLaw Emergence(double baseC, double optimumC, double plateauC, double ceilingC) =>
        new(HeatKind.Emergence, baseC, optimumC, plateauC, ceilingC);

    /// <summary>The law of growth with a base and a cap.</summary>
    public static HeatLaw Growth(double baseC, double capC) => Straight(HeatKind.Growth, baseC, capC);

    private static HeatLaw Straight(HeatKind kind, double baseC, double capC) =>
        new(kind, baseC, capC, double.PositiveInfinity, double.PositiveInfinity);
}
