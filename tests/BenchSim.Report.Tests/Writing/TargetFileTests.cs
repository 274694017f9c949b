using BenchSim.Report.Writing;

namespace BenchSim.Report.Tests.Writing;

/// <summary>A single file is whole or absent, and the next writer of it takes away what a killed one has left, and nothing else.</summary>
public sealed class TargetFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string Target => _folder.In("spring.1-of-2.part");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_a_killed_writer_left_goes_with_the_next_writing()
    {
        LeaveAsKilled(Target);
        Assert.Equal(2, _folder.Everything().Length);
        Write(Target, "whole");
        Assert.Equal(["spring.1-of-2.part"], _folder.Everything());
        Assert.Equal("whole", File.ReadAllText(Target));
    }

    [Fact]
    public void It_goes_when_the_place_is_looked_at_before_a_play()
    {
        LeaveAsKilled(Target);
        TargetFile.CheckCanBeWritten(Target);
        Assert.Empty(_folder.Everything());
    }

    [Fact]
    public void Leftovers_of_another_file_and_what_looks_like_them_are_left_alone()
    {
        LeaveAsKilled(_folder.In("spring.2-of-2.part"));
        _folder.Write(".benchsim-partial-mine", "dear to me");
        var before = _folder.Everything();
        Write(Target, "whole");
        Assert.Equal([.. before, "spring.1-of-2.part"], _folder.Everything());
    }

    [Fact]
    public void A_writer_still_at_work_keeps_what_it_has()
    {
        TargetFile.Write(
            Target,
            "slow"u8,
            () =>
            {
                Write(Target, "fast");
                Assert.Equal("fast", File.ReadAllText(Target));
            },
            CancellationToken.None
        );
        Assert.Equal("slow", File.ReadAllText(Target));
        Assert.Equal(["spring.1-of-2.part"], _folder.Everything());
    }

    [Fact]
    public void Stopped_it_leaves_nothing_and_the_earlier_file_whole()
    {
        Write(Target, "earlier");
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => TargetFile.Write(Target, "later"u8, () => { }, stop.Token));
        Assert.Equal("earlier", File.ReadAllText(Target));
        Assert.Equal(["spring.1-of-2.part"], _folder.Everything());
    }

    [Fact]
    public void A_file_that_others_may_not_read_stays_so()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        Write(Target, "earlier");
        File.SetUnixFileMode(Target, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        Write(Target, "later");
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Target));
    }

    private static void Write(string path, string text) =>
        TargetFile.Write(path, System.Text.Encoding.UTF8.GetBytes(text), () => { }, CancellationToken.None);

    // The names of a writer at work, kept when its own hold on them is gone: what a kill leaves.
    private void LeaveAsKilled(string path)
    {
        var claim = WritingClaim.Take(path);
        var mark = Path.GetFileName(claim.Partial)[".benchsim-partial-".Length..];
        claim.Dispose();
        _folder.Write($".benchsim-lock-{mark}", "");
        File.WriteAllText(claim.Partial, "half");
    }
}
