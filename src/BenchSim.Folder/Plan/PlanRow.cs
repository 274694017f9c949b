using BenchSim.Folder.Csv;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Plan;

/// <summary>One row of plan.csv after reading: a batch or a run of successions. What had a fault is null.</summary>
internal sealed record PlanRow
{
    public required CsvRow Row { get; init; }

    public required SourcePlace Place { get; init; }

    public string? Id { get; init; }

    public Crop? Crop { get; init; }

    public string Grower { get; init; } = "";

    public int? Plants { get; init; }

    public DateOnly? Sow { get; init; }

    public DateOnly? SetOut { get; init; }

    public int EarlierDays { get; init; }

    public int LaterDays { get; init; }

    /// <summary>Days from one succession to the next; 0 for a single batch.</summary>
    public int EveryDays { get; init; }

    /// <summary>Successions; 1 for a single batch.</summary>
    public int Times { get; init; } = 1;

    public Method Method { get; init; }

    public TrayType? Tray { get; init; }

    public TrayType? Flat { get; init; }

    public int? Trays { get; init; }

    public int? Flats { get; init; }

    public int SeedsPerCell { get; init; } = 1;

    public int SeedsPerFlat { get; init; }

    public double Germination { get; init; }

    public DateOnly? TestedOn { get; init; }

    public string? Packet { get; init; }

    public double? ThousandSeeds { get; init; }

    public string Note { get; init; } = "";
}
