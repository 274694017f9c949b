using Microsoft.Playwright;

namespace EndToEnd.Workbench;

/// <summary>What is pasted into the plan: where it goes, and how it is read. Marked Browser as <see cref="PageInBrowserTests"/>.</summary>
[Trait("Category", "Browser")]
public sealed class PasteTests
{
    // Fifty rows as a spreadsheet puts them on the clipboard: a heading, tabs, US dates, thousands and a currency sign, blanks at the end.
    // Three of them have a fault: a crop that is none, no number of plants, and a date that is none.
    private static string Pasted =>
        "Id\tCrop\tPlants\tSet out\tThousand seeds\tNote\r\n"
        + string.Concat(
            Enumerable
                .Range(1, 50)
                .Select(row =>
                    $"p{row}\t{(row == 7 ? "lettuse" : "lettuce")}\t{(row == 20 ? "many" : "1,200")}\t"
                    + $"{(row == 33 ? "13/45/2027" : $"5/{1 + (row % 20)}/2027")}\t$1,018.50 \t\"row {row}, \"\"new\"\"\"  \r\n"
                )
        )
        + "\t\t\t\t\t\r\n\t\t\t\t\t\r\n";

    [Fact]
    public async Task Rows_of_a_spreadsheet_are_pasted_their_faults_mended_in_their_cells_and_answered()
    {
        using var folder = Example.Copy("two-house-spring");
        folder.Write("plan.csv", "id,crop,plants,sow,set_out\nfirst,kale,100,,2027-04-20\n");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.PartAsync("Plan");
        await bench.Page.Locator("tr.new td").First.ClickAsync();
        await bench.PasteAsync(Pasted);

        await bench.Message.ToHaveTextAsync("50 rows pasted");
        await Assertions.Expect(bench.Page.Locator(".verdict .faults li")).ToHaveCountAsync(3);
        await Assertions.Expect(bench.Page.Locator("td.faulty")).ToHaveTextAsync(["lettuse", "many", "13/45/2027"]);
        await bench.PictureAsync("faults");

        // The list leads to the cell; what is typed goes over it.
        foreach (var (left, fault, value) in new[] { (2, "crop", "lettuce"), (1, "plants", "1200"), (0, "set_out", "2027-05-14") })
        {
            await bench.Page.Locator(".faults button").First.ClickAsync();
            await Assertions.Expect(bench.Page.Locator("#cellhelp strong")).ToHaveTextAsync(fault);
            await bench.Page.Keyboard.TypeAsync(value);
            await bench.Page.Keyboard.PressAsync("Enter");
            await Assertions.Expect(bench.Page.Locator(".verdict .faults li")).ToHaveCountAsync(left);
        }

        await bench.AnsweredAsync();
        Assert.Empty(await bench.Page.Locator("td.faulty").AllAsync());
        var plan = (await bench.DeskAsync()).GetProperty("plan");
        Assert.Equal(
            ["id", "crop", "plants", "sow", "set_out", "thousand_seeds", "note"],
            plan.GetProperty("columns").EnumerateArray().Select(each => each.GetString()),
            StringComparer.Ordinal
        );

        // As they were written: the program reads them, and says where it cannot.
        Assert.Equal(
            ["p1", "lettuce", "1,200", "", "5/2/2027", "$1,018.50", "row 1, \"new\""],
            plan.GetProperty("rows")[1].EnumerateArray().Select(each => each.GetString()),
            StringComparer.Ordinal
        );

        // One step, one undo; the mending of the three before it.
        for (var step = 0; step < 4; step++)
        {
            await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        }

        await Assertions.Expect(bench.Page.Locator(".grid tbody tr")).ToHaveCountAsync(2);
        bench.AssertQuiet();
    }

    [Fact]
    public async Task What_is_pasted_goes_into_the_lines_as_they_are_shown()
    {
        using var folder = Example.Copy("two-house-spring");
        folder.Write(
            "plan.csv",
            "id,crop,plants,set_out\na,kale,100,2027-05-20\nb,tomato,200,2027-06-01\nc,kale,300,20 Apr 2027\nd,tomato,400,2027-06-02\n"
        );
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.AnsweredAsync();
        await bench.PartAsync("Plan");

        // Found by a word: lines a and c, and a third behind the last.
        await bench.Page.GetByLabel("Show lines with").FillAsync("kale");
        await Assertions.Expect(bench.Page.Locator(".grid tbody tr:not(.new)")).ToHaveCountAsync(2);
        await bench.Page.Locator(".grid tbody tr").First.Locator("td").Nth(2).ClickAsync();
        await bench.PasteAsync("110\n310\n510\n");
        await bench.Message.ToHaveTextAsync("3 rows pasted");
        Assert.Equal(["110", "200", "310", "400", "510"], await PlantsAsync(bench));
        await Assertions.Expect(bench.Page.Locator(".grid tbody tr:not(.new)")).ToHaveCountAsync(5);
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await bench.Message.ToHaveTextAsync("Undone: 3 rows pasted");

        // In order of the dates: c, a, b, d, whichever way they are written.
        await bench.AnsweredAsync();
        await bench.Page.GetByLabel("in order of").SelectOptionAsync("set_out");
        await bench.Page.Locator(".grid tbody tr").First.Locator("td").Nth(2).ClickAsync();
        await bench.PasteAsync("301\n101\n201\n");
        await bench.Message.ToHaveTextAsync("3 rows pasted");
        Assert.Equal(["101", "201", "301", "400"], await PlantsAsync(bench));

        // What is marked is filled down in the order that is shown: from c into a.
        await bench.Page.Locator(".grid tbody tr").First.Locator("td").Nth(2).ClickAsync();
        await bench.Page.Keyboard.PressAsync("Shift+ArrowDown");
        await bench.Page.Keyboard.PressAsync("Control+d");
        await bench.Message.ToHaveTextAsync("Filled down");
        Assert.Equal(["301", "201", "301", "400"], await PlantsAsync(bench));
        bench.AssertQuiet();
    }

    // With no day above 12 nothing tells whether 4/5 is in April or in May. The page does not guess: it is a fault of the column, and
    // date_order settles it.
    [Fact]
    public async Task Dates_that_may_be_read_two_ways_are_a_fault_until_the_site_says_which()
    {
        using var folder = Example.Copy("two-house-spring");
        folder.Write("plan.csv", "id,crop,plants,set_out\n");
        await using var bench = await Bench.OpenAsync(folder.Path);
        await bench.PartAsync("Plan");
        await bench.Page.Locator("tr.new td").First.ClickAsync();
        await bench.PasteAsync("a\tkale\t300\t5/4/2027\nb\tkale\t300\tweek of 5/11/2027\n");
        await Assertions.Expect(bench.Page.Locator("td.faulty")).ToHaveTextAsync(["5/4/2027"]);
        await Assertions.Expect(bench.Page.Locator(".faults li")).ToContainTextAsync("which may be 5 April or 4 May");
        await bench.PartAsync("Houses and rules");
        await bench.Page.Locator("summary", new() { HasText = "Site" }).First.ClickAsync();
        await bench.Page.GetByLabel("date order").SelectOptionAsync("mdy");
        await bench.Message.ToContainTextAsync("date_order mdy");
        await bench.AnsweredAsync();
        await bench.PartAsync("Season");
        await Assertions
            .Expect(bench.Page.GetByRole(AriaRole.Slider, new() { Name = "Setting out of b" }))
            .ToHaveAttributeAsync("aria-valuetext", "11 May");
        bench.AssertQuiet();
    }

    private static async Task<string[]> PlantsAsync(Bench bench) =>
        [.. (await bench.DeskAsync()).GetProperty("plan").GetProperty("rows").EnumerateArray().Select(row => row[2].GetString()!)];
}
