using System.Diagnostics;
using System.Net;
using System.Text;
using System.Text.Json;

namespace EndToEnd.Workbench;

/// <summary>One that has come into a workbench with its key, and speaks to it as its page does.</summary>
internal sealed class Guest : IDisposable
{
    private readonly HttpClient _client;
    private readonly Uri _root;

    private Guest(Uri address)
    {
        _root = address;
        _client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseProxy = false });
        _client.DefaultRequestHeaders.Add("Origin", address.GetLeftPart(UriPartial.Authority));
    }

    /// <summary>Waits for the address that a workbench prints, and goes in.</summary>
    public static async Task<Guest> OfAsync(Process workbench)
    {
        await workbench.StandardOutput.ReadLineAsync();
        var guest = new Guest(new Uri((await workbench.StandardOutput.ReadLineAsync())!));
        (await guest._client.GetAsync(guest._root)).Dispose();
        return guest;
    }

    /// <summary>What is on the desk.</summary>
    public async Task<JsonElement> DeskAsync()
    {
        using var desk = JsonDocument.Parse(await _client.GetStringAsync(new Uri(_root, "/api/desk")));
        return desk.RootElement.Clone();
    }

    /// <summary>The cell of the first row in a column.</summary>
    public async Task<string> CellAsync(string column)
    {
        var plan = (await DeskAsync()).GetProperty("plan");
        var columns = plan.GetProperty("columns").EnumerateArray().Select(each => each.GetString()).ToList();
        return plan.GetProperty("rows")[0][columns.IndexOf(column)].GetString()!;
    }

    /// <summary>Changes a cell of the first row.</summary>
    public Task<(HttpStatusCode Status, string Text)> ChangeAsync(string column, string was, string value) =>
        SayAsync(
            "/api/edit",
            $$"""{"what":"more","changes":[{"do":"Cell","row":0,"column":"{{column}}","was":"{{was}}","value":"{{value}}"}]}"""
        );

    /// <summary>Puts the try that is looked at into the files.</summary>
    public async Task<(HttpStatusCode Status, string Text)> PutAsync() =>
        await SayAsync("/api/put", $$"""{"id":{{(await DeskAsync()).GetProperty("current").GetInt32()}}}""");

    public void Dispose() => _client.Dispose();

    private async Task<(HttpStatusCode Status, string Text)> SayAsync(string path, string json)
    {
        using var body = new StringContent(json, Encoding.UTF8, "application/json");
        using var answer = await _client.PostAsync(new Uri(_root, path), body);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync());
    }
}
