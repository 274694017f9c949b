using BenchSim.Season.Inputs;

namespace BenchSim.Season.Stands;

/// <summary>How seed becomes a stand: chances of a cell, and how many trays bring the wanted plants (docs/model.md section 4).</summary>
public static class Stand
{
    private const int Points = 200;

    /// <summary>
    /// Percent normal seedlings at a temperature relative to its best, 0 to 1: linear between points, level beyond them; 1 without a curve.
    /// </summary>
    /// <param name="crop">Crop.</param>
    /// <param name="mediumC">Time-weighted mean temperature of the medium up to emergence, degrees Celsius.</param>
    public static double RelativeGermination(Crop crop, double mediumC)
    {
        ArgumentNullException.ThrowIfNull(crop);
        var curve = crop.GerminationCurve;
        if (curve.IsDefaultOrEmpty)
        {
            return 1;
        }

        var best = 0.0;
        foreach (var point in curve)
        {
            best = Math.Max(best, point.Percent);
        }

        return best > 0 ? PercentAt(curve.AsSpan(), mediumC) / best : 0;
    }

    /// <summary>Chance that a cell brings at least one seedling: 1 - (1 - g)^n.</summary>
    /// <param name="seed">Chance of one seed g, 0 to 1.</param>
    /// <param name="seeds">Seeds a cell n, 1 or more.</param>
    public static double CellChance(double seed, int seeds) => seeds == 1 ? seed : 1 - Math.Pow(1 - seed, seeds);

    /// <summary>
    /// Chance that n cells or seeds bring at least the wanted plants: averaged over the packet's law at 200 mid-quantiles, and over the
    /// losses of the batch in closed form.
    /// </summary>
    /// <param name="packet">Law of the packet's germination.</param>
    /// <param name="tries">Cells or seeds.</param>
    /// <param name="chanceOf">Chance of a plant from one of them before the losses of the batch, given the packet's germination.</param>
    /// <param name="loss">Law of the losses.</param>
    /// <param name="wanted">Plants wanted.</param>
    public static double Chance(BetaLaw packet, int tries, Func<double, double> chanceOf, StandLoss loss, int wanted)
    {
        ArgumentNullException.ThrowIfNull(packet);
        ArgumentNullException.ThrowIfNull(chanceOf);
        ArgumentNullException.ThrowIfNull(loss);
        return Chance(packet, tries, chanceOf, new PlantGains(loss, wanted));
    }

    private static double Chance(BetaLaw packet, int tries, Func<double, double> chanceOf, PlantGains gains)
    {
        if (gains.Wanted > tries)
        {
            return 0;
        }

        var (loss, wanted) = (gains.Loss, gains.Wanted);
        return loss.HasSpread
            ? Averaged(packet, germination => gains.Reached(tries, chanceOf(germination), tries))
            : Averaged(packet, germination => Binomial.AtLeast(tries, chanceOf(germination) * (1 - loss.Mean), wanted));
    }

    // The mean of something over the packet's law, at mid-quantiles.
    internal static double Averaged(BetaLaw packet, Func<double, double> of)
    {
        var sum = 0.0;
        for (var point = 0; point < Points; point++)
        {
            sum += of(packet.Quantile((point + 0.5) / Points));
        }

        return sum / Points;
    }

    /// <summary>The smallest whole number of trays whose chance of the wanted plants is at least the assurance.</summary>
    /// <param name="packet">Law of the packet's germination.</param>
    /// <param name="each">Cells or seeds a tray, 1 or more.</param>
    /// <param name="chanceOf">Chance of a plant from one of them before the losses of the batch, given the packet's germination.</param>
    /// <param name="loss">Law of the losses.</param>
    /// <param name="wanted">Plants wanted, 1 or more.</param>
    /// <param name="assurance">Chance asked for, between 0 and 1.</param>
    /// <returns>The number of trays and its chance; -1 trays when 100 times the obvious number is not enough.</returns>
    public static (int Trays, double Chance) TraysFor(
        BetaLaw packet,
        int each,
        Func<double, double> chanceOf,
        StandLoss loss,
        int wanted,
        double assurance
    )
    {
        ArgumentNullException.ThrowIfNull(packet);
        ArgumentNullException.ThrowIfNull(chanceOf);
        ArgumentNullException.ThrowIfNull(loss);
        var gains = new PlantGains(loss, wanted);
        var most = (int)Math.Min(100L * ((wanted / each) + 1), int.MaxValue / each);
        var middle = chanceOf(packet.Quantile(0.5)) * (1 - loss.Mean);
        var low = Math.Min(Math.Max(0, (wanted - 1) / each), most);
        var high = (int)Math.Min(Math.Max(low + 1, Math.Ceiling(wanted / (each * Math.Max(middle, 1e-6)))), most);
        var chance = Chance(packet, high * each, chanceOf, gains);
        while (chance < assurance && high < most)
        {
            low = high;
            high = (int)Math.Min(most, high + Math.Max(1L, high / 8));
            chance = Chance(packet, high * each, chanceOf, gains);
        }

        if (chance < assurance)
        {
            return (-1, chance);
        }

        while (high - low > 1)
        {
            // Near the answer the next smaller number is the likeliest; halving comes after one such step.
            var trial = high - low > 8 ? (low + high) / 2 : high - 1;
            var found = Chance(packet, trial * each, chanceOf, gains);
            (low, high, chance) = found >= assurance ? (low, trial, found) : (trial, high, chance);
        }

        return (high, chance);
    }

    private static double PercentAt(ReadOnlySpan<GerminationPoint> curve, double mediumC)
    {
        if (mediumC <= curve[0].TemperatureC)
        {
            return curve[0].Percent;
        }

        for (var index = 1; index < curve.Length; index++)
        {
            var (left, right) = (curve[index - 1], curve[index]);
            if (mediumC <= right.TemperatureC)
            {
                var part = (mediumC - left.TemperatureC) / (right.TemperatureC - left.TemperatureC);
                return left.Percent + (part * (right.Percent - left.Percent));
            }
        }

        return curve[^1].Percent;
    }
}
