using BenchSim.Report.Papers;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Tests.Papers;

public sealed class PapersFolderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly SeasonPlan _plan = SyntheticPlan.Tiny();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void All_papers_are_written_and_told()
    {
        var summary = Write("papers");
        string[] names =
        [
            .. TemporaryFolder.Files(_folder.In("papers")).Keys.Where(name => !name.StartsWith(".benchsim", StringComparison.Ordinal)),
        ];
        Assert.Equal(
            "calendar.ics cold-nights.csv columns.csv labels.csv labels.pdf order.csv order.html work-list.csv work-list.html "
                + "workbook.xlsx",
            string.Join(' ', names.Order(StringComparer.Ordinal))
        );
        Assert.Equal(names.Order(StringComparer.Ordinal), summary.Files.Order(StringComparer.Ordinal));
        Assert.Equal(_plan.Batches.Sum(batch => batch.Trays + batch.Flats), summary.Labels);
        Assert.Equal("letter-30", summary.Sheet.Name);
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes_in_every_file()
    {
        Write("one");
        Write("two");
        var one = TemporaryFolder.Files(_folder.In("one"));
        var two = TemporaryFolder.Files(_folder.In("two"));
        Assert.Equal(one.Keys, two.Keys);
        Assert.All(one.Keys, name => Assert.Equal(one[name], two[name]));
    }

    [Fact]
    public void Only_the_papers_asked_for_are_written_and_earlier_ones_are_replaced_as_a_whole()
    {
        Write("papers");
        Write("papers", new PaperSettings { Kinds = PaperKinds.Calendar });
        Assert.Equal(".benchsim-files .benchsim-report calendar.ics", string.Join(' ', TemporaryFolder.Files(_folder.In("papers")).Keys));
        Write("papers");
        Assert.Equal(12, TemporaryFolder.Files(_folder.In("papers")).Count);
    }

    [Fact]
    public void A_report_of_a_run_and_folders_of_others_are_left_alone()
    {
        ReportFolder.Write(_folder.In("report"), SyntheticStudy.Tiny(), [], null, null, CancellationToken.None);
        Directory.CreateDirectory(_folder.In("mine"));
        File.WriteAllText(_folder.In("mine/letter.txt"), "dear");
        Write("papers");
        File.WriteAllText(_folder.In("papers/notes.txt"), "mine");
        foreach (var name in new[] { "report", "mine", "papers" })
        {
            var before = TemporaryFolder.Files(_folder.In(name));
            Assert.Throws<ReportRefusedException>(() => Write(name));
            Assert.Equal(before.Keys, TemporaryFolder.Files(_folder.In(name)).Keys);
        }
    }

    [Fact]
    public void A_stopped_writing_leaves_nothing_behind()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => PapersFolder.Write(_folder.In("papers"), _plan, new PaperSettings(), stop.Token));
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder.In(".")));
    }

    [Fact]
    public void Dates_without_anything_to_do_are_refused()
    {
        var refused = Assert.Throws<ReportRefusedException>(() =>
            Write("papers", new PaperSettings { From = new DateOnly(2030, 1, 1), To = new DateOnly(2030, 1, 7) })
        );
        Assert.Equal(
            "No papers were written: the plan has nothing to do from 2030-01-01 to 2030-01-07. Choose other dates.",
            refused.Message
        );
    }

    [Fact]
    public void Settings_that_make_no_sense_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Write("papers", new PaperSettings { Kinds = PaperKinds.None }));
        Assert.Throws<ArgumentException>(() => Write("papers", new PaperSettings { LabelsUsed = 30 }));
        Assert.Throws<ArgumentException>(() =>
            Write("papers", new PaperSettings { From = new DateOnly(2027, 3, 2), To = new DateOnly(2027, 3, 1) })
        );
    }

    private PaperSummary Write(string name, PaperSettings? settings = null) =>
        PapersFolder.Write(_folder.In(name), _plan, settings ?? new PaperSettings(), CancellationToken.None);
}
