using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>
/// A phone in the farm's own network: paired by the code on the owner's page, writing down what was done with and without a link, and taken
/// away. The network is an address of this computer beside the usual one. Marked Browser as <see cref="PageInBrowserTests"/>.
/// </summary>
[Trait("Category", "Browser")]
public sealed class PhoneTests
{
    /// <summary>The address in the network.</summary>
    public const string Address = "127.0.0.2";

    [Fact]
    public async Task A_phone_is_paired_writes_with_and_without_a_link_each_entry_once_and_is_taken_away()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path, lan: Address);
        await bench.AnsweredAsync();
        await bench.PartAsync("Phones");
        await Assertions.Expect(bench.Page.Locator(".square")).ToBeVisibleAsync();
        await bench.PictureAsync("phones");
        var phone = await bench.PhoneAsync(await AddressAsync(bench));
        await bench.PictureAsync("phone-pairing", phone);

        // A slip of the thumb first.
        await phone.GetByLabel("Code").FillAsync("12");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Pair" }).ClickAsync();
        await Assertions.Expect(phone.GetByRole(AriaRole.Alert)).ToContainTextAsync("This is not the code.");
        await PairAsync(bench, phone);
        await Assertions.Expect(bench.Page.Locator(".due li")).ToContainTextAsync("Kim");

        // The verdict and the part Today, and nothing that changes the plan.
        await Assertions.Expect(phone.Locator(".verdict .headline")).ToBeVisibleAsync();
        await Assertions.Expect(phone.Locator("nav, .tries")).ToHaveCountAsync(0);
        await phone.GetByLabel("Day", new() { Exact = true }).FillAsync("2027-03-29");
        var done = phone.Locator(".due button.main");
        await Assertions.Expect(done.Nth(9)).ToBeVisibleAsync();
        Assert.True(await OpenBrowser.WidthAsync(phone) <= 390);
        await bench.PictureAsync("phone-today", phone);

        // Three with a link.
        for (var job = 1; job <= 3; job++)
        {
            await done.First.ClickAsync();
            await Assertions.Expect(phone.Locator(".written li")).ToHaveCountAsync(job);
        }

        // Three without one wait in their order, and go out in it.
        await phone.Context.SetOfflineAsync(true);
        await WaitsAsync(phone, done, 3);
        await bench.PictureAsync("phone-offline", phone);
        var waiting = await WaitingAsync(phone);
        await phone.Context.SetOfflineAsync(false);
        await Assertions.Expect(phone.Locator(".written li")).ToHaveCountAsync(6);
        Assert.Equal(waiting, Lines(folder)[4..], StringComparer.Ordinal);

        // The link fails when the entry is there already and its answer is under way: it is sent again, and counts once.
        var fails = true;
        await phone.RouteAsync("**/api/log", async route =>
        {
            await route.FetchAsync();
            await (fails ? route.AbortAsync() : route.ContinueAsync());
            fails = false;
        });
        await done.First.ClickAsync();
        await Assertions.Expect(phone.Locator(".flag")).ToHaveCountAsync(1);
        await Assertions.Expect(phone.Locator(".flag")).ToHaveCountAsync(0);
        await Assertions.Expect(phone.Locator(".written li")).ToHaveCountAsync(7);
        Assert.Equal(8, Lines(folder).Length);
        await phone.UnrouteAsync("**/api/log");

        // Taken away while two entries wait: they are neither written nor lost, and go out once it is paired again.
        await phone.Context.SetOfflineAsync(true);
        await WaitsAsync(phone, done, 2);
        waiting = await WaitingAsync(phone);
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Remove “Kim’s phone”" }).ClickAsync();
        await bench.Message.ToHaveTextAsync("Removed: Kim’s phone");
        await phone.Context.SetOfflineAsync(false);
        await Assertions.Expect(phone.Locator("#waits")).ToContainTextAsync("2 entries wait on this phone.");
        Assert.Equal(8, Lines(folder).Length);
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "New code" }).ClickAsync();
        await PairAsync(bench, phone);
        await Assertions.Expect(phone.Locator(".written li")).ToHaveCountAsync(9);
        Assert.Equal(waiting, Lines(folder)[8..], StringComparer.Ordinal);
    }

    [Fact]
    public async Task The_square_code_brings_the_code_and_leaves_it_in_no_address()
    {
        using var folder = Example.Copy("two-house-spring");
        await using var bench = await Bench.OpenAsync(folder.Path, lan: Address);
        await bench.PartAsync("Phones");
        var phone = await bench.PhoneAsync(
            $"{await AddressAsync(bench)}#{await CodeAsync(bench)}".Replace(" ", "", StringComparison.Ordinal)
        );
        await Assertions
            .Expect(phone.GetByLabel("Code"))
            .ToHaveValueAsync(new Regex("^[0-9]{6}$", RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Equal(await AddressAsync(bench), phone.Url);
        await phone.GetByRole(AriaRole.Button, new() { Name = "Pair" }).ClickAsync();
        await Assertions.Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "Today" })).ToBeVisibleAsync();
        bench.AssertQuiet(await AddressAsync(bench));
    }

    /// <summary>The address that the owner's page shows.</summary>
    internal static Task<string> AddressAsync(Bench bench) => bench.Page.Locator(".shelves strong").InnerTextAsync();

    /// <summary>Types the code of the owner's page into a phone.</summary>
    internal static async Task PairAsync(Bench bench, IPage phone)
    {
        await phone.GetByLabel("Code").FillAsync(await CodeAsync(bench));
        await phone.GetByLabel("Name of this phone").FillAsync("Kim’s phone");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Pair" }).ClickAsync();
        await Assertions.Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "Today" })).ToBeVisibleAsync();
    }

    private static Task<string> CodeAsync(Bench bench) => bench.Page.Locator("strong.code").InnerTextAsync();

    private static async Task WaitsAsync(IPage phone, ILocator done, int entries)
    {
        for (var job = 1; job <= entries; job++)
        {
            await done.First.ClickAsync();
            await Assertions
                .Expect(phone.Locator(".flag"))
                .ToHaveTextAsync(new Regex($"^{job} entr(?:y waits|ies wait) ", RegexOptions.None, TimeSpan.FromSeconds(1)));
        }
    }

    // The lines that wait, as they will stand in the log.
    private static Task<string[]> WaitingAsync(IPage phone) =>
        phone.EvaluateAsync<string[]>(
            "() => JSON.parse(localStorage.getItem('benchsim-waiting')).map(({ rows }) => "
                + "['date', 'batch', 'what', 'trays', 'flats', 'from', 'space', 'count', 'of', 'by', 'note']"
                + ".map((column) => rows[0][column] ?? '').join(','))"
        );

    private static string[] Lines(TemporaryFolder folder) => File.ReadAllText(folder.In("log.csv")).TrimEnd('\n').Split('\n');
}
