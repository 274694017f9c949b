namespace BenchSim.Study.Levelling;

/// <summary>A group as planned and as levelled.</summary>
/// <param name="Group">The group.</param>
/// <param name="Before">Expected peak as planned.</param>
/// <param name="After">Expected peak when levelled; as planned when nothing moves.</param>
/// <param name="Played">Peaks of the trial; null when nothing moves.</param>
public sealed record LevelledGroup(LevelGroup Group, ExpectedPeak Before, ExpectedPeak After, PlayedPeak? Played);
