using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Writing;

namespace BenchSim.Report.Tests.Writing;

/// <summary>What happens to a folder that is written while something goes wrong around it: it is whole or
/// absent, and the next writer finds a clean place.</summary>
public sealed class TargetFolderFaultTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string Target => _folder.In("report");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_folder_removed_while_it_is_written_is_refused_and_not_made_anew_without_its_first_files()
    {
        Write("earlier");

        var refusal = Assert.Throws<ReportRefusedException>(() =>
            Fill(files =>
            {
                files.Save("result.json", [1]);
                Directory.Delete(Hidden(".benchsim-partial-*")[0], recursive: true);
                files.Save("tables/daily.csv", [2]);
            })
        );

        Assert.Contains("removed while it was being written", refusal.Message, StringComparison.Ordinal);
        AssertOnly("earlier");
    }

    [Fact]
    public void A_file_removed_or_cut_short_while_the_others_are_written_is_missed()
    {
        Assert.Throws<ReportRefusedException>(() =>
            Fill(files =>
            {
                files.Save("result.json", [1, 2]);
                File.Delete(Path.Combine(Hidden(".benchsim-partial-*")[0], "result.json"));
            })
        );
        Assert.Throws<ReportRefusedException>(() =>
            Fill(files =>
            {
                files.Save("result.json", [1, 2]);
                File.WriteAllBytes(Path.Combine(Hidden(".benchsim-partial-*")[0], "result.json"), [1]);
            })
        );

        Assert.Empty(Hidden("*"));
    }

    [Fact]
    public void The_folder_above_removed_while_writing_is_told_in_words()
    {
        Directory.CreateDirectory(_folder.In("above"));
        var folder = new TargetFolder(_folder.In("above/report"));

        Assert.Throws<ReportRefusedException>(() =>
            folder.Fill(
                partial =>
                {
                    Directory.Delete(_folder.In("above"), recursive: true);
                    new PartialFolder(partial, CancellationToken.None).Save("result.json", [1]);
                },
                CancellationToken.None
            )
        );

        Assert.Empty(Hidden("*"));
    }

    [Fact]
    public void What_a_killed_writer_left_is_taken_away_by_the_next()
    {
        Write("earlier");
        LeaveAsKilled(withFormer: false);

        Write("next");

        AssertOnly("next");
    }

    [Fact]
    public void A_report_that_a_killed_writer_had_moved_aside_goes_back_to_its_place()
    {
        Write("earlier");
        LeaveAsKilled(withFormer: true);
        Assert.False(Directory.Exists(Target));

        Assert.Throws<ReportRefusedException>(() => Fill(_ => throw new IOException("full")));

        AssertOnly("earlier");
    }

    [Fact]
    public void What_a_writer_still_at_work_has_there_is_left_alone()
    {
        Fill(files =>
        {
            files.Save(TargetFolder.MarkerName, Marker);
            var mine = Hidden(".benchsim-partial-*").Single();
            Write("another");
            Assert.True(Directory.Exists(mine));
            files.Save("report.html", "slow"u8.ToArray());
        });

        AssertOnly("slow");
    }

    [Fact]
    public void Leftovers_of_another_report_are_left_alone()
    {
        new TargetFolder(_folder.In("other")).Fill(
            partial => File.WriteAllText(Path.Combine(partial, TargetFolder.MarkerName), TargetFolder.MarkerStart),
            CancellationToken.None
        );
        Write("mine");

        Assert.Equal([_folder.In("other"), Target], Hidden("*").Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    // Eight writers at once, twenty times each: every one ends without a fault, and what stands in the end is one of them, whole.
    [Fact]
    public void Many_writers_of_one_folder_all_end_well()
    {
        Parallel.For(0, 8, new ParallelOptions { MaxDegreeOfParallelism = 8 }, writer =>
        {
            for (var round = 0; round < 20; round++)
            {
                Write($"writer {writer} round {round}");
            }
        });

        var text = File.ReadAllText(Path.Combine(Target, "report.html"));
        Assert.EndsWith("round 19", text, StringComparison.Ordinal);
        AssertOnly(text);
    }

    private static byte[] Marker => System.Text.Encoding.UTF8.GetBytes(TargetFolder.MarkerStart);

    private void Write(string text) =>
        Fill(files =>
        {
            files.Save(TargetFolder.MarkerName, Marker);
            files.Save("report.html", System.Text.Encoding.UTF8.GetBytes(text));
        });

    private void Fill(Action<PartialFolder> write) =>
        new TargetFolder(Target).Fill(
            partial =>
            {
                var files = new PartialFolder(partial, CancellationToken.None);
                write(files);
                files.Finish();
            },
            CancellationToken.None
        );

    // The names of a writer at work, kept when its own hold on them is gone: what a kill leaves.
    private void LeaveAsKilled(bool withFormer)
    {
        var claim = WritingClaim.Take(Target);
        var mark = Path.GetFileName(claim.Partial)[".benchsim-partial-".Length..];
        claim.Dispose();
        File.WriteAllText(_folder.In($".benchsim-lock-{mark}"), "");
        Directory.CreateDirectory(claim.Partial);
        File.WriteAllText(Path.Combine(claim.Partial, "report.html"), "half");
        if (withFormer)
        {
            Directory.Move(Target, claim.Former);
        }
    }

    private void AssertOnly(string text)
    {
        Assert.Equal([Target], Hidden("*"));
        Assert.Equal(text, File.ReadAllText(Path.Combine(Target, "report.html")));
    }

    private string[] Hidden(string pattern) =>
        Directory.GetFileSystemEntries(_folder.Path, pattern, new EnumerationOptions { AttributesToSkip = FileAttributes.None });
}
