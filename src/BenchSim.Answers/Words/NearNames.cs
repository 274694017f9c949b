using System.Collections.Immutable;

namespace BenchSim.Answers.Words;

/// <summary>Finds the names that were probably meant.</summary>
public static class NearNames
{
    private const int LongestCompared = 64;
    private const int Most = 5;

    /// <summary>
    /// At most five known names near a written one, nearest first: the same but for case, names that begin with it, then names that differ
    /// by
    /// at most one slip in three letters. Equally near names stay in the order of <paramref name="known"/>.
    /// </summary>
    public static ImmutableArray<string> Of(string written, IEnumerable<string> known)
    {
        var low = written.ToLowerInvariant();
        if (low.Length is 0 or > LongestCompared)
        {
            return [];
        }

        return
        [
            .. known
                .Where(name => name.Length <= LongestCompared)
                .Select(name => (Name: name, Distance: Distance(low, name.ToLowerInvariant())))
                .Where(each => each.Distance <= Math.Max(low.Length, each.Name.Length) / 3)
                .OrderBy(each => each.Distance)
                .Select(each => each.Name)
                .Take(Most),
        ];
    }

    private static int Distance(string written, string name) =>
        name.StartsWith(written, StringComparison.Ordinal) ? 0 : Slips(written, name);

    /// <summary>Letters put in, left out, changed, or swapped with their neighbour (Damerau 1964, Levenshtein 1966).</summary>
    private static int Slips(string left, string right)
    {
        var cost = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
        {
            for (var j = 0; j <= right.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0 ? i + j : Cheapest(cost, left, right, i, j);
            }
        }

        return cost[left.Length, right.Length];
    }

    private static int Cheapest(int[,] cost, string left, string right, int i, int j)
    {
        var changed = left[i - 1] == right[j - 1] ? 0 : 1;
        var least = Math.Min(Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1, cost[i - 1, j - 1] + changed);
        var swapped = i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1];
        return swapped ? Math.Min(least, cost[i - 2, j - 2] + 1) : least;
    }
}
