using System.Collections.Immutable;

namespace BenchSim.Cli.Commands;

/// <summary>What <c>succession</c> was asked for.</summary>
/// <param name="Directory">Scenario folder.</param>
/// <param name="Batch">Id of the line.</param>
/// <param name="Every">Days from one sowing to the next.</param>
/// <param name="Times">Numbers of sowings.</param>
/// <param name="Gap">Days that one set-out supplies; null to take the crop's harvest.</param>
/// <param name="Seasons">Seasons; null for the scenario's.</param>
/// <param name="Seed">Seed; null for the scenario's.</param>
/// <param name="Threads">Threads; null for one a core.</param>
/// <param name="Json">Print JSON.</param>
internal sealed record SuccessionSettings(
    string Directory, string Batch, ImmutableArray<int> Every, ImmutableArray<int> Times, int? Gap, int? Seasons, ulong? Seed, int? Threads, bool Json);
