using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>What would mend the plan, sought and taken on the page. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class MendTests
{
    [Fact]
    public async Task What_helps_is_sought_and_taken_as_a_try_by_keys_alone()
    {
        using var folder = ShortTable();
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await PressAsync(bench.Page.GetByRole(AriaRole.Button, new() { Name = "What would mend it" }));
        await PressAsync(bench.Page.GetByRole(AriaRole.Button, new() { Name = "Look for what would help" }));
        await Assertions.Expect(bench.Page.Locator(".found .headline")).ToContainTextAsync("Fits:", new() { Timeout = 120_000 });
        await bench.PictureAsync("mend-found");
        var step = bench.Page.Locator(".points").First.Locator(".point").Filter(new() { HasText = "table: " }).First;
        await Assertions.Expect(step).ToContainTextAsync("places, not 24");
        await Assertions.Expect(step).ToContainTextAsync("Costs: ");
        await PressAsync(step.GetByRole(AriaRole.Button, new() { NameRegex = Take() }));
        await Assertions.Expect(bench.Page.Locator(".message")).ToContainTextAsync("Taken as a try: ");
        await bench.AnsweredAsync();
        Assert.Equal(1, (await bench.DeskAsync()).GetProperty("current").GetInt32());
        await Assertions.Expect(bench.Page.Locator(".difference")).ToBeVisibleAsync();
        await Assertions.Expect(bench.Page.Locator(".found")).ToContainTextAsync("What you look at now is another plan");
        Assert.Contains("places = 24", await File.ReadAllTextAsync(folder.In("site.toml")), StringComparison.Ordinal);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task What_is_not_to_be_had_is_marked_and_taken_back_and_a_search_is_stopped()
    {
        using var folder = ShortTable();
        folder.Write("not-here.txt", "slack\n");
        await using var bench = await Bench.OpenAsync(folder.Path, width: 390);
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "What would mend it" }).ClickAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Look for what would help" }).ClickAsync();
        await Assertions.Expect(bench.Page.GetByRole(AriaRole.Progressbar)).ToBeVisibleAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Assertions.Expect(bench.Page.GetByRole(AriaRole.Progressbar)).ToHaveCountAsync(0);
        await Assertions.Expect(bench.Page.Locator(".found")).ToHaveCountAsync(0);

        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Look for what would help" }).ClickAsync();
        await Assertions.Expect(bench.Page.Locator(".found .headline")).ToBeVisibleAsync(new() { Timeout = 120_000 });
        Assert.Equal(390, await OpenBrowser.WidthAsync(bench.Page));
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Not here: " }).First.ClickAsync();
        var marks = bench.Page.GetByRole(AriaRole.Region, new() { Name = "Not to be had here" }).Locator("li");
        await Assertions.Expect(marks).ToHaveCountAsync(2);
        Assert.Equal(2, (await File.ReadAllLinesAsync(folder.In("not-here.txt"))).Length);
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Take back: slack" }).ClickAsync();
        await Assertions.Expect(marks).ToHaveCountAsync(1);
        Assert.DoesNotContain("slack", await File.ReadAllTextAsync(folder.In("not-here.txt")), StringComparison.Ordinal);
        await bench.PictureAsync("mend-phone");
        bench.AssertQuiet();
    }

    // A few seasons, so that a search is soon over.
    private static FarmFolder ShortTable()
    {
        var folder = MendFarms.WithShortTable();
        folder.Write("site.toml", File.ReadAllText(folder.In("site.toml")) + "\n[play]\nseasons = 60\n");
        return folder;
    }

    private static async Task PressAsync(ILocator button)
    {
        await button.FocusAsync();
        await button.PressAsync("Enter");
    }

    private static System.Text.RegularExpressions.Regex Take() =>
        new("^Take", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1));
}
