using BenchSim.Report.Labels;

namespace BenchSim.Report.Papers;

/// <summary>Which papers, for which dates, on which sheet of labels.</summary>
public sealed record PaperSettings
{
    /// <summary>First date; null for the season's first.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Last date, on or after the first; null for the plan's last.</summary>
    public DateOnly? To { get; init; }

    /// <summary>Grower whose papers they are, as the plan writes the name; null for all growers.</summary>
    public string? Grower { get; init; }

    /// <summary>Papers.</summary>
    public PaperKinds Kinds { get; init; } = PaperKinds.All;

    /// <summary>Sheet of labels; null for the one that goes with the scenario's units.</summary>
    public LabelSheet? Sheet { get; init; }

    /// <summary>Labels already used of the first sheet, 0 or more.</summary>
    public int LabelsUsed { get; init; }
}
