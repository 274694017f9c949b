using System.Text.Json;
using MiniExcelLibs;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>A folder whose plan is a workbook: it is shown and played, and its cells are changed in the spreadsheet alone.</summary>
public sealed class WorkbookTests : IAsyncLifetime, IDisposable
{
    private readonly FarmFolder _folder = new(plan: null);
    private Visitor _visitor = null!;

    public async Task InitializeAsync()
    {
        WritePlan(100);
        _visitor = await Visitor.InsideAsync(_folder.Path);
    }

    public async Task DisposeAsync() => await _visitor.DisposeAsync();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task The_plan_is_shown_with_a_word_on_where_it_is_changed()
    {
        var desk = await DeskAsync();
        Assert.Equal(["id", "crop", "plants", "sow"], Texts(desk.GetProperty("plan").GetProperty("columns")));
        Assert.Equal(["a", "tomato", "100", "2027-03-01"], Texts(desk.GetProperty("plan").GetProperty("rows")[0]));
        Assert.StartsWith("plan.xlsx is changed in your spreadsheet", desk.GetProperty("planNote").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_is_played_and_a_batch_knows_its_row()
    {
        var answer = await AnswerAsync(answer => answer.GetProperty("seasons").GetInt32() > 0);
        var batch = answer.GetProperty("batches")[0];
        Assert.Equal(("a", 0), (batch.GetProperty("id").GetString(), batch.GetProperty("row").GetInt32()));
    }

    [Fact]
    public async Task A_change_of_a_cell_is_refused_in_words_and_one_of_the_site_is_made()
    {
        var refused = await _visitor.SayAsync(
            "/api/edit",
            """{"what":"more","changes":[{"do":"Cell","row":0,"column":"plants","was":"100","value":"120"}]}"""
        );
        Assert.Contains("plan.xlsx is changed in your spreadsheet", refused, StringComparison.Ordinal);
        Assert.DoesNotContain("\"tries\"", refused, StringComparison.Ordinal);
        var made = await _visitor.SayAsync(
            "/api/edit",
            """{"what":"later","changes":[{"do":"Key","section":"season","key":"closes","value":"2027-07-15"}]}"""
        );
        Assert.Contains("2027-07-15", made, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_workbook_that_is_saved_again_is_taken_in()
    {
        var before = Trays(await AnswerAsync(answer => Trays(answer).Length > 0));
        WritePlan(1000);
        await AnswerAsync(answer => Trays(answer).Length > 0 && Trays(answer) != before);
        Assert.Equal("1000", (await DeskAsync()).GetProperty("plan").GetProperty("rows")[0][2].GetString());
    }

    // A fault stands in a cell of the workbook, which has a row and a column as a text has.
    [Fact]
    public async Task A_fault_is_told_in_its_cell()
    {
        WritePlan("none");
        var answer = await AnswerAsync(answer => answer.GetProperty("faults").GetArrayLength() > 0);
        var fault = answer.GetProperty("faults")[0];
        Assert.Equal(
            ("plan.xlsx", 0, "plants"),
            (fault.GetProperty("file").GetString(), fault.GetProperty("row").GetInt32(), fault.GetProperty("cell").GetString())
        );
    }

    private static string Trays(JsonElement answer) =>
        answer.GetProperty("batches").GetArrayLength() == 0 ? "" : answer.GetProperty("batches")[0].GetProperty("trays").GetString()!;

    private static string[] Texts(JsonElement list) => [.. list.EnumerateArray().Select(each => each.GetString()!)];

    private async Task<JsonElement> DeskAsync()
    {
        using var answer = await _visitor.GetAsync("/api/desk");
        return JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement;
    }

    private async Task<JsonElement> AnswerAsync(Func<JsonElement, bool> isIt)
    {
        await foreach (var answer in _visitor.AnswersAsync())
        {
            if (isIt(answer))
            {
                return answer;
            }
        }

        throw new InvalidOperationException("The server ended.");
    }

    private void WritePlan(object plants)
    {
        using var stream = new MemoryStream();
        stream.SaveAs(
            new Dictionary<string, object>[]
            {
                new(StringComparer.Ordinal)
                {
                    ["id"] = "a",
                    ["crop"] = "tomato",
                    ["plants"] = plants,
                    ["sow"] = new DateTime(2027, 3, 1),
                },
            }
        );
        _folder.Write("plan.xlsx", stream.ToArray());
    }
}
