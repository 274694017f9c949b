using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// Electricity of the mats of one space by the planned dates, all mats of the space on whenever a tray is planned on them.
/// </summary>
/// <param name="Space">The space; its <see cref="Space.Power"/> is given.</param>
/// <param name="Days">Days on which a tray is planned to stand on them.</param>
/// <param name="KilowattHours">Kilowatt-hours of those days.</param>
/// <param name="Circuit">Their watts against the breaker; null where the circuit is not given.</param>
public sealed record MatNeed(Space Space, int Days, double KilowattHours, CircuitCheck? Circuit);
