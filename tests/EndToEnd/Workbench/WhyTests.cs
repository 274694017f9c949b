using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>Why a batch is late or a space is full, asked on the page. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class WhyTests
{
    [Fact]
    public async Task A_bar_that_is_clicked_tells_its_story_and_closes_again()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var bar = bench.Page.Locator("[data-batch='tomato-main'] .body rect.bench");
        await bar.ScrollIntoViewIfNeededAsync();
        var box = (await bar.BoundingBoxAsync())!;
        await bench.Page.Mouse.ClickAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        var why = bench.Page.GetByRole(AriaRole.Region, new() { Name = "Why" });
        await Assertions.Expect(why.Locator("h3")).ToHaveTextAsync("tomato-main: Tomato, Mara");
        await Assertions.Expect(why.Locator(".stories h4")).ToHaveCountAsync(2);
        await Assertions.Expect(why).ToContainTextAsync("batch tomato-main: 1100 plants of Tomato for Mara, 28 trays sown directly.");
        await bench.PictureAsync("why-bar");

        // Nothing was moved by the click.
        Assert.Equal(0, (await bench.DeskAsync()).GetProperty("current").GetInt32());
        await bench.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(why).ToHaveCountAsync(0);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task A_red_week_is_asked_by_keys_alone_and_marks_who_holds_and_who_waits()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var week = bench.Page.Locator("[data-space='mats'] .waits").First;
        await week.FocusAsync();
        await bench.Page.Keyboard.PressAsync("Enter");
        var why = bench.Page.GetByRole(AriaRole.Region, new() { Name = "Why" });
        await Assertions.Expect(why.Locator("h3")).ToContainTextAsync("Heat mats, ");
        await Assertions.Expect(why.Locator("h3")).ToBeFocusedAsync();
        await Assertions.Expect(why).ToContainTextAsync("Trays not sown yet wait for it:");
        await Assertions.Expect(bench.Page.Locator("p.lit")).ToContainTextAsync("holds places there");
        await Assertions.Expect(bench.Page.Locator(".bar.lit").First).ToBeVisibleAsync();
        await bench.PictureAsync("why-week");
        var title = await why.Locator("h3").TextContentAsync();
        await why.GetByRole(AriaRole.Button, new() { Name = "The week after" }).PressAsync("Enter");
        await Assertions.Expect(why.Locator("h3")).Not.ToHaveTextAsync(title!);
        await why.GetByRole(AriaRole.Button, new() { Name = "Close" }).PressAsync("Enter");
        await Assertions.Expect(week).ToBeFocusedAsync();
        await Assertions.Expect(bench.Page.Locator(".bar.lit")).ToHaveCountAsync(0);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task By_its_name_a_batch_leads_on_to_its_line_in_the_plan()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path, width: 390);
        await bench.AnsweredAsync();
        var name = bench.Page.Locator("[data-batch='tomato-main'] .name");
        await name.FocusAsync();
        await bench.Page.Keyboard.PressAsync("Enter");
        var why = bench.Page.GetByRole(AriaRole.Region, new() { Name = "Why" });
        await Assertions.Expect(why.Locator("h3")).ToHaveTextAsync("tomato-main: Tomato, Mara");
        Assert.Equal(390, await OpenBrowser.WidthAsync(bench.Page));
        await bench.PictureAsync("why-phone");
        await why.GetByRole(AriaRole.Button, new() { Name = "Show its line in the plan" }).PressAsync("Enter");
        await Assertions.Expect(bench.Page.Locator("tr:has(td:focus)")).ToContainTextAsync("tomato-main");
        bench.AssertQuiet();
    }

    // Markup in an id, a grower and the name of a space stays text, in the stories and in what is chosen and said of the papers.
    [Fact]
    public async Task Names_of_ill_will_are_told_as_they_are_written()
    {
        const string hostile = "<img src=x onerror=alert(1)>";
        using var folder = Example.Copy("two-house-spring");
        var (plan, site) = (await File.ReadAllTextAsync(folder.In("plan.csv")), await File.ReadAllTextAsync(folder.In("site.toml")));
        folder.Write("plan.csv", plan.Replace("tomato-main,tomato,Mara", $"{hostile},tomato,{hostile}", StringComparison.Ordinal));
        folder.Write("site.toml", site.Replace("\"Heat mats\"", $"\"{hostile}\"", StringComparison.Ordinal));
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var why = bench.Page.GetByRole(AriaRole.Region, new() { Name = "Why" });
        await bench.Page.Locator(".bar .name").Filter(new() { HasText = hostile }).PressAsync("Enter");
        await Assertions.Expect(why.Locator(".stories")).ToContainTextAsync($"batch {hostile}: 1100 plants of Tomato for {hostile}");
        await bench.Page.Locator("[data-space='mats'] .waits").First.PressAsync("Enter");
        await Assertions.Expect(why.Locator("h3")).ToContainTextAsync($"{hostile}, 12 April");
        await Assertions.Expect(why.Locator(".stories")).ToContainTextAsync($"places held by {hostile} ");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Papers and case" }).ClickAsync();
        await bench.Page.GetByLabel("Grower").SelectOptionAsync(hostile);
        await Assertions
            .Expect(bench.Page.GetByRole(AriaRole.Link, new() { Name = "Tray labels (PDF)" }))
            .ToHaveAttributeAsync("href", "/papers/labels.pdf?grower=%3Cimg+src%3Dx+onerror%3Dalert%281%29%3E");
        Assert.Equal(0, await bench.Page.Locator("img").CountAsync());
        bench.AssertQuiet();
    }
}
