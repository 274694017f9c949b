using System.Collections.Immutable;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study.Counting;

/// <summary>Counts who waits for whom, as far as a plan can bring it.</summary>
internal sealed class WaitTally(PlanShape shape)
    : FigureTally<WaitSeason>([.. shape.Waits.Select(pair => new WaitSeason(shape, pair))], WaitFigures.All, shape.Days)
{
    /// <summary>What was counted.</summary>
    public ImmutableArray<WaitResult> ToResults(Telling telling) =>
        [
            .. Owners.Select(
                (wait, at) =>
                    new WaitResult
                    {
                        From = wait.Pair.From < shape.Plan.Scenario.Spaces.Length ? shape.Plan.Scenario.Spaces[wait.Pair.From] : null,
                        By = shape.Plan.Scenario.Spaces[wait.Pair.By],
                        Figures = Tell(at, telling),
                    }
            ),
        ];
}
