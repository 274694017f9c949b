using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>On how many days from its planned date on the weather alone is expected to keep a batch from the table or the field.</summary>
/// <param name="Batch">Batch.</param>
/// <param name="Kind">Table or field.</param>
/// <param name="From">The planned date, from which the days are counted.</param>
/// <param name="Days">Days counted.</param>
/// <param name="Mean">Mean number of them, worked or not, on which the weather holds.</param>
public sealed record BatchHold(BatchPlan Batch, HoldKind Kind, DateOnly From, int Days, double Mean)
{
    /// <summary>Temperature that every forecast night must reach, degrees Celsius.</summary>
    public double AboveC => Kind == HoldKind.Table ? Batch.Crop.TableAboveC : Batch.Crop.FieldAboveC;
}
