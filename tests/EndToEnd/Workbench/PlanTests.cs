using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>The plan on the page: changed by lines, with texts of ill will. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class PlanTests
{
    [Fact]
    public async Task Tomatoes_are_sown_dense_and_back()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await Assertions.Expect(bench.Page.Locator("[data-batch^='tomato-'] rect.pot")).ToHaveCountAsync(0);
        await bench.PartAsync("Plan");
        await bench.Page.GetByLabel("Show lines with").FillAsync("tomato");
        var lines = bench.Page.Locator(".grid tbody tr:not(.new)");
        await Assertions.Expect(lines).ToHaveCountAsync(4);
        await lines.First.GetByRole(AriaRole.Gridcell, new() { Name = "direct" }).ClickAsync();
        await bench.Page.Keyboard.TypeAsync("pot up");
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("tomato-early: method pot up");
        foreach (var key in new[] { "ArrowUp", "ArrowRight", "ArrowRight" })
        {
            await bench.Page.Keyboard.PressAsync(key);
        }

        await bench.Page.Keyboard.TypeAsync("open-flat");
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("tomato-early: flat open-flat");

        // From the method to the flat, and down to the last tomato; the tray between them is the same.
        foreach (
            var key in new[] { "ArrowUp", "Shift+ArrowLeft", "Shift+ArrowLeft", "Shift+ArrowDown", "Shift+ArrowDown", "Shift+ArrowDown" }
        )
        {
            await bench.Page.Keyboard.PressAsync(key);
        }

        await bench.Page.Keyboard.PressAsync("Control+d");
        await bench.Message.ToHaveTextAsync("Filled down");
        await bench.AnsweredAsync();
        await bench.PictureAsync("dense");
        await bench.PartAsync("Season");
        await Assertions.Expect(bench.Page.Locator("[data-batch^='tomato-'] rect.pot")).ToHaveCountAsync(4);
        await Assertions.Expect(bench.Page.Locator(".difference")).ToContainTextAsync("this try");
        foreach (
            var undone in new[] { "Undone: Filled down", "Undone: tomato-early: flat open-flat", "Undone: tomato-early: method pot up" }
        )
        {
            await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
            await bench.Message.ToHaveTextAsync(undone);
        }

        await bench.AnsweredAsync();
        await Assertions.Expect(bench.Page.Locator("[data-batch^='tomato-'] rect.pot")).ToHaveCountAsync(0);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task Texts_of_ill_will_are_shown_as_texts()
    {
        const string evil = "<img src=x onerror=alert(1)>\"'&{{7*7}}</script>";
        using var folder = Example.Copy("two-house-spring");
        var site = await File.ReadAllTextAsync(folder.In("site.toml"));
        folder.Write(
            "site.toml",
            site.Replace("\"Alder Bend growers\"", $"'''{evil}'''", StringComparison.Ordinal)
                .Replace("name = \"Heat mats\"", $"name = '''{evil}'''", StringComparison.Ordinal)
        );
        folder.Write(
            "plan.csv",
            "id,crop,grower,plants,set_out,note\n"
                + $"\"{evil.Replace("\"", "\"\"", StringComparison.Ordinal)}\",kale,{"<b>x</b>"},100,2027-04-20,=1+1\n"
        );
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await Assertions.Expect(bench.Page.Locator("h1")).ToContainTextAsync("<img src=x");
        foreach (var part in await bench.PartsAsync())
        {
            await bench.PartAsync(part);
            Assert.Equal(0, await bench.Page.Locator("img, script:not([src]), b").CountAsync());
        }

        bench.AssertQuiet();
    }
}
