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

        // The library's 50-cell tray takes 3.3 litres, its open flat 7.5: 9 x 3.3 + 7.5 = 37.2 litres; a cubic foot is 28.316846592 litres.
        Assert.Equal(37.2, told.GetProperty("mix_litres").GetDouble(), 1e-6);
        Assert.Equal(37.2 / 28.316846592, told.GetProperty("mix_cubic_feet").GetDouble(), 1e-6);
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
        Assert.Equal(9, told.GetProperty("files").GetArrayLength());
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

    [Fact]
    public void The_label_file_has_one_line_a_tray_of_each_batch()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(0, Call.Run("print", PaperFarm.In(folder), "--what", "labels", "--out", folder.In("papers")).Code);
        Assert.Equal(
            ".benchsim-report labels.csv labels.pdf",
            string.Join(' ', Directory.EnumerateFiles(folder.In("papers")).Select(Path.GetFileName).Order(StringComparer.Ordinal))
        );
        var lines = File.ReadAllLines(folder.In("papers/labels.csv"));
        foreach (
            (var batch, var kind, var count) in new[] { ("A", "tray", 4), ("B", "tray", 2), ("P", "flat", 1), ("P", "potted tray", 3) }
        )
        {
            Assert.Equal(
                count,
                lines.Count(line =>
                    line.StartsWith(batch + ",Paper plant,", StringComparison.Ordinal)
                    && line.Contains($",{kind},", StringComparison.Ordinal)
                )
            );
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
        var lines = File.ReadAllLines(folder.In("papers/work-list.csv"));
        const string table = "\"to Hardening table; 3 nights to harden\"";
        Assert.Equal(4, lines.Length);
        Assert.Equal("2027-03-15,2027-03-18,Pot up,P,Paper plant,Ben,3,trays,0.6,\"50-cell tray, from 1 flat\"", lines[1]);
        Assert.Equal("2027-03-15,2027-03-18,Move to the table,A,Paper plant,Ada,4,trays,0.033333," + table, lines[2]);
        Assert.Equal("2027-03-15,2027-03-18,Move to the table,B,Paper plant,Ben,2,trays,0.016667," + table, lines[3]);
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
        Assert.Contains("13 jobs in 5 weeks, 1.3 hours of work, thinning not counted.", print.Sentences, StringComparison.Ordinal);
        Assert.Contains(
            "Needed: 420 seeds, 9 trays, 1 flat, 37.2 litres of mix (1.3 cubic feet).",
            print.Sentences,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "10 labels, one a tray or flat, on 1 sheet (A4, 3 x 7 labels of 63.5 x 38.1 mm).",
            print.Sentences,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "The dates are those of the plan: normal weather, and a place for every tray.",
            print.Sentences,
            StringComparison.Ordinal
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
