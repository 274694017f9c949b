using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>The trade's words for the values of our enumerations.</summary>
public static class Trade
{
    /// <summary>A space's kind as it is written in a scenario.</summary>
    public static string Code(Space space) => space.IsChamber ? "chamber" : Code(space.Kind);

    /// <summary>
    /// Plants that a batch is to bring: "600 plants", or "1,500 clusters of 8 seeds", of seedlings where some are thinned out.
    /// </summary>
    public static string Plants(BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return batch.ClusterOf == 1
            ? Numbers.Count(batch.Order.Plants, "plant", "plants")
            : $"{Numbers.Count(batch.Order.Plants, "cluster", "clusters")} of {batch.ClusterOf} "
                + (batch.IsThinned ? "seedlings" : "seeds");
    }

    /// <summary>A kind of space, as a code for tables.</summary>
    public static string Code(SpaceKind kind) =>
        kind switch
        {
            SpaceKind.Mat => "mat",
            SpaceKind.Bench => "bench",
            SpaceKind.Table => "table",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    /// <summary>All spaces of a kind, in the plural.</summary>
    public static string Plural(SpaceKind kind) =>
        kind switch
        {
            SpaceKind.Mat => "heat mats",
            SpaceKind.Bench => "benches",
            SpaceKind.Table => "hardening tables",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    /// <summary>All spaces of a kind as a site has them: "hardening table" where there is one.</summary>
    /// <param name="scenario">The site.</param>
    /// <param name="kind">Mats, benches or tables.</param>
    public static string Spaces(Scenario scenario, SpaceKind kind) => IsOneTable(scenario, kind) ? "hardening table" : Plural(kind);

    /// <summary>True where <see cref="Spaces"/> is in the singular.</summary>
    /// <param name="scenario">The site.</param>
    /// <param name="kind">Mats, benches or tables.</param>
    public static bool IsOneTable(Scenario scenario, SpaceKind kind)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return kind == SpaceKind.Table && scenario.Spaces.Count(space => space.Kind == kind) == 1;
    }

    /// <summary>A place of a kind of space.</summary>
    public static string Place(SpaceKind kind) =>
        kind switch
        {
            SpaceKind.Mat => "heat mat place",
            SpaceKind.Bench => "bench place",
            SpaceKind.Table => "hardening table place",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    /// <summary>A cause, as a code for tables.</summary>
    public static string Code(Cause cause) =>
        cause switch
        {
            Cause.Place => "place",
            Cause.ThrownOut => "thrown out",
            Cause.Germination => "germination",
            Cause.SlowGrowth => "slow growth",
            Cause.Hold => "hold",
            _ => throw new ArgumentOutOfRangeException(nameof(cause)),
        };

    /// <summary>How far a value may be trusted.</summary>
    public static string Words(Trust trust) =>
        trust switch
        {
            Trust.User => "yours",
            Trust.Seen => "seen in the source",
            Trust.Derived => "derived",
            Trust.Borrowed => "borrowed",
            Trust.CommonPractice => "common practice",
            Trust.Memory => "from memory",
            Trust.Assumption => "assumption",
            _ => throw new ArgumentOutOfRangeException(nameof(trust)),
        };

    /// <summary>A way of raising a batch, as a code for tables.</summary>
    public static string Code(Method method) =>
        method switch
        {
            Method.Direct => "direct",
            Method.PotUp => "pot-up",
            _ => throw new ArgumentOutOfRangeException(nameof(method)),
        };
}
