using BenchSim.Folder.Csv;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Plan;

/// <summary>One row of plan.csv after reading: a batch or a run of successions. What had a fault is as if it were not written.</summary>
/// <param name="Row">The row.</param>
/// <param name="Place">Where its batch is named.</param>
/// <param name="Line">What it says. An id or a number of plants that is not there is empty, or 0.</param>
internal sealed record PlanRow(CsvRow Row, SourcePlace Place, PlanLine Line)
{
    /// <summary>The batch, or the first of the successions.</summary>
    public BatchOrder Order => Line.Order;

    /// <summary>Its crop; null where there is none of that id.</summary>
    public Crop? Crop { get; init; }

    /// <summary>The tray it goes to the field in; null where there is none of that id, or it is an open flat.</summary>
    public TrayType? Tray { get; init; }

    /// <summary>The flat it is sown in; null for one sown direct, and where there is none of that id.</summary>
    public TrayType? Flat { get; init; }
}
