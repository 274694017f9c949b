using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>How a heat mat is set through a season: two mats of one such setting are equally warm.</summary>
/// <param name="SetC">Set temperature, degrees Celsius.</param>
/// <param name="Was">What it was before; null for the same.</param>
internal readonly record struct MatSetting(double SetC, MatWas? Was)
{
    /// <summary>The setting of a mat.</summary>
    /// <param name="space">The mat.</param>
    public static MatSetting Of(Space space) => new(space.MatC!.Value, space.MatWas);

    /// <summary>Temperature on a day, degrees Celsius.</summary>
    /// <param name="day">Day of the season, 0 the first.</param>
    public double On(int day) => day < Was?.Until ? Was.MatC : SetC;
}
