using System.Collections.Frozen;
using BenchSim.Folder.Files;
using BenchSim.Workbench.Phones;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>
/// What a paired phone may ask: the answer of the files and the benches as they stand; and what it may do: write lines into the log, and
/// take back what was written on the page. Files, tries, papers and the phones themselves are the owner's alone.
/// </summary>
internal sealed class PhoneDoors
{
    private readonly FrozenDictionary<string, Func<HttpContext, PairedPhone, Task>> _gets;
    private readonly FrozenDictionary<string, Func<HttpContext, Task>> _posts;

    /// <summary>Makes the doors of a desk.</summary>
    /// <param name="open">The desk.</param>
    /// <param name="phones">The phones that are let in.</param>
    /// <param name="stopping">Tells that the server stops.</param>
    public PhoneDoors(OpenDesk open, PairedPhones phones, CancellationToken stopping)
    {
        _gets = new Dictionary<string, Func<HttpContext, PairedPhone, Task>>(StringComparer.Ordinal)
        {
            ["/api/desk"] = (context, _) => JsonBody.SayAsync(context, open.PhoneDocument(), PageContext.Default.DeskDocument),
            ["/api/fields"] = (context, _) =>
                JsonBody.SayAsync(
                    context,
                    [.. FieldsDocument.All.Where(each => string.Equals(each.Section, FileNames.Log, StringComparison.Ordinal))],
                    PageContext.Default.Fields
                ),
            ["/api/today"] = (context, _) => TodayDoors.AnswerAsync(context, open),
            ["/api/coming"] = (context, _) => TodayDoors.ComingAsync(context, open),
            ["/api/events"] = async (context, phone) =>
            {
                using var gone = CancellationTokenSource.CreateLinkedTokenSource(phones.GoneOf(phone), stopping);
                await open.Listeners.ListenAsync(context, isPhone: true, gone.Token);
            },
        }.ToFrozenDictionary(StringComparer.Ordinal);
        _posts = new Dictionary<string, Func<HttpContext, Task>>(StringComparer.Ordinal)
        {
            ["/api/log"] = context =>
                Doors.DoAsync(
                    context,
                    open.Desk,
                    PageContext.Default.LogRequest,
                    (desk, asked) => TodayDoors.Write(open, desk, asked),
                    open.PhoneDocument
                ),
            ["/api/log/back"] = context =>
                Doors.DoAsync(
                    context,
                    open.Desk,
                    PageContext.Default.LogRequest,
                    (desk, asked) => TodayDoors.TakeBack(open, desk, asked),
                    open.PhoneDocument
                ),
        }.ToFrozenDictionary(StringComparer.Ordinal);
    }

    /// <summary>Answers a request of a phone.</summary>
    /// <returns>False where it is none of these, and asks for nothing that is the owner's.</returns>
    public async Task<bool> AnswerAsync(HttpContext context, PairedPhone phone)
    {
        var path = context.Request.Path.Value ?? "";
        if (HttpMethods.IsPost(context.Request.Method))
        {
            if (_posts.TryGetValue(path, out var post))
            {
                await post(context);
                return true;
            }
        }
        else if (_gets.TryGetValue(path, out var get))
        {
            await get(context, phone);
            return true;
        }
        else if (!path.StartsWith("/api/", StringComparison.Ordinal) && !path.StartsWith("/papers/", StringComparison.Ordinal))
        {
            return false;
        }

        await Gate.RefuseAsync(
            context,
            StatusCodes.Status403Forbidden,
            "A phone sees the benches and writes the log. All else is done on the computer."
        );
        return true;
    }
}
