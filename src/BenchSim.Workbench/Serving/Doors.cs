using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text.Json.Serialization.Metadata;
using BenchSim.Answers.Laying;
using BenchSim.Folder.Files;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>What the page may ask the server: an address each.</summary>
internal sealed class Doors
{
    private readonly FrozenDictionary<string, Func<HttpContext, Task>> _gets;
    private readonly FrozenDictionary<string, Func<HttpContext, Task>> _posts;
    private readonly OpenDesk _open;

    /// <summary>Makes the doors of a desk.</summary>
    /// <param name="open">The desk.</param>
    /// <param name="stopping">Tells that the server stops.</param>
    public Doors(OpenDesk open, CancellationToken stopping)
    {
        _open = open;
        var papers = new PaperDoors(open);
        _gets = new Dictionary<string, Func<HttpContext, Task>>(StringComparer.Ordinal)
        {
            ["/api/desk"] = context => JsonBody.SayAsync(context, open.Document(), PageContext.Default.DeskDocument),
            ["/api/fields"] = context => JsonBody.SayAsync(context, FieldsDocument.All, PageContext.Default.Fields),
            ["/api/starters"] = context => JsonBody.SayAsync(context, StartersDocument.All, PageContext.Default.StartersDocument),
            ["/api/mend"] = context => MendDoors.AnswerAsync(context, open),
            ["/api/trust"] = context => TrustDoors.AnswerAsync(context, open),
            ["/api/why"] = context => WhyDoor.AnswerAsync(context, open),
            ["/api/papers"] = papers.ListAsync,
            ["/api/today"] = context => TodayDoors.AnswerAsync(context, open),
            ["/api/coming"] = context => TodayDoors.ComingAsync(context, open),
            ["/api/agreed"] = context => AgreeDoors.StateAsync(context, open),
            ["/api/bills"] = context => AgreeDoors.BillsAsync(context, open),
            ["/api/learn"] = context => LogDoors.LearnAsync(context, open),
            ["/api/review"] = context => LogDoors.ReviewAsync(context, open),
            ["/api/phones"] = context => PhonesDoor.AnswerAsync(context, open),
            ["/api/events"] = context => open.Listeners.ListenAsync(context, isPhone: false, stopping),
        }
            .Concat(
                PaperDoors.Addresses.Select(address => KeyValuePair.Create<string, Func<HttpContext, Task>>(address, papers.AnswerAsync))
            )
            .ToFrozenDictionary(StringComparer.Ordinal);
        _posts = new Dictionary<string, Func<HttpContext, Task>>(StringComparer.Ordinal)
        {
            ["/api/edit"] = context =>
                DoAsync(context, PageContext.Default.EditRequest, (desk, asked) => desk.Edit(asked.What, asked.Changes)),
            ["/api/live"] = context => DoAsync(context, PageContext.Default.EditRequest, (_, asked) => open.Live(asked.Changes)),
            ["/api/undo"] = context => DoAsync(context, PageContext.Default.NothingRequest, (desk, _) => desk.Undo(again: false)),
            ["/api/redo"] = context => DoAsync(context, PageContext.Default.NothingRequest, (desk, _) => desk.Undo(again: true)),
            ["/api/begin"] = context => DoAsync(context, PageContext.Default.NothingRequest, (desk, _) => desk.BeginTry()),
            ["/api/look"] = context => DoAsync(context, PageContext.Default.TryRequest, (desk, asked) => desk.Look(asked.Id)),
            ["/api/name"] = context => DoAsync(context, PageContext.Default.TryRequest, (desk, asked) => desk.Name(asked.Id, asked.Name)),
            ["/api/drop"] = context => DoAsync(context, PageContext.Default.TryRequest, (desk, asked) => desk.Drop(asked.Id)),
            ["/api/settle"] = context =>
                DoAsync(context, PageContext.Default.TryRequest, (desk, asked) => desk.Settle(asked.Id, asked.Name, asked.Mine)),
            ["/api/put"] = context => DoAsync(context, PageContext.Default.TryRequest, (desk, asked) => desk.PutIntoFiles(asked.Id)),
            ["/api/mend/start"] = context =>
                DoAsync(context, PageContext.Default.MendRequest, (desk, asked) => MendDoors.Start(open, desk, asked)),
            ["/api/mend/stop"] = context => DoAsync(context, PageContext.Default.NothingRequest, (_, _) => MendDoors.Stop(open)),
            ["/api/mend/take"] = context =>
                DoAsync(context, PageContext.Default.TakeRequest, (desk, asked) => MendDoors.Take(open, desk, asked)),
            ["/api/mend/mark"] = context =>
                DoAsync(context, PageContext.Default.MarkRequest, (desk, asked) => NotHereMarks.Set(desk.Folder, asked.Mark, asked.IsHere)),
            ["/api/trust/start"] = context =>
                DoAsync(context, PageContext.Default.NothingRequest, (desk, _) => TrustDoors.Start(open, desk)),
            ["/api/trust/stop"] = context => DoAsync(context, PageContext.Default.NothingRequest, (_, _) => TrustDoors.Stop(open)),
            ["/api/log"] = context =>
                DoAsync(context, PageContext.Default.LogRequest, (desk, asked) => TodayDoors.Write(open, desk, asked)),
            ["/api/log/back"] = context =>
                DoAsync(context, PageContext.Default.LogRequest, (desk, asked) => TodayDoors.TakeBack(open, desk, asked)),
            ["/api/learn/take"] = context => DoAsync(context, PageContext.Default.NothingRequest, (desk, _) => LogDoors.Take(open, desk)),
            ["/api/agree"] = context => SaidAsync(context, PageContext.Default.AgreeRequest, AgreeDoors.Agree),
            ["/api/phones/code"] = context => DoAsync(context, PageContext.Default.NothingRequest, (_, _) => PhonesDoor.NewCode(open)),
            ["/api/phones/remove"] = context =>
                DoAsync(context, PageContext.Default.PhoneRequest, (_, asked) => PhonesDoor.Remove(open, asked)),
            ["/api/variant"] = context =>
                DoAsync(context, PageContext.Default.TryRequest, (desk, asked) => VariantDoor.Take(open, desk, asked)),
            ["/api/keep"] = context =>
                SaidAsync(context, PageContext.Default.TryRequest, (Desk desk, TryRequest asked, out string said) =>
                    desk.KeepAsVariant(asked.Id, asked.Name, out said)
                ),
            ["/api/new"] = context =>
                LayDownAsync(context, PageContext.Default.FarmRequest, asked =>
                    FarmTexts.Refusal(asked) is { } why ? new NotMade(why, false) : open.LayDown(asked.Folder, FarmTexts.Of(asked))
                ),
            ["/api/example"] = context => LayDownAsync(context, PageContext.Default.TryRequest, asked => open.LayDown(asked.Name, null)),
            ["/api/open"] = context => LayDownAsync(context, PageContext.Default.TryRequest, asked => open.OpenBefore(asked.Name)),
            ["/api/starter"] = context =>
                LayDownAsync(context, PageContext.Default.StarterRequest, asked =>
                    FilesOf(asked) is { } files
                        ? open.LayDown(asked.Name, files)
                        : new NotMade("There is no such farm, climate or year.", false)
                ),
        }.ToFrozenDictionary(StringComparer.Ordinal);
    }

    /// <summary>Answers a request.</summary>
    /// <returns>False where it is none of these.</returns>
    public async Task<bool> AnswerAsync(HttpContext context)
    {
        var doors = HttpMethods.IsPost(context.Request.Method) ? _posts : _gets;
        if (!doors.TryGetValue(context.Request.Path.Value ?? "", out var door))
        {
            return false;
        }

        await door(context);
        return true;
    }

    /// <summary>Does what a request asks for, and answers with the desk as it is then, or why it was not done.</summary>
    /// <param name="context">The request.</param>
    /// <param name="desk">The desk; null where no folder is open.</param>
    /// <param name="type">What its body holds.</param>
    /// <param name="act">Does it.</param>
    /// <param name="document">The desk as whoever asks sees it.</param>
    public static async Task DoAsync<T>(
        HttpContext context,
        Desk? desk,
        JsonTypeInfo<T> type,
        Func<Desk, T, NotMade?> act,
        Func<DeskDocument> document
    )
        where T : class, IAsked
    {
        if (await JsonBody.ReadAsync(context, type) is not { } asked)
        {
            return;
        }

        if (desk is null)
        {
            await Gate.RefuseAsync(context, StatusCodes.Status409Conflict, "No folder is open.");
            return;
        }

        await (
            act(desk, asked) is { } fault
                ? RefuseAsync(context, fault)
                : JsonBody.SayAsync(context, document(), PageContext.Default.DeskDocument)
        );
    }

    /// <summary>Answers why something was not done.</summary>
    public static Task RefuseAsync(HttpContext context, NotMade fault)
    {
        context.Response.StatusCode = StatusCodes.Status409Conflict;
        return JsonBody.SayAsync(context, new RefusalDocument(fault.Why, fault.IsConflict), PageContext.Default.RefusalDocument);
    }

    private static ImmutableArray<InputFile>? FilesOf(StarterRequest asked) =>
        Starters.Find(asked.Farm) is { } starter
        && StarterClimate.Find(asked.Climate) is { } climate
        && asked.Year is >= Starter.FirstYear and <= Starter.LastYear
            ? starter.Files(climate, asked.Units, asked.Year)
            : null;

    private Task DoAsync<T>(HttpContext context, JsonTypeInfo<T> type, Func<Desk, T, NotMade?> act)
        where T : class, IAsked => DoAsync(context, _open.Desk, type, act, _open.Document);

    // Does what a request asks for, and says what was done where that is more than what was asked for.
    private async Task SaidAsync<T>(HttpContext context, JsonTypeInfo<T> type, Saying<T> act)
        where T : class, IAsked
    {
        if (await JsonBody.ReadAsync(context, type) is not { } asked)
        {
            return;
        }

        var (fault, said) = (new NotMade("No folder is open.", false), "");
        fault = _open.Desk is { } desk ? act(desk, asked, out said) : fault;
        await (
            fault is null
                ? JsonBody.SayAsync(context, _open.Document() with { Said = said }, PageContext.Default.DeskDocument)
                : SayAsync(context, fault)
        );
    }

    private async Task LayDownAsync<T>(HttpContext context, JsonTypeInfo<T> type, Func<T, NotMade?> lay)
        where T : class, IAsked
    {
        if (await JsonBody.ReadAsync(context, type) is { } asked)
        {
            await SayAsync(context, lay(asked));
        }
    }

    private Task SayAsync(HttpContext context, NotMade? fault) =>
        fault is null ? JsonBody.SayAsync(context, _open.Document(), PageContext.Default.DeskDocument) : RefuseAsync(context, fault);

    // Tells what was done.
    private delegate NotMade? Saying<in T>(Desk desk, T asked, out string said);
}
