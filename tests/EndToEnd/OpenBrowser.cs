using Microsoft.Playwright;

namespace EndToEnd;

/// <summary>Chromium, running for one test. CHROMIUM_PATH in the environment names another Chromium than Debian's.</summary>
internal sealed class OpenBrowser : IAsyncDisposable
{
    private readonly IPlaywright _playwright;
    private readonly IBrowser _browser;

    private OpenBrowser(IPlaywright playwright, IBrowser browser) => (_playwright, _browser) = (playwright, browser);

    /// <summary>What the pages have complained of: words on the console, failures, dialogs.</summary>
    public List<string> Complaints { get; } = [];

    /// <summary>What the pages have asked for.</summary>
    public List<string> Requests { get; } = [];

    public static async Task<OpenBrowser> StartAsync()
    {
        var playwright = await Playwright.CreateAsync();
        var browser = await playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions
            {
                ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM_PATH") ?? "/usr/bin/chromium",
                Args =
                [
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                ],
            }
        );
        return new OpenBrowser(playwright, browser);
    }

    /// <summary>Opens a file, or an address.</summary>
    /// <param name="file">Path of the file.</param>
    /// <param name="width">Width of the window, in dots.</param>
    /// <param name="forChecker">Let a checker's script into the page, which the page itself forbids.</param>
    public async Task<IPage> PageAsync(string file, int width = 1280, bool forChecker = false)
    {
        var context = await _browser.NewContextAsync(
            new BrowserNewContextOptions
            {
                ViewportSize = new ViewportSize { Width = width, Height = 900 },
                BypassCSP = forChecker,
            }
        );
        context.Console += (_, message) => Complaints.Add($"{message.Type}: {message.Text}");
        context.WebError += (_, failure) => Complaints.Add(failure.Error);
        context.Dialog += (_, dialog) => Complaints.Add(dialog.Message);
        context.Request += (_, request) => Requests.Add(request.Url);
        var page = await context.NewPageAsync();
        await page.GotoAsync(new Uri(file).AbsoluteUri, new PageGotoOptions { WaitUntil = WaitUntilState.Load });
        return page;
    }

    /// <summary>How wide the page is, in dots: wider than its window where it scrolls sideways.</summary>
    public static Task<int> WidthAsync(IPage page) => page.EvaluateAsync<int>("document.documentElement.scrollWidth");

    /// <summary>Opens all that is folded away.</summary>
    public static Task UnfoldAsync(IPage page) =>
        page.EvaluateAsync("document.querySelectorAll('details').forEach(each => each.open = true)");

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
    }
}
