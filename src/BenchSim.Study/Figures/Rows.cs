using System.Numerics;
using System.Runtime.InteropServices;

namespace BenchSim.Study.Figures;

/// <summary>Sums and ends of rows by day, several days at a time.</summary>
internal static class Rows
{
    /// <summary>The sum of whole numbers.</summary>
    public static long Sum(ReadOnlySpan<int> row)
    {
        var sums = Vector<long>.Zero;
        var vectors = MemoryMarshal.Cast<int, Vector<int>>(row);
        foreach (var vector in vectors)
        {
            Vector.Widen(vector, out var low, out var high);
            sums += low + high;
        }

        var sum = Vector.Sum(sums);
        foreach (var each in row[(vectors.Length * Vector<int>.Count)..])
        {
            sum += each;
        }

        return sum;
    }

    /// <summary>The sum of whole numbers.</summary>
    public static long Sum(ReadOnlySpan<long> row)
    {
        long sum = 0;
        foreach (var each in row)
        {
            sum += each;
        }

        return sum;
    }

    /// <summary>The largest of whole numbers of 0 or more; 0 of none.</summary>
    public static int Most(ReadOnlySpan<int> row)
    {
        var most = Vector<int>.Zero;
        var vectors = MemoryMarshal.Cast<int, Vector<int>>(row);
        foreach (var vector in vectors)
        {
            most = Vector.Max(most, vector);
        }

        var largest = 0;
        for (var lane = 0; lane < Vector<int>.Count; lane++)
        {
            largest = Math.Max(largest, most[lane]);
        }

        foreach (var each in row[(vectors.Length * Vector<int>.Count)..])
        {
            largest = Math.Max(largest, each);
        }

        return largest;
    }

    /// <summary>Adds a row to another, day by day.</summary>
    public static void Add(ReadOnlySpan<int> row, Span<int> to) => Combine(row, to, to, 1);

    /// <summary>What a row exceeds another by, day by day; below 0 where it does not.</summary>
    public static void Excess(ReadOnlySpan<int> row, ReadOnlySpan<int> of, Span<int> excess) => Combine(of, row, excess, -1);

    // With + sign x what.
    private static void Combine(ReadOnlySpan<int> what, ReadOnlySpan<int> with, Span<int> into, int sign)
    {
        var whats = MemoryMarshal.Cast<int, Vector<int>>(what);
        var withs = MemoryMarshal.Cast<int, Vector<int>>(with)[..whats.Length];
        var intos = MemoryMarshal.Cast<int, Vector<int>>(into)[..whats.Length];
        for (var at = 0; at < whats.Length; at++)
        {
            intos[at] = withs[at] + (sign * whats[at]);
        }

        for (var at = whats.Length * Vector<int>.Count; at < what.Length; at++)
        {
            into[at] = with[at] + (sign * what[at]);
        }
    }
}
