using Microsoft.Playwright;

namespace EndToEnd;

/// <summary>
/// The report's page in a real browser. Marked Browser: it needs Chromium, so the everyday test command leaves it out.
/// CHROMIUM_PATH in the environment names another Chromium than Debian's.
/// </summary>
[Trait("Category", "Browser")]
public sealed class PageInBrowserTests
{
    private static readonly BrowserTypeLaunchOptions s_launch = new()
    {
        ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM_PATH") ?? "/usr/bin/chromium",
        Args =
        [
            "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
        ],
    };

    [Fact]
    public async Task Shows_the_verdict_without_errors_and_asks_nothing_of_the_network()
    {
        using var folder = new TemporaryFolder();
        string verdict = await MakeReportAsync(folder);

        using IPlaywright playwright = await Playwright.CreateAsync();
        await using IBrowser browser = await playwright.Chromium.LaunchAsync(s_launch);
        IPage page = await browser.NewPageAsync();
        var complaints = new List<string>();
        var requests = new List<string>();
        page.Console += (_, message) => complaints.Add($"{message.Type}: {message.Text}");
        page.PageError += (_, failure) => complaints.Add(failure);
        page.Request += (_, request) => requests.Add(request.Url);

        string address = new Uri(folder.In("report/report.html")).AbsoluteUri;
        await page.GotoAsync(address, new PageGotoOptions { WaitUntil = WaitUntilState.Load });

        string text = await page.InnerTextAsync("body");
        Assert.Contains(verdict, text, StringComparison.Ordinal);
        Assert.NotEqual(0, await page.Locator("svg").CountAsync());
        Assert.Equal(1, await page.Locator("h1").CountAsync());
        Assert.Empty(complaints);
        Assert.All(requests, request => Assert.True(request.StartsWith("file:", StringComparison.Ordinal) || request.StartsWith("data:", StringComparison.Ordinal), request));
    }

    [Fact]
    public async Task Fits_a_narrow_screen_without_sideways_scrolling()
    {
        using var folder = new TemporaryFolder();
        await MakeReportAsync(folder);

        using IPlaywright playwright = await Playwright.CreateAsync();
        await using IBrowser browser = await playwright.Chromium.LaunchAsync(s_launch);
        IPage page = await browser.NewPageAsync(new BrowserNewPageOptions { ViewportSize = new ViewportSize { Width = 390, Height = 800 } });
        await page.GotoAsync(new Uri(folder.In("report/report.html")).AbsoluteUri);
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
    }

    /// <summary>Makes the report of the first example, or of the starter folder where there is none; gives the verdict's headline.</summary>
    private static async Task<string> MakeReportAsync(TemporaryFolder folder)
    {
        string scenario = Repository.Examples.LastOrDefault() ?? folder.In("spring");
        if (Repository.Examples.Length == 0)
            Assert.Equal(0, (await Command.RunAsync("new", scenario)).Code);
        Command run = await Command.RunAsync("run", scenario, "--seasons", "40", "--out", folder.In("report"), "--json");
        Assert.Equal(0, run.Code);
        using var json = System.Text.Json.JsonDocument.Parse(run.Output);
        return json.RootElement.GetProperty("verdict").GetProperty("headline").GetString()!;
    }
}
