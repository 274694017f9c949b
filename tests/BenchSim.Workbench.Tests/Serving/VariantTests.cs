using System.Net;
using System.Text.Json;

namespace BenchSim.Workbench.Tests.Serving;

/// <summary>A variant of the folder taken as a try, over real HTTP.</summary>
public sealed class VariantTests : IAsyncLifetime, IDisposable
{
    private readonly FarmFolder _folder = MendFarms.WithShortTable();
    private Visitor _visitor = null!;

    public async Task InitializeAsync()
    {
        _folder.Write("variants/longer.toml", "[[space]]\nid = \"table\"\nplaces = 99\n");
        _folder.Write("variants/gone.toml", "remove = [\"table\"]\n");
        _folder.Write("variants/broken.toml", "[[space\n");
        _folder.Write("variants/note.txt", "no variant");
        _visitor = await Visitor.InsideAsync(_folder.Path);
        await _visitor.AnsweredAsync();
    }

    public async Task DisposeAsync() => await _visitor.DisposeAsync();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task It_begins_a_try_and_the_files_stay()
    {
        using var answer = await _visitor.GetAsync("/api/desk");
        var before = JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync()).RootElement;
        Assert.Equal(
            ["broken", "gone", "longer"],
            before.GetProperty("variants").EnumerateArray().Select(each => each.GetString()!),
            StringComparer.Ordinal
        );
        var desk = JsonDocument.Parse(await _visitor.SayAsync("/api/variant", """{"id":0,"name":"longer"}""")).RootElement;
        Assert.Equal("longer", Assert.Single(desk.GetProperty("tries").EnumerateArray()).GetProperty("name").GetString());
        var table = desk.GetProperty("sections").EnumerateArray().Single(each => each.GetProperty("title").GetString() is "table");
        var places = table.GetProperty("values").EnumerateArray().Single(each => each.GetProperty("key").GetString() is "places");
        Assert.Equal("99", places.GetProperty("value").GetString());
        Assert.DoesNotContain("99", await File.ReadAllTextAsync(_folder.In("site.toml")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gone", "cannot be taken as a try")]
    [InlineData("broken", "cannot be taken as a try")]
    [InlineData("no-such", "There is no variant")]
    [InlineData("../site", "There is no variant")]
    [InlineData("note", "There is no variant")]
    public async Task What_cannot_be_taken_is_refused_in_words(string name, string why)
    {
        using var answer = await _visitor.PostAsync("/api/variant", $$"""{"id":0,"name":"{{name}}"}""");
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains(why, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}
