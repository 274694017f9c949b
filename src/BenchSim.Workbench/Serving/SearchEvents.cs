using System.Text.Json;
using BenchSim.Workbench.Plays;
using BenchSim.Workbench.Showing;

namespace BenchSim.Workbench.Serving;

/// <summary>How far a search is, as an event for the pages.</summary>
internal static class SearchEvents
{
    /// <summary>The event.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="state">The search; null for none.</param>
    public static PageEvent Of<TAsked, TFound>(string name, SearchState<TAsked, TFound>? state)
        where TAsked : PlanAsked
        where TFound : class =>
        new(
            name,
            JsonSerializer.SerializeToUtf8Bytes(
                new SearchProgress(state is { IsRunning: true }, state?.Done ?? 0),
                PageContext.Default.SearchProgress
            )
        );
}
