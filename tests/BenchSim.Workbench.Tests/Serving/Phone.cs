using System.Net;
using System.Text;
using System.Text.Json;
using BenchSim.Workbench.Phones;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>A phone of sorts in the farm's network, at an address of this computer that is not the usual one.</summary>
internal sealed class Phone : IDisposable
{
    /// <summary>An address that leads to this computer alone, beside the owner's.</summary>
    public const string Here = "127.0.0.2";

    private readonly HttpClient _client;

    /// <summary>A phone that knows where the workbench is.</summary>
    /// <param name="visitor">The owner.</param>
    public Phone(Visitor visitor)
    {
        Root = new Uri(visitor.PhoneAddresses.Single());
        _client = Visitor.NewClient(Cookies);
    }

    /// <summary>The network that such a phone is in.</summary>
    public static Lan Network => Lan.Of(Here);

    public Uri Root { get; }

    public CookieContainer Cookies { get; } = new();

    /// <summary>A phone that has been paired.</summary>
    public static async Task<Phone> PairedAsync(Visitor visitor, string name = "Ada's phone")
    {
        var phone = new Phone(visitor);
        (await visitor.PostAsync("/api/phones/code", "{}")).Dispose();
        Assert.Equal(HttpStatusCode.OK, await phone.PairAsync(visitor.Codes[^1], name));
        return phone;
    }

    /// <summary>Types a code.</summary>
    public async Task<HttpStatusCode> PairAsync(string code, string name = "")
    {
        using var answer = await PostAsync("/api/pair", JsonSerializer.Serialize(new { code, name }));
        return answer.StatusCode;
    }

    public Task<HttpResponseMessage> GetAsync(string path, params (string Name, string Value)[] headers) =>
        SendAsync(HttpMethod.Get, path, null, headers);

    public Task<HttpResponseMessage> PostAsync(string path, string json, params (string Name, string Value)[] headers) =>
        SendAsync(
            HttpMethod.Post,
            path,
            json,
            headers.Any(header => header.Name is "Origin") ? headers : [.. headers, ("Origin", Root.GetLeftPart(UriPartial.Authority))]
        );

    /// <summary>A body that is read as it comes.</summary>
    public Task<Stream> StreamAsync(string path) => _client.GetStreamAsync(new Uri(Root, path));

    public void Dispose() => _client.Dispose();

    private Task<HttpResponseMessage> SendAsync(HttpMethod method, string path, string? json, (string Name, string Value)[] headers)
    {
        var request = new HttpRequestMessage(method, new Uri(Root, path));
        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        request.Content = json is null ? null : new StringContent(json, Encoding.UTF8, "application/json");
        return _client.SendAsync(request);
    }
}
