namespace BenchSim.Study.Mending;

/// <summary>What a search for changes reads off one played season.</summary>
/// <param name="Fits">Whether it fits, by the days that count (<see cref="MendOptions.CountsWeather"/>).</param>
/// <param name="FitsWeatherCounted">Whether it fits with every late day counted.</param>
/// <param name="Late">Wanted plants not out in time, by the days that count.</param>
/// <param name="WorkParts">Work, in the parts of <see cref="Figures.Measures.LabourHours"/>.</param>
/// <param name="MoneyParts">What work, heat, mix and seed cost, thousandths; 0 where prices are not given.</param>
internal readonly record struct MendSeason(bool Fits, bool FitsWeatherCounted, long Late, long WorkParts, long MoneyParts);
