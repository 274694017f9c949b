using System.Collections.Immutable;

namespace BenchSim.Study.Results;

/// <summary>The season's work.</summary>
public sealed record WorkResult
{
    /// <summary>Trays and flats sown.</summary>
    public required Estimate Sown { get; init; }

    /// <summary>Trays potted up.</summary>
    public required Estimate Potted { get; init; }

    /// <summary>Moves of one tray or flat between spaces.</summary>
    public required Estimate Moved { get; init; }

    /// <summary>Trays set out.</summary>
    public required Estimate SetOut { get; init; }

    /// <summary>Tray-nights carried in.</summary>
    public required Estimate CarriedIn { get; init; }

    /// <summary>Hours of work in all.</summary>
    public required Estimate Hours { get; init; }

    /// <summary>Mean hours by week, the week of day 0 first; weeks begin on the weekday of day 0.</summary>
    public required ImmutableArray<double> HoursByWeek { get; init; }

    /// <summary>Hours that nine seasons in ten do not exceed, by week.</summary>
    public required ImmutableArray<double> HoursByWeekP90 { get; init; }
}
