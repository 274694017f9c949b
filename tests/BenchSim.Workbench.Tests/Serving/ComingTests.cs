using System.Net;
using System.Text.Json;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>The jobs of the next days, which the page asks for when the benches stand there already.</summary>
public sealed class ComingTests : IAsyncLifetime, IDisposable
{
    private readonly FarmFolder _folder = new();
    private Visitor _visitor = null!;

    public async Task InitializeAsync() => _visitor = await Visitor.InsideAsync(_folder.Path, Phone.Network);

    public async Task DisposeAsync() => await _visitor.DisposeAsync();

    public void Dispose() => _folder.Dispose();

    // The plan sows on Monday 1 March whatever the weather: sure, and on that day alone.
    [Fact]
    public async Task A_sowing_of_the_week_is_told_with_its_word_and_its_day()
    {
        var coming = await ComingAsync("2027-02-26");
        var job = Assert.Single(coming.GetProperty("jobs").EnumerateArray());
        Assert.Equal(("Sow", "a", "sure", "Mon 1 Mar"), (Text(job, "job"), Text(job, "batch"), Text(job, "word"), Text(job, "when")));
        Assert.StartsWith("to ", Text(job, "way"), StringComparison.Ordinal);
        Assert.StartsWith("Sure: it comes in at least 9 of 10 seasons", Text(coming, "words"), StringComparison.Ordinal);

        // Eight days before, it is beyond the week.
        Assert.Empty((await ComingAsync("2027-02-21")).GetProperty("jobs").EnumerateArray());
    }

    [Fact]
    public async Task What_is_due_is_not_told_twice()
    {
        Assert.Empty((await ComingAsync("2027-03-01")).GetProperty("jobs").EnumerateArray());
        using var today = JsonDocument.Parse(await (await _visitor.GetAsync("/api/today?day=2027-03-01")).Content.ReadAsStringAsync());
        Assert.Equal(1, today.RootElement.GetProperty("due").GetArrayLength());
    }

    [Fact]
    public async Task What_was_written_down_comes_no_more()
    {
        await ComingAsync("2027-02-26");
        using var written = await _visitor.PostAsync(
            "/api/log",
            """{"id":"a1","said":"Sown","rows":[{"date":"2027-02-26","batch":"a","what":"sown","trays":"200","space":"mats"}]}"""
        );
        Assert.Equal(HttpStatusCode.OK, written.StatusCode);
        Assert.DoesNotContain((await ComingAsync("2027-02-26")).GetProperty("jobs").EnumerateArray(), job => Text(job, "job") is "Sow");
    }

    [Theory]
    [InlineData("2028-01-01", "is not of this season")]
    [InlineData("tomorrow", "Write the day as")]
    public async Task A_day_that_is_none_is_told_in_words(string day, string why) =>
        Assert.Contains(why, Text(await ComingAsync(day), "note"), StringComparison.Ordinal);

    [Fact]
    public async Task A_phone_sees_them_too()
    {
        using var phone = await Phone.PairedAsync(_visitor);
        using var answer = await phone.GetAsync("/api/coming?day=2027-02-26");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("\"sure\"", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    private async Task<JsonElement> ComingAsync(string day)
    {
        using var answer = await _visitor.GetAsync("/api/coming?day=" + day);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement.Clone();
    }
}
