namespace BenchSim.Study.Levelling;

/// <summary>The highest day of a group in expected places wanted: the mean over seasons without limits of place.</summary>
/// <param name="Places">Places wanted on that day.</param>
/// <param name="On">The earliest such day.</param>
/// <param name="OverPlaceDays">Places wanted beyond the share that may be filled, summed over the days.</param>
/// <param name="OverDays">Days with any beyond it.</param>
/// <param name="WorstOn">
/// The earliest day with the most beyond it; null when there is none. Where places change it need not be the day of the peak.
/// </param>
public sealed record ExpectedPeak(double Places, DateOnly On, double OverPlaceDays, int OverDays, DateOnly? WorstOn);
