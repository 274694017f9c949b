using Published.Engine;

namespace BenchSim.Published.Season;

/// <summary>Instants at which trays come at random.</summary>
internal static class Comings
{
    /// <summary>A steady stream from instant 0 on, a few more than come by the end, so that it does not run dry.</summary>
    public static double[] Steady(Draws draws, double rate, double end)
    {
        var comings = new double[Most(rate * end)];
        var now = 0.0;
        for (var index = 0; index < comings.Length; index++)
        {
            comings[index] = now += draws.Exponential(1 / rate);
        }

        return now > end ? comings : throw new InvalidOperationException("The stream runs dry before the end.");
    }

    /// <summary>
    /// A stream whose rate changes: the fastest there is, thinned. Those past the end come later than anything is played.
    /// </summary>
    public static double[] Changing(Draws draws, Func<double, double> rate, double fastest, double end)
    {
        var comings = new double[Most(fastest * end)];
        Array.Fill(comings, 2 * (end + 1000));
        var (now, index) = (0.0, 0);
        while ((now += draws.Exponential(1 / fastest)) <= end)
        {
            if (draws.Uniform() * fastest < rate(now))
            {
                comings[index++] = now;
            }
        }

        return comings;
    }

    /// <summary>More than ever come where so many are expected: six standard deviations, and some.</summary>
    public static int Most(double expected) => (int)(expected + (6 * Math.Sqrt(expected))) + 20;
}
