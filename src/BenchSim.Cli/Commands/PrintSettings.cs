using BenchSim.Report.Papers;

namespace BenchSim.Cli.Commands;

/// <summary>What was asked of <c>print</c>.</summary>
/// <param name="Directory">Scenario folder, as the user wrote it.</param>
/// <param name="Out">Folder for the papers; null for the scenario folder's name with "-papers", beside it.</param>
/// <param name="Papers">Which papers, for which dates.</param>
/// <param name="Json">True for output that machines read.</param>
internal sealed record PrintSettings(string Directory, string? Out, PaperSettings Papers, bool Json);
