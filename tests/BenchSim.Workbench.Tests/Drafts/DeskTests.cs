using BenchSim.Answers.Asking;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Tests.Drafts;

/// <summary>Tries over the texts of a folder: what is changed, kept, undone and put into the files.</summary>
public sealed class DeskTests
{
    [Fact]
    public void A_change_of_a_cell_changes_that_cell_and_no_other_byte()
    {
        using var folder = new FarmFolder(
            plan: "id,crop,plants,sow,note\r\n\"a\",tomato,100,2027-03-01,\"x, \"\"y\"\"\"\r\n\r\nb,kale,200,2027-03-08,"
        );
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(1, "plants", "250", was: "200"));
        Assert.Null(desk.PutIntoFiles(1));
        Assert.Equal(
            "id,crop,plants,sow,note\r\n\"a\",tomato,100,2027-03-01,\"x, \"\"y\"\"\"\r\n\r\nb,kale,250,2027-03-08,",
            File.ReadAllText(folder.In("plan.csv"))
        );
        Assert.Equal(FarmFolder.GoodSite, File.ReadAllText(folder.In("site.toml")));
        Assert.Empty(desk.State.Tries);
    }

    [Fact]
    public void A_change_of_a_key_keeps_the_remarks_beside_it()
    {
        var site = FarmFolder.Site("places = 60", "places = 60   # two rows of 30");
        using var folder = new FarmFolder(site);
        using var desk = new Desk(folder.Path);
        Made(desk, Key("space", 1, "places", "72", was: "60"));
        Assert.Equal(site.Replace("places = 60 ", "places = 72 ", StringComparison.Ordinal), desk.State.Now["site.toml"]);
    }

    [Fact]
    public void Places_that_are_written_take_the_sides_away()
    {
        var site = FarmFolder.Site("places = 60", "length = \"20 m\"\nwidth = \"1.5 m\"   # measured");
        using var folder = new FarmFolder(site);
        using var desk = new Desk(folder.Path);
        Made(desk, Key("space", 1, "places", "72"));
        var now = desk.State.Now["site.toml"];
        Assert.Contains("places = 72", now, StringComparison.Ordinal);
        Assert.DoesNotContain("length", now, StringComparison.Ordinal);
        Assert.DoesNotContain("width", now, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("house", "night", "62 F", "night = \"62 F\"")]
    [InlineData("house", "night", "", "")]
    [InlineData("rules", "slack_days", "4", "slack_days = 4")]
    [InlineData("rules", "work_days", "Mon, Tue", "work_days = [\"Mon\", \"Tue\"]")]
    [InlineData("rules", "days_off", "2027-03-27, 2027-05-31", "days_off = [2027-03-27, 2027-05-31]")]
    [InlineData("season", "closes", "2027-06-15", "closes = 2027-06-15")]
    [InlineData("site", "name", "A \"good\" \\ farm", "name = \"A \\\"good\\\" \\\\ farm\"")]
    [InlineData("site", "name", "2027", "name = \"2027\"")]
    [InlineData("site", "name", "[Hill] and [Dale]", "name = \"[Hill] and [Dale]\"")]
    [InlineData("house", "night", "[1]", "night = \"[1]\"")]
    [InlineData("rules", "work_days", "[\"Mon\", \"Tue\"]", "work_days = [\"Mon\", \"Tue\"]")]
    [InlineData("rules", "work_days", "[Mon, Tue]", "work_days = [\"Mon\", \"Tue\"]")]
    [InlineData("rules", "work_days", "[\"Mon\"]\nlate_days = [9]", "work_days = [\"\\\"Mon\\\"] late_days = [9\"]")]
    [InlineData("space", "changes", "[{ from = 2027-05-01, places = 4 }]", "changes = [{ from = 2027-05-01, places = 4 }]")]
    public void What_is_typed_is_written_as_the_key_wants_it(string section, string key, string typed, string written)
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        Made(desk, Key(section, 0, key, typed));
        if (written.Length > 0)
        {
            Assert.Contains(written, desk.State.Now["site.toml"], StringComparison.Ordinal);
        }
        else
        {
            Assert.DoesNotContain(key + " =", desk.State.Now["site.toml"], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Steps_are_undone_and_made_again_in_their_order()
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        string[] plants = ["110", "120", "130"];
        foreach (var value in plants)
        {
            Made(desk, Cell(0, "plants", value));
        }

        Assert.Equal(["130", "120", "110", "100", "100"], Seen(again: false));
        Assert.Equal(["100", "110", "120", "130", "130"], Seen(again: true));

        string[] Seen(bool again) =>
            [
                .. Enumerable
                    .Range(0, 5)
                    .Select(_ =>
                    {
                        var seen = desk.State.Now["plan.csv"].Split(',')[5];
                        Assert.Null(desk.Undo(again));
                        return seen;
                    }),
            ];
    }

    [Fact]
    public void A_cell_that_is_not_as_it_was_seen_is_not_written_over()
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "150", was: "100"));
        var fault = desk.Edit("second", [Cell(0, "plants", "175", was: "100")]);
        Assert.True(fault?.IsConflict);
        Assert.Equal("Meanwhile \"150\" stands there, not \"100\".", fault?.Why);
        Assert.Contains(",150,", desk.State.Now["plan.csv"], StringComparison.Ordinal);
    }

    [Fact]
    public void Of_changes_made_together_all_are_made_or_none()
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        Assert.NotNull(desk.Edit("two", [Cell(0, "plants", "150"), Cell(7, "plants", "175")]));
        Assert.Equal(FarmFolder.GoodPlan, desk.State.Now["plan.csv"]);
        Assert.Empty(desk.State.Tries);
    }

    [Fact]
    public void A_desk_that_is_opened_again_has_the_tries_that_were_left_on_it()
    {
        using var folder = new FarmFolder();
        DeskState left;
        using (var desk = new Desk(folder.Path))
        {
            Made(desk, Cell(0, "plants", "110"));
            Made(desk, Cell(0, "plants", "120"));
            Assert.Null(desk.Undo(again: false));
            Assert.Null(desk.BeginTry());
            Assert.Null(desk.Name(2, "More tomatoes"));
            Made(desk, Cell(0, "plants", "400"));
            Assert.Null(desk.Look(1));
            left = desk.State;
        }

        using var again = new Desk(folder.Path);
        Assert.Equal(left.Current, again.State.Current);
        Assert.Equal(left.Tries.Select(Shape), again.State.Tries.Select(Shape), StringComparer.Ordinal);
        Assert.Equal(FarmFolder.GoodPlan, File.ReadAllText(folder.In("plan.csv")));

        static string Shape(Draft draft) => $"{draft.Id} {draft.Name} {draft.Done.Count} {draft.Undone.Count} {draft.Now["plan.csv"]}";
    }

    [Fact]
    public void A_line_of_the_journal_that_was_cut_off_is_passed_over()
    {
        using var folder = new FarmFolder();
        using (var desk = new Desk(folder.Path))
        {
            Made(desk, Cell(0, "plants", "110"));
            Made(desk, Cell(0, "plants", "120"));
        }

        var path = folder.In(".benchsim/drafts.jsonl");
        var whole = File.ReadAllBytes(path);
        var last = whole.AsSpan(0, whole.Length - 1).LastIndexOf((byte)'\n') + 1;
        for (var length = last; length < whole.Length; length += 7)
        {
            File.WriteAllBytes(path, whole[..length]);
            using var desk = new Desk(folder.Path);
            Assert.Contains(",110,", desk.State.Now["plan.csv"], StringComparison.Ordinal);
            Made(desk, Cell(0, "plants", "130"));
            Assert.Contains(",130,", desk.State.Now["plan.csv"], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_folder_that_is_open_is_not_opened_a_second_time()
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        var refused = Assert.Throws<RefusedException>(() => new Desk(folder.Path));
        Assert.Contains("open in another workbench", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_without_a_site_is_not_opened_and_the_questions_are_offered()
    {
        using var folder = new FarmFolder(site: null);
        var refused = Assert.Throws<RefusedException>(() => new Desk(folder.Path));
        Assert.StartsWith("There is no site.toml in", refused.Message, StringComparison.Ordinal);
        Assert.Contains("ten questions", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_former_text_is_kept_when_a_try_is_put_into_the_files()
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "110"));
        Assert.Null(desk.PutIntoFiles(1));
        Made(desk, Cell(0, "plants", "120"));
        Assert.Null(desk.PutIntoFiles(2));
        Assert.Equal(FarmFolder.GoodPlan, File.ReadAllText(folder.In(".benchsim/former/0001/plan.csv")));
        Assert.Contains(",110,", File.ReadAllText(folder.In(".benchsim/former/0002/plan.csv")), StringComparison.Ordinal);
        Assert.False(File.Exists(folder.In(".benchsim/former/0001/site.toml")));
    }

    [Fact]
    public void A_change_outside_in_other_lines_is_taken_into_the_try()
    {
        using var folder = new FarmFolder(
            plan: "id,crop,plants,sow\na,tomato,100,2027-03-01\nb,kale,200,2027-03-08\nc,leek,300,2027-03-08\n"
        );
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "110"));
        folder.Write(
            "plan.csv",
            "id,crop,plants,sow\na,tomato,100,2027-03-01\nb,kale,200,2027-03-08\nc,leek,333,2027-03-08\nd,leek,5,2027-03-08\n"
        );
        desk.LookOutside();
        Assert.Equal(
            "id,crop,plants,sow\na,tomato,110,2027-03-01\nb,kale,200,2027-03-08\nc,leek,333,2027-03-08\nd,leek,5,2027-03-08\n",
            desk.State.Now["plan.csv"]
        );
        Assert.Empty(desk.State.Looked!.Conflicts);
    }

    [Theory]
    [InlineData(true, ",110,")]
    [InlineData(false, ",140,")]
    public void A_change_outside_in_the_same_line_waits_for_a_choice(bool mine, string stands)
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "110"));
        folder.Write("plan.csv", FarmFolder.GoodPlan.Replace("100", "140", StringComparison.Ordinal));
        desk.LookOutside();
        Assert.Equal("plan.csv", Assert.Single(desk.State.Looked!.Conflicts));
        Assert.True(desk.PutIntoFiles(1)?.IsConflict);
        Assert.Contains(",140,", File.ReadAllText(folder.In("plan.csv")), StringComparison.Ordinal);

        Assert.Null(desk.Settle(1, "plan.csv", mine));
        Assert.Empty(desk.State.Looked!.Conflicts);
        Assert.Contains(stands, desk.State.Now["plan.csv"], StringComparison.Ordinal);
    }

    [Fact]
    public void Links_are_not_followed()
    {
        using var outside = new TemporaryFolder();
        using var folder = new FarmFolder();
        var secret = outside.Write("secret.csv", "id,like\nx,tomato\n");
        File.CreateSymbolicLink(folder.In("crops.csv"), secret);
        using var desk = new Desk(folder.Path);
        Assert.False(desk.State.Files.ContainsKey("crops.csv"));
        Assert.DoesNotContain(desk.Folder.Files(desk.State.Now), file => file.Name is "crops.csv");
    }

    [Theory]
    [InlineData("plan.csv")]
    [InlineData("crops.csv")]
    [InlineData("trays.csv")]
    [InlineData("supplies.csv")]
    public void Every_table_of_a_folder_is_read_as_a_text_or_as_a_workbook(string table)
    {
        using var folder = new FarmFolder(plan: null);
        folder.Write(table, "id\nx\n");
        using (var desk = new Desk(folder.Path))
        {
            Assert.True(desk.State.Files.ContainsKey(table));
        }

        var workbook = Path.ChangeExtension(table, ".xlsx");
        File.Move(folder.In(table), folder.In(workbook));
        using var again = new Desk(folder.Path);
        Assert.Contains(again.Folder.Files(again.State.Now), file => file.Name == workbook);
    }

    [Fact]
    public void A_weather_record_that_is_changed_outside_is_noticed()
    {
        using var folder = new FarmFolder(
            FarmFolder.Site("kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"", "kind = \"record\"\nfile = \"weather.csv\"")
        );
        folder.Write("weather.csv", "date\n");
        using var desk = new Desk(folder.Path);
        desk.Folder.Files(desk.State.Now);
        desk.LookOutside();
        var before = desk.State;
        folder.Write("weather.csv", "date,low\n");
        desk.LookOutside();
        Assert.NotEqual(before.Beside, desk.State.Beside);
        Assert.NotEqual(before.Revision, desk.State.Revision);

        // Nothing more is told of it.
        var after = desk.State;
        desk.Folder.Files(after.Now);
        desk.LookOutside();
        Assert.Same(after, desk.State);
    }

    [Theory]
    [InlineData("../secret.csv")]
    [InlineData("/etc/passwd")]
    [InlineData("a/../../b.csv")]
    public void A_weather_record_outside_the_folder_is_not_read(string name)
    {
        using var folder = new FarmFolder(
            FarmFolder.Site("kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"", $"kind = \"record\"\nfile = \"{name}\"")
        );
        using var desk = new Desk(folder.Path);
        Assert.DoesNotContain(desk.Folder.Files(desk.State.Now), file => file.Name is not ("site.toml" or "plan.csv"));
    }

    [Fact]
    public void A_folder_that_is_gone_is_told_and_the_change_is_not_acknowledged()
    {
        using var folder = new FarmFolder();
        using var inner = new TemporaryFolder();
        var path = inner.In("farm");
        Directory.Move(folder.Path, path);
        Directory.CreateDirectory(folder.Path);
        using var desk = new Desk(path);
        Made(desk, Cell(0, "plants", "110"));
        Directory.Delete(path, recursive: true);
        var fault = desk.Edit("late", [Cell(0, "plants", "120")]);
        Assert.Contains("the folder is gone", fault?.Why, StringComparison.Ordinal);
        Assert.Contains(",110,", desk.State.Now["plan.csv"], StringComparison.Ordinal);
    }

    [Fact]
    public void Many_changes_leave_a_short_journal_and_the_last_of_them()
    {
        using var folder = new FarmFolder();
        using (var desk = new Desk(folder.Path))
        {
            for (var at = 0; at < 50; at++)
            {
                Made(desk, Cell(0, "note", new string('x', 30_000) + at));
                Assert.Null(desk.Undo(again: false));
            }

            Made(desk, Cell(0, "plants", "110"));
            Assert.InRange(new FileInfo(folder.In(".benchsim/drafts.jsonl")).Length, 1, 2_100_000);
        }

        using var again = new Desk(folder.Path);
        Assert.Equal("id,crop,plants,sow\na,tomato,110,2027-03-01\n", again.State.Now["plan.csv"]);
    }

    internal static void Made(Desk desk, params Change[] changes) => Assert.Null(desk.Edit("a change", changes));

    internal static Change Cell(int row, string column, string value, string? was = null) =>
        new(ChangeKind.Cell)
        {
            Row = row,
            Column = column,
            Value = value,
            Was = was,
        };

    internal static Change Key(string section, int entry, string key, string value, string? was = null) =>
        new(ChangeKind.Key)
        {
            Section = section,
            Entry = entry,
            Key = key,
            Value = value,
            Was = was,
        };
}
