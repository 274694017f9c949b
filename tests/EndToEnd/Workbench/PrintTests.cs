using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>The sheet on paper. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class PrintTests
{
    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task The_sheet_prints_on_one_page_and_is_on_the_screen_as_before(int width)
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path, width);
        await bench.AnsweredAsync();
        var drawn = await bench.Page.Locator(".times svg").GetAttributeAsync("width");
        foreach (var paper in new[] { "A4", "Letter" })
        {
            var pages = Pages().Count(Encoding.Latin1.GetString(await bench.Page.PdfAsync(new() { Format = paper })));
            Assert.Equal(1, pages);
        }

        await Assertions.Expect(bench.Page.Locator(".times svg")).ToHaveAttributeAsync("width", drawn!);
        Assert.Equal(width, await OpenBrowser.WidthAsync(bench.Page));
        bench.AssertQuiet();
    }

    private static Regex Pages() => new("/Type\\s*/Page[^s]", RegexOptions.None, TimeSpan.FromSeconds(10));
}
