using System.Collections.Immutable;
using BenchSim.Report.Labels;

namespace BenchSim.Report.Papers;

/// <summary>What was written, for telling.</summary>
public sealed record PaperSummary
{
    /// <summary>Grower whose papers they are; null for all growers.</summary>
    public required string? Grower { get; init; }

    /// <summary>First date.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last date.</summary>
    public required DateOnly To { get; init; }

    /// <summary>Names of the files, relative to the folder.</summary>
    public required ImmutableArray<string> Files { get; init; }

    /// <summary>Weeks with work.</summary>
    public required int Weeks { get; init; }

    /// <summary>Jobs.</summary>
    public required int Tasks { get; init; }

    /// <summary>Work of the jobs, hours.</summary>
    public required double Hours { get; init; }

    /// <summary>Watering, hours; 0 where it is not counted.</summary>
    public required double WateringHours { get; init; }

    /// <summary>Labels.</summary>
    public required int Labels { get; init; }

    /// <summary>Sheets of labels; 0 where none are printed.</summary>
    public required int LabelSheets { get; init; }

    /// <summary>The sheet of labels.</summary>
    public required LabelSheet Sheet { get; init; }

    /// <summary>Seeds to sow.</summary>
    public required long Seeds { get; init; }

    /// <summary>Trays filled.</summary>
    public required int Trays { get; init; }

    /// <summary>Flats filled.</summary>
    public required int Flats { get; init; }

    /// <summary>Potting mix, loose, litres.</summary>
    public required double MixLitres { get; init; }

    /// <summary>Potting mix, loose, cubic feet.</summary>
    public required double MixCubicFeet { get; init; }

    /// <summary>Bales, bags or totes of it, whole ones.</summary>
    public required int MixUnits { get; init; }

    /// <summary>What it is bought in: bale, bag or tote.</summary>
    public required string MixSoldIn { get; init; }

    /// <summary>Cost of seed and mix, in the user's money; null where a price is missing.</summary>
    public required double? Cost { get; init; }
}
