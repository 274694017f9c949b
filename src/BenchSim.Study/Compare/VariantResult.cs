using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study.Compare;

/// <summary>A variant against the base.</summary>
public sealed record VariantResult
{
    /// <summary>Name of the variant.</summary>
    public required string Name { get; init; }

    /// <summary>Its plan, as played.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>Chance of fit, weather holds excepted.</summary>
    public required FitChange Fits { get; init; }

    /// <summary>The other measures, in the order of <see cref="CompareResult.Measures"/>.</summary>
    public required ImmutableArray<MeasureChange> Changes { get; init; }

    /// <summary>The change of a measure; null when it is not shown.</summary>
    /// <param name="measure">Measure.</param>
    public MeasureChange? Of(Measure measure) => Changes.FirstOrDefault(change => change.Measure.Is(measure));
}
