using System.Collections.Immutable;
using BenchSim.Answers.Print;
using BenchSim.Report.Labels;
using BenchSim.Season.Values;

namespace BenchSim.Workbench.Showing;

/// <summary>A sheet of labels that may be chosen.</summary>
internal sealed record SheetDocument(string Name, string Words);

/// <summary>The papers of the plan that is looked at.</summary>
/// <param name="Why">Why there are none; null where there are.</param>
/// <param name="Files">Names of the papers there are.</param>
/// <param name="Sentences">What they hold and what to know of them.</param>
/// <param name="Growers">The growers of the plan.</param>
/// <param name="Sheets">The sheets of labels known by name.</param>
/// <param name="Sheet">The one that is used where none is chosen.</param>
internal sealed record PapersDocument(
    string? Why,
    ImmutableArray<string> Files,
    ImmutableArray<string> Sentences,
    ImmutableArray<string> Growers,
    ImmutableArray<SheetDocument> Sheets,
    string? Sheet
)
{
    private static readonly ImmutableArray<SheetDocument> s_sheets =
    [
        .. LabelSheets.Known.Select(sheet => new SheetDocument(sheet.Name, sheet.Words)),
    ];

    /// <summary>The papers that were worked out.</summary>
    public static PapersDocument Of(MadePapers made) =>
        new(
            null,
            [.. made.Set.All.Select(paper => paper.Name)],
            made.Sentences,
            made.Growers,
            s_sheets,
            LabelSheets.Usual(made.Plan.Scenario.Units == UnitSystem.Imperial).Name
        );

    /// <summary>There are none.</summary>
    public static PapersDocument Refused(string why) => new(why, [], [], [], s_sheets, null);
}
