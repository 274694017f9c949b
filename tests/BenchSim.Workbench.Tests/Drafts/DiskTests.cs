using BenchSim.Workbench.Drafts;
using static BenchSim.Workbench.Tests.Drafts.DeskTests;

namespace BenchSim.Workbench.Tests.Drafts;

/// <summary>A disk that refuses, files that go away or change at the wrong moment, and a journal that grows long.</summary>
public sealed class DiskTests
{
    // The texts of the files stand in the entry that begins a try.
    private static string LargePlan => $"id,crop,plants,sow,note\na,tomato,100,2027-03-01,{new string('x', 2_500_000)}\n";

    [Fact]
    public void A_journal_that_is_long_of_itself_is_not_written_anew_at_every_change()
    {
        using var folder = new FarmFolder(plan: LargePlan);
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "110"));
        for (var at = 0; at < 5; at++)
        {
            Assert.Null(desk.Name(1, $"Name {at}"));
        }

        // One that was written anew has one name and no renaming.
        Assert.Equal(5, Lines(folder).Count(line => line.Contains("\"do\":\"Name\"", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_was_undone_can_be_made_again_after_the_journal_was_written_anew()
    {
        using var folder = new FarmFolder(plan: LargePlan);
        using (var desk = new Desk(folder.Path))
        {
            foreach (var plants in new[] { "110", "120", "130", "140" })
            {
                Made(desk, Cell(0, "plants", plants));
            }

            Assert.Null(desk.Undo(again: false));
            Assert.Null(desk.Undo(again: false));
        }

        // It is written anew as it is opened, since it is long.
        new Desk(folder.Path).Dispose();
        using var again = new Desk(folder.Path);
        Assert.Equal(
            ["120", "130", "140", "140"],
            Enumerable.Range(0, 4).Select(at => Plants(again, isRedo: at > 0)),
            StringComparer.Ordinal
        );
        Assert.Equal(["140", "130", "120", "110", "100"], Enumerable.Range(0, 5).Select(_ => UndonePlants(again)), StringComparer.Ordinal);

        static string Plants(Desk desk, bool isRedo)
        {
            Assert.Null(isRedo ? desk.Undo(again: true) : null);
            return PlantsOf(desk);
        }

        static string UndonePlants(Desk desk)
        {
            var seen = PlantsOf(desk);
            Assert.Null(desk.Undo(again: false));
            return seen;
        }
    }

    [Fact]
    public void An_editor_that_saves_at_the_very_moment_is_not_written_over()
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "110"));

        // The other file that has changed is told while the try is put in: then the editor saves the plan.
        folder.Write("crops.csv", "id,like\nmine,tomato\n");
        var theirs = FarmFolder.GoodPlan.Replace("100", "140", StringComparison.Ordinal);
        desk.Changed += (_, _) => folder.Write("plan.csv", theirs);
        Assert.True(desk.PutIntoFiles(1)?.IsConflict);
        Assert.Equal(theirs, File.ReadAllText(folder.In("plan.csv")));
        Assert.Equal("110", PlantsOf(desk));
    }

    [Fact]
    public void A_conflict_ends_when_the_file_is_as_it_was_again()
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "110"));
        folder.Write("plan.csv", "");
        desk.LookOutside();
        Assert.Equal("plan.csv", Assert.Single(desk.State.Looked!.Conflicts));
        folder.Write("plan.csv", FarmFolder.GoodPlan);
        desk.LookOutside();
        Assert.Empty(desk.State.Looked!.Conflicts);
        Assert.Equal("110", PlantsOf(desk));
    }

    [Fact]
    public void A_disk_that_refuses_to_take_in_a_change_is_told_once_and_the_rest_goes_on()
    {
        const string Plan = FarmFolder.GoodPlan + "b,leek,300,2027-03-08\n";
        using var folder = new FarmFolder(plan: Plan);
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "110"));
        LetNothingBeWritten(folder);
        var told = 0;
        desk.Changed += (_, _) => told++;
        folder.Write("plan.csv", Plan + "c,kale,200,2027-03-08\n");
        for (var second = 0; second < 5; second++)
        {
            desk.LookOutside();
        }

        Assert.Equal(1, told);
        Assert.StartsWith("plan.csv was changed outside, and a try could not take that in.", desk.Trouble, StringComparison.Ordinal);
        Assert.Contains("kale", desk.State.Files["plan.csv"], StringComparison.Ordinal);
        Assert.NotNull(desk.Edit("refused", [Cell(0, "plants", "1")]));
        Assert.Equal("110", PlantsOf(desk));

        // There is room again.
        File.Delete(folder.In(".benchsim"));
        desk.LookOutside();
        Assert.Null(desk.Trouble);
        Assert.Contains("kale", desk.State.Now["plan.csv"], StringComparison.Ordinal);
    }

    [Fact]
    public void Drafts_that_are_taken_away_or_replaced_are_written_anew_with_the_next_change()
    {
        using var folder = new FarmFolder();
        using (var desk = new Desk(folder.Path))
        {
            Made(desk, Cell(0, "plants", "110"));
            Directory.Delete(folder.In(".benchsim"), recursive: true);
            Made(desk, Cell(0, "plants", "120"));
            File.WriteAllText(folder.In(".benchsim/drafts.jsonl"), "replaced\n");
            Made(desk, Cell(0, "plants", "130"));
        }

        using var again = new Desk(folder.Path);
        Assert.Equal("130", PlantsOf(again));
        Assert.Null(again.Undo(again: false));
        Assert.Null(again.Undo(again: false));
        Assert.Equal("110", PlantsOf(again));
    }

    [Fact]
    public void A_folder_that_cannot_be_written_shows_its_tries_and_says_why_nothing_changes()
    {
        using var folder = new FarmFolder();
        using (var desk = new Desk(folder.Path))
        {
            Made(desk, Cell(0, "plants", "110"));
        }

        // A superuser may write anywhere: what stands in the place of the lock is no file.
        File.Delete(folder.In(".benchsim/lock"));
        Directory.CreateDirectory(folder.In(".benchsim/lock"));
        using var again = new Desk(folder.Path);
        Assert.StartsWith("This folder cannot be written to", again.ReadOnly, StringComparison.Ordinal);
        Assert.Equal("110", PlantsOf(again));
        Assert.Null(again.Look(0));
        Assert.Equal("100", PlantsOf(again));
        Assert.Equal(again.ReadOnly, again.Edit("refused", [Cell(0, "plants", "1")])?.Why);
        Assert.Equal(again.ReadOnly, again.PutIntoFiles(1)?.Why);
        Assert.Equal(FarmFolder.GoodPlan, File.ReadAllText(folder.In("plan.csv")));
    }

    // As a full disk does: neither the journal nor another in its place.
    private static void LetNothingBeWritten(FarmFolder folder)
    {
        Directory.Delete(folder.In(".benchsim"), recursive: true);
        folder.Write(".benchsim", "in the way");
    }

    private static string[] Lines(FarmFolder folder)
    {
        using var file = new FileStream(folder.In(".benchsim/drafts.jsonl"), FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        return new StreamReader(file).ReadToEnd().Split('\n');
    }

    private static string PlantsOf(Desk desk) => BenchSim.Folder.Editing.CsvEdit.Cell(desk.State.Now["plan.csv"], 0, "plants")!;
}
