using BenchSim.Season.Heat;

namespace BenchSim.Season.Tests.Heat;

public class HouseShellTests
{
    [Fact]
    public void Gable_house_by_hand()
    {
        // 8 m wide, 20 m long, eaves 2 m, ridge 5 m: slope sqrt(16 + 9) = 5 m. Roof 2 x 5 x 20 = 200; sides 2 x 2 x 20 = 80; ends 2 x 8 x
        // (2 + 5) / 2 = 56; volume 28 x 20 = 560.
        var shell = HouseShell.Gable(8, 20, 2, 5);
        Assert.Equal((200.0, 80.0, 56.0), (shell.RoofM2, shell.SidesM2, shell.EndsM2));
        Assert.Equal(336, shell.CoverM2);
        Assert.Equal(560, shell.VolumeM3);
        Assert.Equal(160, shell.FloorM2);
    }

    [Fact]
    public void Hoop_house_on_side_walls_by_hand()
    {
        // 6 m wide, 10 m long, walls 1 m: roof 30 pi; sides 20; ends 2 (4.5 pi + 6) = 9 pi + 12; volume (4.5 pi + 6) 10.
        var shell = HouseShell.Hoop(6, 10, 1);
        Assert.Equal(30 * Math.PI, shell.RoofM2, 1e-9);
        Assert.Equal(20, shell.SidesM2, 1e-9);
        Assert.Equal((9 * Math.PI) + 12, shell.EndsM2, 1e-9);
        Assert.Equal((45 * Math.PI) + 60, shell.VolumeM3, 1e-9);
        Assert.Equal(60, shell.FloorM2);
    }

    [Fact]
    public void Impossible_dimensions_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => HouseShell.Hoop(0, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => HouseShell.Hoop(6, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => HouseShell.Hoop(6, 10, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => HouseShell.Gable(6, 10, 3, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => HouseShell.Gable(0, 10, 2, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => HouseShell.Gable(6, 0, 2, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => HouseShell.Gable(6, 10, -1, 3));
    }

    [Fact]
    public void Loss_adds_faces_and_leaking_air()
    {
        // 200 m2 at 4.5, 136 m2 at 1, a perimeter of 56 m at 1.4 W/m K, half an air change of 560 m3: 900 + 136 + 78.4 + 0.33 x 0.5 x 560
        // = 92.4.
        var loss = HeatLoss.Of([new(200, 4.5), new(136, 1), new(56, 1.4)], 0.5, 560);
        Assert.Equal(1114.4, loss.CoverWattsPerKelvin, 1e-9);
        Assert.Equal(92.4, loss.AirWattsPerKelvin, 1e-9);
        Assert.Equal(1206.8, loss.WattsPerKelvin, 1e-9);
        Assert.Equal(0, DesignLoad.Of(loss, 10, 20).Watts);
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatLoss.Of([new(-1, 4.5)], 0.5, 560));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatLoss.Of([new(1, -4.5)], 0.5, 560));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatLoss.Of([new(1, 4.5)], -0.5, 560));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatLoss.Of([new(1, 4.5)], 0.5, -560));
        Assert.Equal(0, HeatLoss.Of([new(0, 4.5), new(20, 0)], 0, 0).WattsPerKelvin);
    }
}
