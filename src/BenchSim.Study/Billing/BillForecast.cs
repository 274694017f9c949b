using System.Collections.Immutable;

namespace BenchSim.Study.Billing;

/// <summary>What is to be paid for what the growers share, by each rule, over many seasons.</summary>
public sealed record BillForecast
{
    /// <summary>What is shared.</summary>
    public required SharedThings Things { get; init; }

    /// <summary>Seasons played.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>The bill of a season, mean of the seasons.</summary>
    public required double Mean { get; init; }

    /// <summary>One season in ten costs no more.</summary>
    public required double P10 { get; init; }

    /// <summary>Nine in ten cost no more.</summary>
    public required double P90 { get; init; }

    /// <summary>The growers, in order of name.</summary>
    public required ImmutableArray<BilledGrower> Growers { get; init; }
}

/// <summary>A grower in a bill.</summary>
public sealed record BilledGrower
{
    /// <summary>Name as written in the plan.</summary>
    public required string Grower { get; init; }

    /// <summary>What falls to the grower in a season by each of <see cref="BillRules.All"/>, mean of the seasons.</summary>
    public required ImmutableArray<double> Amounts { get; init; }

    /// <summary>Tray-days in all spaces, mean of the seasons.</summary>
    public required double TrayDays { get; init; }

    /// <summary>Batches.</summary>
    public required int Batches { get; init; }

    /// <summary>
    /// Batches of which too few plants are out in time in at least half of the seasons, every late day counted: their trays will stand
    /// longer than planned.
    /// </summary>
    public required int LikelyLate { get; init; }

    /// <summary>Fewest days in hand of the batches.</summary>
    public required int DaysInHand { get; init; }
}

/// <summary>What is to be paid so far by the log, for what the growers share.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Unit">In what it is given.</param>
/// <param name="Growers">The growers in order of first appearance in the plan.</param>
/// <param name="Amounts">What falls to each.</param>
public sealed record BillSoFar(BillRule Rule, BillUnit Unit, ImmutableArray<string> Growers, ImmutableArray<double> Amounts)
{
    /// <summary>What falls to all of them.</summary>
    public double Total => Amounts.Sum();

    /// <summary>What falls to one of them.</summary>
    /// <param name="grower">Name as written in the plan.</param>
    public double Of(string grower) => Amounts[Growers.IndexOf(grower)];
}
