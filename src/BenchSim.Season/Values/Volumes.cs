namespace BenchSim.Season.Values;

/// <summary>Volumes in two systems.</summary>
public static class Volumes
{
    /// <summary>Litres in a cubic foot, exactly: 3.048 decimetres cubed.</summary>
    public const double LitresACubicFoot = 3.048 * 3.048 * 3.048;
}
