using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>Trays that are to be looked at, drawn by lot.</summary>
public class TraysByLotTests
{
    // Three of 17 by 2,000 seeds: each 2,000 x 3/17 times. Of three drawn without putting back, the sum of squares over what is expected is
    // 14/16 of a chi-square at 16 degrees of freedom, and that lies above 39.25 with a chance of 0.001.
    [Fact]
    public void Each_tray_is_drawn_as_often_as_any_other()
    {
        var times = new int[17];
        for (var seed = 0UL; seed < 2000; seed++)
        {
            foreach (var number in TraysByLot.Draw(seed, "lot/a/bench", 17))
            {
                times[number - 1]++;
            }
        }

        const double Expected = 2000 * 3 / 17.0;
        Assert.Equal(6000, times.Sum());
        Assert.InRange(times.Sum(each => (each - Expected) * (each - Expected) / Expected) * 16 / 14, 0, 39.25);
    }

    [Fact]
    public void The_same_trays_are_drawn_again()
    {
        int[] drawn = [.. TraysByLot.Draw(1, "lot/a/bench", 40)];
        Assert.Equal(drawn, TraysByLot.Draw(1, "lot/a/bench", 40).AsEnumerable());
        Assert.Equal(drawn.Order().Distinct(), drawn);
        Assert.NotEqual(drawn, TraysByLot.Draw(1, "lot/b/bench", 40).AsEnumerable());
        Assert.NotEqual(drawn, TraysByLot.Draw(2, "lot/a/bench", 40).AsEnumerable());
    }

    [Fact]
    public void Of_two_trays_both_are_looked_at_and_of_none_none()
    {
        Assert.Equal([1, 2], TraysByLot.Draw(1, "lot/a/bench", 2).AsEnumerable());
        Assert.Null(TraysByLot.Drawn(Sown(), 0, 0, 0, 0));
    }

    // Two seeds a cell: seedlings among seeds on the mat, cells with a plant on the bench; of three trays each.
    [Fact]
    public void On_the_mat_seeds_are_looked_at_and_then_cells()
    {
        var plan = Sown();
        var cells = plan.Batches[0].Tray.Cells;
        var (mat, bench) = (TraysByLot.Drawn(plan, 0, 0, 6, 0)!, TraysByLot.Drawn(plan, 0, 1, 6, 0)!);
        Assert.Equal((LogKind.Up, 3 * cells * 2, 3), (mat.What, mat.Among, mat.Numbers.Length));
        Assert.Equal((LogKind.Good, 3 * cells, false), (bench.What, bench.Among, bench.AreFlats));
    }

    private static SeasonPlan Sown() =>
        Plan(
            Scenario(
                [Mat(40), Bench(60), Table(60)],
                [Batch("b0", 100, Monday) with { SeedsPerCell = 2 }],
                new SiteRules(),
                [Crop() with { KeepPerCell = 1 }]
            )
        );
}
