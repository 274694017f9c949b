using Microsoft.Playwright;
using MiniExcelLibs;

namespace EndToEnd.Workbench;

/// <summary>
/// What becomes of the files, and of changes made elsewhere meanwhile. Marked Browser as <see cref="PageInBrowserTests"/>.
/// </summary>
[Trait("Category", "Browser")]
public sealed class FilesTests
{
    [Fact]
    public async Task A_try_is_put_into_the_files_and_only_what_was_changed_is_changed()
    {
        using var folder = Example.Copy("two-house-spring");
        var before = TemporaryFolder.Files(folder.Path);
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Slider, new() { Name = "Places of Heat mats" }).FocusAsync();
        await bench.Page.Keyboard.PressAsync("PageUp");
        await bench.Page.GetByRole(AriaRole.Slider, new() { Name = "tomato-main", Exact = true }).FocusAsync();
        await bench.Page.Keyboard.PressAsync("PageDown");
        await bench.Message.ToHaveTextAsync("tomato-main 7 days later");
        Assert.Equal(before["site.toml"], await File.ReadAllBytesAsync(folder.In("site.toml")));

        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Put into the files …" }).ClickAsync();
        await bench.PictureAsync("put");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Put it in" }).ClickAsync();
        await bench.Message.ToContainTextAsync("Put into plan.csv and site.toml");
        Assert.Equal([("places = 52", "places = 62")], Differing(before["site.toml"], folder.In("site.toml")));
        var plan = Assert.Single(Differing(before["plan.csv"], folder.In("plan.csv")));
        Assert.Equal(plan.Before.Replace("2027-06-01", "2027-06-08", StringComparison.Ordinal), plan.After);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task A_try_is_kept_as_a_variant_that_compare_reads()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Slider, new() { Name = "tomato-main", Exact = true }).FocusAsync();
        await bench.Page.Keyboard.PressAsync("PageDown");
        await bench.Message.ToHaveTextAsync("tomato-main 7 days later");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Keep as a variant …" }).ClickAsync();
        await bench.PictureAsync("keep");
        await bench.Page.GetByLabel("Name of the file").FillAsync("later");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Keep it", Exact = true }).ClickAsync();
        await bench.Message.ToHaveTextAsync("Kept as variants/later.toml.");
        var compared = await Command.RunAsync("compare", folder.Path, "--with", "later", "--seasons", "5");
        Assert.Equal(0, compared.Code);
        Assert.Contains("later", compared.Output, StringComparison.Ordinal);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task A_plan_that_is_a_workbook_is_shown_and_says_where_it_is_changed()
    {
        using var folder = new FarmFolder(plan: null);
        using (var workbook = new MemoryStream())
        {
            workbook.SaveAs(
                new Dictionary<string, object>[]
                {
                    new(StringComparer.Ordinal)
                    {
                        ["id"] = "a",
                        ["crop"] = "tomato",
                        ["plants"] = 900,
                        ["sow"] = new DateTime(2027, 3, 1),
                    },
                }
            );
            folder.Write("plan.xlsx", workbook.ToArray());
        }

        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.PartAsync("Plan");
        await Assertions.Expect(bench.Page.GetByText("plan.xlsx is changed in your spreadsheet")).ToBeVisibleAsync();
        await bench.PictureAsync("workbook");
        bench.AssertQuiet();
        await bench.Page.GetByRole(AriaRole.Gridcell, new() { Name = "900" }).ClickAsync();
        await bench.Page.Keyboard.TypeAsync("800");
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.Message.ToContainTextAsync("plan.xlsx is changed in your spreadsheet");
        await Assertions.Expect(bench.Page.GetByRole(AriaRole.Gridcell, new() { Name = "900" })).ToBeVisibleAsync();
    }

    // A byte order mark, line ends of Windows, quotation marks where none need be, a blank row, a row that stops early, and remarks.
    [Fact]
    public async Task Remarks_quotation_marks_and_line_ends_stay_as_they_are()
    {
        const string plan =
            "\uFEFF\"id\",crop,\"plants\",set_out,note\r\n\"a\",\"kale\",\"1,200\",20-May-2027,\"tall; \"\"red\"\"\"\r\n\r\n"
            + "b, kale ,300,2027-05-20\r\n";
        using var folder = Example.Copy("two-house-spring");
        folder.Write("plan.csv", plan);
        var site = await File.ReadAllTextAsync(folder.In("site.toml"));
        site = site.Replace("places = 52", "places   =  52   # counted\ton Monday", StringComparison.Ordinal);
        folder.Write("site.toml", site);
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Slider, new() { Name = "Places of Heat mats" }).FocusAsync();
        await bench.Page.Keyboard.PressAsync("ArrowUp");
        await bench.Message.ToHaveTextAsync("Heat mats: 53 places");
        await bench.PartAsync("Plan");
        await bench.Page.GetByRole(AriaRole.Gridcell, new() { Name = "1,200" }).ClickAsync();
        await bench.Page.Keyboard.TypeAsync("1,300");
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("a: plants 1,300");
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Put into the files …" }).ClickAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Put it in" }).ClickAsync();
        await bench.Message.ToContainTextAsync("Put into plan.csv and site.toml");
        Assert.Equal(
            System.Text.Encoding.UTF8.GetBytes(plan.Replace("1,200", "1,300", StringComparison.Ordinal)),
            await File.ReadAllBytesAsync(folder.In("plan.csv"))
        );
        Assert.Equal(
            site.Replace("places   =  52 ", "places   =  53 ", StringComparison.Ordinal),
            await File.ReadAllTextAsync(folder.In("site.toml")),
            StringComparer.Ordinal
        );
        bench.AssertQuiet();
    }

    [Fact]
    public async Task What_one_window_changes_the_other_shows_and_no_change_is_lost()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var other = await bench.AnotherPageAsync();
        await bench.AnsweredAsync(other);
        await bench.Page.GetByRole(AriaRole.Slider, new() { Name = "Places of Heat mats" }).FocusAsync();
        await bench.Page.Keyboard.PressAsync("PageUp");
        await Assertions.Expect(other.Locator("[data-space='mats'] input")).ToHaveValueAsync("62");
        await other.GetByRole(AriaRole.Slider, new() { Name = "Places of Heat mats" }).FocusAsync();
        await other.Keyboard.PressAsync("PageUp");
        await Assertions.Expect(bench.Page.Locator("[data-space='mats'] input")).ToHaveValueAsync("72");
        bench.AssertQuiet();
    }

    // The second window types over what the first one changes meanwhile: it is told, and what the first one wrote stands.
    [Fact]
    public async Task Of_two_windows_that_change_one_cell_the_second_is_told()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var other = await bench.AnotherPageAsync();
        await bench.AnsweredAsync(other);
        foreach (var page in new[] { bench.Page, other })
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Plan", Exact = true }).ClickAsync();
            await page.GetByRole(AriaRole.Gridcell, new() { Name = "5200" }).ClickAsync();
        }

        await other.Keyboard.TypeAsync("5400");
        await bench.Page.Keyboard.TypeAsync("5300");
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("onion-bulb: plants 5300");
        await bench.AnsweredAsync(other);
        await other.Keyboard.PressAsync("Enter");
        await Assertions.Expect(other.GetByRole(AriaRole.Alert)).ToHaveTextAsync("Meanwhile \"5300\" stands there, not \"5200\".");
        Assert.Equal("5300", await bench.CellAsync("onion-bulb", "plants"));
        await Assertions.Expect(other.GetByRole(AriaRole.Gridcell, new() { Name = "5300" })).ToBeVisibleAsync();

        // The browser notes the refusal; nothing else went wrong.
        Assert.Contains("409", Assert.Single(bench.Complaints), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_changed_outside_shows_on_the_page()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        var site = await File.ReadAllTextAsync(folder.In("site.toml"));
        folder.Write("site.toml", site.Replace("places = 52", "places = 58", StringComparison.Ordinal));
        await Assertions.Expect(bench.Page.Locator("[data-space='mats'] input")).ToHaveValueAsync("58");
        bench.AssertQuiet();
    }

    [Fact]
    public async Task A_try_takes_in_what_is_changed_outside_and_asks_where_both_changed_the_same_line()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Slider, new() { Name = "tomato-main", Exact = true }).FocusAsync();
        await bench.Page.Keyboard.PressAsync("PageDown");
        await bench.Message.ToHaveTextAsync("tomato-main 7 days later");

        // Another line of the same file: the try has both.
        await ReplaceAsync(folder, "onion-bulb,onion,Mara,5200", "onion-bulb,onion,Mara,5100");
        await bench.PartAsync("Plan");
        await Assertions.Expect(bench.Page.GetByRole(AriaRole.Gridcell, new() { Name = "5100" })).ToBeVisibleAsync();
        Assert.Equal("2027-06-08", await bench.CellAsync("tomato-main", "set_out"));

        // The same line: the page asks, and nothing is lost before it is answered.
        await ReplaceAsync(folder, "tomato-main,tomato,Mara,1100", "tomato-main,tomato,Mara,1000");
        var asked = bench.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "Which stands?" });
        await Assertions.Expect(asked).ToContainTextAsync("plan.csv was changed outside");
        Assert.Equal("2027-06-08", await bench.CellAsync("tomato-main", "set_out"));
        Assert.Equal("1100", await bench.CellAsync("tomato-main", "plants"));
        await bench.PictureAsync("conflict");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "That of the folder" }).ClickAsync();
        await Assertions.Expect(asked).ToHaveCountAsync(0);
        Assert.Equal("2027-06-01", await bench.CellAsync("tomato-main", "set_out"));
        Assert.Equal("1000", await bench.CellAsync("tomato-main", "plants"));

        // What was given up can be taken back.
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await bench.Message.ToContainTextAsync("Undone");
        Assert.Equal("2027-06-08", await bench.CellAsync("tomato-main", "set_out"));
        await bench.AnsweredAsync();
        bench.AssertQuiet();
    }

    private static async Task ReplaceAsync(TemporaryFolder folder, string before, string after)
    {
        var plan = await File.ReadAllTextAsync(folder.In("plan.csv"));
        Assert.Contains(before, plan, StringComparison.Ordinal);
        folder.Write("plan.csv", plan.Replace(before, after, StringComparison.Ordinal));
    }

    private static (string Before, string After)[] Differing(byte[] before, string path) =>
        [
            .. System
                .Text.Encoding.UTF8.GetString(before)
                .Split('\n')
                .Zip(File.ReadAllText(path).Split('\n'))
                .Where(pair => pair.First != pair.Second),
        ];
}
