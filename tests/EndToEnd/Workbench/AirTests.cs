using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>Heater, fans and vents of the houses on the page. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed partial class AirTests
{
    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task The_page_says_of_each_house_what_check_says(int width)
    {
        using var folder = Example.Copy("two-house-spring");
        var check = Gaps().Replace((await Command.RunAsync("check", folder.Path, "--all")).Output, " ");
        await using var bench = await Bench.OpenAsync(folder.Path, width);
        await bench.AnsweredAsync();
        var air = await OpenAsync(bench);
        var names = await air.Locator("h3").AllInnerTextsAsync();
        var terms = await air.Locator("dd").AllTextContentsAsync();
        Assert.Equal(["Main house", "Overflow house"], names);
        // Of each house its heater, what comes when that stops, and its fans; what the hours rest on is said once in check.
        Assert.Equal(6, terms.Count);
        var rest = Rest().Match(terms[1]).Value;
        Assert.All(
            terms.Select((term, at) => $"{names[at / 3]}: {term.Replace(rest, "", StringComparison.Ordinal)}").Append(rest.Trim()),
            sentence => Assert.Contains(sentence, check, StringComparison.Ordinal)
        );
        var notes = await air.Locator("p").AllInnerTextsAsync();
        Assert.Equal(3, notes.Count);
        Assert.All(notes, note => Assert.Contains(note, check, StringComparison.Ordinal));
        Assert.Equal(2 * 7, await air.Locator("tbody tr").CountAsync());
        Assert.Equal(width, await OpenBrowser.WidthAsync(bench.Page));
        await bench.PictureAsync($"air-{width}");
        bench.AssertQuiet();
    }

    // 48 by 30 ft are 1,440 square feet, of which summer fans move 8 to 10 cubic feet a minute each; twice as long is twice as much.
    [Fact]
    public async Task The_fans_follow_the_length_of_the_house_and_a_heater_that_is_too_small_is_flagged()
    {
        using var folder = Example.Copy("two-house-spring");
        var site = await File.ReadAllTextAsync(folder.In("site.toml"));
        folder.Write("site.toml", LengthOfMain().Replace(site, "length = \"48 ft\"\nwidth = \"30 ft\"", 1));
        await using var bench = await Bench.OpenAsync(folder.Path, forChecker: true);
        await bench.AnsweredAsync();
        var air = await OpenAsync(bench);
        var summer = air.Locator("tbody tr").First;
        await Assertions.Expect(summer).ToContainTextAsync("11,500 to 14,400 cfm");
        await Assertions.Expect(summer).ToContainTextAsync("seen in the source");
        await bench.Page.Locator("summary", new() { HasText = "House: Main house" }).ClickAsync();
        await bench.Page.Locator("#house-0-length").FillAsync("96 ft");
        await bench.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(summer).ToContainTextAsync("23,000 to 28,800 cfm");

        await bench.Page.Locator("#house-0-heater_output").FillAsync("1 kW");
        await bench.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(bench.Page.Locator("summary .flag")).ToHaveTextAsync("a heater is too small");
        await Assertions.Expect(air.Locator("dd").First).ToContainTextAsync("its heater does not carry the coldest night. It gives ");
        foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            await bench.Page.EmulateMediaAsync(new() { ColorScheme = scheme });
            Assert.Empty((await bench.Page.RunAxe()).Violations);
        }
    }

    private static async Task<ILocator> OpenAsync(Bench bench)
    {
        await bench.PartAsync("Houses and rules");
        await bench.Page.Locator("summary", new() { HasText = "Air and heat of the houses" }).ClickAsync();
        return bench.Page.Locator(".air");
    }

    [GeneratedRegex(@"\s+", RegexOptions.None, 1000)]
    private static partial Regex Gaps();

    [GeneratedRegex(" The shorter time is .*$", RegexOptions.None, 1000)]
    private static partial Regex Rest();

    [GeneratedRegex("length = \"72 ft\"[^\n]*\nwidth = \"[^\n]*", RegexOptions.None, 1000)]
    private static partial Regex LengthOfMain();
}
