using BenchSim.Study.Results;

namespace BenchSim.Study.Succession;

/// <summary>The figures of one schedule.</summary>
/// <param name="LastSetOut">Planned set-out date of its last succession.</param>
/// <param name="Fits">Chance that the whole plan fits, weather holds excepted.</param>
/// <param name="LatePlantDays">Late plant-days of the whole plan.</param>
/// <param name="OwnLatePlantDays">Late plant-days of the successions.</param>
/// <param name="GapDays">Days without supply between the first and the last set-out.</param>
/// <param name="WithoutGap">Chance of a season without such a day.</param>
/// <param name="NeverOut">Successions of which nothing reaches the field.</param>
public sealed record ScheduleFigures(
    DateOnly LastSetOut,
    Chance Fits,
    Estimate LatePlantDays,
    Estimate OwnLatePlantDays,
    Estimate GapDays,
    Chance WithoutGap,
    Estimate NeverOut
);
