using BenchSim.Study.Counting;

namespace BenchSim.Study.Tests.Counting;

/// <summary>The same figures the slow way: keep all values and sort them.</summary>
internal static class Naive
{
    public static long Quantile(long[] sorted, int percent) =>
        sorted.First(value => sorted.Count(other => other <= value) * 100L >= percent * (long)sorted.Length);

    public static void Check(long[] values, Seen seen)
    {
        long[] sorted = [.. values.Order()];
        var moments = seen.Moments();
        Assert.Equal(values.Length, moments.Seasons);
        Assert.Equal((UInt128)(ulong)values.Sum(), moments.Sum);
        Assert.Equal(values.Aggregate(UInt128.Zero, (sum, value) => sum + ((UInt128)(ulong)value * (ulong)value)), moments.Squares);
        Assert.Equal((sorted[0], sorted[^1]), (moments.Least, moments.Most));
        foreach (var percent in new[] { 1, 10, 50, 90, 95, 100 })
        {
            Assert.Equal(Quantile(sorted, percent), seen.Quantile(percent));
        }
    }
}
