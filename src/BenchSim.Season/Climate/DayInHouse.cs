using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>A day in a house in a few figures.</summary>
/// <param name="NoonShutC">Air at noon were the vents kept shut, degrees Celsius.</param>
/// <param name="NoonC">Air at noon, vents used, degrees Celsius.</param>
/// <param name="VentsOpen">Whether the vents open at any hour.</param>
/// <param name="HeatedHours">Hours in which the heater runs, 0 to 24.</param>
internal readonly record struct DayInHouse(double NoonShutC, double NoonC, bool VentsOpen, int HeatedHours);
