using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>A plan, or why there is none.</summary>
/// <param name="Plan">The plan; null when there is any fault.</param>
/// <param name="Faults">Faults, in the order of the plan.</param>
public sealed record PlanResult(SeasonPlan? Plan, ImmutableArray<Fault> Faults);
