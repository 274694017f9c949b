using System.Globalization;
using BenchSim.Benchmarks.Examples;
using Microsoft.Playwright;

namespace BenchSim.Benchmarks.Page;

/// <summary>
/// How fast the answer moves on the page of the workbench: from the input, as the page marks it, to the repainted verdict, in Chromium, on
/// the spring example. Each change is another one, so that no answer is at hand already.
/// </summary>
/// <param name="program">The program and its first arguments.</param>
/// <param name="output">Where the table goes.</param>
internal sealed class PageSpeed(IReadOnlyList<string> program, TextWriter output)
{
    private const int Changes = 100;
    private const int Opened = 5;
    private const int Sharpened = 20;
    private const int HandSeconds = 4;
    private const int HandStepMs = 16;

    private readonly List<string> _folders = [];

    /// <summary>Measures and prints a table.</summary>
    /// <param name="built">The program as it was built; empty for that beside this one.</param>
    /// <param name="output">Where the table goes.</param>
    public static async Task PrintAsync(string built, TextWriter output)
    {
        string[] program = built.Length > 0 ? [built] : ["dotnet", Path.Combine(AppContext.BaseDirectory, "benchsim.dll")];
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions
            {
                ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM_PATH") ?? "/usr/bin/chromium",
                Args = ["--no-sandbox", "--disable-gpu"],
            }
        );
        var speed = new PageSpeed(program, output);
        try
        {
            await speed.PrintAsync(browser);
        }
        finally
        {
            speed._folders.ForEach(folder => Directory.Delete(folder, recursive: true));
        }
    }

    private async Task PrintAsync(IBrowser browser)
    {
        Line("", "median", "95th", "aim: median, 95th");
        var folder = Copied("two-house-spring");
        var (views, verdicts, firsts) = (new List<double>(), new List<double>(), new List<double>());
        for (var time = 0; time < Opened; time++)
        {
            await using var opened = await OpenPage.OpenAsync(browser, program, Copied("two-house-spring"));
            var (view, verdict) = await opened.FirstViewAsync();
            views.Add(view);
            verdicts.Add(verdict);
            await opened.Page.GetByRole(AriaRole.Slider, new() { Name = "Places of Heat mats" }).PressAsync("ArrowUp");
            firsts.Add(await opened.PaintedAsync());
        }

        Row("command to first view", views, "1500 ms");
        Row("command to first verdict", verdicts, "");
        Row("first move after opening", firsts, "300 ms");
        await using (var page = await OpenPage.OpenAsync(browser, program, folder))
        {
            await page.PaintedAsync(4000);
            Row("places", await PlacesAsync(page), "60, 120 ms");
            Row("dates", await DatesAsync(page), "60, 120 ms");
            Row("set-points", await SetPointsAsync(page), "100, 200 ms");
            Row("places, to 1,000 seasons", await SharpenedAsync(page), "1000 ms");
            var answers = (await HandAsync(page)).ToString("0.0", CultureInfo.InvariantCulture);
            Line($"answers a second to a hand that moves each {HandStepMs} ms", answers, "", "10");
        }

        var large = Copied("two-house-spring");
        await MultiplyAsync(large, 500);
        await using var many = await OpenPage.OpenAsync(browser, program, large);
        Row("command to first verdict of 500 sowings", [(await many.FirstViewAsync()).Verdict], "");
        await many.Page.GetByRole(AriaRole.Slider, new() { Name = "Places of Heat mats" }).PressAsync("ArrowUp");
        Row("first change of 500 sowings", [await many.PaintedAsync()], "1000 ms");
    }

    private static async Task<List<double>> PlacesAsync(OpenPage page)
    {
        var times = new List<double>();
        var line = page.Page.GetByRole(AriaRole.Slider, new() { Name = "Places of Heat mats" });
        for (var change = 0; change < Changes; change++)
        {
            await line.PressAsync("ArrowUp");
            times.Add(await page.PaintedAsync());
        }

        return times;
    }

    // A day later each, one line of the plan after the other; those with successions move as one.
    private static async Task<List<double>> DatesAsync(OpenPage page)
    {
        var times = new List<double>();
        var bars = await page.Page.Locator("[data-batch]").EvaluateAllAsync<string[]>("all => all.map(each => each.dataset.batch)");
        string[] single = [.. bars.Where(each => !char.IsAsciiDigit(each[^1]))];
        for (var change = 0; change < Changes; change++)
        {
            await page
                .Page.GetByRole(AriaRole.Slider, new() { Name = single[change % single.Length], Exact = true })
                .PressAsync("ArrowRight");
            times.Add(await page.PaintedAsync());
        }

        return times;
    }

    private static async Task<List<double>> SetPointsAsync(OpenPage page)
    {
        var times = new List<double>();
        await page.Page.GetByRole(AriaRole.Button, new() { Name = "Houses and rules" }).ClickAsync();
        await page.Page.Locator("summary", new() { HasText = "House: Main house" }).ClickAsync();
        var night = page.Page.Locator("#house-0-night");
        for (var change = 0; change < Changes; change++)
        {
            await night.FillAsync(string.Create(CultureInfo.InvariantCulture, $"{58 + ((change + 1) * 0.02):0.00} F"));
            await night.PressAsync("Enter");
            times.Add(await page.PaintedAsync());
        }

        await page.Page.GetByRole(AriaRole.Button, new() { Name = "Season", Exact = true }).ClickAsync();
        return times;
    }

    private static async Task<List<double>> SharpenedAsync(OpenPage page)
    {
        var times = new List<double>();
        var line = page.Page.GetByRole(AriaRole.Slider, new() { Name = "Places of Heat mats" });
        for (var change = 0; change < Sharpened; change++)
        {
            await line.PressAsync("ArrowUp");
            times.Add(await page.PaintedAsync(1000));
        }

        return times;
    }

    // The line of the mats goes up and down, a dot each time; the answers that were painted meanwhile are counted.
    private static async Task<double> HandAsync(OpenPage page)
    {
        var line = page.Page.Locator("[data-space='mats'] .capacity");
        await line.ScrollIntoViewIfNeededAsync();
        var box = (await line.BoundingBoxAsync())!;
        var (x, y) = (box.X + 40, box.Y + (box.Height / 2));
        await page.Page.Mouse.MoveAsync(x, y);
        await page.Page.Mouse.DownAsync();
        await page.Page.EvaluateAsync("window.kept.length = 0");
        using var tick = new PeriodicTimer(TimeSpan.FromMilliseconds(HandStepMs));
        for (var step = 1; step * HandStepMs <= HandSeconds * 1000; step++)
        {
            await tick.WaitForNextTickAsync();
            await page.Page.Mouse.MoveAsync(x, y - (30 * (1 - Math.Abs((step / 30f % 2) - 1))));
        }

        var answers = await page.Page.EvaluateAsync<double>("window.kept.filter((each) => each.name === 'painted').length");
        await page.Page.Mouse.UpAsync();
        return answers / HandSeconds;
    }

    private void Row(string name, List<double> times, string aim)
    {
        times.Sort();
        var (median, high) = (times[times.Count / 2], times[(int)Math.Ceiling(times.Count * 0.95) - 1]);
        Line(name, Ms(median), Ms(high), aim);

        static string Ms(double time) => time.ToString("0", CultureInfo.InvariantCulture) + " ms";
    }

    private void Line(string name, string median, string high, string aim) =>
        output.WriteLine($"{name.PadRight(52)}{median.PadLeft(10)}{high.PadLeft(10)}   {aim}");

    private string Copied(string example)
    {
        var folder = Directory.CreateTempSubdirectory("benchsim-page-").FullName;
        _folders.Add(folder);
        foreach (var file in Directory.EnumerateFiles(Checkout.PathTo("scenarios", example)))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        }

        return folder;
    }

    // The lines of the plan over and over under other names, until there are so many sowings.
    private static async Task MultiplyAsync(string folder, int sowings)
    {
        var path = Path.Combine(folder, "plan.csv");
        var lines = await File.ReadAllLinesAsync(path);
        var times = Array.IndexOf(lines[0].Split(','), "times");
        var written = new List<string> { lines[0] };
        var count = 0;
        for (var copy = 0; count < sowings; copy++)
        {
            foreach (var line in lines.Skip(1).Where(line => line.Length > 0))
            {
                written.Add(copy == 0 ? line : line.Insert(line.IndexOf(',', StringComparison.Ordinal), $"-copy{copy}"));
                count += int.TryParse(line.Split(',')[times], NumberStyles.None, CultureInfo.InvariantCulture, out var each) ? each : 1;
                if (count >= sowings)
                {
                    break;
                }
            }
        }

        await File.WriteAllLinesAsync(path, written);
    }
}
