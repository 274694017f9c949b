namespace BenchSim.Cli.Commands;

/// <summary>What was asked of <c>check</c>.</summary>
/// <param name="Directory">The scenario folder, as the user wrote it.</param>
/// <param name="Sources">True to print every value with its source, not only those that rest on memory or assumption.</param>
/// <param name="Stand">True to print the ways to each stand.</param>
/// <param name="Json">True for output that machines read.</param>
internal sealed record CheckSettings(string Directory, bool Sources, bool Stand, bool Json);
