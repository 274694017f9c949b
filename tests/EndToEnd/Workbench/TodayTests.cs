using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>
/// The benches as they stand, and writing down what was done, with one hand on a telephone. Marked Browser as
/// <see cref="PageInBrowserTests"/>.
/// </summary>
[Trait("Category", "Browser")]
public sealed class TodayTests
{
    [Fact]
    public async Task Ten_jobs_are_written_down_by_touch_five_of_them_without_a_link_and_one_that_somebody_else_wrote()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path, width: 390);
        await bench.AnsweredAsync();
        await bench.PartAsync("Today");
        await bench.Page.GetByLabel("Day", new() { Exact = true }).FillAsync("2027-03-29");
        var done = bench.Page.Locator(".due button.main");
        await Assertions.Expect(done.Nth(9)).ToBeVisibleAsync();
        await bench.PictureAsync("today");

        // Five with a link: each is gone from the list once it is in the log.
        for (var job = 0; job < 5; job++)
        {
            var name = await done.First.InnerTextAsync();
            await done.First.ClickAsync();
            await Assertions.Expect(bench.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true })).ToHaveCountAsync(0);
            await Assertions.Expect(bench.Page.Locator(".written li")).ToHaveCountAsync(job + 1);
            await Assertions.Expect(bench.Page.GetByText("Waits to be sent.", new() { Exact = true })).ToHaveCountAsync(0);
        }

        // Five without one, over a reload of nothing: they wait, in their order, and the second of them was written by somebody else.
        await bench.Page.Context.SetOfflineAsync(true);
        for (var job = 0; job < 5; job++)
        {
            await done.First.ClickAsync();
            await Assertions
                .Expect(bench.Page.Locator(".flag"))
                .ToHaveTextAsync(new Regex($"^{job + 1} entr(?:y waits|ies wait) ", RegexOptions.None, TimeSpan.FromSeconds(1)));
        }

        await Assertions.Expect(bench.Page.GetByText("Waits to be sent.", new() { Exact = true })).ToHaveCountAsync(5);
        await bench.PictureAsync("today-offline");
        var waiting = await bench.Page.EvaluateAsync<string[]>(
            "() => JSON.parse(localStorage.getItem('benchsim-waiting')).map(({ rows }) => "
                + "['date', 'batch', 'what', 'trays', 'flats', 'from', 'space'].map((column) => rows[0][column] ?? '').join(','))"
        );
        await File.AppendAllTextAsync(folder.In("log.csv"), waiting[1] + ",,,,\n");
        await bench.Page.Context.SetOfflineAsync(false);
        await Assertions.Expect(bench.Page.Locator(".flag")).ToHaveCountAsync(0);
        Assert.Equal(11, Lines(folder).Length);
        Assert.Equal(
            waiting.Order(StringComparer.Ordinal),
            Lines(folder)[6..].Select(Cells).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
    }

    [Fact]
    public async Task Another_number_is_written_a_space_is_walked_and_the_last_is_taken_back()
    {
        using var folder = Example.Copy("two-house-spring");
        folder.Write("log.csv", "date,batch,what,trays,space,note\n2027-03-01,kale-1,sown,3,mats,\"ours, early\"\n");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.PartAsync("Today");
        await bench.Page.GetByLabel("Day", new() { Exact = true }).FillAsync("2027-03-29");
        await bench.Page.GetByLabel("Find a batch by name or code, a crop or a grower").FillAsync("kale-1");
        await bench.Page.Locator(".due li button:not(.main)").First.ClickAsync();
        await bench.Page.Locator(".due form").GetByLabel("trays").FillAsync("2");
        await bench.Page.Locator(".due form").GetByRole(AriaRole.Button, new() { Name = "Write down" }).ClickAsync();
        await bench.Message.ToHaveTextAsync(new Regex("^Written down: ", RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Equal(3, Lines(folder).Length);

        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Walk through Heat mats" }).ClickAsync();
        await bench.Page.Locator(".benchbox form input").First.FillAsync("0");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "That is all that stands here" }).ClickAsync();
        await bench.Message.ToHaveTextAsync("Written down: Walked through Heat mats");
        var walked = Lines(folder);
        Assert.Equal(5, walked.Length);
        Assert.StartsWith("2027-03-29,kale-1,counted,0,mats", walked[3], StringComparison.Ordinal);
        Assert.StartsWith("2027-03-29,,walked,,mats", walked[4], StringComparison.Ordinal);

        await bench.PictureAsync("today-walked");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Take back “Walked through Heat mats”" }).ClickAsync();
        await bench.Message.ToHaveTextAsync("Taken back: Walked through Heat mats");
        Assert.Equal(3, Lines(folder).Length);
        bench.AssertQuiet();
    }

    // 17 trays of tomato-cherry on the mats: three of them are drawn, and their 50 cells each hold a seed. One word is written by hand.
    [Fact]
    public async Task Trays_are_counted_by_lot_and_a_word_does_for_a_number()
    {
        using var folder = Example.Copy("spring-under-way");
        await using var bench = await Bench.OpenAsync(folder.Path, width: 390);
        await bench.PartAsync("Today");
        await bench.Page.GetByLabel("Day", new() { Exact = true }).FillAsync("2027-04-20");
        var before = Lines(folder).Length;
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Count by lot “tomato-cherry” in Heat mats" }).ClickAsync();
        var form = bench.Page.Locator(".benchbox form");
        var words = await form.Locator("p").InnerTextAsync();
        Assert.Matches(
            new Regex(
                "^Look at trays [0-9]+, [0-9]+ and [0-9]+ in the order in which they stand, whatever they look like\\.$",
                RegexOptions.None,
                TimeSpan.FromSeconds(1)
            ),
            words
        );
        await bench.PictureAsync("today-lot");
        await form.GetByLabel("seedlings up, of ").FillAsync("40");
        await form.GetByRole(AriaRole.Button, new() { Name = "Write down" }).ClickAsync();
        await bench.Message.ToHaveTextAsync("Written down: Counted by lot tomato-cherry");
        var line = Lines(folder)[^1];
        Assert.Contains("tomato-cherry,up,", line, StringComparison.Ordinal);
        Assert.Contains("picked by lot: trays ", line, StringComparison.Ordinal);
        Assert.Equal(390, await OpenBrowser.WidthAsync(bench.Page));

        var other = bench.Page.Locator("form", new() { HasText = "Something else" });
        await other.Locator("[name=what]").SelectOptionAsync("good");
        await other.Locator("[name=batch]").FillAsync("celery");
        await other.Locator("[name=count]").FillAsync("most");
        await other.Locator("[name=of]").FillAsync("72");
        await other.GetByRole(AriaRole.Button, new() { Name = "Write down" }).ClickAsync();
        await bench.Message.ToHaveTextAsync("Written down: good celery");
        Assert.Contains("celery,good,", Lines(folder)[^1], StringComparison.Ordinal);
        Assert.Contains("most", Lines(folder)[^1], StringComparison.Ordinal);
        Assert.Equal(before + 2, Lines(folder).Length);
        bench.AssertQuiet();
    }

    // The benches are there first; what comes is played after them, as print --today has it, and found by the same field.
    [Fact]
    public async Task The_jobs_of_the_week_follow_with_their_words_and_days()
    {
        using var folder = Example.Copy("spring-under-way");
        await using var bench = await Bench.OpenAsync(folder.Path, width: 390);
        await bench.PartAsync("Today");
        await bench.Page.GetByLabel("Day", new() { Exact = true }).FillAsync("2027-04-20");
        await Assertions.Expect(bench.Page.Locator(".coming li").First).ToBeVisibleAsync();
        var printed = await Command.RunAsync("print", folder.Path, "--today", "2027-04-20", "--out", folder.In("today"));
        Assert.Equal(0, printed.Code);
        var page = await File.ReadAllTextAsync(folder.In("today/today.html"));
        foreach (var job in await bench.Page.Locator(".coming li").AllAsync())
        {
            var batch = await job.Locator(".shortcode").InnerTextAsync();
            var when = (await job.Locator("p").Last.InnerTextAsync()).Split(", ");
            Assert.Matches(
                new Regex(
                    $"{Regex.Escape(batch)}(?:(?!</tr>).)*<b>{when[0]}</b> {Regex.Escape(when[1])}<",
                    RegexOptions.Singleline,
                    TimeSpan.FromSeconds(5)
                ),
                page
            );
        }

        await bench.Page.Locator(".coming li").Nth(3).ScrollIntoViewIfNeededAsync();
        await bench.PictureAsync("today-coming");
        var code = await bench.Page.Locator(".coming .shortcode").Last.InnerTextAsync();
        await bench.Page.GetByLabel("Find a batch by name or code, a crop or a grower").FillAsync(code);
        await Assertions.Expect(bench.Page.Locator(".coming li")).ToHaveCountAsync(1);
        bench.AssertQuiet();
    }

    // A batch whose name and crop hold no such letters, by what stands on its label.
    [Fact]
    public async Task The_short_code_of_a_label_finds_its_batch_alone()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path, width: 390);
        await bench.PartAsync("Today");
        await bench.Page.GetByLabel("Day", new() { Exact = true }).FillAsync("2027-03-29");
        var third = bench.Page.Locator(".due li").Nth(2);
        var code = await third.Locator(".shortcode").InnerTextAsync();
        Assert.Matches("^[A-Z][A-Z0-9]{3}/[A-Z]$", code);
        var job = await third.Locator("strong").InnerTextAsync();
        foreach (var typed in new[] { code, code.Split('/')[0].ToLowerInvariant() + " " })
        {
            await bench.Page.GetByLabel("Find a batch by name or code, a crop or a grower").FillAsync(typed);
            await Assertions.Expect(bench.Page.Locator(".due strong")).ToHaveTextAsync([job]);
        }

        await bench.PictureAsync("today-code");
        bench.AssertQuiet();
    }

    private static string[] Lines(TemporaryFolder folder) => File.ReadAllText(folder.In("log.csv")).TrimEnd('\n').Split('\n');

    // The cells that a job fills.
    private static string Cells(string line) => string.Join(',', line.Split(',')[..7]);
}
