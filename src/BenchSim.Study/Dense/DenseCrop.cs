using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study.Dense;

/// <summary>One crop sown directly against the same crop sown dense and potted up, all else as planned, on the same luck.</summary>
public sealed record DenseCrop
{
    /// <summary>The crop.</summary>
    public required Crop Crop { get; init; }

    /// <summary>
    /// True when the plan as it stands sows all its batches directly, false when it pots all of them up, null when it does both.
    /// </summary>
    public required bool? IsPlannedDirect { get; init; }

    /// <summary>Batches of the crop sown directly, with their planned dates and numbers.</summary>
    public required ImmutableArray<BatchPlan> Direct { get; init; }

    /// <summary>The same batches potted up.</summary>
    public required ImmutableArray<BatchPlan> Dense { get; init; }

    /// <summary>Least and greatest seeds a flat among the batches.</summary>
    public required (int Least, int Most) SeedsPerFlat { get; init; }

    /// <summary>Chance of fit: <see cref="FitChange.Base"/> is sown directly, <see cref="FitChange.Variant"/> dense.</summary>
    public required FitChange Fits { get; init; }

    /// <summary>
    /// What changes, dense less direct: tray-days on mats and benches, the peak on the mats, hours of work, plants late and late plant-days
    /// of the whole site; flats, trays, mix and seeds of the crop.
    /// </summary>
    public required ImmutableArray<MeasureChange> Changes { get; init; }

    /// <summary>The densities at which it turns, by the planned dates and numbers.</summary>
    public required DenseBreakEven BreakEven { get; init; }

    /// <summary>The planned trade-off at several densities, in rising order.</summary>
    public required ImmutableArray<DensityPoint> Curve { get; init; }

    /// <summary>The change of a measure.</summary>
    /// <param name="measure">Measure.</param>
    public MeasureChange Of(Measure measure) => Changes.First(change => change.Measure.Is(measure));
}
