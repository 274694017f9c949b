namespace BenchSim.Study.Counting;

/// <summary>Exact sums of a counted quantity.</summary>
/// <param name="Seasons">Seasons counted.</param>
/// <param name="Sum">Sum of the values.</param>
/// <param name="Squares">Sum of the squared values.</param>
/// <param name="Least">Smallest value; 0 when nothing was counted.</param>
/// <param name="Most">Largest value; 0 when nothing was counted.</param>
public readonly record struct Moments(int Seasons, UInt128 Sum, UInt128 Squares, long Least, long Most)
{
    /// <summary>
    /// Sum of squares about the mean, times the number of seasons: an exact whole number, so no digits are lost to the subtraction.
    /// </summary>
    public UInt128 SpreadTimesSeasons => checked(((UInt128)Seasons * Squares) - (Sum * Sum));

    /// <summary>The moments of seasons that all have one value.</summary>
    public static Moments Of(long value, int seasons) =>
        new(seasons, (UInt128)(ulong)value * (uint)seasons, (UInt128)(ulong)value * (ulong)value * (uint)seasons, value, value);

    /// <summary>The moments of these seasons and others.</summary>
    public Moments Plus(Moments other) =>
        Seasons == 0 ? other
        : other.Seasons == 0 ? this
        : new(Seasons + other.Seasons, Sum + other.Sum, Squares + other.Squares, Math.Min(Least, other.Least), Math.Max(Most, other.Most));
}
