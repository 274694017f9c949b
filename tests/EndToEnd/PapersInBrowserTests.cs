using Microsoft.Playwright;

namespace EndToEnd;

/// <summary>The pages among the papers in a real browser, with names as long and as ill-willed as a plan may hold. Marked Browser as
/// <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class PapersInBrowserTests
{
    // What 184 mm, the width of A4 between the margins, is at 96 dots an inch.
    private const int PaperWidth = 695;

    [Theory]
    [InlineData("work-list.html")]
    [InlineData("order.html")]
    public async Task Fit_the_paper_and_run_nothing(string name)
    {
        using var folder = new TemporaryFolder();
        var spring = folder.In("spring");
        Assert.Equal(0, (await Command.RunAsync("new", spring)).Code);
        var plan = Path.Combine(spring, "plan.csv");
        var hostile = "\"<img src=x onerror=alert(1)> " + string.Concat(Enumerable.Repeat("Wide", 70)) + "\"";
        await File.WriteAllTextAsync(plan, (await File.ReadAllTextAsync(plan)).Replace("Salad crew", hostile, StringComparison.Ordinal));
        Assert.Equal(0, (await Command.RunAsync("print", spring, "--out", folder.In("papers"))).Code);

        await FitsAsync(folder.In("papers/" + name));
    }

    [Fact]
    public async Task The_page_of_a_day_fits_too()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.In("spring");
        Directory.CreateDirectory(spring);
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "scenarios", "spring-under-way")))
        {
            File.Copy(file, Path.Combine(spring, Path.GetFileName(file)));
        }

        var plan = Path.Combine(spring, "plan.csv");
        var hostile = "\"<img src=x onerror=alert(1)> " + string.Concat(Enumerable.Repeat("Wide", 70)) + "\"";
        await File.WriteAllTextAsync(plan, (await File.ReadAllTextAsync(plan)).Replace("Oskar", hostile, StringComparison.Ordinal));
        Assert.Equal(0, (await Command.RunAsync("print", spring, "--today", "2027-04-20", "--out", folder.In("today"))).Code);
        await FitsAsync(folder.In("today/today.html"));
    }

    private static async Task FitsAsync(string file)
    {
        await using var browser = await OpenBrowser.StartAsync();
        var page = await browser.PageAsync(file, PaperWidth);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });

        Assert.Equal(PaperWidth, await OpenBrowser.WidthAsync(page));
        Assert.Equal(0, await page.Locator("img, script").CountAsync());
        Assert.Equal(1, await page.Locator("h1").CountAsync());
        Assert.Empty(browser.Complaints);
        foreach (var paper in new[] { "A4", "Letter" })
        {
            Assert.NotEmpty(await page.PdfAsync(new PagePdfOptions { Format = paper, PreferCSSPageSize = false }));
        }

        var telephone = await browser.PageAsync(file, 390);
        Assert.Equal(390, await OpenBrowser.WidthAsync(telephone));
    }
}
