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

/// <summary>What the search says of how far it is.</summary>
internal sealed record MendProgressDocument(bool IsRunning, int Done);

/// <summary>What would mend the plan that was looked at when it was asked.</summary>
/// <param name="IsRunning">Whether it still looks.</param>
/// <param name="Done">How far it is, in hundredths.</param>
/// <param name="Plan">Which plan; null before any search.</param>
/// <param name="IsOfNow">Whether that is still the plan that is looked at.</param>
/// <param name="Goal">The goal in words.</param>
/// <param name="Faults">What is wrong in the files.</param>
/// <param name="Failure">On what fault of its own the program stopped, in a sentence; null for none.</param>
/// <param name="Headline">The answer; null as long as there is none.</param>
/// <param name="Steps">The changes chosen.</param>
/// <param name="Singles">Changes that help alone.</param>
/// <param name="OfTheOrder">Changes of the order that help alone.</param>
/// <param name="NoHelp">What would not help, and what is still in the way.</param>
/// <param name="Cautions">What must be said beside them.</param>
/// <param name="Method">How it was found.</param>
/// <param name="NotHere">The marks of what is not to be had.</param>
internal sealed record MendDocument(
    bool IsRunning,
    int Done,
    string? Plan,
    bool IsOfNow,
    string Goal,
    ImmutableArray<FaultDocument> Faults,
    string? Failure,
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
    public static MendDocument Of(MendState? state, Desk desk)
    {
        var marks = NotHereMarks.Of(desk.Folder);
        var looked = desk.State;
        var places = new FaultPlaces(state?.Asked.Texts ?? Texts.None, desk.Folder.WorkbookOf);
        var found = state?.Found;
        return new MendDocument(
            state is { IsRunning: true },
            state?.Done ?? 0,
            state is null ? null : state.Asked.Name ?? "the files",
            state is not null && state.Asked.Beside == looked.Beside && Texts.Differing(state.Asked.Texts, looked.Now).IsEmpty,
            state is null ? "" : ChanceWords.Setting(state.Asked.Goal),
            state is null ? [] : [.. state.Faults.Select(places.Of)],
            state?.Failure is { } kind ? FailureWords.Of("search", kind) : null,
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
