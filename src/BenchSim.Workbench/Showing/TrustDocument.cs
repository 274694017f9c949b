using BenchSim.Answers.Trust;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;

namespace BenchSim.Workbench.Showing;

/// <summary>How sure the answer of the plan is that was looked at when it was asked.</summary>
/// <param name="Search">How far it is, and of which plan.</param>
/// <param name="Found">The answer; null as long as there is none.</param>
internal sealed record TrustDocument(SearchDocument Search, TrustList? Found)
{
    /// <summary>The state of a search.</summary>
    /// <param name="state">The search; null for none.</param>
    /// <param name="desk">The desk.</param>
    public static TrustDocument Of(SearchState<PlanAsked, TrustList>? state, Desk desk) =>
        new(SearchDocument.Of(state, desk), state?.Found);
}
