using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Results;

/// <summary>All spaces of a kind together: what the season wants of them against what there is.</summary>
public sealed record GroupResult
{
    /// <summary>Mats, benches or tables.</summary>
    public required SpaceKind Kind { get; init; }

    /// <summary>Places by day, all spaces of the kind.</summary>
    public required ImmutableArray<int> Places { get; init; }

    /// <summary>Places wanted by day.</summary>
    public required ImmutableArray<DaySpread> Wanted { get; init; }

    /// <summary>Places refused by day.</summary>
    public required ImmutableArray<DaySpread> Waiting { get; init; }

    /// <summary>Chance that some tray of a season is refused a place here.</summary>
    public required Chance RunsOut { get; init; }

    /// <summary>First day on which a tray is refused a place here, in the seasons in which one is.</summary>
    public required DateSpread RunsOutOn { get; init; }

    /// <summary>Largest shortage of a season: most that wanted exceeds places by on any day, 0 when it never does.</summary>
    public required Estimate Shortage { get; init; }

    /// <summary>Day of the largest shortage, in the seasons that have one.</summary>
    public required DateSpread ShortageOn { get; init; }

    /// <summary>Most places refused on any one day of a season.</summary>
    public required Estimate WorstWaiting { get; init; }
}
