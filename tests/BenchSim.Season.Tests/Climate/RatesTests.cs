using BenchSim.Season.Climate;

namespace BenchSim.Season.Tests.Climate;

/// <summary>
/// What laws add at a temperature, worked out for several laws at a step, is that of each by hand, and to the bit that of each by itself.
/// </summary>
public class RatesTests
{
    // Below, at and above each of the cardinal temperatures, each through a day of its own.
    private static readonly double[] s_air =
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
    public void Emergence_at_many_temperatures()
    {
        // Base 12, optimum 30, level to 34, ceiling 40; the medium is 2 K warmer than the air. Below the optimum T - 12, 18 to the end of
        // the plateau, above it 18 (40 - T) / 6.
        var sums = Days(HeatLaw.Emergence(12, 30, 34, 40), 2, 1);
        Assert.All(s_air.Index(), day => Assert.Equal(Emergence(day.Item + 2), sums[day.Index], 1e-12));

        static double Emergence(double medium) =>
            medium switch
            {
                <= 12 or >= 40 => 0,
                <= 30 => medium - 12,
                <= 34 => 18,
                _ => 18 * (40 - medium) / 6,
            };
    }

    [Fact]
    public void Emergence_without_a_plateau_falls_from_the_optimum()
    {
        // Base 12, optimum 30, ceiling 40: above the optimum 18 (40 - T) / 10.
        var sums = Days(HeatLaw.Emergence(12, 30, 30, 40), 2, 1);
        Assert.All(s_air.Index(), day => Assert.Equal(Emergence(day.Item + 2), sums[day.Index], 1e-12));

        static double Emergence(double medium) =>
            medium switch
            {
                <= 12 or >= 40 => 0,
                <= 30 => medium - 12,
                _ => 18 * (40 - medium) / 10,
            };
    }

    [Fact]
    public void Growth_at_many_temperatures()
    {
        // Base 10, cap 28, three quarters of the light, no offset: at most 0.75 x 18 = 13.5.
        var sums = Days(HeatLaw.Growth(10, 28), 2, 0.75);
        Assert.All(s_air.Index(), day => Assert.Equal(0.75 * Math.Clamp(day.Item - 10, 0, 18), sums[day.Index], 1e-12));
    }

    [Fact]
    public void Temperature_above_a_hundred_below_nought()
    {
        var sums = Days(HeatLaw.Warmth, 2, 0.75);
        Assert.All(s_air.Index(), day => Assert.Equal(day.Item + 102, sums[day.Index], 1e-12));
    }

    // Twenty laws of all kinds, so that blocks are full, half full and of a law alone, through 60 days of any air: each sum has the bits of
    // adding hour after hour what the law says of that hour.
    [Fact]
    public void Laws_side_by_side_have_the_bits_of_each_alone()
    {
        const int DaysPlayed = 60;
        const double OffsetK = -1.7;
        var random = new Random(12);
        var air = Enumerable.Range(0, DaysPlayed * 24).Select(_ => -15 + (60 * random.NextDouble())).ToArray();
        var light = Enumerable.Range(0, DaysPlayed).Select(_ => random.NextDouble()).ToArray();
        var heat = new HeatSums(DaysPlayed, light, OffsetK, (_, day, into) => air.AsSpan(day * 24, 24).CopyTo(into));
        for (var number = 0; number < 20; number++)
        {
            var law = Law(number, random);
            var (table, sum) = (heat.Add(law, 0), 0.0);
            for (var hour = 0; hour < air.Length; hour++)
            {
                Assert.Equal((long)Math.Round(sum * (1e6 / 24)), table.At(hour));
                Assert.Equal(sum, table.Block.Sums[(hour * HeatBlock.Most) + (number % HeatBlock.Most)]);
                sum += Rate(law, air[hour], OffsetK, light[hour / 24]);
            }
        }
    }

    // docs/model.md sections 4 and 5, an hour at a time.
    private static double Rate(HeatLaw law, double air, double offset, double light) =>
        law.Kind switch
        {
            HeatKind.Growth => light * Math.Max(0, Math.Min(air, law.OptimumC) - law.BaseC),
            HeatKind.Emergence => EmergenceRate.At(air + offset, law.BaseC, law.OptimumC, law.PlateauC, law.CeilingC),
            _ => air + offset + 100,
        };

    private static HeatLaw Law(int number, Random random)
    {
        var (bottom, rise, fall) = (15 * random.NextDouble(), 5 + (20 * random.NextDouble()), 1 + (15 * random.NextDouble()));
        return (number % 5) switch
        {
            0 => HeatLaw.Growth(bottom, bottom + rise),
            1 => HeatLaw.Warmth,
            2 => HeatLaw.Emergence(bottom, bottom + rise, bottom + rise, bottom + rise + fall),
            _ => HeatLaw.Emergence(bottom, bottom + rise, bottom + rise + (fall * random.NextDouble()), bottom + rise + fall),
        };
    }

    // What a law adds in each of the days, degree-days.
    private static double[] Days(HeatLaw law, double offset, double light)
    {
        var heat = new HeatSums(s_air.Length, [.. s_air.Select(_ => light)], offset, (_, day, into) => into.Fill(s_air[day]));
        var table = heat.Add(law, 0);
        heat.FillTo(s_air.Length * 24);
        return [.. s_air.Select((_, day) => (Sum(day + 1) - Sum(day)) / 24)];

        double Sum(int day) => table.Block.Sums[day * 24 * HeatBlock.Most];
    }
}
