using BenchSim.Season.Inputs;
using BenchSim.Study;

namespace BenchSim.Answers.Asking;

/// <summary>How a plan is to be played; what is not said is as its site says.</summary>
/// <param name="Seasons">Seasons, 1 or more.</param>
/// <param name="Seed">Seed of all luck.</param>
/// <param name="Threads">Threads, 1 or more; null for one a core. No answer depends on it.</param>
public sealed record PlayWish(int? Seasons = null, ulong? Seed = null, int? Threads = null)
{
    /// <summary>How this plan is played.</summary>
    internal StudyOptions Of(SeasonPlan plan) =>
        new()
        {
            Seasons = Seasons ?? plan.Scenario.Play.Seasons,
            Seed = Seed ?? plan.Scenario.Play.Seed,
            Threads = Threads ?? 0,
        };
}
