using System.Collections.Immutable;

namespace BenchSim.Cli.Commands;

/// <summary>What <c>succession</c> was asked for.</summary>
/// <param name="Directory">Scenario folder.</param>
/// <param name="Batch">Id of the line.</param>
/// <param name="Every">Days from one sowing to the next.</param>
/// <param name="Times">Numbers of sowings.</param>
/// <param name="Gap">Days that one set-out supplies; null to take the crop's harvest.</param>
/// <param name="Json">Print JSON.</param>
internal sealed record SuccessionSettings(
    string Directory,
    string Batch,
    ImmutableArray<int> Every,
    ImmutableArray<int> Times,
    int? Gap,
    bool Json
);
