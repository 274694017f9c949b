namespace BenchSim.Report.Case;

/// <summary>One item of the published checklist, with the answer for this very run.</summary>
/// <param name="Number">Its number: 2.5.1.</param>
/// <param name="Name">Its name, as published.</param>
/// <param name="Answer">The answer.</param>
internal sealed record ChecklistItem(string Number, string Name, string Answer);
