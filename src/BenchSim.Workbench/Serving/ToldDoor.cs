using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>Answers of the files that are told as the terminal tells them.</summary>
internal static class ToldDoor
{
    /// <summary>Asks the files, and answers in the words of the command; or why there is no answer.</summary>
    /// <param name="context">The request.</param>
    /// <param name="open">The desk.</param>
    /// <param name="of">What it is asked of, beside the files; null for nothing.</param>
    /// <param name="ask">Asks it of their texts.</param>
    /// <param name="more">Adds to the answer what the page alone shows; null for nothing.</param>
    public static async Task AnswerAsync<T>(
        HttpContext context,
        OpenDesk open,
        Func<Desk, object?>? of,
        Func<Desk, ImmutableSortedDictionary<string, string>, PlayWatch, T> ask,
        Func<T, Desk, ToldDocument, ToldDocument>? more = null
    )
        where T : Answer
    {
        if (open.Desk is not { } desk)
        {
            await Gate.RefuseAsync(context, StatusCodes.Status409Conflict, "No folder is open.");
            return;
        }

        ToldDocument document;
        try
        {
            var answer = await open.Beside.AskAsync(
                desk,
                of?.Invoke(desk),
                (files, watch) => ask(desk, files, watch),
                context.RequestAborted
            );
            document = ToldDocument.Of(answer);
            document = more is null ? document : more(answer, desk, document);
        }
        catch (FaultsFoundException found)
        {
            document = ToldDocument.Nothing(FailureWords.Mend(found));
        }
        catch (RefusedException refused)
        {
            document = ToldDocument.Nothing(refused.Message);
        }

        await JsonBody.SayAsync(context, document, PageContext.Default.ToldDocument);
    }
}
