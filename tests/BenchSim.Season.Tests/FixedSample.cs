using CsCheck;

namespace BenchSim.Season.Tests;

/// <summary>
/// Draws the same random cases on every run, so that a green build stays green. BENCHSIM_MORE_CASES multiplies their number, for a longer search.
/// </summary>
internal static class FixedSample
{
    public static void Each<T>(this Gen<T> gen, int cases, ulong seed, Action<T> check)
    {
        var more = int.TryParse(Environment.GetEnvironmentVariable("BENCHSIM_MORE_CASES"), out var factor) ? factor : 1;
        for (var index = 0; index < cases * more; index++)
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
