using System.Net;
using System.Text;
using System.Text.Json;
using BenchSim.Answers.Agree;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Study.Billing;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>The bills and what is agreed on, asked of the page as of the command.</summary>
public sealed class AgreeTests : IAsyncLifetime, IDisposable
{
    private const string Asked = """{"bill":"tray-days","on":"2027-01-15"}""";

    private readonly FarmFolder _folder = new();
    private Visitor _visitor = null!;

    public async Task InitializeAsync()
    {
        _folder.Write("log.csv", "date,batch,what,trays,space\n2027-03-01,a,sown,2,mats\n");
        _visitor = await Visitor.InsideAsync(_folder.Path);
    }

    public async Task DisposeAsync() => await _visitor.DisposeAsync();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task The_bills_are_those_of_the_command()
    {
        var told = await GetAsync("/api/bills");
        var front = new BillsQuestion { Scenario = ScenarioSource.Folder(_folder.Path) }
            .Ask(new PlayWatch(CancellationToken.None))
            .Front!;
        Assert.Equal(front.Headline, Text(told, "headline"));
        Assert.Equal(
            "grower, batches, equal, tray-days, full-weeks, days in hand, likely late",
            string.Join(", ", told.GetProperty("table").GetProperty("columns").EnumerateArray().Select(column => Text(column, "name")))
        );
        Assert.Equal(front.Table!.Rows.Count, told.GetProperty("table").GetProperty("rows").GetArrayLength());
    }

    // The same files, to the last byte, as benchsim agree keeps of the same folder.
    [Fact]
    public async Task What_is_agreed_on_is_kept_as_the_command_keeps_it()
    {
        Assert.Equal(JsonValueKind.Null, (await GetAsync("/api/agreed")).GetProperty("since").ValueKind);
        using var other = new FarmFolder();
        new AgreeQuestion
        {
            Scenario = ScenarioSource.Folder(other.Path),
            On = new DateOnly(2027, 1, 15),
            Bill = BillRule.TrayDays,
        }.Ask(new PlayWatch(CancellationToken.None));
        using var answer = await _visitor.PostAsync("/api/agree", Asked);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(Kept(other), Kept(_folder));
        var agreed = await GetAsync("/api/agreed");
        Assert.Equal("The plan is as it was agreed on 15 January 2027. The bill is divided by tray-days.", Text(agreed, "since"));
        Assert.Equal("2027-01-15", Assert.Single(agreed.GetProperty("days").EnumerateArray()).GetString());
    }

    [Fact]
    public async Task An_agreement_of_the_day_stays_until_it_is_to_be_replaced_and_what_has_changed_since_is_told()
    {
        (await _visitor.PostAsync("/api/agree", Asked)).Dispose();
        var plan = await File.ReadAllTextAsync(_folder.In("plan.csv"));
        _folder.Write("plan.csv", plan.Replace("100", "120", StringComparison.Ordinal));
        using var refused = await _visitor.PostAsync("/api/agree", Asked);
        Assert.Equal(HttpStatusCode.Conflict, refused.StatusCode);
        Assert.Equal(
            "Since it was agreed on 15 January 2027, the plan has changed: 1 sowing otherwise. The bill is divided by tray-days.",
            Text(await GetAsync("/api/agreed"), "since")
        );
        using var replaced = await _visitor.PostAsync("/api/agree", """{"bill":"equal","on":"2027-01-15","replace":true}""");
        Assert.Equal(HttpStatusCode.OK, replaced.StatusCode);
        Assert.Equal(
            "The plan is as it was agreed on 15 January 2027. The bill is divided equally.",
            Text(await GetAsync("/api/agreed"), "since")
        );
    }

    [Theory]
    [InlineData("""{"bill":"by weight","on":"2027-01-15"}""", HttpStatusCode.Conflict)]
    [InlineData("""{"bill":null,"on":"2027-01-15"}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"bill":"equal","on":"in January"}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"bill":"equal"}""", HttpStatusCode.BadRequest)]
    public async Task Nothing_is_kept_of_what_names_no_rule_or_day(string body, HttpStatusCode expected)
    {
        using var answer = await _visitor.PostAsync("/api/agree", body);
        Assert.Equal(expected, answer.StatusCode);
        Assert.False(Directory.Exists(_folder.In("agreed")));
    }

    [Fact]
    public async Task A_plan_with_a_fault_is_not_agreed_on()
    {
        _folder.Write("plan.csv", "id,crop,plants,set_out\na,tomato,none,2027-05-20\n");
        using var answer = await _visitor.PostAsync("/api/agree", Asked);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains("plan.csv, line 2", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(_folder.In("agreed")));
    }

    [Fact]
    public async Task A_link_among_what_was_agreed_is_not_followed()
    {
        using var outside = new TemporaryFolder();
        Directory.CreateSymbolicLink(_folder.In("agreed"), outside.Path);
        using var answer = await _visitor.PostAsync("/api/agree", Asked);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(outside.Path));
        Assert.Contains("links are not followed", Text(await GetAsync("/api/agreed"), "note"), StringComparison.Ordinal);
    }

    private static string Kept(TemporaryFolder folder) =>
        string.Join(
            '\n',
            TemporaryFolder
                .Files(folder.In("agreed"))
                .OrderBy(file => file.Key, StringComparer.Ordinal)
                .Select(file => $"{file.Key}: {Convert.ToHexString(file.Value)}")
        );

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    private async Task<JsonElement> GetAsync(string path)
    {
        using var answer = await _visitor.GetAsync(path);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement.Clone();
    }
}
