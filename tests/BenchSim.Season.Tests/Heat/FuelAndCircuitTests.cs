using BenchSim.Season.Heat;

namespace BenchSim.Season.Tests.Heat;

public class FuelAndCircuitTests
{
    [Fact]
    public void Fuel_is_heat_over_content_and_efficiency()
    {
        // 1,000 kWh of useful heat is 3,600 MJ: with propane of 96.487 MJ a gallon at 80 %, 46.639 gallons or 176.55 litres; with
        // electricity 1,000 kWh.
        Assert.Equal(46.639, Fuels.Propane.Units(1e6, 0.8), 0.001);
        Assert.Equal(176.55, Fuels.Propane.ToMetric(Fuels.Propane.Units(1e6, 0.8)), 0.01);
        Assert.Equal(1000, Fuels.Electricity.Units(1e6, 1), 1e-9);
    }

    [Fact]
    public void Tightness_is_found_by_id()
    {
        Assert.All(AirTightnesses.All, tightness => Assert.Same(tightness, AirTightnesses.Find(tightness.Id)));
        Assert.Equal(0.75, AirTightnesses.Find("new-film")!.AirChanges);
        Assert.Null(AirTightnesses.Find("sieve"));
    }

    // By definition: a gallon 3.785412 litres; a therm of 105.5056 MJ 29.3071 kWh; a cord of 128 cubic feet 3.624556 cubic metres.
    [Theory]
    [InlineData("propane", "L", 3.785412)]
    [InlineData("oil", "L", 3.785412)]
    [InlineData("gas", "kWh", 29.3071)]
    [InlineData("electricity", "kWh", 1)]
    [InlineData("wood", "stacked m3", 3.624556)]
    public void Fuels_in_metric_units(string id, string unit, double units)
    {
        var fuel = Fuels.All.Single(each => each.Id == id);
        Assert.Equal(unit, fuel.MetricUnit);
        Assert.Equal(units, fuel.ToMetric(1), 1e-4);
        Assert.Equal(2 * units, fuel.ToMetric(2), 2e-4);
    }

    [Fact]
    public void Mats_by_watts_hours_and_duty() =>
        // 10 days of 24 h, on half the time: 800 W x 240 h x 0.5 = 96 kWh.
        Assert.Equal(96, MatElectricity.KilowattHours(800, 240, 0.5), 1e-9);

    [Fact]
    public void A_circuit_says_by_how_much()
    {
        Assert.Equal(
            "1600 W of heat mats on a circuit that may carry 1440 W all day: 160 W too much for the 80 % rule.",
            CircuitCheck.Of(1600, 120, 15).Words
        );
        Assert.Equal(
            "1400 W of heat mats on a circuit that may carry 1440 W all day: within the 80 % rule.",
            CircuitCheck.Of(1400, 120, 15).Words
        );
    }

    // 80 % of 120 V x 20 A.
    [Fact]
    public void A_load_of_exactly_the_limit_fits() => Assert.True(CircuitCheck.Of(1920, 120, 20).IsWithin);

    [Fact]
    public void What_can_hurt_someone_carries_a_caution()
    {
        string[] cautions = [HeatCautions.Fuel, DesignLoad.Caution, CircuitCheck.Caution, HeatCautions.Structure];
        Assert.All(cautions, caution => Assert.Contains("local codes", caution, StringComparison.Ordinal));
        Assert.Contains("ground-fault", HeatCautions.Mats, StringComparison.Ordinal);
        Assert.Contains("licensed electrician", HeatCautions.Mats, StringComparison.Ordinal);
        Assert.Contains("local codes", HeatCautions.Mats, StringComparison.Ordinal);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Fuels.Propane.Units(-1, 0.8));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fuels.Propane.Units(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MatElectricity.KilowattHours(1, 1, 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => MatElectricity.KilowattHours(1, 1, -0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => MatElectricity.KilowattHours(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => MatElectricity.KilowattHours(1, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => CircuitCheck.Of(1, 0, 15));
        Assert.Throws<ArgumentOutOfRangeException>(() => CircuitCheck.Of(1, 120, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => CircuitCheck.Of(-1, 120, 15));
    }
}
