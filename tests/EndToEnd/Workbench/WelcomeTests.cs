using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>From nothing to a verdict. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class WelcomeTests
{
    [Fact]
    public async Task Ten_questions_half_of_them_not_answered_and_a_plan_lead_to_a_verdict()
    {
        using var folder = new TemporaryFolder();
        await using var bench = await Bench.OpenAsync(null, start: folder.Path);
        await Assertions.Expect(bench.Page.Locator("h1")).ToHaveTextAsync("Does the season fit?");
        await bench.PictureAsync("welcome");
        await bench.Page.GetByLabel("Folder for its files").FillAsync("hoop house");
        await bench.Page.GetByLabel("Name of the farm").FillAsync("Hill farm");
        await bench.Page.GetByLabel("Last frost in a usual year").FillAsync("2027-05-10");
        await bench.Page.GetByLabel("Trays on the heat mats at once; 0 for no mats").FillAsync("16");
        await bench.Page.GetByLabel("Night temperature really held").FillAsync("58 F");
        await bench.Page.GetByLabel("Trays on it").FillAsync("60");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Lay the folder down" }).ClickAsync();

        // The plan is still empty, and the page says so; a line of it leads to the answer.
        await Assertions.Expect(bench.Page.Locator(".verdict .faults")).ToBeVisibleAsync();
        await bench.PictureAsync("laid-down");
        var (opens, wanted) = await DatesAsync(bench);
        await bench.Page.Locator("tr.new td").First.ClickAsync();
        await bench.PasteAsync($"Id\tCrop\tPlants\tSet out\nkale\tkale\t600\t{wanted}\nlettuce\tlettuce\t900\t{wanted}\n");
        await bench.Message.ToHaveTextAsync("2 rows pasted");
        await bench.AnsweredAsync();
        await Assertions.Expect(bench.Page.Locator(".verdict .share")).ToContainTextAsync("Fits in");
        await Assertions.Expect(bench.Page.Locator("h1")).ToHaveTextAsync("Hill farm");
        Assert.NotEqual(opens, wanted, StringComparer.Ordinal);
        var site = await File.ReadAllTextAsync(folder.In("hoop house/site.toml"));
        Assert.Contains("night = \"58 F\"\n", site, StringComparison.Ordinal);
        Assert.Matches("latitude = 44 +# default\n", site);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task The_example_is_one_click_away()
    {
        using var folder = new TemporaryFolder();
        await using var bench = await Bench.OpenAsync(null, start: folder.Path);
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Open the example" }).ClickAsync();
        await bench.AnsweredAsync();
        Assert.True(File.Exists(folder.In("example/site.toml")));
        bench.AssertQuiet();
    }

    [Fact]
    public async Task A_folder_that_was_laid_down_before_is_one_click_away_the_next_time()
    {
        using var folder = new TemporaryFolder();
        await using (var first = await Bench.OpenAsync(null, start: folder.Path, before: folder.In("settings/folders.txt")))
        {
            await Assertions.Expect(first.Page.Locator("h1")).ToHaveTextAsync("Does the season fit?");
            await Assertions.Expect(first.Page.Locator(".before")).ToHaveCountAsync(0);
            await first.Page.GetByRole(AriaRole.Button, new() { Name = "Open the example" }).ClickAsync();
            await first.AnsweredAsync();
        }

        using var elsewhere = new TemporaryFolder();
        await using var bench = await Bench.OpenAsync(
            null,
            start: elsewhere.Path,
            before: folder.In("settings/folders.txt"),
            forChecker: true
        );
        await Assertions.Expect(bench.Page.Locator(".before li")).ToContainTextAsync(folder.In("example"));
        await bench.PictureAsync("welcome-before");
        Assert.Empty((await bench.Page.RunAxe()).Violations);
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "example", Exact = true }).ClickAsync();
        await bench.AnsweredAsync();
        await bench.Message.ToHaveTextAsync("Opened: example");
    }

    [Fact]
    public async Task A_farm_of_a_common_kind_is_a_few_clicks_away_and_fits()
    {
        using var folder = new TemporaryFolder();
        await using var bench = await Bench.OpenAsync(null, start: folder.Path);
        await bench.Page.Locator("select[name=farm]").SelectOptionAsync("hoop-house");
        await bench.Page.Locator("select[name=climate]").SelectOptionAsync("cold");
        await bench.PictureAsync("welcome-farm");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Open this farm" }).ClickAsync();
        await bench.AnsweredAsync();
        await Assertions.Expect(bench.Page.Locator("h1")).ToHaveTextAsync("One hoop house");
        await Assertions.Expect(bench.Page.Locator(".verdict .share")).ToContainTextAsync("Fits in 9");
        Assert.True(File.Exists(folder.In("example/variants/more.toml")));

        // What there is to try is one click away: half as many onions again.
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Try this variant" }).ClickAsync();
        await bench.Message.ToHaveTextAsync("Taken as a try: more");
        await bench.AnsweredAsync();
        await Assertions.Expect(bench.Page.Locator(".verdict .difference")).ToContainTextAsync("fewer");
        Assert.Equal("3000", await bench.CellAsync("onions", "plants"));
        await bench.PictureAsync("welcome-farm-more");
        bench.AssertQuiet();
    }

    [Theory]
    [InlineData("../outside")]
    [InlineData("a/b")]
    [InlineData(".hidden")]
    public async Task A_folder_is_laid_down_in_the_one_the_workbench_was_started_in_alone(string name)
    {
        using var folder = new TemporaryFolder();
        await using var bench = await Bench.OpenAsync(null, start: folder.Path);
        await bench.Page.GetByLabel("Folder for it", new() { Exact = true }).FillAsync(name);
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Open the example" }).ClickAsync();
        await Assertions.Expect(bench.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("plain name");
        Assert.Empty(folder.Everything());
    }

    // The page asks for the season to come, whatever year this is.
    private static async Task<(string Opens, string Wanted)> DatesAsync(Bench bench)
    {
        var season = (await bench.DeskAsync())
            .GetProperty("sections")
            .EnumerateArray()
            .First(each => each.GetProperty("section").GetString() == "season");
        var opens = season.GetProperty("values")[0].GetProperty("value").GetString()!;
        return (opens, opens[..4] + "-05-15");
    }
}
