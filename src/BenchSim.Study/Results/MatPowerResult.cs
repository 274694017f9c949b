using BenchSim.Season.Inputs;

namespace BenchSim.Study.Results;

/// <summary>The electricity of the mats of one space over the seasons.</summary>
/// <param name="Space">The space; its <see cref="Space.Power"/> is given.</param>
/// <param name="KilowattHours">Kilowatt-hours of the season.</param>
public sealed record MatPowerResult(Space Space, Estimate KilowattHours);
