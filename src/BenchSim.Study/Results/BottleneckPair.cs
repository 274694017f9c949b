using BenchSim.Season.Inputs;

namespace BenchSim.Study.Results;

/// <summary>Two spaces without limit at once, against each of them alone, on the same luck and the same plan.</summary>
public sealed record BottleneckPair
{
    /// <summary>The first of the two, in the order of the scenario.</summary>
    public required Space First { get; init; }

    /// <summary>The other.</summary>
    public required Space Second { get; init; }

    /// <summary>Chance that a season fits with both, against the base.</summary>
    public required FitChange Fits { get; init; }

    /// <summary>Late plant-days with both, against the base; a difference below 0 is what is saved.</summary>
    public required MeasureChange LatePlantDays { get; init; }

    /// <summary>Late plant-days with both, against the first alone.</summary>
    public required MeasureChange AgainstFirst { get; init; }

    /// <summary>Late plant-days with both, against the second alone.</summary>
    public required MeasureChange AgainstSecond { get; init; }

    /// <summary>
    /// Late plant-days with both less the base, against the sum of the same of each alone: a difference below 0 is what the two save
    /// together beyond what they save apart.
    /// </summary>
    public required MeasureChange BeyondSum { get; init; }

    /// <summary>True when both together really save more than the two apart add up to, and more than either alone.</summary>
    public bool HelpsTogether => IsSaving(BeyondSum) && IsSaving(AgainstFirst) && IsSaving(AgainstSecond);

    private static bool IsSaving(MeasureChange change) => change.IsReal && change.Difference < 0;
}
