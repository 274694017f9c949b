using BenchSim.Season.Heat;
using BenchSim.Season.Values;
using Published.Weather;

namespace Published.Heat;

/// <summary>Houses, coverings and leaking air against heat_examples.csv and ucover.csv.</summary>
public class HouseHeatTests
{
    private const double Foot = 0.3048;

    [Fact]
    public void Hoop_house_of_case_C1_has_its_area_and_volume()
    {
        // Semicircle hoop 20 x 48 ft: A = 1822.1237 ft2, V = 7539.8224 ft3.
        var shell = HouseShell.Hoop(20 * Foot, 48 * Foot);
        Assert.Equal(1822.1237, shell.CoverM2 / (Foot * Foot), 1e-3);
        Assert.Equal(7539.8224, shell.VolumeM3 / (Foot * Foot * Foot), 1e-3);
        Assert.Equal(960, shell.FloorM2 / (Foot * Foot), 1e-9);
    }

    [Theory]
    [InlineData("C1")]
    [InlineData("C1b")]
    public void Heat_loss_of_case_C1(string id)
    {
        // U = 0.7 Btu/h ft2 F, one air change, 60 F in and 0 F out. The rows count leaking air with 0.018 (C1) and 0.02 (C1b) Btu/ft3 F;
        // ours is 0.33 Wh/m3 K.
        var shell = HouseShell.Hoop(20 * Foot, 48 * Foot);
        var loss = HeatLoss.Of(shell, 0.7 * HeatUnits.UValueOfBtu, 1);
        const double Kelvin = 60 / 1.8;
        Assert.Equal(1, loss.CoverWattsPerKelvin * Kelvin * HeatUnits.BtuPerWattHour / Value(id, "conduction"), 1e-6);

        // The whole house: 0.33 against 0.018 within 0.5 %, against the rounded-up 0.02 within 1.5 %.
        var load = DesignLoad.Of(loss, (60 - 32) / 1.8, (0 - 32) / 1.8);
        Assert.Equal(1, load.BtuPerHour / Value(id, "total"), id == "C1" ? 0.005 : 0.015);
    }

    [Fact]
    public void Leaking_air_in_Btu_and_in_watt_hours()
    {
        // 0.018 = 0.24 Btu/lb F x 0.075 lb/ft3, and 1.2 kg/m3 x 1006 J/kg K / 3600: the same heat to 0.5 %. The customary 0.33 is that
        // figure (0.3353) cut to two digits, 1.6 % less.
        Assert.Equal(1, 0.24 * 0.075 / 0.018, 1e-12);

        // Watt-hours a cubic metre and kelvin in one Btu a cubic foot and degree Fahrenheit, by definition of the units.
        const double VolumetricOfBtu = 1055.05585262 / 3600 / (0.3048 * 0.3048 * 0.3048) * 1.8;
        Assert.Equal(1, 0.018 * VolumetricOfBtu / (1.2 * 1006 / 3600), 0.005);
        Assert.Equal(1, HeatLoss.AirWattHours / (0.018 * VolumetricOfBtu), 0.017);
    }

    [Fact]
    public void Metric_house_of_case_C6()
    {
        // A = 185 m2, U = 4.0, V = 260 m3, one air change, 25 K: 20,645 W.
        var loss = HeatLoss.Of([new HeatLossPart(185, 4)], 1, 260);
        Assert.Equal(Value("C6", "total"), DesignLoad.Of(loss, 20, -5).Watts, 1e-6);
    }

    [Fact]
    public void Units_of_heat()
    {
        Assert.Equal(HeatUnits.UValueOfBtu, Value("U1", "W/m2K"), 1e-6);
        Assert.Equal(HeatUnits.BtuPerWattHour, Value("U2", "Btu/h"), 1e-6);

        // U3: 15 to 30 Btu/h ft2 are 4.396 to 8.792 W/ft2.
        Assert.Equal(4.396, 15 / HeatUnits.BtuPerWattHour, 5e-4);
        Assert.Equal(8.792, 30 / HeatUnits.BtuPerWattHour, 5e-4);
    }

    [Theory]
    [InlineData("single-poly", "single polyethylene", "seen")]
    [InlineData("double-poly", "double inflated polyethylene", "seen")]
    [InlineData("polycarbonate", "double-wall polycarbonate", "seen")]
    [InlineData("glass", "single glass", "memory")]
    [InlineData("double-poly-ir", "double polyethylene + IR film", "memory")]
    [InlineData("double-glass", "double glass", "memory")]
    [InlineData("double-poly-over-glass", "double poly over glass", "memory")]
    [InlineData("double-poly-curtain", "double poly + night curtain", "memory")]
    [InlineData("concrete-block", "concrete block 8 in", "memory")]
    [InlineData("concrete-poured", "poured concrete 6 in", "memory")]
    [InlineData("foam-board", "1-in foam board wall", "memory")]
    public void Coverings_are_those_of_the_table_and_say_how_far_to_trust_them(string id, string cover, string flag)
    {
        // Rows from memory are compared only to show that the library copies its own table; they prove nothing about the material.
        var row = DataFolder.Rows("ucover.csv").Single(row => row["kind"] == "U" && row["cover"] == cover && row["flag"] == flag);
        var covering = Coverings.All.Single(each => each.Id == id);
        Assert.Equal(DataFolder.Number(row["W_m2K"]), covering.UValue, 1e-3);
        Assert.Equal(DataFolder.Number(row["low_or_value"]) * HeatUnits.UValueOfBtu, covering.UValue, 1e-3);
        Assert.Equal(flag == "seen" ? Trust.Seen : Trust.Memory, covering.Source.Trust);
    }

    [Fact]
    public void No_covering_goes_untested() => Assert.Equal(11, Coverings.All.Length);

    [Fact]
    public void Double_film_saves_about_a_third_over_single_film()
    {
        // ucover.csv: 35 % fuel saving of double over single layer (seen), 34 % (Rasheed et al. 2017, seen). Ours from U values alone: 1
        // - 4.543 / 7.098 = 36 %.
        double UValue(string id) => Coverings.All.Single(covering => covering.Id == id).UValue;
        var saving = 1 - (UValue("double-poly") / UValue("single-poly"));
        Assert.InRange(saving, 0.33, 0.37);
    }

    private static double Value(string id, string quantity) =>
        DataFolder.Number(DataFolder.Rows("heat_examples.csv").Single(row => row["id"] == id && row["quantity"] == quantity)["value"]);
}
