using System.Diagnostics;
using System.Text.Json;
using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>
/// The workbench on a folder, in a process of its own, and its page in Chromium. Whatever the page complains of, or asks of anybody but
/// the server, fails the test when it ends. BENCHSIM_PICTURES names a folder for pictures of the page.
/// </summary>
internal sealed class Bench : IAsyncDisposable
{
    private readonly Process _process;
    private readonly OpenBrowser _browser;
    private readonly Uri _root;

    private Bench(Process process, OpenBrowser browser, IPage page, Uri root) =>
        (_process, _browser, Page, _root) = (process, browser, page, root);

    public IPage Page { get; }

    /// <summary>Opens a folder.</summary>
    /// <param name="folder">The folder; null for none.</param>
    /// <param name="width">Width of the window, in dots.</param>
    /// <param name="forChecker">Let a checker's script into the page, which the page itself forbids.</param>
    /// <param name="start">The folder it is started in; null for any.</param>
    /// <param name="lan">The address at which phones are let in; null for none.</param>
    /// <param name="before">The file with the folders opened before; null for none.</param>
    public static async Task<Bench> OpenAsync(
        string? folder,
        int width = 1280,
        bool forChecker = false,
        string? start = null,
        string? lan = null,
        string? before = null
    )
    {
        string[] words = [.. folder is null ? ["open"] : new[] { "open", folder }, .. lan is null ? [] : new[] { "--lan", lan }];
        var process = Command.StartIn(start ?? Path.GetTempPath(), [("BENCHSIM_FOLDERS", before ?? "none")], words);
        await process.StandardOutput.ReadLineAsync();
        var address = new Uri(await process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("No address."));
        return await VisitAsync(process, address, width, forChecker);
    }

    /// <summary>
    /// Starts the program without arguments, as a file manager of Linux does on a double click: with no terminal, nothing to read from and
    /// nowhere to write to. The address is the one that it hands to the browser.
    /// </summary>
    /// <param name="folder">The folder it is started in.</param>
    public static async Task<Bench> DoubleClickAsync(TemporaryFolder folder)
    {
        var keeper = new AddressKeeper(folder.In("bin"));
        var path = $"{await keeper.LayAsync()}:{Environment.GetEnvironmentVariable("PATH")}";
        var line = $"cd '{folder.Path}' && exec setsid \"$@\" < /dev/null > /dev/null 2>&1";
        var process = Command.StartShell(line, [("PATH", path)]);
        return await VisitAsync(process, await keeper.AddressAsync(process), 1280, forChecker: false);
    }

    private static async Task<Bench> VisitAsync(Process process, Uri address, int width, bool forChecker)
    {
        // A busy machine is slow; nothing here is timed.
        Assertions.SetDefaultExpectTimeout(30_000);
        var browser = await OpenBrowser.StartAsync();
        var page = await browser.PageAsync(address.AbsoluteUri, width, forChecker);
        return new Bench(process, browser, page, new Uri(address.GetLeftPart(UriPartial.Authority)));
    }

    /// <summary>What the pages have complained of.</summary>
    public IReadOnlyList<string> Complaints => _browser.Complaints;

    /// <summary>A second window of the same browser, which has the cookie.</summary>
    public async Task<IPage> AnotherPageAsync()
    {
        var page = await Page.Context.NewPageAsync();
        await page.GotoAsync(_root.AbsoluteUri);
        return page;
    }

    /// <summary>Another browser, as of a phone, which has no cookie.</summary>
    /// <param name="address">The address that it opens.</param>
    /// <param name="forChecker">Let a checker's script into the page.</param>
    public Task<IPage> PhoneAsync(string address, bool forChecker = false) => _browser.PageAsync(address, 390, forChecker);

    /// <summary>
    /// Waits until the answer of the newest change that is on the desk is there, with so many seasons at least; faults are none.
    /// </summary>
    public Task AnsweredAsync(int seasons = 200) => AnsweredAsync(Page, seasons);

    public async Task AnsweredAsync(IPage page, int seasons = 200)
    {
        while (true)
        {
            var newest = (await DeskAsync(page)).GetProperty("revision").GetInt64();
            if (await ShownAsync(page) is { IsLive: false } shown && shown.Revision >= newest)
            {
                Assert.True(shown.Faults is null, "There is no answer but faults: " + shown.Faults);
                if (shown.Seasons >= seasons)
                {
                    return;
                }
            }

            await Task.Delay(20);
        }
    }

    // Read in one go: between two looks the verdict may be another.
    private static async Task<ShownVerdict?> ShownAsync(IPage page) =>
        await page.EvaluateAsync<ShownVerdict?>(
            """
            () => {
              const all = document.querySelectorAll("section.verdict");
              return all.length !== 1 ? null : {
                isLive: all[0].dataset.live !== "no",
                revision: Number(all[0].dataset.revision ?? -1),
                seasons: Number(all[0].dataset.seasons ?? 0),
                faults: all[0].classList.contains("faults") ? all[0].querySelector(".faults")?.innerText ?? "" : null,
              };
            }
            """
        );

    /// <summary>What is on the desk.</summary>
    public async Task<JsonElement> DeskAsync(IPage? page = null)
    {
        var answer = await (page ?? Page).APIRequest.GetAsync(new Uri(_root, "/api/desk").AbsoluteUri);
        return JsonDocument.Parse(await answer.BodyAsync()).RootElement;
    }

    /// <summary>A cell of the plan on the desk.</summary>
    public async Task<string> CellAsync(string id, string column)
    {
        var plan = (await DeskAsync()).GetProperty("plan");
        string[] columns = [.. plan.GetProperty("columns").EnumerateArray().Select(each => each.GetString()!)];
        var row = plan.GetProperty("rows").EnumerateArray().First(cells => cells[Array.IndexOf(columns, "id")].GetString() == id);
        return row[Array.IndexOf(columns, column)].GetString()!;
    }

    /// <summary>The names of the parts of the page.</summary>
    public Task<IReadOnlyList<string>> PartsAsync() => Page.Locator("nav .part").AllInnerTextsAsync();

    /// <summary>Waits until the page has been painted anew: no hand types faster than that after a click.</summary>
    public Task PaintedAsync() =>
        Page.EvaluateAsync(
            "() => new Promise((done) => requestAnimationFrame(() => setTimeout(() => requestAnimationFrame(() => setTimeout(done)))))"
        );

    /// <summary>Goes to a part of the page.</summary>
    public Task PartAsync(string name) => Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();

    /// <summary>What is said below the verdict.</summary>
    public ILocatorAssertions Message => Assertions.Expect(Page.Locator(".message"));

    /// <summary>Pastes a text where the focus is.</summary>
    public Task PasteAsync(string text) =>
        Page.EvaluateAsync(
            """
            (text) => {
              const data = new DataTransfer();
              data.setData("text/plain", text);
              document.activeElement.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
            }
            """,
            text
        );

    /// <summary>A picture of the page, where pictures are asked for.</summary>
    public async Task PictureAsync(string name, IPage? page = null)
    {
        if (Environment.GetEnvironmentVariable("BENCHSIM_PICTURES") is { Length: > 0 } folder)
        {
            await (page ?? Page).ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, name + ".png") });
        }
    }

    /// <summary>Nobody was asked for anything but the server, and the page did not complain.</summary>
    /// <param name="lan">The address of the server for phones; null where there is none.</param>
    public void AssertQuiet(string? lan = null)
    {
        Assert.Empty(_browser.Complaints);
        string[] roots = [_root.AbsoluteUri, .. lan is null ? [] : new[] { lan }];
        Assert.DoesNotContain(_browser.Requests, request =>
            !Array.Exists(roots, root => request.StartsWith(root, StringComparison.Ordinal))
        );
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        if (!_process.HasExited)
        {
            _process.Kill();
        }

        await _process.WaitForExitAsync();
        _process.Dispose();
    }
}

/// <summary>The verdict as the page shows it.</summary>
internal sealed class ShownVerdict
{
    public bool IsLive { get; set; }

    public long Revision { get; set; }

    public int Seasons { get; set; }

    /// <summary>What is said of the faults; null where there are none.</summary>
    public string? Faults { get; set; }
}
