using System.Collections.Immutable;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;

namespace BenchSim.Workbench.Showing;

/// <summary>What a search says of how far it is.</summary>
internal sealed record SearchProgress(bool IsRunning, int Done);

/// <summary>How far a search is, and of which plan.</summary>
/// <param name="IsRunning">Whether it still looks.</param>
/// <param name="Done">How far it is, in hundredths.</param>
/// <param name="Plan">Which plan; null before any search.</param>
/// <param name="IsOfNow">Whether that is still the plan that is looked at.</param>
/// <param name="Faults">What is wrong in the files.</param>
/// <param name="Failure">On what fault of its own the program stopped, in a sentence; null for none.</param>
internal sealed record SearchDocument(
    bool IsRunning,
    int Done,
    string? Plan,
    bool IsOfNow,
    ImmutableArray<FaultDocument> Faults,
    string? Failure
)
{
    /// <summary>The state of a search.</summary>
    /// <param name="state">The search; null for none.</param>
    /// <param name="desk">The desk.</param>
    public static SearchDocument Of<TAsked, TFound>(SearchState<TAsked, TFound>? state, Desk desk)
        where TAsked : PlanAsked
        where TFound : class
    {
        if (state is null)
        {
            return new SearchDocument(false, 0, null, false, [], null);
        }

        var (asked, looked) = (state.Asked, desk.State);
        var places = new FaultPlaces(asked.Texts, desk.Folder.WorkbookOf);
        return new SearchDocument(
            state.IsRunning,
            state.Done,
            asked.Name ?? "the files",
            asked.Beside == looked.Beside && Texts.Differing(asked.Texts, looked.Now).IsEmpty,
            [.. state.Faults.Select(places.Of)],
            state.Failure is { } kind ? FailureWords.Of("search", kind) : null
        );
    }
}
