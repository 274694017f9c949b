using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>
/// Does in a browser what docs/workbench-tutorial.md says, from its first line to its last, and takes its pictures on the way. Marked
/// Browser as <see cref="PageInBrowserTests"/>. The page has these blocks between lines of three backquotes:
/// <list type="bullet">
/// <item><c>page</c>: what is done on the page and what it then shows, a sentence a line (<see cref="DoAsync"/>).</item>
/// <item><c>paste</c>: a table that is pasted where the focus is; two blanks or more stand between its cells.</item>
/// <item><c>console</c>: what is typed in the terminal; the first line opens the workbench.</item>
/// <item><c>csv FILE</c>: the whole of a file in the folder.</item>
/// </list>
/// A line with a picture takes it there. BENCHSIM_APPROVE=1 puts the pictures beside the page.
/// </summary>
[Trait("Category", "Browser")]
public sealed partial class TutorialTests
{
    private const string Tutorial = "docs/workbench-tutorial.md";
    private const int Width = 1000;
    private const int Height = 700;

    [Fact]
    public async Task The_page_does_what_the_tutorial_says()
    {
        using var folder = new TemporaryFolder();
        await using var bench = await Bench.OpenAsync(null, start: folder.Path);
        await bench.Page.SetViewportSizeAsync(Width, Height);
        var steps = 0;
        var pictures = 0;
        var lines = await File.ReadAllLinesAsync(Repository.File(Tutorial));
        for (var at = 0; at < lines.Length; at++)
        {
            if (Picture().Match(lines[at]) is { Success: true } picture)
            {
                await TakeAsync(bench, picture.Groups["file"].Value);
                pictures++;
            }

            if (!lines[at].StartsWith("```", StringComparison.Ordinal))
            {
                continue;
            }

            var end = Array.IndexOf(lines, "```", at + 1);
            Assert.True(end > at, $"The block in line {at + 1} has no end.");
            var block = lines[(at + 1)..end];
            switch (lines[at][3..].Split(' '))
            {
                case ["page"]:
                    foreach (var line in block)
                    {
                        await DoAsync(bench, line);
                        await bench.PaintedAsync();
                        steps++;
                    }

                    break;
                case ["paste"]:
                    await bench.PasteAsync(string.Concat(block.Select(line => Gap().Replace(line, "\t") + "\n")));
                    steps++;
                    break;
                case ["csv", var file]:
                    Assert.Equal(block, await File.ReadAllLinesAsync(folder.In(file)), StringComparer.Ordinal);
                    break;
                case ["console"]:
                    Assert.Equal("$ benchsim open", block[0]);
                    break;
                default:
                    Assert.Fail($"What is a block \"{lines[at]}\"?");
                    break;
            }

            at = end;
        }

        Assert.True(steps > 30 && pictures > 3, $"{steps} steps, {pictures} pictures");
        bench.AssertQuiet();
    }

    [Fact]
    public async Task The_pictures_of_the_readme_are_those_of_the_tutorial()
    {
        var tutorial = await File.ReadAllTextAsync(Repository.File(Tutorial));
        string[] shown =
        [
            .. Picture().Matches(await File.ReadAllTextAsync(Repository.File("README.md"))).Select(picture => picture.Groups["file"].Value),
        ];
        Assert.True(shown.Length > 2, $"{shown.Length} pictures");
        Assert.All(shown, file => Assert.Contains(file, tutorial, StringComparison.Ordinal));
    }

    /// <summary>Does what a sentence says.</summary>
    private static async Task DoAsync(Bench bench, string sentence)
    {
        var page = bench.Page;
        if (sentence.StartsWith("See \"", StringComparison.Ordinal) && sentence.EndsWith("\".", StringComparison.Ordinal))
        {
            await Assertions.Expect(page.Locator("body")).ToContainTextAsync(sentence[5..^2]);
            return;
        }

        var words = Quoted().Matches(sentence).Select(quoted => quoted.Groups["words"].Value).ToArray();
        switch (Quoted().Replace(sentence, "X"))
        {
            case "Click X.":
                await page.Locator("button:visible, summary:visible")
                    .Filter(new() { HasTextRegex = Beginning(words[0]) })
                    .First.ClickAsync();
                break;
            case "Click the cell X.":
                await page.GetByRole(AriaRole.Gridcell, new() { Name = words[0], Exact = true }).First.ClickAsync();
                break;
            case "Click the first cell of the new line.":
                await page.Locator("tr.new td").First.ClickAsync();
                break;
            case "Write X into X.":
                await page.Locator("main").GetByLabel(words[1]).First.FillAsync(words[0]);
                await page.Keyboard.PressAsync("Tab");
                break;
            case "Choose X in X.":
                await page.GetByLabel(words[1]).SelectOptionAsync(new SelectOptionValue { Label = words[0] });
                break;
            case "Type X and press Enter.":
                await page.Keyboard.TypeAsync(words[0]);
                await page.Keyboard.PressAsync("Enter");
                break;
            case "Press X on the bar X.":
            case "Press X on the line X.":
                await page.GetByRole(AriaRole.Slider, new() { Name = words[1], Exact = true }).FocusAsync();
                await page.Keyboard.PressAsync(words[0].Replace(" ", "", StringComparison.Ordinal));
                break;
            default:
                Assert.Fail($"What does \"{sentence}\" say?");
                break;
        }
    }

    private static async Task TakeAsync(Bench bench, string file)
    {
        var path = Repository.File("docs/" + file);
        var picture = await bench.Page.ScreenshotAsync(new PageScreenshotOptions { Animations = ScreenshotAnimations.Disabled });
        if (Environment.GetEnvironmentVariable("BENCHSIM_APPROVE") is "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            await File.WriteAllBytesAsync(path, picture);
        }

        Assert.True(File.Exists(path), $"{file} is not there: run this test with BENCHSIM_APPROVE=1.");
        Assert.Equal((Width, Height), SizeOf(await File.ReadAllBytesAsync(path)));
        Assert.Equal((Width, Height), SizeOf(picture));
    }

    // A PNG tells its width and height in the eight bytes after the first sixteen.
    private static (int Width, int Height) SizeOf(byte[] png)
    {
        Assert.True(png.AsSpan(1, 3).SequenceEqual("PNG"u8));
        return (
            System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)),
            System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20))
        );
    }

    private static Regex Beginning(string words) => new("^\\s*" + Regex.Escape(words), RegexOptions.None, TimeSpan.FromSeconds(1));

    [GeneratedRegex(
        "^!\\[[^\\]]*\\]\\((?:docs/)?(?<file>images/workbench-[^)]*)\\)$",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Picture();

    [GeneratedRegex("\"(?<words>[^\"]*)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Quoted();

    [GeneratedRegex(" {2,}", RegexOptions.None, 1000)]
    private static partial Regex Gap();
}
