using BenchSim.Season.Inputs;

namespace BenchSim.Study.Mending;

/// <summary>Makes the plans of many changes, several at once.</summary>
/// <param name="planner">Makes one.</param>
/// <param name="options">Threads.</param>
/// <param name="cancel">Stops the work.</param>
internal sealed class MendPlanning(IMendPlanner planner, MendOptions options, CancellationToken cancel)
{
    /// <summary>The candidates with the plans they make, in their order; those that cannot be made are left out.</summary>
    /// <param name="candidates">The candidates.</param>
    /// <param name="with">All the changes to make for one.</param>
    /// <param name="days">Fewest days played.</param>
    public IEnumerable<MendTried> Of(IReadOnlyList<MendTried> candidates, Func<MendTried, MendChange[]> with, int days)
    {
        var plans = new SeasonPlan?[candidates.Count];
        var parallel = new ParallelOptions
        {
            CancellationToken = cancel,
            MaxDegreeOfParallelism = options.Threads > 0 ? options.Threads : Environment.ProcessorCount,
        };
        Parallel.For(0, plans.Length, parallel, at => plans[at] = Of(with(candidates[at]), days));
        return candidates.Zip(plans).Where(pair => pair.Second is not null).Select(pair => pair.First with { Plan = pair.Second! });
    }

    /// <summary>The plan of some changes; null where they cannot be made.</summary>
    /// <param name="changes">Changes that go together.</param>
    /// <param name="days">Fewest days played.</param>
    public SeasonPlan? Of(IReadOnlyList<MendChange> changes, int days) =>
        planner.Make(changes) is { } plan ? plan with { Days = Math.Max(plan.Days, days) } : null;
}
