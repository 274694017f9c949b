using BenchSim.Season.Play;

namespace BenchSim.Season.Tests;

/// <summary>Whether the plants that are missing are mostly of batches of which something was thrown out.</summary>
public class MissingPlantsTests
{
    // Of the first of three batches something was thrown out: half of the missing plants there is enough, one less is not.
    [Theory]
    [InlineData(50, 0, 50, DiscardReason.OverHeld, true)]
    [InlineData(49, 0, 50, DiscardReason.OverHeld, false)]
    [InlineData(50, 0, 50, DiscardReason.FlatOverHeld, true)]
    [InlineData(50, 0, 50, DiscardReason.NeverCameUp, false)]
    [InlineData(50, 0, 50, DiscardReason.Surplus, false)]
    [InlineData(0, 0, 0, DiscardReason.Surplus, true)]
    public void Half_of_the_missing_plants_decide(int thrown, int second, int third, DiscardReason reason, bool isMost)
    {
        var missing = default(MissingPlants);
        int[] plantsShort = [thrown, second, third];
        for (var batch = 0; batch < plantsShort.Length; batch++)
        {
            BatchOutcome outcome = new() { PlantsShort = plantsShort[batch] };
            outcome.Discarded[(int)reason] = batch == 0 ? 1 : 0;
            missing.Add(outcome);
        }

        Assert.Equal(isMost, missing.AreMostlyThrownOut);
    }
}
