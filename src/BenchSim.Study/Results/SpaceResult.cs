using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Results;

/// <summary>One space over the seasons. Arrays by day have one entry a day of the play, day 0 first.</summary>
public sealed record SpaceResult
{
    /// <summary>The space.</summary>
    public required Space Space { get; init; }

    /// <summary>Places by day.</summary>
    public required ImmutableArray<int> Places { get; init; }

    /// <summary>Places held just after the round, by day.</summary>
    public required ImmutableArray<DaySpread> Held { get; init; }

    /// <summary>Places wanted by day: what it would hold had every space no limit and every crop its first open preference.</summary>
    public required ImmutableArray<DaySpread> Wanted { get; init; }

    /// <summary>Places refused by day to trays whose first preference this is.</summary>
    public required ImmutableArray<DaySpread> Waiting { get; init; }

    /// <summary>Most places held on any day of a season.</summary>
    public required Estimate Peak { get; init; }

    /// <summary>Earliest day with the most places held.</summary>
    public required DateSpread PeakOn { get; init; }

    /// <summary>Days on which held equals places (places above 0).</summary>
    public required Estimate DaysFull { get; init; }

    /// <summary>Tray-days held: the sum over days of places held.</summary>
    public required Estimate TrayDays { get; init; }

    /// <summary>Tray-days waited: the sum over days of places refused.</summary>
    public required Estimate WaitedDays { get; init; }
}
