using BenchSim.Season.Play;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>Who holds a space and who waits for it, in the season that is drawn by hand in <see cref="StoryTests"/>.</summary>
public class FullDayTests
{
    // The flat of p waits from day 10 for its 3 places, of which it holds one; from day 11 the tray of z waits on the mat for one. On day
    // 17 a's tray leaves.
    [Fact]
    public void The_day_on_which_most_is_refused_has_its_holders_and_those_who_wait()
    {
        var plan = Plan(
            Scenario(
                [Mat(2), Bench(3), Table(4)],
                [Batch("a", 50, Monday), PotUpBatch("p", 120, Monday, seedsPerFlat: 120), Batch("z", 50, Monday.AddDays(8))]
            )
        );
        var found = FullDay.Find(plan, 1, 0, 1, 7, 20);
        Assert.Equal((11, 2, 3), (found.Day, found.Held, found.Places));
        Assert.Equal([new PlaceHolder("a", 1), new PlaceHolder("p", 1)], found.Holders.AsEnumerable());
        Assert.Equal([new WaitingTrays("p", 1, true, 1, 3), new WaitingTrays("z", 1, false, 0, 1)], found.Waiting.AsEnumerable());
    }

    [Fact]
    public void Where_nothing_is_refused_the_fullest_day_is_looked_at()
    {
        var plan = Plan(Scenario([Mat(4), Bench(4), Table(4)], [Batch("a", 100, Monday)]));
        var found = FullDay.Find(plan, 1, 0, 0, 0, 20);
        Assert.Equal((0, 2), (found.Day, found.Held));
        Assert.Empty(found.Waiting);
    }
}
