using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>The page by keyboard alone. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class KeyboardTests
{
    [Fact]
    public async Task The_page_is_worked_by_keyboard_alone()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var keys = bench.Page.Keyboard;
        await ReachAsync(bench.Page, "Plan");
        await keys.PressAsync("Enter");
        await ReachAsync(bench.Page, "gridcell");
        for (var step = 0; step < 3; step++)
        {
            await keys.PressAsync("ArrowRight");
        }

        // plants of the first line, 5200 in the file
        await keys.TypeAsync("5300");
        await keys.PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("onion-bulb: plants 5300");
        await keys.PressAsync("Control+z");
        await bench.Message.ToHaveTextAsync("Undone");
        await keys.PressAsync("Control+y");
        await bench.Message.ToHaveTextAsync("Made again");
        await ReachAsync(bench.Page, "Houses and rules", isBack: true);
        await keys.PressAsync("Enter");
        await ReachAsync(bench.Page, "House: Main house");
        await keys.PressAsync("Enter");
        await ReachAsync(bench.Page, "night");
        await keys.PressAsync("Control+a");
        await keys.TypeAsync("58 F");
        await keys.PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("Main house: night 58 F");
        await bench.AnsweredAsync();
        await bench.PictureAsync("rules");
        await ReachAsync(bench.Page, "Put into the files …", isBack: true);
        await keys.PressAsync("Enter");
        await ReachAsync(bench.Page, "Put it in");
        await keys.PressAsync("Enter");
        await bench.Message.ToContainTextAsync("Put into plan.csv and site.toml");
        Assert.Contains("night = \"58 F\"", await File.ReadAllTextAsync(folder.In("site.toml")), StringComparison.Ordinal);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task From_the_ten_questions_to_a_verdict_by_keyboard_alone()
    {
        using var folder = new TemporaryFolder();
        await using var bench = await Bench.OpenAsync(null, start: folder.Path);
        var keys = bench.Page.Keyboard;
        await Assertions.Expect(bench.Page.Locator("h1")).ToBeVisibleAsync();
        await ReachAsync(bench.Page, "name");
        await keys.TypeAsync("Hill farm");
        await ReachAsync(bench.Page, "table");
        await keys.TypeAsync("60");
        await keys.PressAsync("Enter");
        await Assertions.Expect(bench.Page.Locator(".verdict .faults")).ToBeVisibleAsync();
        var season = (await bench.DeskAsync())
            .GetProperty("sections")
            .EnumerateArray()
            .First(each => each.GetProperty("section").GetString() == "season");
        var year = season.GetProperty("values")[0].GetProperty("value").GetString()![..4];
        await ReachAsync(bench.Page, "gridcell");
        string[] columns =
        [
            .. (await bench.DeskAsync()).GetProperty("plan").GetProperty("columns").EnumerateArray().Select(each => each.GetString()!),
        ];
        var at = 0;
        foreach (var (column, value) in new[] { ("id", "kale"), ("crop", "kale"), ("plants", "600"), ("set_out", $"{year}-05-15") })
        {
            for (; at < Array.IndexOf(columns, column); at++)
            {
                await keys.PressAsync("ArrowRight");
            }

            await keys.TypeAsync(value);
            await keys.PressAsync("Tab");
            at++;
            await bench.Message.ToHaveTextAsync(column is "id" ? "A line added" : $"kale: {column} {value}");
        }

        await bench.AnsweredAsync();
        await Assertions.Expect(bench.Page.Locator(".verdict .share")).ToContainTextAsync("Fits in");
        bench.AssertQuiet();
    }

    [Fact]
    public async Task The_sheet_is_worked_by_keyboard_alone()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var keys = bench.Page.Keyboard;
        await ReachAsync(bench.Page, "Day that is read off");
        await keys.PressAsync("Home");
        await keys.PressAsync("PageDown");
        await Assertions.Expect(bench.Page.Locator(".numbers")).ToContainTextAsync("Heat mats: 0 of 52");
        await keys.PressAsync("Escape");
        await Assertions.Expect(bench.Page.Locator(".numbers")).ToHaveCountAsync(0);
        await ReachAsync(bench.Page, "Places of Heat mats");
        await keys.PressAsync("ArrowDown");
        await bench.Message.ToHaveTextAsync("Heat mats: 51 places");
        await ReachAsync(bench.Page, "Setting out of spinach");
        await keys.PressAsync("ArrowRight");
        await bench.Message.ToHaveTextAsync("spinach 1 day later");
        await bench.AnsweredAsync();
        foreach (var (button, done) in new[] { ("Undo", "Undone"), ("New try from here", "A new try"), ("The files", "") })
        {
            await ReachAsync(bench.Page, button, isBack: true);
            await keys.PressAsync("Enter");
            await bench.Message.ToContainTextAsync(done);
        }

        await bench.AnsweredAsync();
        Assert.Equal(0, (await bench.DeskAsync()).GetProperty("current").GetInt32());
        bench.AssertQuiet();
    }

    // Over the clipboard of the system, as between this page and a spreadsheet.
    [Fact]
    public async Task Cells_are_copied_and_pasted_by_keys()
    {
        using var folder = Example.Copy("two-house-spring");
        folder.Write("plan.csv", "id,crop,plants,set_out\na,kale,\"1,100\",2027-05-20\nb,kale,200,2027-05-21\nc,kale,300,2027-05-22\n");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.Page.Context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        var keys = bench.Page.Keyboard;
        await bench.PartAsync("Plan");
        await ReachAsync(bench.Page, "gridcell");
        foreach (var key in new[] { "ArrowRight", "ArrowRight", "Shift+ArrowRight", "Control+c", "ArrowDown", "ArrowDown", "Control+v" })
        {
            await keys.PressAsync(key);
        }

        await bench.Message.ToHaveTextAsync("1 row pasted");
        Assert.Equal("1,100", await bench.CellAsync("c", "plants"));
        Assert.Equal("2027-05-20", await bench.CellAsync("c", "set_out"));
        Assert.Equal("200", await bench.CellAsync("b", "plants"));
        await bench.AnsweredAsync();
        bench.AssertQuiet();
    }

    // Tabs on until the focus is on what has this name, or, for a cell, this role; a chip may have its share behind its name.
    private static async Task ReachAsync(IPage page, string name, bool isBack = false)
    {
        for (var step = 0; step < 400; step++)
        {
            await page.Keyboard.PressAsync(isBack ? "Shift+Tab" : "Tab");
            var words = await page.EvaluateAsync<string[]>(
                """
                () => {
                  const at = document.activeElement;
                  const words = ["role", "name", "aria-label"].map((name) => at.getAttribute(name) ?? "");
                  return [...words, at.textContent.trim()];
                }
                """
            );
            if (Array.Exists(words, word => word == name || word.StartsWith(name + " ", StringComparison.Ordinal)))
            {
                return;
            }
        }

        Assert.Fail($"No way by keys to {name}.");
    }
}
