using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Seed;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Planning;

/// <summary>
/// When the value of a packet is aged: the date of its test, the storage and the constants of its crop are known, and the test is not after
/// the sowing.
/// </summary>
public class SeedAgeTests
{
    // Lettuce at 10 % and 20 C: sigma 68.99 days (ClimateAndHeatTests). 97.725 % is probit 2: after 68.99 days probit 1, which is 84.13 %.
    [Theory]
    [InlineData("lettuce", 69, true, 0.8413)]
    [InlineData("lettuce", 0, true, 0.97725)]
    [InlineData("lettuce", -1, false, 0.97725)]
    [InlineData("lettuce", null, false, 0.97725)]
    [InlineData("eggplant", 69, false, 0.97725)]
    public void Seed_is_aged_from_its_test_to_its_sowing(string crop, int? daysBefore, bool isAged, double germination)
    {
        var rules = new SiteRules { SeedStorage = new SeedStorage(10, 20) };
        var batch = Made(crop, daysBefore);
        Assert.Equal(isAged, SeedAge.IsAged(rules, batch));
        Assert.Equal(germination, SeedAge.AtSowing(rules, batch), 2e-4);
    }

    [Fact]
    public void Without_a_storage_the_packet_s_value_stands()
    {
        Assert.False(SeedAge.IsAged(new SiteRules(), Made("lettuce", 69)));
        Assert.Equal(0.97725, SeedAge.AtSowing(new SiteRules(), Made("lettuce", 69)));
    }

    private static BatchPlan Made(string crop, int? daysBefore)
    {
        var order = Batch("a", 50, Monday, crop) with { Germination = 0.97725 };
        var batch = Plan(Scenario([Mat(9), Bench(9), Table(9)], [order], crops: [Crop(crop)])).Batches[0];
        return batch with { Order = order with { TestedOn = daysBefore is { } days ? Monday.AddDays(-days) : null } };
    }
}
