using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>Houses and rules on the page. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class RulesTests
{
    [Fact]
    public async Task Every_section_of_the_site_has_a_form()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.PartAsync("Houses and rules");

        // The keys of the reference page: a heading a section, a row a key.
        var section = "";
        var asked = 0;
        foreach (var line in await File.ReadAllLinesAsync(Repository.File("docs/folder.md")))
        {
            section =
                line.StartsWith("### [", StringComparison.Ordinal) ? line.Trim('#', ' ').Trim('[', ']')
                : line.StartsWith('#') ? ""
                : section;
            if (section.Length > 0 && line.StartsWith("| `", StringComparison.Ordinal))
            {
                var key = line.Split('`')[1];
                var field = bench.Page.Locator($"[id^='{section}-'][name='{key}']");
                Assert.True(await field.CountAsync() > 0 || section is "mishap", $"{section}, {key}");
                asked++;
            }
        }

        Assert.True(asked > 100, $"{asked} keys");

        // One that is not in the file yet.
        await bench.Page.Locator("summary", new() { HasText = "Seconds of work" }).ClickAsync();
        await bench.Page.Locator("[id='work_seconds-0-sow_seed']").FillAsync("2");
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.Message.ToContainTextAsync("sow_seed 2");
        await bench.AnsweredAsync();
        await bench.PictureAsync("seconds");
        bench.AssertQuiet();
    }
}
