using System.Collections.Immutable;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Rows of tallies, by day, space or reason.</summary>
internal static class TallyArrays
{
    /// <summary>A row of empty tallies.</summary>
    public static T[] Make<T>(int count)
        where T : Tally, new()
    {
        var row = new T[count];
        for (var i = 0; i < count; i++)
        {
            row[i] = new T();
        }

        return row;
    }

    /// <summary>Counts one season of a row of numbers.</summary>
    public static void Add(this ExactTally[] row, int[] values)
    {
        for (var i = 0; i < row.Length; i++)
        {
            row[i].Add(values[i]);
        }
    }

    /// <summary>Adds another row.</summary>
    public static void Merge(this ExactTally[] row, ExactTally[] other)
    {
        for (var i = 0; i < row.Length; i++)
        {
            row[i].Merge(other[i]);
        }
    }

    /// <summary>Adds another row.</summary>
    public static void Merge(this WideTally[] row, WideTally[] other)
    {
        for (var i = 0; i < row.Length; i++)
        {
            row[i].Merge(other[i]);
        }
    }

    /// <summary>Estimates of a row.</summary>
    public static ImmutableArray<Estimate> ToEstimates(this IEnumerable<Tally> row, StudentFactors student) =>
        [.. row.Select(each => each.ToEstimate(student))];
}
