using BenchSim.Answers.Opening;
using BenchSim.Season.Inputs;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Mend;

/// <summary>Plans changes by the text of the variant that says them: what is played is what such a file would be read as.</summary>
internal sealed class MendPlanner(OpenedScenario opened) : IMendPlanner
{
    private readonly MendVariant _variant = new(opened.Plan);

    /// <inheritdoc />
    public SeasonPlan? Make(IReadOnlyList<MendChange> changes) => ScenarioSource.OpenText(opened, _variant.Write(changes)).Plan;
}
