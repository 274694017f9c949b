using System.Net;
using System.Text.Json;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>What the server says of why a batch is late or a space is full.</summary>
public sealed class WhyTests : IAsyncLifetime, IDisposable
{
    // Of 14 trays that are to be sown on Monday 1 March, 10 find a place on the mats, the first of the plan first.
    private readonly FarmFolder _folder = new(plan: "id,crop,plants,trays,sow\na,tomato,100,8,2027-03-01\nb,tomato,100,6,2027-03-01\n");
    private Visitor _visitor = null!;

    public async Task InitializeAsync() => _visitor = await Visitor.InsideAsync(_folder.Path);

    public async Task DisposeAsync() => await _visitor.DisposeAsync();

    public void Dispose() => _folder.Dispose();

    // 1 March is day 42 of a season that opens on 18 January; the weeks of the play begin on its first day of the week, a Monday.
    [Fact]
    public async Task A_full_week_has_who_holds_the_places_and_who_waits()
    {
        var why = await AskAsync("space=mats&day=44");
        Assert.Equal("mats, 1 March to 7 March", why.GetProperty("title").GetString());
        foreach (var story in why.GetProperty("stories").EnumerateArray())
        {
            Assert.Equal<string[]>(
                ["1 March: 10 of 10 places held by a 8; b 2.", "Waiting: b, 4 trays not sown yet."],
                Texts(story, "lines")
            );
        }

        Assert.Equal<string[]>(["a", "b"], Texts(why, "holds"));
        Assert.Equal<string[]>(["b"], Texts(why, "waits"));
        Assert.Contains(Texts(why, "sentences"), each => each.StartsWith("Trays not sown yet wait for it: ", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_batch_has_its_seasons_and_the_stories_of_two_of_them()
    {
        var why = await AskAsync("batch=b");
        Assert.StartsWith("b: Tomato", why.GetProperty("title").GetString(), StringComparison.Ordinal);
        Assert.Equal(1, why.GetProperty("row").GetInt32());
        var stories = why.GetProperty("stories").EnumerateArray().ToArray();
        Assert.StartsWith(
            "A middling season for this batch: season ",
            stories[0].GetProperty("heading").GetString(),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "A bad season for this batch, one of ten: season ",
            stories[1].GetProperty("heading").GetString(),
            StringComparison.Ordinal
        );
        Assert.All(stories, story =>
            Assert.Contains(
                "2027-03-01: 4 trays unsown, waiting for room on mats (10 of 10 places held by a 8, b 2).",
                Texts(story, "lines"),
                StringComparer.Ordinal
            )
        );
    }

    // The try has no batch a, so that all of b is sown.
    [Fact]
    public async Task It_is_said_of_the_try_that_is_looked_at()
    {
        await _visitor.SayAsync("/api/edit", """{"what":"","changes":[{"do":"RemoveRow","row":0,"was":"a"}]}""");
        await _visitor.AnsweredAsync();
        var why = await AskAsync("space=mats&day=44");
        Assert.All(why.GetProperty("stories").EnumerateArray(), story =>
            Assert.Equal("1 March: 6 of 10 places held by b 6.", Texts(story, "lines")[0])
        );
    }

    [Theory]
    [InlineData("batch=c")]
    [InlineData("batch=%00%3Cscript%3E")]
    [InlineData("space=none&day=1")]
    [InlineData("space=mats&day=100000")]
    [InlineData("space=mats&day=-1")]
    [InlineData("space=mats&day=99999999999")]
    [InlineData("")]
    public async Task What_there_is_not_is_not_found(string query)
    {
        await _visitor.AnsweredAsync();
        using var answer = await _visitor.GetAsync("/api/why?" + query);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Equal("text/plain", answer.Content.Headers.ContentType?.MediaType);
    }

    private async Task<JsonElement> AskAsync(string query)
    {
        await _visitor.AnsweredAsync();
        using var answer = await _visitor.GetAsync("/api/why?" + query);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync()).RootElement;
    }

    private static string[] Texts(JsonElement of, string name) =>
        [.. of.GetProperty(name).EnumerateArray().Select(each => each.GetString()!)];
}
