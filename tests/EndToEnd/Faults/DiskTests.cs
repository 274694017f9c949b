namespace EndToEnd.Faults;

/// <summary>A disk that takes no more, and a place where one may not write.</summary>
public sealed class DiskTests
{
    // Files may have 51,200 bytes here (100 blocks of 512); the report's page has more. A signal would end the command before it could say
    // anything, so it is ignored, and the runtime's own large file of code is switched off.
    private const string NoLargeFiles = "trap '' XFSZ; ulimit -f 100; exec \"$@\"";
    private static readonly (string Name, string Value)[] s_smallRuntime =
    [
        ("DOTNET_EnableWriteXorExecute", "0"),
        ("DOTNET_EnableDiagnostics", "0"),
    ];

    [LinuxFact]
    public async Task A_file_that_the_disk_does_not_take_ends_in_words_and_nothing_is_left()
    {
        using var farm = await SmallFarm.MakeAsync();

        var run = await Command.ShellAsync(NoLargeFiles, s_smallRuntime, farm.Run());

        Assert.Equal(2, run.Code);
        Assert.Contains("is larger than this disk or your account allows", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("partial", run.Error, StringComparison.Ordinal);
        Assert.Empty(farm.Entries);
    }

    [LinuxFact]
    public async Task An_earlier_report_outlives_a_disk_that_takes_no_more()
    {
        using var farm = await SmallFarm.MakeAsync();
        Assert.Equal(0, (await Command.RunAsync(farm.Run())).Code);
        var before = FolderText.Of(farm.Report);

        Assert.Equal(2, (await Command.ShellAsync(NoLargeFiles, s_smallRuntime, farm.Run("--seed", "9"))).Code);

        Assert.Equal(["report"], farm.Entries);
        Assert.Equal(before, FolderText.Of(farm.Report));
    }

    // A named pipe holds up whoever opens it, until somebody writes into it: whoever is held up is ended after a minute.
    [LinuxFact]
    public async Task A_named_pipe_in_the_place_of_a_file_of_ours_is_refused_and_not_waited_for()
    {
        using var farm = await SmallFarm.MakeAsync();
        var run = await Command.ShellAsync(
            "mkdir \"$REPORT\" && mkfifo \"$REPORT/.benchsim-report\" && exec timeout -s KILL 60 \"$@\"",
            [("REPORT", farm.Report)],
            farm.Run()
        );
        Assert.Equal(2, run.Code);
        Assert.Contains("exists and BenchSim did not write it", run.Error, StringComparison.Ordinal);

        var plan = Path.Combine(farm.Scenario, "plan-levelled.csv");
        var level = await Command.ShellAsync(
            "mkfifo \"$PLAN\" && exec timeout -s KILL 60 \"$@\"",
            [("PLAN", plan)],
            "level",
            farm.Scenario,
            "--write",
            "--seasons",
            "3"
        );
        Assert.Equal(2, level.Code);
        Assert.Contains("is not a levelled form of this plan", level.Error, StringComparison.Ordinal);
    }

    // /dev/full is a device on which every write finds the disk full.
    [LinuxFact]
    public async Task An_answer_that_finds_the_disk_full_ends_with_exit_code_2_and_no_trace()
    {
        using var farm = await SmallFarm.MakeAsync();
        foreach (
            var call in new[]
            {
                new[] { "check", farm.Scenario },
                ["check", farm.Scenario, "--json"],
                ["run", farm.Scenario, "--no-report", "--seasons", "3"],
                ["--help"],
            }
        )
        {
            var done = await Command.ShellAsync("exec \"$@\" > /dev/full", [], call);
            Assert.Equal(2, done.Code);
            Assert.DoesNotContain("   at ", done.Error, StringComparison.Ordinal);
        }

        Assert.Equal(2, (await Command.ShellAsync("exec \"$@\" 2> /dev/full", [], "check", "no-such-folder-anywhere")).Code);
    }

    // The seasons were played: the report stands, and the error says where.
    [LinuxFact]
    public async Task A_run_whose_answer_cannot_be_printed_keeps_its_report()
    {
        using var farm = await SmallFarm.MakeAsync();

        var run = await Command.ShellAsync("exec \"$@\" > /dev/full", [], farm.Run());

        Assert.Equal(2, run.Code);
        Assert.Equal($"Report: {farm.Report}/report.html\nThe answer could not be printed: No space left on device\n", run.Error);
        Assert.Equal(["report"], farm.Entries);
        farm.AssertWhole();
    }

    [LinuxFact]
    public async Task A_run_whose_reader_has_gone_keeps_its_report_too()
    {
        using var farm = await SmallFarm.MakeAsync();

        var run = await Command.ShellAsync("{ \"$@\"; echo \"ended with $?\" >&2; } | true", [], farm.Run());

        Assert.Equal("ended with 0\n", run.Error);
        farm.AssertWhole();
    }

    // Without the trap the signal of the limit kills the command in the middle of its file.
    [LinuxFact]
    public async Task A_part_that_was_killed_leaves_what_the_next_run_of_it_takes_away()
    {
        using var farm = await SmallFarm.MakeAsync();
        string[] call = ["run", farm.Scenario, "--seasons", "10", "--shard", "1/2", "--out", Path.Combine(farm.Report, "..", "a.part")];

        var killed = await Command.ShellAsync("ulimit -c 0; ulimit -f 1; \"$@\"", s_smallRuntime, call);

        Assert.NotEqual(0, killed.Code);
        Assert.Contains(farm.Entries, name => name.StartsWith(".benchsim-partial-", StringComparison.Ordinal));
        Assert.Equal(0, (await Command.RunAsync(call)).Code);
        Assert.Equal(["a.part"], farm.Entries);
    }

    [LinuxFact]
    public async Task A_folder_one_may_not_look_into_does_not_lack_its_files()
    {
        using var farm = await SmallFarm.MakeAsync();
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(farm.Scenario, UnixFileMode.UserRead);
            var check = await Command.KeptOutAsync("check", farm.Scenario);
            File.SetUnixFileMode(farm.Scenario, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            Assert.Equal(2, check.Code);
            Assert.StartsWith($"{farm.Scenario}:0:0: you may not look into this folder", check.Error, StringComparison.Ordinal);
        }
    }

    [LinuxFact]
    public async Task A_place_that_cannot_be_written_is_refused_before_the_play()
    {
        using var farm = await SmallFarm.MakeAsync();

        var run = await Command.RunAsync("run", farm.Scenario, "--out", "/proc/report", "--seasons", "100000");

        Assert.Equal(2, run.Code);
        Assert.Contains("No report was written: '/proc/report' cannot be made", run.Error, StringComparison.Ordinal);
    }

    [LinuxFact]
    public async Task A_read_only_folder_is_refused_before_the_play_and_stays_as_it_is()
    {
        using var farm = await SmallFarm.MakeAsync();
        var above = Path.GetDirectoryName(farm.Report)!;
        var mode = OperatingSystem.IsWindows() ? default : File.GetUnixFileMode(above);
        Command run;
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(above, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        try
        {
            run = await Command.KeptOutAsync("run", farm.Scenario, "--out", farm.Report, "--seasons", "100000");
        }
        finally
        {
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(above, mode);
            }
        }

        Assert.Equal(2, run.Code);
        Assert.Contains("you may not write there", run.Error, StringComparison.Ordinal);
        Assert.Empty(farm.Entries);
    }

    [Fact]
    public async Task A_folder_removed_while_it_is_written_is_whole_or_absent()
    {
        using var farm = await SmallFarm.MakeAsync();
        using var run = Command.Start(farm.Run());
        var ends = Command.EndAsync(run);
        var partial = await Moment.WhenAsync(run, () => Moment.PartialOf(farm.Report, files: 3));
        Assert.NotNull(partial);
        Moment.Remove(partial);

        var ended = await ends;

        Assert.Equal(2, ended.Code);
        Assert.DoesNotContain("   at ", ended.Error, StringComparison.Ordinal);
        Assert.Empty(farm.Entries);
    }
}
