using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace EndToEnd;

/// <summary>What axe (axe-core, by its rules for WCAG and good practice) finds on the pages: nothing. Marked Browser as
/// <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class AccessibilityTests
{
    private static readonly (ColorScheme Scheme, Media Media)[] s_looks =
    [
        (ColorScheme.Light, Media.Screen),
        (ColorScheme.Light, Media.Print),
        (ColorScheme.Dark, Media.Screen),
    ];

    [Theory]
    // The tables of the large one have thousands of cells of the kinds that the small one has.
    [InlineData("by-hand", true)]
    [InlineData("two-house-spring", false)]
    public async Task Axe_finds_nothing_on_the_report(string example, bool unfold)
    {
        using var folder = new TemporaryFolder();
        var scenario = Path.Combine(Repository.Root, "scenarios", example);
        Assert.Equal(0, (await Command.RunAsync("run", scenario, "--seasons", "40", "--bottlenecks", "--out", folder.In("report"))).Code);

        await using var browser = await OpenBrowser.StartAsync();
        Assert.Empty(await FindAsync(browser, folder.In("report/report.html"), unfold));
    }

    [Fact]
    public async Task Axe_finds_nothing_on_the_papers()
    {
        using var folder = new TemporaryFolder();
        var scenario = Path.Combine(Repository.Root, "scenarios", "two-house-spring");
        Assert.Equal(0, (await Command.RunAsync("print", scenario, "--what", "list,order", "--out", folder.In("papers"))).Code);

        await using var browser = await OpenBrowser.StartAsync();
        foreach (var name in new[] { "work-list.html", "order.html" })
        {
            Assert.Empty(await FindAsync(browser, folder.In("papers/" + name)));
        }
    }

    [Fact]
    public async Task Axe_finds_nothing_on_the_page_of_a_day()
    {
        using var folder = new TemporaryFolder();
        var scenario = Path.Combine(Repository.Root, "scenarios", "spring-under-way");
        Assert.Equal(0, (await Command.RunAsync("print", scenario, "--today", "2027-04-20", "--out", folder.In("today"))).Code);

        await using var browser = await OpenBrowser.StartAsync();
        Assert.Empty(await FindAsync(browser, folder.In("today/today.html")));
    }

    // A page without a name for its picture, and with letters of 1.1 to 1: the checker must see it, or its silence says nothing.
    [Fact]
    public async Task Axe_finds_what_is_wrong_on_a_bad_page()
    {
        using var folder = new TemporaryFolder();
        await File.WriteAllTextAsync(
            folder.In("bad.html"),
            "<!DOCTYPE html><html lang=en><title>Bad</title><main><h1>Bad</h1><img src=x.png><p "
                + "style='color:#eee;background:#fff'>pale</p></main></html>"
        );

        await using var browser = await OpenBrowser.StartAsync();
        var found = await FindAsync(browser, folder.In("bad.html"));
        Assert.Contains(found, line => line.Contains("image-alt", StringComparison.Ordinal));
        Assert.Contains(found, line => line.Contains("color-contrast", StringComparison.Ordinal));
    }

    /// <summary>The violations in each look of the page.</summary>
    private static async Task<string[]> FindAsync(OpenBrowser browser, string file, bool unfold = false)
    {
        var page = await browser.PageAsync(file, forChecker: true);
        if (unfold)
        {
            await OpenBrowser.UnfoldAsync(page);
        }

        var found = new List<string>();
        foreach (var (scheme, media) in s_looks)
        {
            await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = scheme, Media = media });
            var result = await page.RunAxe();
            Assert.NotEmpty(result.Passes);
            found.AddRange(
                result.Violations.SelectMany(rule =>
                    rule.Nodes.Select(node => $"{Path.GetFileName(file)}, {scheme}, {media}: {rule.Id}: {rule.Help}: {node.Html}")
                )
            );
        }

        return [.. found];
    }
}
