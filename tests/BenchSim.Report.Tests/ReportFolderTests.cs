using System.Text;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Writing;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests;

public sealed class ReportFolderTests : IDisposable
{
    private static readonly ReportInput[] s_inputs =
    [
        new("site.toml", Encoding.UTF8.GetBytes("\uFEFFname = 'x'\r\n")),
        new("weather/daily.csv", new byte[] { 0, 255, 13, 10, 13 }),
    ];

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_report_has_the_promised_files()
    {
        ReportFolder.Write(_folder.In("report"), SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None);

        Assert.Equal(
            [
                ".benchsim-files",
                ".benchsim-report",
                "charts/batches.png",
                "charts/occupancy-1-mats.png",
                "charts/occupancy-2-main.png",
                "charts/occupancy-3-table.png",
                "columns.csv",
                "inputs/site.toml",
                "inputs/weather/daily.csv",
                "report.html",
                "result.json",
                "tables/batches.csv",
                "tables/daily.csv",
                "tables/fuel.csv",
                "tables/growers.csv",
                "tables/spaces.csv",
                "tables/waits.csv",
            ],
            TemporaryFolder.Files(_folder.In("report")).Keys.ToArray()
        );
    }

    [Fact]
    public void Bottlenecks_have_a_table_where_they_were_asked_for_and_are_replaced_with_the_report()
    {
        var result = SyntheticStudy.Tiny();
        ReportFolder.Write(
            _folder.In("report"),
            result with
            {
                Bottlenecks = SyntheticRoom.Bottlenecks(result.Plan),
            },
            s_inputs,
            null,
            null,
            CancellationToken.None
        );
        Assert.True(File.Exists(_folder.In("report/tables/bottlenecks.csv")));
        ReportFolder.Write(_folder.In("report"), result, s_inputs, null, null, CancellationToken.None);
        Assert.False(File.Exists(_folder.In("report/tables/bottlenecks.csv")));
    }

    [Fact]
    public void Inputs_are_kept_byte_for_byte()
    {
        ReportFolder.Write(_folder.In("report"), SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None);

        foreach (var input in s_inputs)
        {
            Assert.Equal(input.Bytes.ToArray(), File.ReadAllBytes(_folder.In("report/inputs/" + input.Name)));
        }
    }

    [Fact]
    public void The_same_result_gives_the_same_bytes()
    {
        ReportFolder.Write(_folder.In("one"), SyntheticStudy.Tiny(), s_inputs, "part 1 of 3", null, CancellationToken.None);
        ReportFolder.Write(_folder.In("two"), SyntheticStudy.Tiny(), s_inputs, "part 1 of 3", null, CancellationToken.None);

        var one = TemporaryFolder.Files(_folder.In("one"));
        var two = TemporaryFolder.Files(_folder.In("two"));
        Assert.Equal(one.Keys, two.Keys);
        foreach (var name in one.Keys.Where(name => !name.EndsWith(".png", StringComparison.Ordinal)))
        {
            Assert.Equal(one[name], two[name]);
        }
    }

    [Fact]
    public void An_earlier_report_is_replaced_as_a_whole()
    {
        ReportFolder.Write(_folder.In("report"), SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None);
        ReportFolder.Write(_folder.In("report"), SyntheticStudy.Tiny(), [s_inputs[0]], null, null, CancellationToken.None);

        Assert.False(Directory.Exists(_folder.In("report/inputs/weather")));
        Assert.Equal(["report"], Entries(_folder.Path));
    }

    [Fact]
    public void Parents_are_made()
    {
        ReportFolder.Write(_folder.In("a/b/report"), SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None);

        Assert.Equal(["report"], Entries(_folder.In("a/b")));
    }

    [Theory]
    [InlineData("empty")]
    [InlineData("notes")]
    public void A_folder_it_did_not_make_is_refused_and_left_alone(string kind)
    {
        var target = _folder.In("mine");
        Directory.CreateDirectory(target);
        if (kind == "notes")
        {
            File.WriteAllText(Path.Combine(target, "notes.txt"), "dear to me");
        }

        var refusal = Assert.Throws<ReportRefusedException>(() =>
            ReportFolder.Write(target, SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None)
        );

        Assert.Equal(
            $"No report was written: '{target}' exists and BenchSim did not write it. Name another folder, or remove this one "
                + "yourself.",
            refusal.Message
        );
        Assert.Equal(kind == "notes" ? ["notes.txt"] : [], Entries(target));
        Assert.Equal(["mine"], Entries(_folder.Path));
    }

    [Theory]
    [InlineData("notes.txt")]
    [InlineData("inputs/old-plan.csv")]
    [InlineData("charts/photo.png")]
    [InlineData("archive/daily.csv")]
    public void A_report_with_something_added_is_refused_and_left_alone(string added)
    {
        var target = _folder.In("report");
        ReportFolder.Write(target, SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None);
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(target, added))!);
        File.WriteAllText(Path.Combine(target, added), "dear to me");
        var before = TemporaryFolder.Files(target);

        var refusal = Assert.Throws<ReportRefusedException>(() =>
            ReportFolder.Write(target, SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None)
        );

        var named = added.StartsWith("archive", StringComparison.Ordinal) ? "archive" : added;
        Assert.Equal(
            $"No report was written: '{target}' holds '{named}', which is no part of a report. Move it away, or name another " + "folder.",
            refusal.Message
        );
        Assert.Equal(before, TemporaryFolder.Files(target));
    }

    [Fact]
    public void A_marker_with_another_text_does_not_make_a_folder_ours()
    {
        var target = _folder.In("mine");
        Directory.CreateDirectory(target);
        File.WriteAllText(Path.Combine(target, TargetFolder.MarkerName), "");

        Assert.Throws<ReportRefusedException>(() =>
            ReportFolder.Write(target, SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None)
        );

        Assert.Equal([TargetFolder.MarkerName], Entries(target));
    }

    [Fact]
    public void A_file_in_the_place_is_refused()
    {
        File.WriteAllText(_folder.In("report"), "dear to me");

        var refusal = Assert.Throws<ReportRefusedException>(() =>
            ReportFolder.Write(_folder.In("report"), SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None)
        );

        Assert.Contains("is a file", refusal.Message, StringComparison.Ordinal);
        Assert.Equal("dear to me", File.ReadAllText(_folder.In("report")));
    }

    [Fact]
    public void A_link_is_refused()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        ReportFolder.Write(_folder.In("real"), SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None);
        Directory.CreateSymbolicLink(_folder.In("link"), _folder.In("real"));

        var refusal = Assert.Throws<ReportRefusedException>(() =>
            ReportFolder.Write(_folder.In("link"), SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None)
        );

        Assert.Contains("is a link", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_parent_that_is_a_file_is_refused_in_words()
    {
        File.WriteAllText(_folder.In("file"), "");

        Assert.Throws<ReportRefusedException>(() =>
            ReportFolder.Write(_folder.In("file/report"), SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None)
        );

        Assert.Equal(["file"], Entries(_folder.Path));
    }

    [Fact]
    public void Stopped_before_it_begins_it_leaves_nothing_behind()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        Assert.Throws<OperationCanceledException>(() =>
            ReportFolder.Write(_folder.In("a/report"), SyntheticStudy.Tiny(), s_inputs, null, null, stop.Token)
        );

        Assert.Empty(Entries(_folder.Path));
    }

    [Fact]
    public void Stopped_half_way_it_leaves_nothing_behind_and_the_earlier_report_whole()
    {
        var target = _folder.In("report");
        ReportFolder.Write(target, SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None);
        var before = TemporaryFolder.Files(target);
        using var stop = new CancellationTokenSource();
        var folder = new TargetFolder(target);

        Assert.Throws<OperationCanceledException>(() =>
            folder.Fill(
                partial =>
                {
                    File.WriteAllText(Path.Combine(partial, "report.html"), "half");
                    stop.Cancel();
                },
                stop.Token
            )
        );

        Assert.Equal(before, TemporaryFolder.Files(target));
        Assert.Equal(["report"], Entries(_folder.Path));
    }

    [Fact]
    public void A_failure_half_way_leaves_nothing_behind()
    {
        var folder = new TargetFolder(_folder.In("a/b/report"));

        Assert.Throws<InvalidOperationException>(() =>
            folder.Fill(
                partial =>
                {
                    File.WriteAllText(Path.Combine(partial, "report.html"), "half");
                    throw new InvalidOperationException("a fault");
                },
                CancellationToken.None
            )
        );

        Assert.Empty(Entries(_folder.Path));
    }

    [Fact]
    public void A_disk_that_refuses_is_told_in_words()
    {
        var folder = new TargetFolder(_folder.In("report"));

        var refusal = Assert.Throws<ReportRefusedException>(() =>
            folder.Fill(_ => throw new IOException("No space left on device"), CancellationToken.None)
        );

        Assert.Equal($"The report could not be written to '{_folder.In("report")}': No space left on device", refusal.Message);
        Assert.Empty(Entries(_folder.Path));
    }

    [Fact]
    public void A_place_that_can_be_written_is_found_good_and_left_as_it_was()
    {
        ReportFolder.Check(_folder.In("a/b/report"));
        ReportFolder.Check(_folder.In("report"));

        Assert.Empty(Entries(_folder.Path));
    }

    [Fact]
    public void A_place_under_a_file_is_refused_before_the_play()
    {
        File.WriteAllText(_folder.In("notes"), "dear to me");

        var refusal = Assert.Throws<ReportRefusedException>(() => ReportFolder.Check(_folder.In("notes/a/report")));

        Assert.Equal(
            $"No report was written: '{_folder.In("notes/a/report")}' cannot be made, for '{_folder.In("notes")}' is a file. "
                + "Name another folder.",
            refusal.Message
        );
        Assert.Equal(["notes"], Entries(_folder.Path));
    }

    [Fact]
    public void A_place_that_no_one_may_write_is_refused_before_the_play_without_names_of_our_own()
    {
        // The kernel's own folder refuses new ones even to the most mighty user; other systems have no such place.
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        var refusal = Assert.Throws<ReportRefusedException>(() => ReportFolder.Check("/proc/spring/report"));

        Assert.StartsWith("No report was written: '/proc/spring/report' cannot be made", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("trial", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("partial", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(255, true)]
    [InlineData(256, false)]
    public void A_name_that_is_too_long_is_refused_before_the_play(int letters, bool good)
    {
        var place = _folder.In(new string('r', letters));

        if (good)
        {
            ReportFolder.Write(place, SyntheticStudy.Tiny(), s_inputs, null, null, CancellationToken.None);
            Assert.Equal([Path.GetFileName(place)], Entries(_folder.Path));
        }
        else
        {
            Assert.Contains(
                "has too long a name",
                Assert.Throws<ReportRefusedException>(() => ReportFolder.Check(place)).Message,
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public void What_the_disk_says_is_told_without_names_of_our_own()
    {
        var folder = new TargetFolder(_folder.In("report"));

        var refusal = Assert.Throws<ReportRefusedException>(() =>
            folder.Fill(partial => throw new IOException($"The disk is full : '{partial}/result.json'"), CancellationToken.None)
        );

        Assert.Equal(
            $"The report could not be written to '{_folder.In("report")}': The disk is full : '{_folder.In("report")}/result.json'",
            refusal.Message
        );
    }

    [Theory]
    [InlineData("../plan.csv")]
    [InlineData("/etc/plan.csv")]
    [InlineData("a/../../plan.csv")]
    [InlineData("a//plan.csv")]
    [InlineData("..\\plan.csv")]
    [InlineData("")]
    [InlineData("plan\n.csv")]
    [InlineData("c:plan.csv")]
    public void An_input_that_would_leave_the_folder_is_refused(string name)
    {
        Assert.Throws<ArgumentException>(() =>
            ReportFolder.Write(_folder.In("report"), SyntheticStudy.Tiny(), [new(name, default)], null, null, CancellationToken.None)
        );

        Assert.Empty(Entries(_folder.Path));
    }

    [Fact]
    public void Two_inputs_of_one_name_are_refused() =>
        Assert.Throws<ArgumentException>(() =>
            ReportFolder.Write(
                _folder.In("report"),
                SyntheticStudy.Tiny(),
                [new("plan.csv", default), new("Plan.csv", default)],
                null,
                null,
                CancellationToken.None
            )
        );

    private static string[] Entries(string folder) =>
        [.. Directory.EnumerateFileSystemEntries(folder).Select(entry => Path.GetFileName(entry)).Order(StringComparer.Ordinal)];
}
