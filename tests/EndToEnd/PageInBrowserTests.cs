using System.Text;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace EndToEnd;

/// <summary>The report's page in a real browser. Marked Browser: it needs Chromium, so the everyday test command leaves it out.</summary>
[Trait("Category", "Browser")]
public sealed class PageInBrowserTests
{
    // What 184 mm, the width of A4 between the margins of 13 mm, is at 96 dots an inch; Letter is wider.
    private const int PaperWidth = 695;

    // A phone held upright, in the dots of its browser.
    private const int PhoneWidth = 390;
    private const int PhoneHeight = 844;

    [Fact]
    public async Task Shows_the_verdict_without_errors_and_asks_nothing_of_the_network()
    {
        using var folder = new TemporaryFolder();
        var verdict = await MakeReportAsync(folder);

        await using var browser = await OpenBrowser.StartAsync();
        var page = await browser.PageAsync(folder.In("report/report.html"));

        Assert.Contains(verdict, await page.InnerTextAsync("main > section:first-child h2"), StringComparison.Ordinal);
        Assert.NotEqual(0, await page.Locator("svg").CountAsync());
        Assert.Equal(1, await page.Locator("h1").CountAsync());
        Assert.Empty(browser.Complaints);
        Assert.All(browser.Requests, request =>
            Assert.True(
                request.StartsWith("file:", StringComparison.Ordinal) || request.StartsWith("data:", StringComparison.Ordinal),
                request
            )
        );
    }

    [Fact]
    public async Task Fits_a_narrow_screen_without_sideways_scrolling()
    {
        using var folder = new TemporaryFolder();
        await MakeReportAsync(folder);

        await using var browser = await OpenBrowser.StartAsync();
        var page = await browser.PageAsync(folder.In("report/report.html"), 390);
        Assert.Equal(390, await OpenBrowser.WidthAsync(page));
        await OpenBrowser.UnfoldAsync(page);
        Assert.Equal(390, await OpenBrowser.WidthAsync(page));
    }

    [Fact]
    public async Task A_phone_shows_the_verdict_and_the_weeks_of_the_first_space_without_scrolling()
    {
        using var folder = new TemporaryFolder();
        await MakeReportAsync(folder);

        await using var browser = await OpenBrowser.StartAsync();
        var page = await browser.PageAsync(folder.In("report/report.html"), PhoneWidth);
        foreach (var first in new[] { "#verdict h2", "#verdict .gauge", "#glance .strip > div:first-child" })
        {
            var box = await page.Locator(first).BoundingBoxAsync();
            Assert.NotNull(box);
            Assert.InRange(box.Y, 0, PhoneHeight);
            Assert.True(box.Y + box.Height <= PhoneHeight, $"{first} ends at {box.Y + box.Height}");
            Assert.InRange(box.X + box.Width, 1, PhoneWidth);
        }
    }

    [Fact]
    public async Task A_chart_wider_than_a_phone_says_that_it_slides()
    {
        using var folder = new TemporaryFolder();
        await MakeReportAsync(folder);

        await using var browser = await OpenBrowser.StartAsync();
        var page = await browser.PageAsync(folder.In("report/report.html"), PhoneWidth);
        Assert.Equal(
            "",
            await page.EvaluateAsync<string>(
                """
                () => [...document.querySelectorAll('.scroll:has(> .chart:not(.months))')]
                    .filter(each => each.scrollWidth > each.clientWidth)
                    .filter(each => !getComputedStyle(each, '::before').content.includes('sideways'))
                    .map(each => each.getAttribute('aria-label')).join()
                """
            )
        );
    }

    [Fact]
    public async Task Print_opens_what_was_folded()
    {
        using var folder = new TemporaryFolder();
        await MakeReportAsync(folder);

        await using var browser = await OpenBrowser.StartAsync();
        var page = await browser.PageAsync(folder.In("report/report.html"), PaperWidth);
        const string Hidden =
            "() => [...document.querySelectorAll('details:not(.sources) > :not(summary)')].filter(each => !each.checkVisibility()).length";
        Assert.NotEqual(0, await page.EvaluateAsync<int>(Hidden));
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.Equal(0, await page.EvaluateAsync<int>(Hidden));
        Assert.Equal(PaperWidth, await OpenBrowser.WidthAsync(page));
        using var pdf = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { Format = "A4" }));
        var printed = Bare(string.Concat(pdf.GetPages().Select(sheet => sheet.Text)));
        Assert.Contains(Bare("What these numbers leave out"), printed, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_tab_key_reaches_everything_in_order_and_shows_where_it_is()
    {
        using var folder = new TemporaryFolder();
        await MakeReportAsync(folder);

        await using var browser = await OpenBrowser.StartAsync();
        var page = await browser.PageAsync(folder.In("report/report.html"));
        // The stops there ought to be: links, folds and charts that scroll, as they stand in the page, less those within a closed fold.
        var stops = await page.EvaluateAsync<int>(
            "(window.stops = [...document.querySelectorAll('a[href], summary, [tabindex]')].filter(each => each.tagName === "
                + "'SUMMARY' || !each.closest('details:not([open])'))).length"
        );
        Assert.InRange(stops, 10, 1000);
        for (var stop = 0; stop < stops; stop++)
        {
            await page.Keyboard.PressAsync("Tab");
            var seen = await page.EvaluateAsync<string>(
                """
                stop => {
                    const at = document.activeElement, box = at.getBoundingClientRect();
                    if (at !== window.stops[stop]) return `not at stop ${stop} but at ${at.outerHTML.slice(0, 80)}`;
                    if (getComputedStyle(at).outlineStyle === 'none') return 'no outline';
                    if (box.right <= 0 || box.bottom <= 0 || box.top >= innerHeight) return 'off the screen';
                    return (at.getAttribute('aria-label') || at.textContent).trim() ? 'well' : 'no name';
                }
                """,
                stop
            );
            Assert.Equal("well", seen);
        }
    }

    [Fact]
    public async Task The_enter_key_opens_a_table_and_a_link_of_the_contents_leads_to_its_section()
    {
        using var folder = new TemporaryFolder();
        await MakeReportAsync(folder);

        await using var browser = await OpenBrowser.StartAsync();
        var page = await browser.PageAsync(folder.In("report/report.html"));
        var fold = page.Locator("#growers details");
        await fold.Locator("summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        Assert.True(await fold.Locator("table").IsVisibleAsync());
        await page.Locator("nav a[href='#fuel']").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        Assert.True(await page.EvaluateAsync<bool>("document.querySelector('#fuel').getBoundingClientRect().top < 2"));
    }

    [Fact]
    public async Task Prints_on_A4_and_Letter_in_its_true_size_with_the_verdict_on_the_first_sheet()
    {
        using var folder = new TemporaryFolder();
        var verdict = await MakeReportAsync(folder);

        await using var browser = await OpenBrowser.StartAsync();
        var page = await browser.PageAsync(folder.In("report/report.html"), PaperWidth);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        // A page wider than its paper would be printed smaller.
        Assert.Equal(PaperWidth, await OpenBrowser.WidthAsync(page));
        foreach (var (paper, width, height) in new[] { ("A4", 595, 842), ("Letter", 612, 792) })
        {
            using var pdf = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { Format = paper, PreferCSSPageSize = false }));
            Assert.InRange(pdf.NumberOfPages, 3, 20);
            Assert.InRange(pdf.GetPage(1).Width, width - 1, width + 1);
            Assert.InRange(pdf.GetPage(1).Height, height - 1, height + 1);
            Assert.Contains(Bare(verdict), Bare(pdf.GetPage(1).Text), StringComparison.Ordinal);
        }

        await OpenBrowser.UnfoldAsync(page);
        Assert.Equal(PaperWidth, await OpenBrowser.WidthAsync(page));
    }

    // The names that the starter folder gives to people, places, batches and growers, each with a text of ill
    // will before it and three hundred letters behind.
    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("</style></svg><svg onload=alert(1)>")]
    [InlineData("' onmouseover='alert(1)")]
    public async Task Names_of_ill_will_run_nothing_and_break_no_line(string hostile)
    {
        using var folder = new TemporaryFolder();
        var spring = folder.In("spring");
        Assert.Equal(0, (await Command.RunAsync("new", spring)).Code);
        var name = hostile + string.Concat(Enumerable.Repeat("Wide", 75));
        await ReplaceAsync(
            Path.Combine(spring, "site.toml"),
            name,
            "Example market garden",
            "Does the spring plan",
            "Main house",
            "Heat mats",
            "Main benches",
            "Hardening table"
        );
        await ReplaceAsync(Path.Combine(spring, "plan.csv"), name, "Salad crew", "Tunnel crew", "onions", "tomatoes");
        var run = await Command.RunAsync("run", spring, "--seasons", "10", "--bottlenecks", "--out", folder.In("report"));
        Assert.True(run.Code == 0, run.Error);

        await using var browser = await OpenBrowser.StartAsync();
        foreach (var width in new[] { 390, 1280 })
        {
            var page = await browser.PageAsync(folder.In("report/report.html"), width);
            await OpenBrowser.UnfoldAsync(page);
            Assert.Equal(width, await OpenBrowser.WidthAsync(page));
            Assert.Equal(0, await page.Locator("script, img, [onload], [onerror], [onmouseover]").CountAsync());
            Assert.Contains(hostile, await page.InnerTextAsync("h1"), StringComparison.Ordinal);
        }

        var printed = await browser.PageAsync(folder.In("report/report.html"), PaperWidth);
        await printed.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.Equal(PaperWidth, await OpenBrowser.WidthAsync(printed));
        Assert.Empty(browser.Complaints);
    }

    private static async Task ReplaceAsync(string file, string name, params string[] words)
    {
        var text = await File.ReadAllTextAsync(file);
        foreach (var word in words)
        {
            Assert.Contains(word, text, StringComparison.Ordinal);
            text = text.Replace(word, $"{name} {word}", StringComparison.Ordinal);
        }

        await File.WriteAllTextAsync(file, text);
    }

    /// <summary>Letters and digits alone: spaces, line ends and joined letters of a PDF are the printer's.</summary>
    private static string Bare(string text)
    {
        var bare = new StringBuilder();
        foreach (
            var letter in text.Replace("\uFB01", "fi", StringComparison.Ordinal)
                .Replace("\uFB02", "fl", StringComparison.Ordinal)
                .Where(char.IsLetterOrDigit)
        )
        {
            bare.Append(letter);
        }

        return bare.ToString();
    }

    /// <summary>Makes the report of the last example; gives the verdict's headline.</summary>
    private static async Task<string> MakeReportAsync(TemporaryFolder folder)
    {
        var run = await Command.RunAsync(
            "run",
            Repository.Examples[^1],
            "--seasons",
            "40",
            "--bottlenecks",
            "--out",
            folder.In("report"),
            "--json"
        );
        Assert.Equal(0, run.Code);
        using var json = System.Text.Json.JsonDocument.Parse(run.Output);
        return json.RootElement.GetProperty("verdict").GetProperty("headline").GetString()!;
    }
}
