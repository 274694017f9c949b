namespace BenchSim.Study.Succession;

/// <summary>What came of one schedule.</summary>
/// <param name="Schedule">The schedule.</param>
/// <param name="Figures">Its figures; null when it cannot be played.</param>
/// <param name="WhyNot">Why it cannot be played, a half-sentence; empty when it can.</param>
public sealed record ScheduleResult(Schedule Schedule, ScheduleFigures? Figures, string WhyNot);
