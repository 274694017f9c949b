using System.Globalization;
using CsCheck;

namespace BenchSim.Season.Tests;

/// <summary>
/// Draws the same random cases on every run, so that a green build stays green. BENCHSIM_MORE_CASES multiplies their number: above 1 for a
/// longer search, below 1 for a quick look, as the mutation check takes (docs/mutation.md).
/// </summary>
internal static class FixedSample
{
    private static readonly double s_more = double.TryParse(
        Environment.GetEnvironmentVariable("BENCHSIM_MORE_CASES"),
        NumberStyles.Float,
        CultureInfo.InvariantCulture,
        out var factor
    )
        ? factor
        : 1;

    /// <summary>How many cases are drawn where so many were asked for: at least 1.</summary>
    public static int CasesOf(int asked) => Math.Max(1, (int)(asked * s_more));

    public static void Each<T>(this Gen<T> gen, int cases, ulong seed, Action<T> check)
    {
        for (var index = 0; index < CasesOf(cases); index++)
        {
            var value = gen.Generate(new PCG((uint)index, seed), null, out _);
            try
            {
                check(value);
            }
            catch (Exception exception)
            {
                throw new InvalidOperationException($"Case {index} of seed {seed}: {exception.Message}", exception);
            }
        }
    }
}
