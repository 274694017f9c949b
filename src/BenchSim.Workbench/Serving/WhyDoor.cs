using System.Globalization;
using BenchSim.Workbench.Plays;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>Answers why a batch is late, or a space is full in a week, of the plan that is looked at.</summary>
internal static class WhyDoor
{
    /// <summary>Answers a request: of a batch by its id, or of a space by its id and a day.</summary>
    public static async Task AnswerAsync(HttpContext context, OpenDesk open)
    {
        if (open.Looked is not { Played.Result: { } result } looked)
        {
            await Gate.RefuseAsync(context, StatusCodes.Status409Conflict, "There is no answer yet to say why of.");
            return;
        }

        var query = context.Request.Query;
        var document =
            query["batch"].FirstOrDefault() is { } id ? OfBatch(looked, id, context.RequestAborted)
            : int.TryParse(query["day"].FirstOrDefault(), NumberStyles.None, CultureInfo.InvariantCulture, out var day)
            && day < result.Plan.Days
                ? OfWeek(looked, query["space"].FirstOrDefault() ?? "", day, context.RequestAborted)
            : null;
        if (document is null)
        {
            await Gate.RefuseAsync(context, StatusCodes.Status404NotFound, "The plan that is looked at has no such batch, space or day.");
            return;
        }

        await JsonBody.SayAsync(context, document, PageContext.Default.WhyDocument);
    }

    private static WhyDocument? OfBatch(LookedAt looked, string id, CancellationToken cancel)
    {
        var result = looked.Played.Result!;
        var at = Enumerable
            .Range(0, result.Batches.Length)
            .FirstOrDefault(at => string.Equals(result.Batches[at].Plan.Order.Id, id, StringComparison.Ordinal), -1);
        return at < 0
            ? null
            : WhyDocument.OfBatch(
                result,
                at,
                new FaultPlaces(looked.Played.Texts, looked.Desk.Folder.WorkbookOf),
                looked.Player.Kept,
                cancel
            );
    }

    private static WhyDocument? OfWeek(LookedAt looked, string id, int day, CancellationToken cancel)
    {
        var result = looked.Played.Result!;
        var at = Enumerable
            .Range(0, result.Spaces.Length)
            .FirstOrDefault(at => string.Equals(result.Spaces[at].Space.Id, id, StringComparison.Ordinal), -1);
        return at < 0 ? null : WhyDocument.OfWeek(result, at, day, looked.Player.Kept, cancel);
    }
}
