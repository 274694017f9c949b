using System.Net;
using System.Text.Json;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>The search for what would mend the plan, over real HTTP, on a farm whose table holds 24 of the trays that want it.</summary>
public sealed class MendTests : IAsyncLifetime, IDisposable
{
    private const string Table = "places table";

    private readonly FarmFolder _folder = MendFarms.WithShortTable();
    private Visitor _visitor = null!;

    public async Task InitializeAsync()
    {
        // A few seasons, so that a search is soon over.
        _folder.Write("site.toml", await File.ReadAllTextAsync(_folder.In("site.toml")) + "\n[play]\nseasons = 60\n");
        _visitor = await Visitor.InsideAsync(_folder.Path);
    }

    public async Task DisposeAsync() => await _visitor.DisposeAsync();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task What_helps_is_found_and_taken_as_a_try_whose_texts_are_changed()
    {
        var mend = await FoundAsync();
        var steps = mend.GetProperty("steps").EnumerateArray().ToArray();
        var at = Array.FindIndex(steps, step => step.GetProperty("mark").GetString() is Table);
        Assert.True(at >= 0, mend.GetProperty("headline").GetString());
        Assert.Contains("not 24", steps[at].GetProperty("deed").GetString(), StringComparison.Ordinal);
        Assert.StartsWith("In a bad year ", steps[at].GetProperty("gain").GetString(), StringComparison.Ordinal);
        Assert.StartsWith("Costs: ", steps[at].GetProperty("terms").GetString(), StringComparison.Ordinal);
        Assert.Contains(mend.GetProperty("cautions").EnumerateArray(), each =>
            each.GetString()!.Contains("Trays of wet mix are heavy", StringComparison.Ordinal)
        );

        var desk = JsonDocument.Parse(await _visitor.SayAsync("/api/mend/take", $$"""{"of":"Steps","at":{{at}}}""")).RootElement;
        Assert.Equal(1, desk.GetProperty("current").GetInt32());
        var table = desk.GetProperty("sections").EnumerateArray().Single(each => each.GetProperty("title").GetString() is "table");
        var places = table.GetProperty("values").EnumerateArray().Single(each => each.GetProperty("key").GetString() is "places");
        Assert.Contains(
            $"{places.GetProperty("value").GetString()} places, not 24",
            steps[at].GetProperty("deed").GetString(),
            StringComparison.Ordinal
        );
        Assert.Contains("places = 24", await File.ReadAllTextAsync(_folder.In("site.toml")), StringComparison.Ordinal);

        // What was found is of the files, not of the try.
        Assert.False((await AskAsync()).GetProperty("search").GetProperty("isOfNow").GetBoolean());
        await _visitor.SayAsync("/api/undo", "{}");
        Assert.True((await AskAsync()).GetProperty("search").GetProperty("isOfNow").GetBoolean());
    }

    [Fact]
    public async Task What_is_not_to_be_had_is_left_out()
    {
        await _visitor.SayAsync("/api/mend/mark", $$"""{"mark":"{{Table}}"}""");
        Assert.Equal(Table + "\n", await File.ReadAllTextAsync(_folder.In("not-here.txt")));
        var mend = await FoundAsync();
        Assert.DoesNotContain(mend.GetProperty("steps").EnumerateArray().Concat(mend.GetProperty("singles").EnumerateArray()), point =>
            point.GetProperty("mark").GetString() is Table
        );
        Assert.Contains("marked as not here were left out", mend.GetProperty("method").GetString(), StringComparison.Ordinal);
        Assert.Equal(Table, Assert.Single(mend.GetProperty("notHere").EnumerateArray()).GetString());
    }

    [Fact]
    public async Task A_mark_of_nothing_is_told_with_its_line()
    {
        _folder.Write("not-here.txt", "slack\nplaces shed\n");
        var mend = await FoundAsync();
        var fault = Assert.Single(mend.GetProperty("search").GetProperty("faults").EnumerateArray());
        Assert.Equal("not-here.txt", fault.GetProperty("file").GetString());
        Assert.Equal(2, fault.GetProperty("line").GetInt32());
    }

    [Fact]
    public async Task A_search_is_stopped_and_the_page_goes_on()
    {
        await _visitor.SayAsync("/api/mend/start", """{"goal":99}""");
        await _visitor.AnsweredAsync();
        using var stopped = await _visitor.PostAsync("/api/mend/stop", "{}");
        Assert.Equal(HttpStatusCode.OK, stopped.StatusCode);
        var mend = await AskAsync();
        Assert.False(mend.GetProperty("search").GetProperty("isRunning").GetBoolean());
        Assert.Equal(JsonValueKind.Null, mend.GetProperty("headline").ValueKind);
    }

    [Theory]
    [InlineData("/api/mend/start", """{"goal":0}""", HttpStatusCode.Conflict)]
    [InlineData("/api/mend/start", """{"goal":100}""", HttpStatusCode.Conflict)]
    [InlineData("/api/mend/start", """{"goal":"NaN"}""", HttpStatusCode.BadRequest)]
    [InlineData("/api/mend/take", """{"of":"Steps","at":0}""", HttpStatusCode.Conflict)]
    [InlineData("/api/mend/take", """{"of":"Others","at":0}""", HttpStatusCode.BadRequest)]
    [InlineData("/api/mend/mark", """{"mark":"a\nheat"}""", HttpStatusCode.Conflict)]
    [InlineData("/api/mend/mark", """{"mark":null}""", HttpStatusCode.BadRequest)]
    public async Task What_cannot_be_is_refused(string path, string body, HttpStatusCode status)
    {
        using var answer = await _visitor.PostAsync(path, body);
        Assert.Equal(status, answer.StatusCode);
        Assert.False(File.Exists(_folder.In("not-here.txt")));
    }

    private async Task<JsonElement> FoundAsync()
    {
        await _visitor.SayAsync("/api/mend/start", """{"goal":90}""");
        while (true)
        {
            var mend = await AskAsync();
            if (!mend.GetProperty("search").GetProperty("isRunning").GetBoolean())
            {
                return mend;
            }

            await Task.Delay(50);
        }
    }

    private async Task<JsonElement> AskAsync()
    {
        using var answer = await _visitor.GetAsync("/api/mend");
        return JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync()).RootElement;
    }
}
