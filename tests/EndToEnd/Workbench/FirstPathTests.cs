using System.Text.RegularExpressions;
using EndToEnd.Faults;
using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>
/// The way of somebody who has just unpacked the download: from the double click to a verdict of the own farm. Marked Browser as
/// <see cref="PageInBrowserTests"/>.
/// </summary>
[Trait("Category", "Browser")]
public sealed partial class FirstPathTests
{
    private static readonly string[] s_plants = ["2600", "240", "300", "180", "700"];
    private static readonly string[] s_batches = ["onions", "kale", "lettuce", "broccoli", "beets"];

    // Whoever makes the way longer has to say so on the page of the download.
    [LinuxFact]
    public async Task Ten_values_of_ones_own_lead_to_a_verdict_in_as_many_steps_as_the_page_of_the_download_says()
    {
        using var folder = new TemporaryFolder();
        await using var bench = await Bench.DoubleClickAsync(folder);
        var page = bench.Page;
        var walk = new Walk(page);
        walk.Step(); // the double click
        await walk.ChooseAsync(page.Locator("select[name=farm]"), "One hoop house");
        await walk.ChooseAsync(page.Locator("select[name=climate]"), "cold");
        await walk.ChooseAsync(page.Locator(".add select[name=units]"), "metres and °C");
        await walk.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = "Open this farm" }));
        await bench.AnsweredAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("One hoop house");

        await walk.TypeAsync(Places(page, "Heat mats"), "20");
        await walk.TypeAsync(Places(page, "Main benches"), "52");
        await walk.TypeAsync(Places(page, "Hardening table"), "44");
        await walk.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = "Plan", Exact = true }));
        await walk.ClickAsync(page.Locator("table.grid tbody tr").First.Locator("td").Nth(await ColumnAsync(page, "plants")));
        foreach (var plants in s_plants)
        {
            await walk.TypeHereAsync(plants);
        }

        await walk.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = "Houses and rules" }));
        await walk.ClickAsync(page.Locator("summary", new() { HasText = "House: Main house" }));
        await walk.TypeAsync(page.Locator("#house-0-night"), "14 C");
        await walk.TypeAsync(page.Locator("#house-0-length"), "18 m");

        await bench.AnsweredAsync();
        await Assertions.Expect(page.Locator(".verdict .share")).ToContainTextAsync("Fits in");
        foreach (var (batch, plants) in s_batches.Zip(s_plants))
        {
            Assert.Equal(plants, await bench.CellAsync(batch, "plants"));
        }

        var sections = (await bench.DeskAsync()).GetProperty("sections").GetRawText();
        Assert.All((string[])["\"20\"", "\"52\"", "\"44\"", "\"14 C\"", "\"18 m\""], value =>
            Assert.Contains(value, sections, StringComparison.Ordinal)
        );
        Assert.Equal(10, walk.Typed);
        var said = Said().Match(await File.ReadAllTextAsync(Repository.File("docs/download.md")));
        Assert.Equal(said.Groups["steps"].Value, Invariant(walk.Steps));
        await bench.PictureAsync("first-path");
        bench.AssertQuiet();
    }

    private static ILocator Places(IPage page, string space) => page.GetByRole(AriaRole.Spinbutton, new() { Name = "Places of " + space });

    private static string Invariant(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    // The number of the line stands in a heading of its own, before the cells.
    private static async Task<int> ColumnAsync(IPage page, string name)
    {
        var heads = await page.Locator("table.grid thead th").AllInnerTextsAsync();
        return heads.ToList().IndexOf(name) - 1;
    }

    [GeneratedRegex(@"to the verdict on ten values of your own it is (?<steps>\d+) steps", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Said();

    /// <summary>Counts what a hand does: a click, a choice and a field typed are a step each.</summary>
    private sealed class Walk(IPage page)
    {
        public int Steps { get; private set; }

        public int Typed { get; private set; }

        public void Step() => Steps++;

        public Task ClickAsync(ILocator what)
        {
            Step();
            return what.ClickAsync();
        }

        public Task ChooseAsync(ILocator list, string words)
        {
            Step();
            return list.SelectOptionAsync(new SelectOptionValue { Label = words });
        }

        public async Task TypeAsync(ILocator field, string words)
        {
            Step();
            Typed++;
            await field.FillAsync(words);
            await page.Keyboard.PressAsync("Tab");
        }

        /// <summary>Types where the focus is, and goes on to the line below.</summary>
        public async Task TypeHereAsync(string words)
        {
            Step();
            Typed++;
            await page.Keyboard.TypeAsync(words);
            await page.Keyboard.PressAsync("Enter");
        }
    }
}
