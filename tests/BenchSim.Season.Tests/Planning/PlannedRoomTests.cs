using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Tests.Planning;

/// <summary>
/// The three batches of <see cref="PlannedWorkTests"/> against fewer places. Mats: A 4 and B 2 from 1 to 3 March, P's flat from the 8th to
/// the 10th. Benches: 6 from the 4th to the 17th, the flat from the 11th to the 17th, its three trays from the 18th to the 28th. Table: 6
/// from the 18th to the 21st, 3 from the 29th to the 31st.
/// </summary>
public class PlannedRoomTests
{
    [Theory]
    [InlineData(6, 7, 6, "")]
    [InlineData(5, 7, 6, "03-01 Mat 6, 03-02 Mat 6, 03-03 Mat 6")]
    [InlineData(6, 6, 6, "03-11 Bench 7, 03-12 Bench 7, 03-13 Bench 7, 03-14 Bench 7, 03-15 Bench 7, 03-16 Bench 7, 03-17 Bench 7")]
    [InlineData(6, 7, 5, "03-18 Table 6, 03-19 Table 6, 03-20 Table 6, 03-21 Table 6")]
    [InlineData(0, 2, 2, null)]
    public void Days_on_which_the_planned_dates_want_more_than_there_is(int mats, int benches, int tables, string? days)
    {
        var plan = PlannedWorkTests.Plan(
            SmallSite.Batch("A", 200, SmallSite.Monday),
            SmallSite.Batch("B", 100, SmallSite.Monday),
            SmallSite.PotUpBatch("P", 120, SmallSite.Monday.AddDays(7))
        );
        plan = plan with
        {
            Scenario = plan.Scenario with
            {
                Spaces =
                [
                    .. plan.Scenario.Spaces.Select(space =>
                        space with
                        {
                            Places = space.Kind switch
                            {
                                SpaceKind.Mat => mats,
                                SpaceKind.Bench => benches,
                                _ => tables,
                            },
                        }
                    ),
                ],
            },
        };
        var found = PlannedRoom.Shortages(plan);
        if (days is null)
        {
            // 3 + 3 days on the mats, 25 on the benches, 4 + 3 on the table.
            Assert.Equal(6 + 25 + 7, found.Length);
            Assert.All(found, each => Assert.True(each.Wanted > each.Places));
            return;
        }

        Assert.Equal(days, string.Join(", ", found.Select(each => $"{each.On:MM-dd} {each.Kind} {each.Wanted}")));
    }
}
