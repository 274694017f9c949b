using System.Diagnostics;

namespace EndToEnd.Faults;

/// <summary>Killed in the middle, and two at once: the report folder is whole or absent, and the next run finds a clean place.</summary>
public sealed class KilledTests
{
    [Theory]
    [Trait("Category", "Slow")]
    [InlineData(0, false)]
    [InlineData(9, true)]
    [InlineData(12, true)]
    public async Task Killed_while_writing_it_leaves_the_place_as_it_was_and_the_next_run_tidies_up(int filesWritten, bool hasEarlier)
    {
        using var farm = await SmallFarm.MakeAsync();
        if (hasEarlier)
        {
            Assert.Equal(0, (await Command.RunAsync(farm.Run("--seed", "5"))).Code);
        }

        var before = hasEarlier ? FolderText.Of(farm.Report) : null;

        using (var run = Command.Start(farm.Run()))
        {
            var ends = Command.EndAsync(run);
            await Moment.WhenAsync(run, () => Moment.PartialOf(farm.Report, filesWritten));
            run.Kill();
            await ends;
        }

        // The kill may come after the new report took its place; then that one is whole.
        if (Directory.Exists(farm.Report))
        {
            farm.AssertWhole();
        }
        else
        {
            Assert.False(hasEarlier && !farm.Entries.Any(name => name.StartsWith(".benchsim-former", StringComparison.Ordinal)));
        }

        if (
            before is not null
            && farm.Entries.Any(name => name.StartsWith(".benchsim-partial", StringComparison.Ordinal))
            && Directory.Exists(farm.Report)
        )
        {
            Assert.Equal(before, FolderText.Of(farm.Report));
        }

        var next = await Command.RunAsync(farm.Run());
        Assert.Equal(0, next.Code);
        Assert.Equal(["report"], farm.Entries);
        farm.AssertWhole();
    }

    [Fact]
    public async Task Killed_as_soon_as_it_is_in_place_it_is_whole()
    {
        using var farm = await SmallFarm.MakeAsync();
        using (var run = Command.Start(farm.Run()))
        {
            var ends = Command.EndAsync(run);
            await Moment.WhenAsync(run, () => Directory.Exists(farm.Report) ? farm.Report : null);
            run.Kill();
            await ends;
        }

        farm.AssertWhole();
        Assert.Equal(0, (await Command.RunAsync(farm.Run())).Code);
        Assert.Equal(["report"], farm.Entries);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public async Task Two_runs_into_one_folder_at_once_both_end_well_and_leave_one_whole_report()
    {
        using var farm = await SmallFarm.MakeAsync();
        Assert.Equal(0, (await Command.RunAsync(farm.Run("--seed", "5"))).Code);
        var five = FolderText.Of(farm.Report);
        Assert.Equal(0, (await Command.RunAsync(farm.Run("--seed", "6"))).Code);
        var six = FolderText.Of(farm.Report);

        var both = await Task.WhenAll(Command.RunAsync(farm.Run("--seed", "5")), Command.RunAsync(farm.Run("--seed", "6")));

        Assert.All(both, one => Assert.True(one.Code == 0, one.Error));
        Assert.Equal(["report"], farm.Entries);
        Assert.Contains(FolderText.Of(farm.Report), [five, six], StringComparer.Ordinal);
    }
}
