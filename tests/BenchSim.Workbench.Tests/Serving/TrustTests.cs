using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Trust;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>How sure the answer is, over real HTTP: what <c>benchsim trust</c> says of the same files.</summary>
public sealed class TrustTests : IAsyncLifetime, IDisposable
{
    // A minute and more.
    private const int MostLooks = 1500;

    private readonly FarmFolder _folder = MendFarms.WithShortTable();
    private Visitor _visitor = null!;

    // Two values that may be wrong, and few seasons, so that a search is soon over.
    public async Task InitializeAsync()
    {
        _folder.Write("site.toml", await File.ReadAllTextAsync(_folder.In("site.toml")) + "\n[play]\nseasons = 60\n");
        _folder.Write("ranges.csv", "what,of,low,high,shape\ndays_to_ready,,-25 %,+25 %,uniform\n");
        _visitor = await Visitor.InsideAsync(_folder.Path);
    }

    public async Task DisposeAsync() => await _visitor.DisposeAsync();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task The_page_says_what_the_command_says_of_the_same_files()
    {
        var list = new TrustQuestion { Scenario = ScenarioSource.Folder(_folder.Path) }
            .Ask(new PlayWatch(CancellationToken.None))
            .List;

        var trust = await FoundAsync();
        var found = trust.GetProperty("found");
        Assert.Equal("the files", trust.GetProperty("search").GetProperty("plan").GetString());
        Assert.Equal(list.Headline, found.GetProperty("headline").GetString());
        Assert.Equal(
            string.Join("\n", list.Facts),
            string.Join("\n", found.GetProperty("facts").EnumerateArray().Select(each => each.GetString()))
        );
        Assert.Equal(list.Rows.Length, found.GetProperty("rows").GetArrayLength());
        Assert.Contains(list.Facts, fact => fact.StartsWith("Measure first: ", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_fault_in_the_files_is_told_and_what_was_found_before_is_of_another_plan()
    {
        await FoundAsync();
        _folder.Write("plan.csv", await File.ReadAllTextAsync(_folder.In("plan.csv")) + "\n");
        await UntilAsync(trust => !trust.GetProperty("search").GetProperty("isOfNow").GetBoolean());

        // The folder is looked at once a second.
        _folder.Write("ranges.csv", "what,of,low,high,shape\ndays_to_ready,,-25 %,-50 %,uniform\n");
        var search = (await FoundAsync()).GetProperty("search");
        for (var looks = 0; looks < MostLooks && search.GetProperty("faults").GetArrayLength() == 0; looks++)
        {
            search = (await FoundAsync()).GetProperty("search");
        }

        var fault = Assert.Single(search.GetProperty("faults").EnumerateArray());
        Assert.Equal("ranges.csv", fault.GetProperty("file").GetString());
        Assert.Equal(2, fault.GetProperty("line").GetInt32());
    }

    [Fact]
    public async Task A_search_is_stopped_and_the_page_goes_on()
    {
        await _visitor.SayAsync("/api/trust/start", "{}");
        await _visitor.AnsweredAsync();
        await _visitor.SayAsync("/api/trust/stop", "{}");
        var trust = await AskAsync();
        Assert.False(trust.GetProperty("search").GetProperty("isRunning").GetBoolean());
        Assert.Equal(JsonValueKind.Null, trust.GetProperty("found").ValueKind);
    }

    private async Task<JsonElement> FoundAsync()
    {
        await _visitor.SayAsync("/api/trust/start", "{}");
        return await UntilAsync(trust => !trust.GetProperty("search").GetProperty("isRunning").GetBoolean());
    }

    private async Task<JsonElement> UntilAsync(Func<JsonElement, bool> isSo)
    {
        for (var looks = 0; looks < MostLooks; looks++)
        {
            var trust = await AskAsync();
            if (isSo(trust))
            {
                return trust;
            }

            await Task.Delay(50);
        }

        throw new TimeoutException("The search does not come to what was waited for.");
    }

    private async Task<JsonElement> AskAsync()
    {
        using var answer = await _visitor.GetAsync("/api/trust");
        return JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync()).RootElement;
    }
}
