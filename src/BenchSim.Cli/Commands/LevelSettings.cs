namespace BenchSim.Cli.Commands;

/// <summary>What <c>level</c> was asked for.</summary>
/// <param name="Directory">Scenario folder.</param>
/// <param name="Out">File for the levelled plan; null for the usual one, and then only a plan to adopt is written.</param>
/// <param name="Fill">Share of the places that the expected trays may fill; null for all.</param>
/// <param name="Json">Print JSON.</param>
internal sealed record LevelSettings(string Directory, string? Out, double? Fill, bool Json);
