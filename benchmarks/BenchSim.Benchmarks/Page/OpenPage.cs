using System.Diagnostics;
using Microsoft.Playwright;

namespace BenchSim.Benchmarks.Page;

/// <summary>
/// The workbench on a folder, in a process of its own, and its page in a browser that runs already. The page marks when it is asked for
/// something ("input") and when a verdict has been painted ("painted"); all marks are kept here.
/// </summary>
internal sealed class OpenPage : IAsyncDisposable
{
    private const string Marks = """
        () => {
          window.kept = [];
          new PerformanceObserver((list) => window.kept.push(...list.getEntries())).observe({ type: "mark", buffered: true });
        }
        """;

    // The time of the first verdict painted after a moment that is of a later revision and of so many seasons, from the last input before.
    private const string Painted = """
        ([revision, seasons]) => new Promise((done, fail) => {
          const end = performance.now() + 60000;
          const look = () => {
            const found = window.kept.find(({ name, detail }) =>
              name === "painted" && !detail.isLive && detail.revision > revision && detail.seasons >= seasons);
            if (found) {
              const input = window.kept.findLast(({ name, startTime }) => name === "input" && startTime < found.startTime);
              window.kept.length = 0;
              done([found.startTime - (input?.startTime ?? 0), found.detail.revision]);
            } else if (performance.now() > end) {
              fail(new Error("No verdict after a minute: " + document.querySelector(".verdict")?.textContent));
            } else {
              setTimeout(look, 2);
            }
          };
          look();
        })
        """;

    private readonly Process _process;
    private double _revision = -1;

    private OpenPage(Process process, IPage page, DateTime started) => (_process, Page, Started) = (process, page, started);

    /// <summary>The page.</summary>
    public IPage Page { get; }

    /// <summary>When the command was given.</summary>
    public DateTime Started { get; }

    /// <summary>Gives the command and opens the page.</summary>
    /// <param name="browser">The browser.</param>
    /// <param name="program">The program and its first arguments.</param>
    /// <param name="folder">The scenario folder.</param>
    public static async Task<OpenPage> OpenAsync(IBrowser browser, IReadOnlyList<string> program, string folder)
    {
        var start = new ProcessStartInfo(program[0], [.. program.Skip(1), "open", folder])
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
        };
        var page = await (await browser.NewContextAsync()).NewPageAsync();
        await page.SetViewportSizeAsync(1280, 900);
        var started = DateTime.UtcNow;
        var process = Process.Start(start)!;
        await process.StandardOutput.ReadLineAsync();
        var address = await process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("It prints no address.");
        await page.GotoAsync(address.Trim());
        await page.EvaluateAsync(Marks);
        return new OpenPage(process, page, started);
    }

    /// <summary>Milliseconds from the last input to the verdict of it, painted, with so many seasons at least.</summary>
    public async Task<double> PaintedAsync(int seasons = 200)
    {
        var found = await Page.EvaluateAsync<double[]>(Painted, new[] { _revision, seasons });
        _revision = found[1];
        return found[0];
    }

    /// <summary>Milliseconds from the command to the first paint of the page, and to its first verdict.</summary>
    public async Task<(double Page, double Verdict)> FirstViewAsync()
    {
        var verdict = await PaintedAsync();
        var (origin, paint) = (
            await Page.EvaluateAsync<double>("performance.timeOrigin"),
            await Page.EvaluateAsync<double>("performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN")
        );
        var before = origin - (Started - DateTime.UnixEpoch).TotalMilliseconds;
        return (before + paint, before + verdict);
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await Page.Context.CloseAsync();
        _process.Kill();
        await _process.WaitForExitAsync();
        _process.Dispose();
    }
}
