using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

public class WantedPlacesTests
{
    // Two trays of two places each: on the mat on days 0 to 2, on the bench on days 3 to 16, on the table on days 17 to 20, out on Monday
    // day 21, however few places there are.
    [Fact]
    public void Places_of_a_batch_by_where_it_would_stand()
    {
        var scenario = Scenario([Mat(1), Bench(1), Table(1)], [Batch("a", 40, Monday) with { TrayId = "big" }]);
        var wanted = new WantedPlaces(new SeasonPlayer(Plan(scenario), 7));
        wanted.Play(0);
        var byKind = Assert.Single(wanted.ByBatch);
        Assert.Equal([4, 4, 4, 0], byKind[(int)SpaceKind.Mat][..4]);
        Assert.Equal([0, 4, 4], byKind[(int)SpaceKind.Bench][2..5]);
        Assert.Equal([4, 0], byKind[(int)SpaceKind.Bench][16..18]);
        Assert.Equal([0, 4, 4, 4, 4, 0], byKind[(int)SpaceKind.Table][16..22]);
    }

    // With luck in emergence and growth no two seasons are alike: each is told by itself, and over the batches it is what stands in the
    // season without limits.
    [Fact]
    public void Over_the_batches_they_are_what_stands_without_limits()
    {
        var lucky = Crop() with { EmergeCv = 0.4, GrowthCv = 0.3 };
        var scenario = Scenario(
            [Mat(1), Bench(1), Table(1)],
            [Batch("a", 40, Monday) with { TrayId = "big" }, PotUpBatch("p", 120, Monday.AddDays(7), seedsPerFlat: 120)],
            crops: [lucky]
        );
        var player = new SeasonPlayer(Plan(scenario), 7);
        var wanted = new WantedPlaces(player.Another());
        var result = new SeasonResult();
        for (var season = 0; season < 3; season++)
        {
            wanted.Play(season);
            player.Play(season, PlaceLimits.None, result);
            for (var kind = 0; kind < 3; kind++)
            {
                // The spaces of the site stand in the order of the kinds: mat, bench, table.
                Assert.Equal(
                    result.Held[kind],
                    Enumerable.Range(0, player.Plan.Days).Select(day => wanted.ByBatch.Sum(batch => batch[kind][day]))
                );
            }
        }
    }
}
