using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Succession;

namespace BenchSim.Study.Tests.Succession;

/// <summary>A line of the plan is found by its name, and its successions are named as reading the plan names them.</summary>
public class SuccessionLineTests
{
    private static readonly BatchOrder s_order = Plans.Small().Scenario.Batches[0];

    private static readonly Scenario s_farm = Plans.Small().Scenario with
    {
        Batches =
        [
            s_order with
            {
                Id = "a",
                Place = new SourcePlace("plan.csv", 2, 1),
            },
            s_order with
            {
                Id = "x-1",
                Place = new SourcePlace("plan.csv", 3, 1),
                SetOut = Plans.FirstDay.AddDays(40),
            },
            s_order with
            {
                Id = "x-2",
                Place = new SourcePlace("plan.csv", 3, 1),
                SetOut = Plans.FirstDay.AddDays(47),
            },
            s_order with
            {
                Id = "z-1",
                Place = new SourcePlace("plan.csv", 4, 1),
            },
        ],
    };

    [Theory]
    [InlineData("a", "a")]
    [InlineData("x", "x-1 x-2")]
    [InlineData("z-1", "z-1")]
    [InlineData("x-1", null)]
    [InlineData("z", null)]
    [InlineData("A", null)]
    public void A_line_is_a_batch_or_all_its_successions(string id, string? batches) =>
        Assert.Equal(batches, SuccessionLine.Find(s_farm, id) is { } line ? string.Join(' ', line.Orders.Select(order => order.Id)) : null);

    [Fact]
    public void Successions_take_the_place_of_the_line_and_its_dates_move_on()
    {
        var batches = SuccessionLine.Find(s_farm, "x")!.Of(s_farm, 10, 3).Batches;
        Assert.Equal(["a", "x-1", "x-2", "x-3", "z-1"], batches.Select(order => order.Id).ToArray(), StringComparer.Ordinal);
        Assert.Equal([0, 10, 20], batches.Skip(1).Take(3).Select(order => order.Sow!.Value.DayNumber - Plans.FirstDay.DayNumber));
        Assert.Equal([40, 50, 60], batches.Skip(1).Take(3).Select(order => order.SetOut!.Value.DayNumber - Plans.FirstDay.DayNumber));
        Assert.All(batches.Skip(1).Take(3), order => Assert.Equal(s_farm.Batches[1].Plants, order.Plants));
    }
}
