using BenchSim.Study.Results;

namespace BenchSim.Study.Sizing;

/// <summary>One number of places, played.</summary>
/// <param name="Places">Places of the space on the first day; null for no limit.</param>
/// <param name="Fits">Chance that a season fits, with its Wilson interval at the confidence of the goal.</param>
/// <param name="LatePlantDays">Late plant-days of a season, mean.</param>
/// <param name="HalfWidth">Half the width of their Student interval at the confidence of the goal; NaN for one season.</param>
/// <param name="PlantsInTime">Plants out in time in a season, mean.</param>
/// <param name="IsMet">Whether the goal is met: the whole interval of the chance is at or above it.</param>
public sealed record SizePoint(int? Places, Chance Fits, double LatePlantDays, double HalfWidth, double PlantsInTime, bool IsMet);
