using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Site;

/// <summary>
/// The electricity keys of a mat. In the good site the mats are on lines 9 to 14 and have 10 places; the keys begin on line 15.
/// </summary>
public class MatPowerTests
{
    private const string Mat = "temperature = \"25 C\"";

    // tests/Published/data/heat_examples.csv, E120_15: 0.8 x 15 A x 120 V = 1440 W.
    [Theory]
    [InlineData("watts = 1440", null)]
    [InlineData(
        "watts = 1441",
        "site.toml:15:9: 1441 W of heat mats on a circuit that may carry 1440 W all day: 1 W too much for the 80 % rule; "
    )]
    [InlineData(
        "watts_each_place = 150",
        "site.toml:15:20: 1500 W of heat mats on a circuit that may carry 1440 W all day: 60 W too much for the 80 % rule; "
    )]
    public void A_load_above_the_continuous_limit_is_a_warning_with_its_caution(string watts, string? warning)
    {
        using var folder = new TestFolder(TestFolder.Site(Mat, $"{Mat}\n{watts}\ncircuit_volts = 120\ncircuit_amps = 15"));
        var reading = folder.Read();
        Assert.NotNull(reading.Scenario);
        var caution =
            "This compares watts with the 80 % rule for loads of three hours and more (NEC 210.20(A)). It does not check wires, "
            + "connections or anything else on the circuit. Wet places need ground-fault protection; have a licensed electrician "
            + "look, under local codes";
        Assert.Equal(warning is null ? null : warning + caution, reading.Warnings.SingleOrDefault()?.ToString());
    }

    [Fact]
    public void The_electricity_of_mats_is_read()
    {
        Assert.Equal(
            new MatPower(200, 0.6, 120, 20, 0.15),
            Read("watts = 200\nduty = \"60 %\"\ncircuit_volts = 120\ncircuit_amps = 20\npower_price = 0.15")
        );
        Assert.Equal(new MatPower(200, 1, null, null, null), Read("watts = 200"));

        // 10 places of 16.5 W; with 20 places from April the mats are 20 x 16.5 W.
        Assert.Equal(165, Read("watts_each_place = 16.5")!.Watts);
        Assert.Equal(330, Read("watts_each_place = 16.5\nchanges = [{ from = 2027-04-01, places = 20 }]")!.Watts);
        Assert.Null(Read(""));
    }

    [Theory]
    [InlineData(
        "duty = 0.5",
        "site.toml:15:1: duty is given but the watts of the mats are not; add a line such as watts = 200, for all mats together, or "
            + "watts_each_place = 19.5"
    )]
    [InlineData(
        "watts = 100\nwatts_each_place = 10",
        "site.toml:16:20: watts_each_place is given together with watts; write watts, or watts_each_place, not both"
    )]
    [InlineData(
        "watts = 100\ncircuit_volts = 120",
        "site.toml:16:1: circuit_volts is given but circuit_amps is not; add a line such as circuit_amps = 15, or leave both out"
    )]
    [InlineData(
        "watts = 100\ncircuit_amps = 15",
        "site.toml:16:1: circuit_amps is given but circuit_volts is not; add a line such as circuit_volts = 120, or leave both out"
    )]
    [InlineData("watts = 100\nduty = 60", "site.toml:16:8: duty is 60, which is more than all; write 60 % or 0.6")]
    [InlineData("watts = \"200 W\"", "site.toml:15:9: watts is \"200 W\", which is not a number; write a number, from 0 to 100000")]
    public void Bad_electricity_says_where_and_what(string lines, string message) =>
        Assert.Equal(message, Assert.Single(TestFolder.Faults(TestFolder.Site(Mat, $"{Mat}\n{lines}"))));

    [Fact]
    public void A_bench_has_no_watts() =>
        Assert.Equal(
            "site.toml:20:9: watts is only for a mat; take it out, or write kind = \"mat\"",
            Assert.Single(TestFolder.Faults(TestFolder.Site("places = 60", "places = 60\nwatts = 100")))
        );

    private static MatPower? Read(string lines)
    {
        using var folder = new TestFolder(TestFolder.Site(Mat, $"{Mat}\n{lines}"));
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        return reading.Scenario!.Spaces[0].Power;
    }
}
