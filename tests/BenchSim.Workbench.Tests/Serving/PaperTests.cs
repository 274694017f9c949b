using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Print;
using BenchSim.Answers.Run;
using BenchSim.Report.Papers;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>The papers and the case report, over real HTTP: those that the commands make of the same files, to the last byte.</summary>
public sealed class PaperTests : IAsyncLifetime, IDisposable
{
    private const string Plan = "id,crop,grower,plants,sow\na,tomato,Ada,100,2027-03-01\nb,kale,<b>Ben & Co</b>,90,2027-03-15\n";
    private const string Edit = """{"what":"","changes":[{"do":"Cell","row":0,"column":"plants","was":"100","value":"150"}]}""";

    private readonly TemporaryFolder _around = new();
    private readonly FarmFolder _written = new(FarmFolder.GoodSite + "\n[play]\nseasons = 40\n", Plan);
    private Visitor _visitor = null!;

    // A folder of ill will: what of its name could end a header, or the quotation marks in one.
    private string Folder => _around.In("Süd\"; a=b");

    public async Task InitializeAsync()
    {
        Directory.CreateDirectory(Folder);
        foreach (var name in new[] { "site.toml", "plan.csv" })
        {
            File.Copy(_written.In(name), Path.Combine(Folder, name));
        }

        _visitor = await Visitor.InsideAsync(Folder);
    }

    public async Task DisposeAsync() => await _visitor.DisposeAsync();

    public void Dispose()
    {
        _around.Dispose();
        _written.Dispose();
    }

    [Theory]
    [InlineData("")]
    [InlineData("Ada")]
    public async Task Each_is_what_print_writes_of_the_files_of_the_try(string grower)
    {
        await _visitor.SayAsync("/api/edit", Edit);
        _written.Write("plan.csv", Plan.Replace(",100,", ",150,", StringComparison.Ordinal));
        var settings = new PaperSettings { Grower = grower.Length > 0 ? grower : null };
        var print = new PrintQuestion
        {
            Scenario = ScenarioSource.Folder(_written.Path),
            Papers = settings,
            Out = _around.In("papers"),
        };
        var files = print.Ask(new PlayWatch(CancellationToken.None)).Summary.Files;
        var query = grower.Length > 0 ? $"?grower={grower}" : "";
        var list = await JsonAsync("/api/papers" + query);
        Assert.Equal<string[]>([.. files], [.. list.GetProperty("files").EnumerateArray().Select(each => each.GetString()!)]);
        foreach (var file in files)
        {
            using var answer = await _visitor.GetAsync($"/papers/{file}{query}");
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Equal(
                await File.ReadAllBytesAsync(Path.Combine(_around.In("papers"), file)),
                await answer.Content.ReadAsByteArrayAsync()
            );
        }
    }

    [Fact]
    public async Task The_case_report_is_that_of_run()
    {
        var run = new RunQuestion
        {
            Scenario = ScenarioSource.Folder(_written.Path),
            Case = true,
            Out = _around.In("report"),
        };
        run.Ask(new PlayWatch(CancellationToken.None)).WriteReport(CancellationToken.None);
        using var answer = await _visitor.GetAsync("/papers/case.pdf");
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType?.ToString());
        Assert.Equal(await File.ReadAllBytesAsync(_around.In("report/case.pdf")), await answer.Content.ReadAsByteArrayAsync());
    }

    [Theory]
    [InlineData("work-list.html", "text/html; charset=utf-8", "inline")]
    [InlineData("labels.pdf", "application/pdf", "attachment")]
    [InlineData("labels.csv", "text/csv; charset=utf-8", "attachment")]
    [InlineData("calendar.ics", "text/calendar; charset=utf-8", "attachment")]
    [InlineData("workbook.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "attachment")]
    public async Task Each_has_its_type_and_a_name_of_letters_and_digits(string file, string type, string how)
    {
        using (var files = await _visitor.GetAsync("/papers/" + file))
        {
            Assert.Equal($"{how}; filename=\"s-d-a-b-{file}\"", files.Content.Headers.ContentDisposition?.ToString());
        }

        await _visitor.SayAsync("/api/begin", "{}");
        await _visitor.SayAsync("/api/name", """{"id":1,"name":"\"more\"; /../ pläne"}""");
        using var answer = await _visitor.GetAsync("/papers/" + file);
        Assert.Equal(type, answer.Content.Headers.ContentType?.ToString());
        Assert.Equal($"{how}; filename=\"s-d-a-b-more-pl-ne-{file}\"", answer.Content.Headers.ContentDisposition?.ToString());
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
    }

    // The hash is worked out here from what stands between the tags.
    [Theory]
    [InlineData("work-list.html")]
    [InlineData("order.html")]
    public async Task A_page_among_them_may_carry_its_own_style_and_nothing_else(string file)
    {
        using var answer = await _visitor.GetAsync("/papers/" + file);
        var page = await answer.Content.ReadAsStringAsync();
        var (from, to) = (
            page.IndexOf("<style>", StringComparison.Ordinal) + "<style>".Length,
            page.IndexOf("</style>", StringComparison.Ordinal)
        );
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(page[from..to])));
        var policy = answer.Headers.GetValues("Content-Security-Policy").Single();
        Assert.StartsWith($"default-src 'none'; style-src 'sha256-{hash}';", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>Ben", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?grower=Nobody", "The plan has no grower")]
    [InlineData("?from=1.3.2027", "is no date; write it as 2027-04-12")]
    [InlineData("?from=2027-03-02&to=2027-03-01", "The last date is before the first.")]
    [InlineData("?sheet=1x1", "is no sheet of labels")]
    [InlineData("?from=2030-01-01", "the plan has nothing to do")]
    public async Task What_cannot_be_made_is_refused_and_why(string query, string why)
    {
        using var answer = await _visitor.GetAsync("/papers/labels.pdf" + query);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains(why, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains(why, (await JsonAsync("/api/papers" + query)).GetProperty("why").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("labels.pdf")]
    [InlineData("case.pdf")]
    public async Task Of_a_plan_with_faults_there_are_none(string file)
    {
        await _visitor.SayAsync("/api/edit", Edit.Replace("150", "none", StringComparison.Ordinal));
        using var answer = await _visitor.GetAsync("/papers/" + file);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Equal("1 fault found. Mend it and try again.\n", await answer.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData("/papers/")]
    [InlineData("/papers/site.toml")]
    [InlineData("/papers/..%2fsite.toml")]
    [InlineData("/papers/to-buy.csv")]
    public async Task What_is_no_paper_is_not_found(string path)
    {
        using var answer = await _visitor.GetAsync(path);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private async Task<JsonElement> JsonAsync(string path)
    {
        using var answer = await _visitor.GetAsync(path);
        return JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync()).RootElement;
    }
}
