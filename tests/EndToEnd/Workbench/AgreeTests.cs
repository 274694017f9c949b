using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>
/// The bills, what is agreed on, what a log teaches and how its season went, on the page. Marked Browser as
/// <see cref="PageInBrowserTests"/>.
/// </summary>
[Trait("Category", "Browser")]
public sealed class AgreeTests
{
    [Fact]
    public async Task A_plan_and_a_rule_are_agreed_on_and_replaced_by_keys_alone()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await Button(bench, "Agree and review").PressAsync("Enter");
        await Assertions.Expect(bench.Page.GetByText("Nothing is agreed on yet.")).ToBeVisibleAsync();
        await Button(bench, "Show the bills by the three rules").PressAsync("Enter");
        await Assertions
            .Expect(bench.Page.GetByRole(AriaRole.Columnheader, new() { Name = "full-weeks" }))
            .ToBeVisibleAsync(new() { Timeout = 120_000 });
        await bench.PictureAsync("agree-bills");

        await bench.Page.GetByLabel("divided by tray-days").PressAsync("Space");
        await bench.Page.GetByLabel("Agreed on").FillAsync("2027-01-15");
        await Button(bench, "Agree to this plan and rule").PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("Agreed on 15 January 2027; the bill is divided by tray-days.");
        await Assertions.Expect(bench.Page.GetByText("The plan is as it was agreed on 15 January 2027.")).ToBeVisibleAsync();
        Assert.Contains(
            "bill = tray-days",
            await File.ReadAllTextAsync(folder.In("agreed/2027-01-15/agreed.txt")),
            StringComparison.Ordinal
        );

        // What is there stays, unless it is meant.
        await bench.Page.GetByLabel("divided equally", new() { Exact = false }).First.PressAsync("Space");
        await Button(bench, "Agree to this plan and rule").PressAsync("Enter");
        Assert.Contains(
            "bill = tray-days",
            await File.ReadAllTextAsync(folder.In("agreed/2027-01-15/agreed.txt")),
            StringComparison.Ordinal
        );
        await bench.Page.GetByLabel("in the place of what was agreed that day").PressAsync("Space");
        await Button(bench, "Agree to this plan and rule").PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("Agreed on 15 January 2027; the bill is divided equally.");
        Assert.Contains("bill = equal", await File.ReadAllTextAsync(folder.In("agreed/2027-01-15/agreed.txt")), StringComparison.Ordinal);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task What_the_log_teaches_is_taken_undone_and_put_into_the_files_at_the_width_of_a_phone()
    {
        using var folder = Example.Copy("spring-under-way");
        await using var bench = await Bench.OpenAsync(folder.Path, width: 390);
        await bench.AnsweredAsync();
        await bench.PartAsync("Agree and review");
        await Button(bench, "Ask the log").ClickAsync();
        await Assertions
            .Expect(bench.Page.Locator(".agreeing .headline"))
            .ToContainTextAsync("The log of 2027 teaches", new() { Timeout = 120_000 });
        await bench.Page.GetByText("The lines of crops.csv that change").ClickAsync();
        await Assertions.Expect(bench.Page.Locator(".lines ins").Last).ToContainTextAsync("own log, 2027");
        Assert.Equal(390, await OpenBrowser.WidthAsync(bench.Page));
        await bench.PictureAsync("learn-phone");
        var take = Button(bench, "Put the values into crops.csv as a try");
        await take.ClickAsync();
        await bench.Message.ToContainTextAsync("Taken as a try");
        Assert.DoesNotContain("own log", await File.ReadAllTextAsync(folder.In("crops.csv")), StringComparison.Ordinal);
        await Button(bench, "Undo").ClickAsync();
        await bench.Message.ToContainTextAsync("Undone: What the log teaches of");
        await Button(bench, "Redo").ClickAsync();
        await Button(bench, "Put into the files …").ClickAsync();
        await Button(bench, "Put it in").ClickAsync();
        await bench.Message.ToHaveTextAsync("Put into crops.csv");
        Assert.Contains("own log, 2027", await File.ReadAllTextAsync(folder.In("crops.csv")), StringComparison.Ordinal);
        await Button(bench, "Ask the log").ClickAsync();
        await Assertions
            .Expect(bench.Page.GetByText("crops.csv holds these values already."))
            .ToBeVisibleAsync(new() { Timeout = 120_000 });

        await Button(bench, "Review the season").ClickAsync();
        await Assertions.Expect(bench.Page.GetByText("No agreement of this season is kept")).ToBeVisibleAsync(new() { Timeout = 120_000 });
        await bench.Page.GetByText("All of it, as benchsim review --all prints it").ClickAsync();
        await Assertions.Expect(bench.Page.GetByText("Figures, and where each comes from")).ToBeVisibleAsync();
        Assert.Equal(390, await OpenBrowser.WidthAsync(bench.Page));
        await bench.PictureAsync("review-phone");
        bench.AssertQuiet();
    }

    private static ILocator Button(Bench bench, string name) => bench.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });
}
