using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>The bars of the batches, by hand and by keys. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class BarTests
{
    [Fact]
    public async Task A_bar_that_is_dragged_a_week_moves_its_dates_and_undo_brings_them_back()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await DragAsync(bench, "tomato-main", 7);
        await bench.PictureAsync("bar-dragged");
        await bench.Page.Mouse.UpAsync();

        // 2027-06-01 in plan.csv, and a week later.
        await bench.Message.ToHaveTextAsync("tomato-main 7 days later");
        await bench.AnsweredAsync();
        Assert.Equal("2027-06-08", await bench.CellAsync("tomato-main", "set_out"));
        await Assertions.Expect(bench.Page.Locator(".difference")).ToContainTextAsync("this try");

        await bench.Page.Keyboard.PressAsync("Control+z");
        await bench.Message.ToHaveTextAsync("Undone");
        Assert.Equal("2027-06-01", await bench.CellAsync("tomato-main", "set_out"));
        bench.AssertQuiet();
    }

    // What the hand tries while it drags may be long on its way. Played after what the hand makes of it in the end, it would be refused:
    // its cell has changed by then.
    [Fact]
    public async Task A_hand_that_lets_go_while_what_it_tries_is_still_on_its_way_is_not_refused()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var (tries, isFree) = (0, new TaskCompletionSource());
        await bench.Page.RouteAsync("**/api/live", async route =>
        {
            if (Interlocked.Increment(ref tries) == 1)
            {
                await Task.WhenAny(isFree.Task, Task.Delay(TimeSpan.FromSeconds(1)));
            }

            await route.ContinueAsync();
        });
        bench.Page.Request += (_, request) =>
        {
            if (request.Url.EndsWith("/api/edit", StringComparison.Ordinal))
            {
                _ = request.ResponseAsync().ContinueWith(_ => isFree.TrySetResult(), TaskScheduler.Default);
            }
        };
        await DragAsync(bench, "tomato-main", 7);
        await bench.Page.Mouse.UpAsync();
        await bench.Message.ToHaveTextAsync("tomato-main 7 days later");
        await bench.AnsweredAsync();
        Assert.NotEqual(0, tries);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task Keys_that_come_faster_than_answers_add_up()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await Bar(bench, "tomato-main").FocusAsync();
        foreach (var key in new[] { "PageDown", "PageDown", "ArrowRight", "ArrowRight", "ArrowLeft" })
        {
            await bench.Page.Keyboard.PressAsync(key);
        }

        // 2027-06-01, and 7 + 7 + 1 + 1 - 1 days.
        await bench.Message.ToHaveTextAsync("tomato-main 1 day earlier");
        Assert.Equal("2027-06-16", await bench.CellAsync("tomato-main", "set_out"));

        // The bar goes down among the others, which stand in the order of their dates, and the next key is still its own.
        await bench.AnsweredAsync();
        await Assertions.Expect(Bar(bench, "tomato-main")).ToBeFocusedAsync();
        await bench.Page.Keyboard.PressAsync("PageUp");
        await bench.Message.ToHaveTextAsync("tomato-main 7 days earlier");
        await bench.AnsweredAsync();
        await Assertions.Expect(Bar(bench, "tomato-main")).ToBeFocusedAsync();
        bench.AssertQuiet();
    }

    // 4/5/2027 is 5 April with the month first, 4 May with the day first.
    [Theory]
    [InlineData("mdy", "2027-04-12")]
    [InlineData("dmy", "2027-05-11")]
    public async Task A_bar_is_moved_from_the_date_as_the_program_reads_it(string order, string moved)
    {
        using var folder = Example.Copy("two-house-spring");
        var site = await File.ReadAllTextAsync(folder.In("site.toml"));
        folder.Write("site.toml", site.Replace("[site]", $"[site]\ndate_order = \"{order}\"", StringComparison.Ordinal));
        folder.Write("plan.csv", "id,crop,plants,set_out\na,kale,300,4/5/2027\nb,kale,300,4/6/2027\n");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await Bar(bench, "a").FocusAsync();
        await bench.Page.Keyboard.PressAsync("PageDown");
        await bench.Message.ToHaveTextAsync("a 7 days later");
        Assert.Equal(moved, await bench.CellAsync("a", "set_out"));
        await bench.AnsweredAsync();
        bench.AssertQuiet();
    }

    private static ILocator Bar(Bench bench, string id) => bench.Page.GetByRole(AriaRole.Slider, new() { Name = id, Exact = true });

    // The hand stays down.
    private static async Task DragAsync(Bench bench, string id, int days)
    {
        var bar = bench.Page.Locator($"[data-batch='{id}'] .body rect.bench").First;
        await bar.ScrollIntoViewIfNeededAsync();
        var box = (await bar.BoundingBoxAsync())!;
        var times = bench.Page.Locator(".times svg");
        var shown = double.Parse((await times.GetAttributeAsync("aria-valuemax"))!, null) + 1;
        var way = days * double.Parse((await times.GetAttributeAsync("width"))!, null) / shown;
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await bench.Page.Mouse.MoveAsync(x, y);
        await bench.Page.Mouse.DownAsync();
        await bench.Page.Mouse.MoveAsync((float)(x + (way / 2)), y, new MouseMoveOptions { Steps = 4 });
        await bench.Page.Mouse.MoveAsync((float)(x + way), y, new MouseMoveOptions { Steps = 4 });
    }
}
