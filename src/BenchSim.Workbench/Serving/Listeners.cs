using System.Text;
using System.Threading.Channels;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>One event for the pages that listen.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Data">What it brings: JSON on one line.</param>
internal sealed record PageEvent(string Name, byte[] Data)
{
    /// <summary>What it brings to phones, made when one listens; null for nothing.</summary>
    public Lazy<byte[]>? ForPhones { get; init; }
}

/// <summary>The pages that listen for answers, by server-sent events.</summary>
internal sealed class Listeners
{
    private const int MostWaiting = 16;
    private static readonly TimeSpan s_breath = TimeSpan.FromSeconds(15);
    private static readonly byte[] s_breathText = ":\n\n"u8.ToArray();
    private static readonly Lazy<byte[]> s_nothing = new(() => "{}"u8.ToArray());

    private readonly Lock _gate = new();
    private readonly List<Listener> _listeners = [];
    private PageEvent? _answer;
    private PageEvent? _phoneAnswer;

    /// <summary>Tells all that listen. One that does not keep up misses the oldest.</summary>
    public void Tell(PageEvent told)
    {
        lock (_gate)
        {
            if (told.Name is "answer")
            {
                (_answer, _phoneAnswer) = (told, told.ForPhones is null ? _phoneAnswer : told);
            }

            foreach (var listener in _listeners.Where(listener => !listener.IsPhone || told.ForPhones is not null))
            {
                listener.Channel.Writer.TryWrite(told);
            }
        }
    }

    /// <summary>Forgets the last answer, which is not one of the folder that is opened now.</summary>
    public void Forget()
    {
        lock (_gate)
        {
            (_answer, _phoneAnswer) = (null, null);
        }
    }

    /// <summary>Sends events until the page goes, or the server ends.</summary>
    /// <param name="context">The request.</param>
    /// <param name="isPhone">Whether it is a phone that listens.</param>
    /// <param name="stopping">Tells that the server ends, or the phone is taken away.</param>
    public async Task ListenAsync(HttpContext context, bool isPhone, CancellationToken stopping)
    {
        var channel = Channel.CreateBounded<PageEvent>(
            new BoundedChannelOptions(MostWaiting) { FullMode = BoundedChannelFullMode.DropOldest }
        );
        var listener = new Listener(channel, isPhone);
        using var gone = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, stopping);
        context.Response.ContentType = "text/event-stream";
        context.Response.Headers.CacheControl = "no-store";
        lock (_gate)
        {
            _listeners.Add(listener);
            channel.Writer.TryWrite(
                (isPhone ? _phoneAnswer : _answer) ?? new PageEvent("hello", "{}"u8.ToArray()) { ForPhones = s_nothing }
            );
        }

        try
        {
            while (true)
            {
                var isOne = await WaitAsync(channel.Reader, gone.Token);
                await context.Response.Body.WriteAsync(
                    isOne && channel.Reader.TryRead(out var next) ? Text(next, isPhone) : s_breathText,
                    gone.Token
                );
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
                _listeners.Remove(listener);
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

    private static byte[] Text(PageEvent told, bool isPhone) =>
        [.. Encoding.ASCII.GetBytes($"event: {told.Name}\ndata: "), .. isPhone ? told.ForPhones!.Value : told.Data, .. "\n\n"u8];

    private sealed record Listener(Channel<PageEvent> Channel, bool IsPhone);
}
