using System.Net;
using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Learn;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Review;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>What a log teaches and how its season went, asked of the page as of the commands.</summary>
public sealed class LogTests
{
    [Fact]
    public async Task Without_a_log_both_say_that_there_is_none()
    {
        using var folder = new FarmFolder();
        await using var visitor = await Visitor.InsideAsync(folder.Path);
        Assert.Contains("nothing to learn from", Text(await GetAsync(visitor, "/api/learn"), "note"), StringComparison.Ordinal);
        Assert.Contains("nothing to review", Text(await GetAsync(visitor, "/api/review"), "note"), StringComparison.Ordinal);
        Assert.False((await GetAsync(visitor, "/api/agreed")).GetProperty("hasLog").GetBoolean());
    }

    // What is put into the files is what benchsim learn --write makes of the same folder, to the last byte.
    [Fact]
    public async Task What_the_log_teaches_is_a_try_and_in_the_files_is_what_the_command_writes()
    {
        using var folder = Loss();
        using var other = Loss();
        var written = new LearnQuestion { Scenarios = [ScenarioSource.Folder(other.Path)], Write = true }.Ask(CancellationToken.None);
        await using var visitor = await Visitor.InsideAsync(folder.Path);
        using var early = await visitor.PostAsync("/api/learn/take", "{}");
        Assert.Equal(HttpStatusCode.Conflict, early.StatusCode);

        var told = await GetAsync(visitor, "/api/learn");
        Assert.Equal(written.Front!.Headline, Text(told, "headline"));
        var before = await File.ReadAllTextAsync(folder.In("crops.csv"));
        var line = Assert.Single(told.GetProperty("taught").GetProperty("lines").EnumerateArray(), each =>
            Text(each, "before").StartsWith("kale", StringComparison.Ordinal)
        );
        Assert.Contains("own log, 2027, 1 batch", Text(line, "after"), StringComparison.Ordinal);

        using var taken = JsonDocument.Parse(await visitor.SayAsync("/api/learn/take", "{}"));
        Assert.Equal("By the log", Text(taken.RootElement.GetProperty("tries")[0], "name"));
        Assert.StartsWith("What the log teaches of", Text(taken.RootElement, "undo"), StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllTextAsync(folder.In("crops.csv")));
        using var undone = JsonDocument.Parse(await visitor.SayAsync("/api/undo", "{}"));
        Assert.Equal(0, undone.RootElement.GetProperty("tries")[0].GetProperty("changed").GetArrayLength());
        (await visitor.PostAsync("/api/redo", "{}")).Dispose();
        (await visitor.PostAsync("/api/put", """{"id":1}""")).Dispose();
        Assert.Equal(await File.ReadAllBytesAsync(other.In("crops.csv")), await File.ReadAllBytesAsync(folder.In("crops.csv")));

        // Asked again, they are there already.
        var again = (await GetAsync(visitor, "/api/learn")).GetProperty("taught");
        Assert.True(again.GetProperty("isThere").GetBoolean());
        Assert.Equal(0, again.GetProperty("lines").GetArrayLength());
    }

    [Fact]
    public async Task The_review_is_that_of_the_command_and_goes_by_what_was_agreed_meanwhile()
    {
        using var folder = Loss();
        await using var visitor = await Visitor.InsideAsync(folder.Path);
        Assert.Contains(
            "No agreement of this season",
            (await GetAsync(visitor, "/api/review")).GetProperty("warnings")[0].GetString(),
            StringComparison.Ordinal
        );
        (await visitor.PostAsync("/api/agree", """{"bill":"equal","on":"2027-01-15"}""")).Dispose();
        var told = await GetAsync(visitor, "/api/review");
        Assert.Equal(0, told.GetProperty("warnings").GetArrayLength());
        var front = new ReviewQuestion { Scenario = ScenarioSource.Folder(folder.Path) }
            .Ask(new PlayWatch(CancellationToken.None))
            .Front!;
        Assert.Equal(front.Headline, Text(told, "headline"));
    }

    // A batch of kale that went out with its plants counted.
    private static FarmFolder Loss()
    {
        var folder = new FarmFolder();
        folder.Write("crops.csv", "id,stand_loss,source\nkale,3 %,\"ours, of 2019\"\n");
        folder.Write("plan.csv", "id,crop,tray,plants,set_out\nk,kale,72,300,2027-04-20\n");
        folder.Write(
            "log.csv",
            "date,batch,what,trays,space,count\n2027-03-08,k,sown,5,mats,\n2027-03-15,k,moved,5,bench,\n2027-04-12,k,moved,5,table,\n"
                + "2027-04-20,k,set out,5,,300\n"
        );
        return folder;
    }

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    private static async Task<JsonElement> GetAsync(Visitor visitor, string path)
    {
        using var answer = await visitor.GetAsync(path);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement.Clone();
    }
}
