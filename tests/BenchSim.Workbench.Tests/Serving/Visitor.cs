using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using BenchSim.Workbench;
using BenchSim.Workbench.Phones;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>A workbench on a folder, and a browser of sorts that visits it: it keeps cookies and follows nothing.</summary>
internal sealed class Visitor : IAsyncDisposable
{
    private readonly OpenWorkbench _workbench;
    private readonly CookieContainer _cookies = new();
    private readonly HttpClient _client;

    private Visitor(OpenWorkbench workbench)
    {
        _workbench = workbench;
        _client = NewClient(_cookies);
        Root = new Uri(new Uri(workbench.Address).GetLeftPart(UriPartial.Authority));
    }

    /// <summary>The address with the key.</summary>
    public Uri Address => new(_workbench.Address);

    /// <summary>The address of the page.</summary>
    public Uri Root { get; }

    /// <summary>The cookie that it was given.</summary>
    public string Cookie => _cookies.GetCookieHeader(Root);

    /// <summary>The addresses at which phones are let in.</summary>
    public IReadOnlyList<string> PhoneAddresses => _workbench.PhoneAddresses;

    /// <summary>The codes that the terminal was told.</summary>
    public List<string> Codes { get; } = [];

    /// <summary>Opens a folder; the key is not taken yet.</summary>
    public static async Task<Visitor> OutsideAsync(string? folder, Lan? lan = null, int port = 0)
    {
        var visitor = new Visitor(await OpenWorkbench.StartAsync(folder, port, CancellationToken.None, null, lan));
        visitor._workbench.TellCodes(visitor.Codes.Add);
        return visitor;
    }

    /// <summary>Opens a folder and goes in.</summary>
    public static async Task<Visitor> InsideAsync(string? folder, Lan? lan = null, int port = 0)
    {
        var visitor = await OutsideAsync(folder, lan, port);
        using var answer = await visitor.GetAsync(visitor.Address.PathAndQuery);
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        return visitor;
    }

    /// <summary>Another browser, without this one's cookie.</summary>
    public static HttpClient NewClient(CookieContainer? cookies = null) =>
        new(
            new SocketsHttpHandler
            {
                AllowAutoRedirect = false,
                UseProxy = false,
                CookieContainer = cookies ?? new CookieContainer(),
            }
        )
        {
            Timeout = TimeSpan.FromSeconds(60),
        };

    public Task<HttpResponseMessage> GetAsync(string path, params (string Name, string Value)[] headers) =>
        _client.SendAsync(Request(HttpMethod.Get, path, headers));

    /// <summary>Sends JSON as the page does.</summary>
    public Task<HttpResponseMessage> PostAsync(string path, string json, params (string Name, string Value)[] headers)
    {
        var origin = headers.Any(header => header.Name is "Origin")
            ? headers
            : [.. headers, ("Origin", Root.GetLeftPart(UriPartial.Authority))];
        var request = Request(HttpMethod.Post, path, origin);
        request.Content = new StringContent(json, Encoding.UTF8, "application/json");
        return _client.SendAsync(request);
    }

    /// <summary>Sends JSON, and gives what was answered.</summary>
    public async Task<string> SayAsync(string path, string json)
    {
        using var answer = await PostAsync(path, json);
        return await answer.Content.ReadAsStringAsync();
    }

    public Task<HttpResponseMessage> SendAsync(HttpRequestMessage request) => _client.SendAsync(request);

    public HttpRequestMessage Request(HttpMethod method, string path, params (string Name, string Value)[] headers)
    {
        var request = new HttpRequestMessage(method, new Uri(Root, path));
        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        return request;
    }

    /// <summary>The answers that the page is told, as they come.</summary>
    public async IAsyncEnumerable<JsonElement> AnswersAsync()
    {
        using var request = Request(HttpMethod.Get, "/api/events");
        using var events = await _client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);
        using var reader = new StreamReader(await events.Content.ReadAsStreamAsync(), Encoding.UTF8);
        while (await reader.ReadLineAsync() is { } line)
        {
            if (line.StartsWith("event: answer", StringComparison.Ordinal))
            {
                yield return JsonDocument.Parse((await reader.ReadLineAsync())!["data: ".Length..]).RootElement;
            }
        }
    }

    /// <summary>Writes bytes as they are, and reads what comes until the server closes.</summary>
    public async Task<string> RawAsync(string text)
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, Root.Port);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(text));
        using var reader = new StreamReader(stream, Encoding.ASCII);
        return await reader.ReadToEndAsync();
    }

    /// <summary>Waits until what is looked at has been played, or has faults.</summary>
    public async Task AnsweredAsync()
    {
        while (true)
        {
            using var answer = await GetAsync("/api/desk");
            var desk = JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync()).RootElement;
            var current = desk.GetProperty("current").GetInt32();
            var share =
                current == 0
                    ? desk.GetProperty("filesShare")
                    : desk.GetProperty("tries")
                        .EnumerateArray()
                        .Single(each => each.GetProperty("id").GetInt32() == current)
                        .GetProperty("share");
            if (share.ValueKind != JsonValueKind.Null)
            {
                return;
            }

            await Task.Delay(20);
        }
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _workbench.DisposeAsync();
    }
}
