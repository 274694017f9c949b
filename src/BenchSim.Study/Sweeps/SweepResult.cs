using System.Collections.Immutable;

namespace BenchSim.Study.Sweeps;

/// <summary>What a sweep says.</summary>
public sealed record SweepResult
{
    /// <summary>Name of the sweep.</summary>
    public required string Name { get; init; }

    /// <summary>Share of seasons that a plan must fit in to count as one that fits.</summary>
    public required double Goal { get; init; }

    /// <summary>Seasons of each plan and set of values.</summary>
    public required int Seasons { get; init; }

    /// <summary>Sets of values beside the values as given.</summary>
    public required int ValueSets { get; init; }

    /// <summary>Number of tasks.</summary>
    public required int Tasks { get; init; }

    /// <summary>The folders, in the order of the file.</summary>
    public required ImmutableArray<SweptFolder> Folders { get; init; }

    /// <summary>The folders, that of the poorest best plan first; those that are alike as they stand in the file.</summary>
    public IEnumerable<SweptFolder> WorstFirst =>
        Folders.OrderBy(folder => folder.Best.Fits.Share).ThenBy(folder => folder.Best.ShareInTime);

    /// <summary>Whether a plan fits as often as it must.</summary>
    public bool IsGood(SweptPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);

        // A goal like 0.9 is not a binary fraction: in decimal, 0.9 x 10 is 9 and nothing more.
        return plan.Row.Fits.Hits >= (decimal)Goal * plan.Row.Fits.Seasons;
    }
}

/// <summary>What a sweep says of a folder.</summary>
/// <param name="Name">The folder as the file of the sweep has it.</param>
/// <param name="Site">Name of the site or case.</param>
/// <param name="Seed">Seed of all luck.</param>
/// <param name="UncertainValues">Values that may be wrong.</param>
/// <param name="Plans">Its plans: the plan itself and variants, in the order of the file; one or more.</param>
public sealed record SweptFolder(string Name, string Site, ulong Seed, int UncertainValues, ImmutableArray<SweptPlan> Plans)
{
    /// <summary>The plan that fits most often; of those alike the one with most plants in time, then the first.</summary>
    public SweptPlan Best => Plans.OrderByDescending(plan => plan.Fits.Share).ThenByDescending(plan => plan.ShareInTime).First();
}

/// <summary>What a sweep says of a plan of a folder.</summary>
/// <param name="Variant">Name of the variant; null for the plan itself.</param>
/// <param name="Spaces">Ids and names of its spaces.</param>
/// <param name="Row">The figures.</param>
public sealed record SweptPlan(string? Variant, ImmutableArray<(string Id, string Name)> Spaces, SweepRow Row)
{
    /// <summary>Seasons that fit at the values as given.</summary>
    public Results.Chance Fits => Row.Fits;

    /// <summary>Share of the wanted plants that is out in time, mean; 1 where none is wanted.</summary>
    public double ShareInTime => Row.PlantsWanted == 0 ? 1 : Row.PlantsInTime.Mean / Row.PlantsWanted;

    /// <summary>The space that trays most often wait for; null where they wait for none.</summary>
    public (string Name, double Share)? Tightest =>
        Row.Tightest is >= 0 and var space ? (Spaces[space].Name, Row.Short[space].Share) : null;
}
