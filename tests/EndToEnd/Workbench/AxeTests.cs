using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>What axe finds on every part of the page, light and dark, wide and narrow: nothing. Marked Browser as
/// <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class AxeTests
{
    // A small plan has the kinds of cells that a large one has.
    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task Axe_finds_nothing_on_any_part(int width)
    {
        using var folder = Example.Copy("two-house-spring");
        folder.Write("plan.csv", "id,crop,plants,set_out\na,tomato,900,2027-05-20\nb,kale,none,2027-04-20\n");
        folder.Write("not-here.txt", "slack\n");
        var site = await File.ReadAllTextAsync(folder.In("site.toml"));
        folder.Write(
            "site.toml",
            site.Replace("seasons = 1000", "seasons = 60", StringComparison.Ordinal)
                .Replace("places = 52", "places = 4", StringComparison.Ordinal)
        );
        await using var bench = await Bench.OpenAsync(folder.Path, width, forChecker: true);
        await Assertions.Expect(bench.Page.Locator(".faults li")).ToHaveCountAsync(1);
        var found = new List<string>();
        await AllPartsAsync("with a fault");
        folder.Write("plan.csv", "id,crop,plants,set_out\na,tomato,900,2027-05-20\nb,kale,300,2027-04-20\n");
        await Assertions.Expect(bench.Page.Locator(".faults li")).ToHaveCountAsync(0);
        await bench.AnsweredAsync();
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "New try from here" }).ClickAsync();
        await bench.AnsweredAsync();
        await AllPartsAsync("answered");
        Assert.True(found.Count == 0, string.Join('\n', found));

        // What a part shows once it is asked for.
        async Task UnfoldAsync(string part)
        {
            switch (part)
            {
                case "Season":
                    await bench.Page.Locator("[data-space='mats'] .waits").First.PressAsync("Enter");
                    await Assertions.Expect(bench.Page.Locator(".why .stories")).ToBeVisibleAsync();
                    await Assertions.Expect(bench.Page.Locator("p.lit")).ToBeVisibleAsync();
                    break;
                case "What would mend it":
                    await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Look for what would help" }).ClickAsync();
                    await Assertions.Expect(bench.Page.Locator(".found .headline")).ToBeVisibleAsync(new() { Timeout = 120_000 });
                    break;
                case "How sure it is":
                    await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Look how sure it is" }).ClickAsync();
                    await Assertions.Expect(bench.Page.Locator(".found .headline")).ToBeVisibleAsync(new() { Timeout = 120_000 });
                    break;
                case "Today":
                    await bench.Page.GetByLabel("Day", new() { Exact = true }).FillAsync("2027-05-20");
                    await bench.Page.Locator(".due button:not(.main)").First.ClickAsync();
                    await bench.Page.Locator(".benchbox button").First.ClickAsync();
                    break;
                case "Agree and review":
                    await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Show the bills" }).ClickAsync();
                    await Assertions.Expect(bench.Page.Locator(".told")).Not.ToHaveCountAsync(0, new() { Timeout = 120_000 });
                    break;
                case "Papers and case":
                    await Assertions.Expect(bench.Page.Locator(".shelves")).ToBeVisibleAsync();
                    break;
            }
        }

        async Task AllPartsAsync(string state)
        {
            foreach (var part in await bench.PartsAsync())
            {
                await bench.PartAsync(part);
                if (state is "answered")
                {
                    await UnfoldAsync(part);
                }

                await bench.Page.EvaluateAsync("document.querySelectorAll('main details').forEach(each => each.open = true)");
                found.AddRange(await ViolationsAsync(bench, $"{part}, {state}, {width}"));
            }
        }
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task Axe_finds_nothing_on_what_a_log_teaches(int width)
    {
        using var folder = Example.Copy("spring-under-way");
        await using var bench = await Bench.OpenAsync(folder.Path, width, forChecker: true);
        await bench.AnsweredAsync();
        await bench.PartAsync("Agree and review");
        foreach (var (button, headline) in new[] { ("Ask the log", "The log of 2027 teaches"), ("Review the season", "batches planned") })
        {
            await bench.Page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync();
            await Assertions
                .Expect(bench.Page.Locator(".agreeing .headline").Filter(new() { HasText = headline }))
                .ToBeVisibleAsync(new() { Timeout = 120_000 });
        }

        await bench.Page.EvaluateAsync("document.querySelectorAll('main details').forEach(each => each.open = true)");
        var found = await ViolationsAsync(bench, $"log, {width}");
        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    [Fact]
    public async Task Axe_finds_nothing_on_the_ten_questions_and_in_what_is_asked()
    {
        using var folder = Example.Copy("two-house-spring");
        folder.Write("plan.csv", "id,crop,plants,set_out\na,tomato,900,2027-05-20\n");
        await using (var nothing = await Bench.OpenAsync(null, forChecker: true, start: folder.Path))
        {
            await Assertions.Expect(nothing.Page.Locator("h1")).ToBeVisibleAsync();
            Assert.Empty(await ViolationsAsync(nothing, "questions"));
        }

        await using var bench = await Bench.OpenAsync(folder.Path, forChecker: true);
        await bench.AnsweredAsync();
        await bench.PartAsync("Plan");
        await bench.Page.GetByRole(AriaRole.Gridcell, new() { Name = "900" }).ClickAsync();
        await bench.Page.Keyboard.TypeAsync("800");
        Assert.Empty(await ViolationsAsync(bench, "typing"));
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.Message.ToHaveTextAsync("a: plants 800");
        foreach (var asked in new[] { "Put into the files …", "Keep as a variant …", "Rename …", "Let go …" })
        {
            await bench.Page.GetByRole(AriaRole.Button, new() { Name = asked }).ClickAsync();
            Assert.Empty(await ViolationsAsync(bench, asked.Split(' ')[0]));
            await bench.Page.Keyboard.PressAsync("Escape");
        }

        folder.Write("plan.csv", "id,crop,plants,set_out\na,tomato,700,2027-05-20\n");
        await Assertions.Expect(bench.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Which stands?");
        Assert.Empty(await ViolationsAsync(bench, "conflict"));
    }

    [Fact]
    public async Task Axe_finds_nothing_on_what_is_for_phones()
    {
        using var folder = Example.Copy("two-house-spring");
        folder.Write("plan.csv", "id,crop,plants,set_out\na,tomato,900,2027-05-20\n");
        await using var bench = await Bench.OpenAsync(folder.Path, forChecker: true, lan: PhoneTests.Address);
        await bench.AnsweredAsync();
        await bench.PartAsync("Phones");
        var phone = await bench.PhoneAsync(await PhoneTests.AddressAsync(bench), forChecker: true);
        var found = await ViolationsAsync(bench, "pairing", phone);
        await PhoneTests.PairAsync(bench, phone);
        await Assertions.Expect(bench.Page.Locator(".due li")).ToHaveCountAsync(1);
        await Assertions.Expect(phone.Locator(".benches")).ToBeVisibleAsync();
        found.AddRange(await ViolationsAsync(bench, "phone", phone));
        found.AddRange(await ViolationsAsync(bench, "no code"));
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "New code" }).ClickAsync();
        await Assertions.Expect(bench.Page.Locator(".square")).ToBeVisibleAsync();
        found.AddRange(await ViolationsAsync(bench, "code"));
        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    // Nothing moves for whoever asks for that; for others something does, or this would say nothing.
    [Fact]
    public async Task With_reduced_motion_nothing_moves()
    {
        const string moving = """
            () => [...document.querySelectorAll("*")]
              .flatMap((each) => [null, "::before", "::after", "::backdrop"].map((part) => getComputedStyle(each, part)))
              .filter((style) => style.animationName !== "none" || style.scrollBehavior === "smooth"
                || style.transitionDuration.split(",").some((time) => parseFloat(time) > 0))
              .length
            """;
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        Assert.NotEqual(0, await bench.Page.EvaluateAsync<int>(moving));
        await bench.Page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        foreach (var part in await bench.PartsAsync())
        {
            await bench.PartAsync(part);
            Assert.Equal(0, await bench.Page.EvaluateAsync<int>(moving));
        }
    }

    /// <summary>What axe finds, in light and in dark.</summary>
    private static async Task<List<string>> ViolationsAsync(Bench bench, string state, IPage? other = null)
    {
        var page = other ?? bench.Page;
        var found = new List<string>();
        foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            await page.EmulateMediaAsync(new() { ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
            var result = await page.RunAxe();
            Assert.NotEmpty(result.Passes);
            found.AddRange(result.Violations.SelectMany(rule => rule.Nodes.Select(node => $"{state}, {scheme}: {rule.Id}: {node.Html}")));
            await bench.PictureAsync($"axe-{state.Replace(", ", "-", StringComparison.Ordinal).Replace(' ', '-')}-{scheme}", page);
        }

        return found;
    }
}
