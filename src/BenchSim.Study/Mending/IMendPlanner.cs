using BenchSim.Season.Inputs;

namespace BenchSim.Study.Mending;

/// <summary>Makes the plan of some changes as a variant that says them would be planned.</summary>
public interface IMendPlanner
{
    /// <summary>The plan; null where the changes cannot be made.</summary>
    /// <param name="changes">Changes that go together.</param>
    SeasonPlan? Make(IReadOnlyList<MendChange> changes);
}
