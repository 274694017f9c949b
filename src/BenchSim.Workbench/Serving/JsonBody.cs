using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using BenchSim.Workbench.Drafts;
using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;

namespace BenchSim.Workbench.Serving;

/// <summary>Bodies of requests, JSON alone, limited in size and in time; and those of answers.</summary>
internal static class JsonBody
{
    /// <summary>Largest body, bytes: a plan of 10,000 sowings pasted at once is some 2 MB.</summary>
    public const long Largest = 4_000_000;

    /// <summary>How long a body may take.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    /// <summary>Reads a body.</summary>
    /// <returns>What it holds; null where it was refused, and answered.</returns>
    public static async Task<T?> ReadAsync<T>(HttpContext context, JsonTypeInfo<T> type)
        where T : class, IAsked
    {
        if (
            !MediaTypeHeaderValue.TryParse(context.Request.ContentType, out var media)
            || !media.MediaType.Equals("application/json", StringComparison.OrdinalIgnoreCase)
        )
        {
            await Gate.RefuseAsync(context, StatusCodes.Status415UnsupportedMediaType, "Write JSON.");
            return null;
        }

        using var tooLong = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted);
        tooLong.CancelAfter(Longest);
        try
        {
            var body = await JsonSerializer.DeserializeAsync(context.Request.Body, type, tooLong.Token);
            if (body is { IsWhole: true })
            {
                return body;
            }

            await Gate.RefuseAsync(context, StatusCodes.Status400BadRequest, "Write a JSON object.");
        }
        catch (JsonException)
        {
            await Gate.RefuseAsync(context, StatusCodes.Status400BadRequest, "This is not the JSON that is read here.");
        }
        catch (BadHttpRequestException refused)
        {
            // Too large, or too slow for the server itself.
            await Gate.RefuseAsync(context, refused.StatusCode, "The body is too large, or came too slowly.");
        }
        catch (OperationCanceledException) when (!context.RequestAborted.IsCancellationRequested)
        {
            context.Response.Headers.Connection = "close";
            await Gate.RefuseAsync(context, StatusCodes.Status408RequestTimeout, "The body came too slowly.");
        }

        return null;
    }

    /// <summary>Answers with JSON.</summary>
    public static Task SayAsync<T>(HttpContext context, T document, JsonTypeInfo<T> type)
    {
        context.Response.ContentType = "application/json; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        return context.Response.Body.WriteAsync(JsonSerializer.SerializeToUtf8Bytes(document, type), context.RequestAborted).AsTask();
    }
}
