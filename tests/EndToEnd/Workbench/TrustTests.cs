using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>How sure the answer is, asked on the page. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class TrustTests
{
    [Fact]
    public async Task How_sure_it_is_and_what_to_measure_first_is_asked_from_the_verdict_by_keys_alone()
    {
        using var folder = MendFarms.WithShortTable();
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var ask = bench.Page.GetByRole(AriaRole.Button, new() { Name = "How sure is it?" });
        await ask.FocusAsync();
        await ask.PressAsync("Enter");
        var look = bench.Page.GetByRole(AriaRole.Button, new() { Name = "Look how sure it is" });
        await look.FocusAsync();
        await look.PressAsync("Enter");
        await Assertions
            .Expect(bench.Page.Locator(".found .headline"))
            .ToContainTextAsync("Over their ranges", new() { Timeout = 120_000 });
        await Assertions.Expect(bench.Page.Locator(".found li").First).ToContainTextAsync("Measure first: ");
        await bench.PictureAsync("trust");
        bench.AssertQuiet();
    }

    [Fact]
    public async Task On_a_narrow_screen_a_search_is_stopped_and_the_table_stays_within_the_page()
    {
        using var folder = MendFarms.WithShortTable();
        await using var bench = await Bench.OpenAsync(folder.Path, width: 390);
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "How sure it is", Exact = true }).ClickAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Look how sure it is" }).ClickAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Assertions.Expect(bench.Page.GetByRole(AriaRole.Progressbar)).ToHaveCountAsync(0);
        await Assertions.Expect(bench.Page.Locator(".found")).ToHaveCountAsync(0);

        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Look how sure it is" }).ClickAsync();
        await Assertions.Expect(bench.Page.Locator(".figures tbody tr").First).ToBeVisibleAsync(new() { Timeout = 120_000 });
        Assert.Equal(390, await OpenBrowser.WidthAsync(bench.Page));
        await bench.PictureAsync("trust-phone");
        bench.AssertQuiet();
    }
}
