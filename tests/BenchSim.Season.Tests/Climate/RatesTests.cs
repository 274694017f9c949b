using BenchSim.Season.Climate;

namespace BenchSim.Season.Tests.Climate;

/// <summary>The rates of a row of hours, worked out several at a step, are those of each hour by hand; 23 hours leave a rest whatever the step.</summary>
public class RatesTests
{
    // Below, at and above each of the cardinal temperatures; the last ones, which a whole step leaves over, are warm.
    private static readonly double[] Air =
    [
        -5,
        0,
        8,
        9.5,
        10,
        10.5,
        12,
        15,
        20,
        39,
        41,
        60,
        27.5,
        28,
        28.5,
        30,
        32,
        35,
        36,
        38,
        22,
        25,
        33,
    ];

    [Fact]
    public void Emergence_in_a_row_of_hours()
    {
        // Base 12, optimum 30, ceiling 40; the medium is 2 K warmer than the air. Below the optimum T - 12, above it 18 (40 - T) / 10.
        var rates = new double[Air.Length];
        EmergenceRate.Fill(Air, 2, 12, 30, 40, rates);
        Assert.All(Air.Index(), hour => Assert.Equal(Emergence(hour.Item + 2), rates[hour.Index], 1e-12));

        static double Emergence(double medium) =>
            medium switch
            {
                <= 12 or >= 40 => 0,
                <= 30 => medium - 12,
                _ => 18 * (40 - medium) / 10,
            };
    }

    [Fact]
    public void Growth_in_a_row_of_hours()
    {
        // Base 10, cap 28, three quarters of the light: at most 0.75 x 18 = 13.5.
        var rates = new double[Air.Length];
        GrowthRate.Fill(Air, 0.75, 10, 28, rates);
        Assert.All(Air.Index(), hour => Assert.Equal(0.75 * Math.Clamp(hour.Item - 10, 0, 18), rates[hour.Index], 1e-12));
    }
}
