using BenchSim.Answers.Mend;
using BenchSim.Folder.Files;
using BenchSim.Report.Words;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>What the page asks of the search for what would mend the plan.</summary>
internal static class MendDoors
{
    /// <summary>Answers with how far the search is, and what it found.</summary>
    public static Task AnswerAsync(HttpContext context, OpenDesk open) =>
        open is { Desk: { } desk, Mender: { } mender }
            ? JsonBody.SayAsync(context, MendDocument.Of(mender.State, desk), PageContext.Default.MendDocument)
            : Gate.RefuseAsync(context, StatusCodes.Status409Conflict, "No folder is open.");

    /// <summary>Begins a search of the plan that is looked at.</summary>
    public static NotMade? Start(OpenDesk open, Desk desk, MendRequest asked)
    {
        if (!(asked.Goal is > 0 and < 100))
        {
            return new NotMade("Write the goal as a share of seasons above 0 and below 100 %.", false);
        }

        open.Mender!.Start(new MendAsked(TrustDoors.Looked(desk), asked.Goal / 100));
        return null;
    }

    /// <summary>Stops it.</summary>
    public static NotMade? Stop(OpenDesk open)
    {
        open.Mender!.Stop();
        return null;
    }

    /// <summary>Takes something that was found as a try.</summary>
    public static NotMade? Take(OpenDesk open, Desk desk, TakeRequest asked)
    {
        if (open.Mender!.State is not { Found: { } found } state || PointOf(found.List, asked) is not { } point)
        {
            return new NotMade("This is no longer among what was found. Look again.", true);
        }

        var what = asked.Of is TakenFrom.Steps && asked.At > 0 ? $"Changes 1 to {asked.At + 1}" : PlainText.Capital(point.Short);
        var changes = new VariantChanges(state.Asked.Texts, found.Plan).Of(point.Variant, out var fault);
        if (fault is not null)
        {
            return desk.InWorkbook(FileNames.Plan) is { } why ? new NotMade(why, false) : fault;
        }

        return desk.BeginTry(PlainText.Short(what, Desk.LongestName), state.Asked.From, state.Asked.Texts, what, changes);
    }

    private static MendPoint? PointOf(MendList found, TakeRequest asked)
    {
        var points = asked.Of switch
        {
            TakenFrom.Steps => found.Steps,
            TakenFrom.Singles => found.Singles,
            _ => found.OfTheOrder,
        };
        return asked.At >= 0 && asked.At < points.Length ? points[asked.At] : null;
    }
}
