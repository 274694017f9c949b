using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>
/// "print" writes the papers of the season. The numbers are those of scenarios/by-hand, worked out with the pencil in its README: A 4
/// trays, B 2, P 3 trays from
/// one flat.
/// </summary>
public sealed class PrintTests
{
    [Fact]
    public void Moves_back_that_are_not_listed_are_said_to_be_missing()
    {
        const string Missing = "Moves from one bench to another as room appears (move_back) are not listed";
        using var folder = new TemporaryFolder();
        var farm = folder.Starter();
        Assert.Equal(0, Call.Run("print", farm).Code);
        Assert.DoesNotContain(Missing, File.ReadAllText(folder.In("spring-papers/work-list.html")), StringComparison.Ordinal);
        var site = Path.Combine(farm, "site.toml");
        File.WriteAllText(site, File.ReadAllText(site).Replace("[rules]", "[rules]\nmove_back = true", StringComparison.Ordinal));
        Assert.Equal(0, Call.Run("print", farm).Code);
        Assert.Contains(Missing, File.ReadAllText(folder.In("spring-papers/work-list.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void The_paper_farm_needs_what_the_pencil_says()
    {
        using var folder = new TemporaryFolder();
        var print = Call.Run("print", PaperFarm.In(folder), "--json");
        Assert.Equal(0, print.Code);
        using var json = JsonDocument.Parse(print.Output);
        var told = json.RootElement;
        string Told(string name) => told.GetProperty(name).GetRawText();

        // Sown A 4 and B 2 on 1 March, P's flat on 8 March; off the mats three times; P potted up; to the table and set out three times
        // each: 13 jobs, in
        // the weeks from 1, 8, 15, 22 and 29 March.
        Assert.Equal(("13", "5"), (Told("jobs"), Told("weeks")));

        // 7 trays and flats sown at 4 minutes, 3 potted up at 12, 7 + 9 moves at half a minute, 9 set out at half a minute: 28 + 36 + 8 +
        // 4.5 = 76.5 minutes.
        Assert.Equal(76.5 / 60, told.GetProperty("hours").GetDouble(), 1e-6);

        // A 4 x 50 and B 2 x 50 seeds, P 120 in its flat.
        Assert.Equal(("420", "9", "1"), (Told("seeds"), Told("trays"), Told("flats")));

        // The library's 50-cell tray takes 5.55 litres, its open flat 7.5: 9 x 5.55 + 7.5 = 57.45 litres, loose 57.45 / 0.85; a cubic foot
        // is 28.316846592 litres, and a bale gives 6.5 of them.
        Assert.Equal(57.45 / 0.85, told.GetProperty("mix_litres").GetDouble(), 1e-6);
        Assert.Equal(("1", "\"bale\""), (Told("mix_units"), Told("mix_sold_in")));
        Assert.Equal(57.45 / 0.85 / 28.316846592, told.GetProperty("mix_cubic_feet").GetDouble(), 1e-6);
        Assert.Equal(JsonValueKind.Null, told.GetProperty("cost").ValueKind);

        // A label for each of nine trays and the flat, on one sheet of 21.
        Assert.Equal(
            ("\"a4-21\"", "10", "1"),
            (
                told.GetProperty("labels").GetProperty("sheet").GetRawText(),
                told.GetProperty("labels").GetProperty("labels").GetRawText(),
                told.GetProperty("labels").GetProperty("sheets").GetRawText()
            )
        );
        Assert.Equal(10, told.GetProperty("files").GetArrayLength());
        foreach (var file in told.GetProperty("files").EnumerateArray())
        {
            Assert.True(File.Exists(Path.Combine(told.GetProperty("folder").GetString()!, file.GetString()!)), file.GetString());
        }
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Work_after_the_last_date_that_is_wanted_is_printed_too()
    {
        // P is wanted on 15 March, before it can be potted up: its later jobs come after the last set-out of the plan, A's and B's.
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder);
        var plan = Path.Combine(farm, "plan.csv");
        string[] lines =
        [
            .. File.ReadAllLines(plan)
                .Select(
                    (line, index) =>
                        line
                        + (
                            index == 0 ? ",set_out"
                            : line.StartsWith('P') ? ",2027-03-15"
                            : ","
                        )
                ),
        ];
        File.WriteAllLines(plan, lines);
        using var json = JsonDocument.Parse(Call.Run("print", farm, "--json").Output);
        Assert.Equal("13", json.RootElement.GetProperty("jobs").GetRawText());
        Assert.Equal("10", json.RootElement.GetProperty("labels").GetProperty("labels").GetRawText());
    }

    // A is Ada's: 4 trays, 200 seeds; sown at 4 minutes, moved twice and set out at half a minute each: 16 + 4 + 2 = 22 minutes, in 4 jobs.
    // B and P are Ben's: the rest of the 13 jobs, 76.5 minutes, 420 seeds, 9 trays and the flat.
    [Theory]
    [InlineData("Ada", 4, 22, 200, 4, 0, 4)]
    [InlineData("Ben", 9, 54.5, 220, 5, 1, 6)]
    public void The_papers_of_one_grower_hold_that_growers_share(
        string grower,
        int jobs,
        double minutes,
        int seeds,
        int trays,
        int flats,
        int labels
    )
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder);
        File.WriteAllText(Path.Combine(farm, "supplies.csv"), "item,pack\npaper,100\n");
        var print = Call.Run("print", farm, "--grower", grower, "--json");
        Assert.Equal((0, ""), (print.Code, print.Error));
        using var json = JsonDocument.Parse(print.Output);
        var told = json.RootElement;
        int Told(string name) => told.GetProperty(name).GetInt32();
        Assert.Equal((grower, jobs, seeds), (told.GetProperty("grower").GetString(), Told("jobs"), Told("seeds")));
        Assert.Equal((trays, flats, labels), (Told("trays"), Told("flats"), told.GetProperty("labels").GetProperty("labels").GetInt32()));
        Assert.Equal(minutes / 60, told.GetProperty("hours").GetDouble(), 1e-6);
        Assert.Equal(((trays * 5.55) + (flats * 7.5)) / 0.85, told.GetProperty("mix_litres").GetDouble(), 1e-6);

        // A folder of their own, all lines theirs; packs are bought for all growers together.
        var papers = folder.In($"paper-papers-{grower.ToLowerInvariant()}");
        Assert.All(CsvRows.In(Path.Combine(papers, "work-list.csv"))[1..], row => Assert.Equal(grower, row[6]));
        Assert.All(CsvRows.In(Path.Combine(papers, "labels.csv"))[1..], row => Assert.Equal(grower, row[3]));
        Assert.False(File.Exists(Path.Combine(papers, "to-buy.csv")));
        var other = grower == "Ada" ? "Ben" : "Ada";
        Assert.Contains($", {grower}</title>", File.ReadAllText(Path.Combine(papers, "work-list.html")), StringComparison.Ordinal);
        Assert.Contains(
            "Buy from the order of all growers.",
            File.ReadAllText(Path.Combine(papers, "order.html")),
            StringComparison.Ordinal
        );
        Assert.Contains($" {grower}:", File.ReadAllText(Path.Combine(papers, "calendar.ics")), StringComparison.Ordinal);
        Assert.DoesNotContain($" {other}:", File.ReadAllText(Path.Combine(papers, "calendar.ics")), StringComparison.Ordinal);
    }

    [Fact]
    public void Growers_whose_papers_would_have_one_folder_are_told_to_name_it()
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder);
        var plan = Path.Combine(farm, "plan.csv");
        File.WriteAllText(plan, File.ReadAllText(plan).Replace("Ben", "ada!", StringComparison.Ordinal));
        var before = folder.Everything();
        var print = Call.Run("print", farm, "--grower", "Ada");
        Assert.Equal(2, print.Code);
        Assert.Contains("Name one with --out", string.Join(' ', print.Error.Split([' ', '\n'])), StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
        Assert.Equal(0, Call.Run("print", farm, "--grower", "Ada", "--out", folder.In("hers")).Code);
        Assert.Contains(
            "has nothing to do for \"Ada\" from 2029-12-31",
            string.Join(
                ' ',
                Call.Run("print", farm, "--grower", "Ada", "--week", "2030-01-01", "--out", folder.In("none")).Error.Split([' ', '\n'])
            ),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_label_file_has_one_line_a_tray_of_each_batch()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(0, Call.Run("print", PaperFarm.In(folder), "--what", "labels", "--out", folder.In("papers")).Code);
        Assert.Equal(
            ".benchsim-files .benchsim-report columns.csv labels.csv labels.pdf",
            string.Join(' ', Directory.EnumerateFiles(folder.In("papers")).Select(Path.GetFileName).Order(StringComparer.Ordinal))
        );
        var rows = CsvRows.In(folder.In("papers/labels.csv"));
        foreach (
            (var batch, var kind, var count) in new[] { ("A", "tray", 4), ("B", "tray", 2), ("P", "flat", 1), ("P", "potted tray", 3) }
        )
        {
            Assert.Equal(count, rows.Count(row => row[0] == batch && row[1] == "Paper plant" && row[4] == kind));
        }
    }

    [Fact]
    public void A_week_holds_the_jobs_from_its_monday_to_its_sunday()
    {
        using var folder = new TemporaryFolder();
        var print = Call.Run(
            "print",
            PaperFarm.In(folder),
            "--week",
            "2027-03-18",
            "--what",
            "list",
            "--json",
            "--out",
            folder.In("papers")
        );
        Assert.Equal(0, print.Code);

        // Thursday 18 March: P is potted up, A and B go to the table.
        const string table = "to Hardening table; 3 nights to harden";
        string[][] jobs =
        [
            ["Pot up", "P", "Paper plant", "", "Ben", "3", "trays", "0.6", "50-cell tray, from 1 flat"],
            ["Move to the table", "A", "Paper plant", "", "Ada", "4", "trays", "0.033333", table],
            ["Move to the table", "B", "Paper plant", "", "Ben", "2", "trays", "0.016667", table],
        ];
        Assert.Equal(
            jobs.Select(job => (string[])["2027-03-15", "2027-03-18", .. job]),
            CsvRows.In(folder.In("papers/work-list.csv"))[1..]
        );
        using var json = JsonDocument.Parse(print.Output);
        Assert.Equal(
            ("2027-03-15", "2027-03-21"),
            (json.RootElement.GetProperty("from").GetString(), json.RootElement.GetProperty("to").GetString())
        );
    }

    [Fact]
    public void People_are_told_the_files_and_what_the_dates_are()
    {
        using var folder = new TemporaryFolder();
        var print = Call.Run("print", PaperFarm.In(folder));
        Assert.Equal(0, print.Code);
        Assert.Empty(print.Error);
        Assert.Contains("paper-papers" + Path.DirectorySeparatorChar + "labels.pdf\n", print.Output, StringComparison.Ordinal);
        print.Says(
            "13 jobs in 5 weeks, 1.3 hours of work; watering, covering against cold nights, thinning and washing trays are not counted.",
            "Needed: 420 seeds, 9 trays, 1 flat, 67.6 litres of loose mix (2.4 cubic feet, 1 bale).",
            "10 labels, one a tray or flat, on 1 sheet (A4, 3 x 7 labels of 63.5 x 38.1 mm).",
            "The dates are those of the plan: normal weather, and a place for every tray."
        );
    }

    [Theory]
    [InlineData(
        "--from=15.3.2027",
        "--from \"15.3.2027\" cannot be used; write a date from 1900 to 2199 as year-month-day, such as 2027-03-15."
    )]
    [InlineData(
        "--what=list,stickers",
        "--what \"stickers\" cannot be used; write one or more of list, labels, order, calendar, workbook, with commas between them."
    )]
    [InlineData("--labels=a5", "--labels \"a5\" cannot be used; write one of a4-21,")]
    [InlineData("--used=21", "--used 21 cannot be used; a sheet a4-21 has 21 labels, so write a number below that.")]
    [InlineData("--grower=ada", "The plan has no grower \"ada\"; did you mean \"Ada\"?")]
    [InlineData("--grower=Nobody", "The plan has no grower \"Nobody\"; its growers are \"Ada\" and \"Ben\".")]
    [InlineData("--used=-1", "--used \"-1\" cannot be used")]
    [InlineData("--week=2030-01-01", "the plan has nothing to do from 2029-12-31 to 2030-01-06. Choose other dates.")]
    [InlineData("--from=2099-01-01", "the plan has nothing to do from 2099-01-01 on. Choose other dates.")]
    [InlineData("--to=2000-01-01", "the plan has nothing to do up to 2000-01-01. Choose other dates.")]
    public void A_fault_says_what_would_be_right_and_nothing_is_written(string option, string fault)
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder);
        var before = folder.Everything();
        var print = Call.Run("print", farm, option);
        Assert.Equal(2, print.Code);
        Assert.Contains(
            fault,
            string.Join(' ', print.Error.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)),
            StringComparison.Ordinal
        );
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void Dates_that_contradict_each_other_are_refused()
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder);
        Assert.Contains(
            "--week does not go with --from and --to",
            Call.Run("print", farm, "--week", "2027-03-01", "--to", "2027-03-05").Error,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "--to 2027-03-01 is before --from 2027-03-05",
            Call.Run("print", farm, "--from", "2027-03-05", "--to", "2027-03-01").Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Faults_of_the_folder_come_before_anything_is_written()
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder, sections: "[nonsense]\n");
        var before = folder.Everything();
        var print = Call.Run("print", farm);
        Assert.Equal(2, print.Code);
        Assert.Contains("site.toml:", print.Error, StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void A_stopped_printing_leaves_nothing_behind()
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder);
        var before = folder.Everything();
        Assert.Equal(130, Call.Run(new CancellationToken(canceled: true), "print", farm).Code);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void A_folder_that_is_not_ours_is_left_alone()
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder);
        Directory.CreateDirectory(folder.In("mine"));
        File.WriteAllText(folder.In("mine/letter.txt"), "dear");
        var print = Call.Run("print", farm, "--out", folder.In("mine"));
        Assert.Equal(2, print.Code);
        Assert.Equal("dear", File.ReadAllText(folder.In("mine/letter.txt")));
        Assert.Single(Directory.EnumerateFileSystemEntries(folder.In("mine")));
    }
}
