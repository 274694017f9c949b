using System.Text;
using System.Threading.Channels;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>One event for the pages that listen.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Data">What it brings: JSON on one line.</param>
internal sealed record PageEvent(string Name, byte[] Data);

/// <summary>The pages that listen for answers, by server-sent events.</summary>
internal sealed class Listeners
{
    private const int MostWaiting = 16;
    private static readonly TimeSpan s_breath = TimeSpan.FromSeconds(15);

    private readonly Lock _gate = new();
    private readonly List<Channel<PageEvent>> _channels = [];
    private PageEvent? _answer;

    /// <summary>Tells all that listen. One that does not keep up misses the oldest.</summary>
    public void Tell(PageEvent told)
    {
        lock (_gate)
        {
            _answer = told.Name is "answer" ? told : _answer;
            foreach (var channel in _channels)
            {
                channel.Writer.TryWrite(told);
            }
        }
    }

    /// <summary>Forgets the last answer, which is not one of the folder that is opened now.</summary>
    public void Forget()
    {
        lock (_gate)
        {
            _answer = null;
        }
    }

    /// <summary>Sends events until the page goes, or the server ends.</summary>
    public async Task ListenAsync(HttpContext context, CancellationToken stopping)
    {
        var channel = Channel.CreateBounded<PageEvent>(
            new BoundedChannelOptions(MostWaiting) { FullMode = BoundedChannelFullMode.DropOldest }
        );
        using var gone = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, stopping);
        context.Response.ContentType = "text/event-stream";
        context.Response.Headers.CacheControl = "no-store";
        lock (_gate)
        {
            _channels.Add(channel);
            channel.Writer.TryWrite(_answer ?? new PageEvent("hello", "{}"u8.ToArray()));
        }

        try
        {
            while (true)
            {
                var isOne = await WaitAsync(channel.Reader, gone.Token);
                await context.Response.Body.WriteAsync(isOne && channel.Reader.TryRead(out var next) ? Text(next) : Text(null), gone.Token);
                await context.Response.Body.FlushAsync(gone.Token);
            }
        }
        catch (Exception end) when (end is OperationCanceledException or IOException)
        {
            // The page is gone, or the server ends.
        }
        finally
        {
            lock (_gate)
            {
                _channels.Remove(channel);
            }
        }
    }

    // False after a while in which there was nothing to tell: a breath then shows whether the page is still there.
    private static async Task<bool> WaitAsync(ChannelReader<PageEvent> reader, CancellationToken cancel)
    {
        using var breath = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        breath.CancelAfter(s_breath);
        try
        {
            return await reader.WaitToReadAsync(breath.Token);
        }
        catch (OperationCanceledException) when (!cancel.IsCancellationRequested)
        {
            return false;
        }
    }

    private static byte[] Text(PageEvent? told) =>
        told is null ? ":\n\n"u8.ToArray() : [.. Encoding.ASCII.GetBytes($"event: {told.Name}\ndata: "), .. told.Data, .. "\n\n"u8];
}
