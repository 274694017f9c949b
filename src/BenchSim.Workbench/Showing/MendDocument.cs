using System.Collections.Immutable;
using BenchSim.Answers.Mend;
using BenchSim.Report.Words;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;

namespace BenchSim.Workbench.Showing;

/// <summary>One thing to do, as the page shows it.</summary>
internal sealed record MendPointDocument(
    string Short,
    string Deed,
    string Gain,
    string Terms,
    ImmutableArray<string> Parts,
    string Mark,
    bool IsMarked
);

/// <summary>What would mend the plan that was looked at when it was asked.</summary>
/// <param name="Search">How far it is, and of which plan.</param>
/// <param name="Goal">The goal in words.</param>
/// <param name="Headline">The answer; null as long as there is none.</param>
/// <param name="Steps">The changes chosen.</param>
/// <param name="Singles">Changes that help alone.</param>
/// <param name="OfTheOrder">Changes of the order that help alone.</param>
/// <param name="NoHelp">What would not help, and what is still in the way.</param>
/// <param name="Cautions">What must be said beside them.</param>
/// <param name="Method">How it was found.</param>
/// <param name="NotHere">The marks of what is not to be had.</param>
internal sealed record MendDocument(
    SearchDocument Search,
    string Goal,
    string? Headline,
    ImmutableArray<MendPointDocument> Steps,
    ImmutableArray<MendPointDocument> Singles,
    ImmutableArray<MendPointDocument> OfTheOrder,
    ImmutableArray<string> NoHelp,
    ImmutableArray<string> Cautions,
    string Method,
    ImmutableArray<string> NotHere
)
{
    /// <summary>The state of a search.</summary>
    /// <param name="state">The search; null for none.</param>
    /// <param name="desk">The desk.</param>
    public static MendDocument Of(SearchState<MendAsked, Mended>? state, Desk desk)
    {
        var marks = NotHereMarks.Of(desk.Folder);
        var found = state?.Found?.List;
        return new MendDocument(
            SearchDocument.Of(state, desk),
            state is null ? "" : ChanceWords.Setting(state.Asked.Goal),
            found?.Headline,
            Points(found?.Steps ?? []),
            Points(found?.Singles ?? []),
            Points(found?.OfTheOrder ?? []),
            found?.NoHelp ?? [],
            found?.Cautions ?? [],
            found?.Method ?? "",
            marks
        );

        ImmutableArray<MendPointDocument> Points(ImmutableArray<MendPoint> points) =>
            [
                .. points.Select(point => new MendPointDocument(
                    point.Short,
                    point.Deed,
                    point.Gain,
                    point.Terms,
                    point.Parts,
                    point.Mark,
                    marks.Contains(point.Mark, StringComparer.Ordinal)
                )),
            ];
    }
}
