using System.Collections.Immutable;
using BenchSim.Study.Results;

namespace BenchSim.Study.Precision;

/// <summary>A plan played until its intervals are narrow enough.</summary>
/// <param name="Study">The answer: that of a play of as many seasons, to the last bit.</param>
/// <param name="Goal">What was asked for.</param>
/// <param name="Looks">What was seen on the way; the last led to the end.</param>
public sealed record PrecisionResult(StudyResult Study, PrecisionGoal Goal, ImmutableArray<PrecisionLook> Looks)
{
    /// <summary>False when the most seasons were played and some interval is still wider than asked.</summary>
    public bool IsReached => Goal.IsReached(Study.Fits) && Goal.IsReached(Study.LatePlantDays);
}
