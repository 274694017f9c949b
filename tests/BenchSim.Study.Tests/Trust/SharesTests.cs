using BenchSim.Study.Trust;

namespace BenchSim.Study.Tests.Trust;

/// <summary>
/// Shares of a variance against functions whose shares are known in closed form. The sets and draws are fixed by their seed; a limit of
/// four standard errors fails by chance once in 16,000.
/// </summary>
public sealed class SharesTests
{
    private const int Sets = 4096;
    private const ulong Seed = 20;

    // Ishigami and Homma (1990): sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1, each x uniform between -pi and pi. First-order shares V1/V =
    // (1 + b pi^4/5)^2 / 2 / V, V2/V = a^2/8/V, none for x3, with V = a^2/8 + b pi^4/5 + b^2 pi^8/18 + 1/2.
    [Fact]
    public void Ishigamis_function_has_its_first_order_shares()
    {
        const double a = 7;
        const double b = 0.1;
        var (pi4, pi8) = (Math.Pow(Math.PI, 4), Math.Pow(Math.PI, 8));
        var variance = (a * a / 8) + (b * pi4 / 5) + (b * b * pi8 / 18) + 0.5;
        double[] shares = [Math.Pow(1 + (b * pi4 / 5), 2) / 2 / variance, a * a / 8 / variance, 0];

        var sets = ValueSets.Of(Sets, [0, 1, 2], Seed);
        var outcomes = Array.ConvertAll(sets, Ishigami);
        Assert.All(Enumerable.Range(0, 3), value => IsShare(shares[value], First(sets, outcomes, value)));
    }

    // The total share of x3 is 8 b^2 pi^8 / 225 / V; that of x1 and x3 together all that is not x2's; that of x2 its own, as it meets no
    // other.
    [Fact]
    public void Ishigamis_function_has_its_total_shares()
    {
        const double a = 7;
        const double b = 0.1;
        var (pi4, pi8) = (Math.Pow(Math.PI, 4), Math.Pow(Math.PI, 8));
        var variance = (a * a / 8) + (b * pi4 / 5) + (b * b * pi8 / 18) + 0.5;
        IsShare(8 * b * b * pi8 / 225 / variance, Total(3, Ishigami, variance, [false, false, true]));
        IsShare(1 - (a * a / 8 / variance), Total(3, Ishigami, variance, [true, false, true]));
        IsShare(a * a / 8 / variance, Total(3, Ishigami, variance, [false, true, false]));
    }

    // Sobol's g function: the product of (|4 x - 2| + a) / (1 + a). Each factor has the variance v = 1 / (3 (1 + a)^2) and the product the
    // variance prod(1 + v) - 1; the total share of a group is what is left without it: 1 - (prod over the others (1 + v) - 1) / V.
    [Fact]
    public void Sobols_g_function_has_its_shares()
    {
        double[] a = [0, 1, 4.5, 9, 99, 99, 99, 99];
        var v = Array.ConvertAll(a, each => 1 / (3 * (1 + each) * (1 + each)));
        var variance = Product(v) - 1;
        var sets = ValueSets.Of(Sets, [.. Enumerable.Range(0, a.Length)], Seed);
        var outcomes = Array.ConvertAll(sets, G);
        Assert.All(Enumerable.Range(0, a.Length), value => IsShare(v[value] / variance, First(sets, outcomes, value)));

        IsShare(
            1 - ((Product(v[2..]) - 1) / variance),
            Total(a.Length, G, variance, [true, true, false, false, false, false, false, false])
        );
        IsShare(1 - ((Product(v[..2]) - 1) / variance), Total(a.Length, G, variance, [false, false, true, true, true, true, true, true]));

        double G(double[] x) => a.Zip(x, (each, at) => (Math.Abs((4 * at) - 2) + each) / (1 + each)).Aggregate((one, other) => one * other);

        static double Product(double[] of) => of.Aggregate(1.0, (product, each) => product * (1 + each));
    }

    // y = 3 x1 + 2 x2 + x3 and one that does nothing: shares 9, 4, 1 and 0 of 14. Cut into m parts a straight line shows all of its share
    // but 1/m^2 of it. Nominal 90 % over 500 repeats: at least 85 %, which an interval that covers 90 % misses once in 10,000.
    [Fact]
    public void The_intervals_hold_the_shares_as_often_as_they_say()
    {
        const int repeats = 500;
        const int few = 256;
        double[] weights = [3, 2, 1, 0];
        var covered = new int[weights.Length];
        var parts = FirstShares.Parts(few);
        for (var repeat = 0; repeat < repeats; repeat++)
        {
            var sets = ValueSets.Others(few, weights.Length, Seed + (ulong)repeat);
            var outcomes = Array.ConvertAll(sets, set => set.Zip(weights, (x, weight) => x * weight).Sum());
            var resampled = new Bootstrap(few, Seed + (ulong)repeat);
            for (var value = 0; value < weights.Length; value++)
            {
                var part = FirstShares.PartsOf(sets, value, parts);
                var share = resampled.Of(drawn => FirstShares.Of(part, outcomes, parts, drawn));
                var truth = weights[value] * weights[value] / 14 * (1 - (1.0 / (parts * parts)));
                covered[value] += share.Low <= truth && truth <= share.High ? 1 : 0;
            }
        }

        Assert.All(covered, times => Assert.True(times >= 0.85 * repeats, $"{string.Join(", ", covered)} of {repeats}"));
    }

    private static double Ishigami(double[] set)
    {
        var x = Array.ConvertAll(set, at => ((2 * at) - 1) * Math.PI);
        return Math.Sin(x[0]) + (7 * Math.Pow(Math.Sin(x[1]), 2)) + (0.1 * Math.Pow(x[2], 4) * Math.Sin(x[0]));
    }

    private static ShareEstimate First(double[][] sets, double[] outcomes, int value)
    {
        var parts = FirstShares.Parts(sets.Length);
        var part = FirstShares.PartsOf(sets, value, parts);
        return new Bootstrap(sets.Length, Seed).Of(drawn => FirstShares.Of(part, outcomes, parts, drawn));
    }

    private static ShareEstimate Total(int values, Func<double[], double> f, double variance, bool[] group)
    {
        var first = ValueSets.Of(Sets, [.. Enumerable.Range(0, values)], Seed);
        var second = ValueSets.Others(Sets, values, Seed);
        var (before, after) = (first.Select(f).ToArray(), TotalShares.Mixed(first, second, group).Select(f).ToArray());
        return new Bootstrap(Sets, Seed).Of(drawn => TotalShares.Of(before, after, variance, drawn));
    }

    // Half a 90 % interval is 1.645 standard errors. Cutting a range into 32 parts hides what bends within a part: at most 0.015 here
    // (of sin^2 over a thirty-second of two turns 1 - (sin(pi/16) / (pi/16))^2 = 1.3 %).
    private static void IsShare(double expected, ShareEstimate share)
    {
        var error = (share.High - share.Low) / 2 / 1.645;
        Assert.InRange(share.Share, expected - (4 * error) - 0.015, expected + (4 * error) + 0.015);
        Assert.InRange(error, 0, 0.03);
    }
}
