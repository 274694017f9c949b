using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>
/// The season on the page: the verdict, the spaces, the batches, tries. Marked Browser as <see cref="PageInBrowserTests"/>.
/// </summary>
[Trait("Category", "Browser")]
public sealed partial class SeasonTests
{
    [Fact]
    public async Task The_verdict_is_there_and_grows_sharper()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.PictureAsync("season");
        await bench.AnsweredAsync(4000);

        // Tenths of a percent, as everywhere (docs/decisions/017-writing-chances.md), and on the chip as in the verdict.
        var share = await bench.Page.Locator(".verdict .share").InnerTextAsync();
        var words = ShareOfSeasons().Match(share);
        Assert.True(words.Success, share);
        await Assertions.Expect(bench.Page.Locator(".chip .share")).ToHaveTextAsync(words.Groups["share"].Value);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task A_places_line_is_dragged_and_typed_and_moved_by_keys()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var line = bench.Page.GetByRole(AriaRole.Slider, new() { Name = "Places of Heat mats" });
        var box = (await bench.Page.Locator("[data-space='mats'] .capacity").BoundingBoxAsync())!;
        await bench.Page.Mouse.MoveAsync(box.X + 50, box.Y);
        await bench.Page.Mouse.DownAsync();
        await bench.Page.Mouse.MoveAsync(box.X + 50, box.Y - 12, new MouseMoveOptions { Steps = 6 });
        await bench.Page.Mouse.UpAsync();
        await Assertions
            .Expect(bench.Page.Locator(".message"))
            .ToHaveTextAsync(new Regex("^Heat mats: (?:5[3-9]|[67][0-9]) places$", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await bench.AnsweredAsync();

        await line.FocusAsync();
        var before = int.Parse((await line.GetAttributeAsync("aria-valuenow"))!, null);
        await bench.Page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(bench.Page.Locator(".message")).ToHaveTextAsync($"Heat mats: {before + 1} places");
        await bench.Page.GetByLabel("Places of Heat mats").And(bench.Page.Locator("input")).FillAsync("60");
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("Heat mats: 60 places");
        await bench.AnsweredAsync();
        await line.FocusAsync();

        // Keys that come faster than answers add up.
        for (var press = 0; press < 4; press++)
        {
            await bench.Page.Keyboard.PressAsync("PageUp");
        }

        await bench.Message.ToHaveTextAsync("Heat mats: 100 places");
        await bench.AnsweredAsync();
        await bench.Page.GetByLabel("Places of Heat mats").And(bench.Page.Locator("input")).FillAsync("1");
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("Heat mats: 1 place");
        await bench.PictureAsync("places");
        bench.AssertQuiet();
    }

    [Fact]
    public async Task At_the_width_of_a_phone_nothing_runs_out_of_the_page()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path, width: 390);
        await bench.AnsweredAsync();
        await bench.PictureAsync("phone");
        foreach (var part in await bench.PartsAsync())
        {
            await bench.PartAsync(part);
            Assert.Equal(390, await OpenBrowser.WidthAsync(bench.Page));
        }

        // With a try, and with what is asked before it goes into the files.
        await bench.PartAsync("Season");
        await bench.Page.GetByRole(AriaRole.Slider, new() { Name = "Places of Heat mats" }).FocusAsync();
        await bench.Page.Keyboard.PressAsync("PageUp");
        await bench.Message.ToHaveTextAsync("Heat mats: 62 places");
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Put into the files …" }).ClickAsync();
        Assert.Equal(390, await OpenBrowser.WidthAsync(bench.Page));
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Put it in" }).ClickAsync();
        await bench.Message.ToContainTextAsync("Put into site.toml");

        bench.AssertQuiet();
    }

    [GeneratedRegex(
        "^Fits in (?<share>[0-9]+(\\.[0-9])? %) of 4,000 seasons \\(95 % interval [0-9.]+ to [0-9.]+ %\\)$",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex ShareOfSeasons();
}
