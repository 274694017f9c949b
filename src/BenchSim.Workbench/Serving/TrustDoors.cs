using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>What the page asks of the search for how sure the answer is.</summary>
internal static class TrustDoors
{
    /// <summary>Answers with how far the search is, and what it found.</summary>
    public static Task AnswerAsync(HttpContext context, OpenDesk open) =>
        open is { Desk: { } desk, Trust: { } trust }
            ? JsonBody.SayAsync(context, TrustDocument.Of(trust.State, desk), PageContext.Default.TrustDocument)
            : Gate.RefuseAsync(context, StatusCodes.Status409Conflict, "No folder is open.");

    /// <summary>Begins a search of the plan that is looked at.</summary>
    public static NotMade? Start(OpenDesk open, Desk desk)
    {
        open.Trust!.Start(Looked(desk));
        return null;
    }

    /// <summary>Stops it.</summary>
    public static NotMade? Stop(OpenDesk open)
    {
        open.Trust!.Stop();
        return null;
    }

    /// <summary>The plan that is looked at, as a search takes it.</summary>
    public static PlanAsked Looked(Desk desk)
    {
        var state = desk.State;
        return new PlanAsked(state.Current, state.Looked?.Name, state.Now, state.Looked?.From ?? state.Files, state.Beside);
    }
}
