using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>Papers and the case report, fetched from the page. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class PapersTests
{
    [Fact]
    public async Task Papers_of_a_try_are_opened_and_kept_by_keys_alone()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "New try from here" }).PressAsync("Enter");
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Papers and case" }).PressAsync("Enter");
        await Assertions.Expect(bench.Page.Locator(".said")).ToContainTextAsync("The dates are those of the plan");
        await bench.PictureAsync("papers");

        var page = await bench.Page.Context.RunAndWaitForPageAsync(() => Link(bench, "Work list, a page to print").PressAsync("Enter"));
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Work list: Alder Bend growers");
        await page.CloseAsync();
        foreach (
            var (link, name) in new[]
            {
                ("Tray labels (PDF)", "labels.pdf"),
                ("Calendar file", "calendar.ics"),
                ("Workbook for a spreadsheet", "workbook.xlsx"),
                ("Case report (PDF)", "case.pdf"),
            }
        )
        {
            var kept = await bench.Page.RunAndWaitForDownloadAsync(
                () => Link(bench, link).PressAsync("Enter"),
                new() { Timeout = 120_000 }
            );
            Assert.EndsWith($"-try-1-{name}", kept.SuggestedFilename, StringComparison.Ordinal);
            Assert.True(new FileInfo(await kept.PathAsync()).Length > 0);
        }

        bench.AssertQuiet();
    }

    [Fact]
    public async Task They_are_chosen_by_grower_and_date_at_the_width_of_a_phone()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path, width: 390);
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Papers and case" }).ClickAsync();
        await bench.Page.GetByLabel("Grower").SelectOptionAsync("Mara");
        await Assertions
            .Expect(Link(bench, "Work list, a page to print"))
            .ToHaveAttributeAsync("href", "/papers/work-list.html?grower=Mara");
        await bench.Page.GetByLabel("From", new() { Exact = true }).FillAsync("2027-05-02");
        await bench.Page.GetByLabel("To", new() { Exact = true }).FillAsync("2027-05-01");
        await Assertions.Expect(bench.Page.GetByText("The last date is before the first.")).ToBeVisibleAsync();
        Assert.Equal(390, await OpenBrowser.WidthAsync(bench.Page));
        await bench.PictureAsync("papers-phone");
        bench.AssertQuiet();
    }

    private static ILocator Link(Bench bench, string name) => bench.Page.GetByRole(AriaRole.Link, new() { Name = name });
}
