using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// Expected hold days: on how many days of each fortnight the weather alone would keep ready trays of some crops back at the work round
/// (docs/model.md section 7). Every day of the fortnight is counted, worked or not, and whether the plan has a tray ready then or not.
/// </summary>
public sealed record HoldDays
{
    /// <summary>What the trays are kept from.</summary>
    public required HoldKind Kind { get; init; }

    /// <summary>Temperature that every forecast night must reach, degrees Celsius; null for <see cref="HoldKind.WetField"/>.</summary>
    public required double? AboveC { get; init; }

    /// <summary>Cover of the field under which the nights are looked at; open for the others.</summary>
    public required FieldCover Cover { get; init; }

    /// <summary>
    /// Houses of the tables that these crops may stand on, in order of id, with an empty text for tables outdoors; empty for the field. A
    /// day holds where every one of the tables holds.
    /// </summary>
    public required ImmutableArray<string> Under { get; init; }

    /// <summary>Names of the crops of the plan, in order of id; empty for <see cref="HoldKind.WetField"/>.</summary>
    public required ImmutableArray<string> Crops { get; init; }

    /// <summary>The fortnights from the opening of the season, in order.</summary>
    public required ImmutableArray<FortnightHolds> Fortnights { get; init; }
}
