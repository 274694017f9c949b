namespace BenchSim.Folder.Faults;

/// <summary>Finds the name that was probably meant.</summary>
public static class Spelling
{
    private const int LongestCompared = 40;

    /// <summary>
    /// The known name nearest to a written one, if it is near enough to be a slip: at most one slip in three letters. Case, spaces and
    /// hyphens do not count; ties go to the first known name.
    /// </summary>
    /// <param name="written">The name that was written.</param>
    /// <param name="known">The names there are.</param>
    public static string? Nearest(string written, IEnumerable<string> known)
    {
        var loose = Loose(written);
        if (loose.Length == 0 || loose.Length > LongestCompared)
        {
            return null;
        }

        string? nearest = null;
        var fewest = int.MaxValue;
        foreach (var name in known)
        {
            var other = Loose(name);
            if (other.Length > LongestCompared)
            {
                continue;
            }

            var slips = Distance(loose, other);
            if (slips < fewest && slips * 3 <= Math.Max(loose.Length, other.Length))
            {
                (nearest, fewest) = (name, slips);
            }
        }

        return nearest;
    }

    /// <summary>Whether two names differ by no more than case, spaces, hyphens and underscores.</summary>
    public static bool IsSame(string one, string other) => string.Equals(Loose(one), Loose(other), StringComparison.Ordinal);

    /// <summary>
    /// The known name that is meant: the one that is written, else the only one that differs by no more than case, spaces, hyphens and
    /// underscores; the written text itself where there is none such, or more than one.
    /// </summary>
    public static string Meant(string written, IReadOnlyCollection<string> known)
    {
        if (known.Contains(written, StringComparer.Ordinal))
        {
            return written;
        }

        var loose = Loose(written);
        string[] same =
        [
            .. known.Where(name => string.Equals(Loose(name), loose, StringComparison.Ordinal)).Distinct(StringComparer.Ordinal),
        ];
        return loose.Length > 0 && same.Length == 1 ? same[0] : written;
    }

    /// <summary>Slips between two words, each a letter put in, left out, changed, or swapped with its neighbour (Damerau 1964; Levenshtein
    /// 1966; no letter is touched twice).</summary>
    /// <param name="left">One word.</param>
    /// <param name="right">The other.</param>
    public static int Distance(string left, string right)
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
        var least = Math.Min(Math.Min(cost[i - 1, j] + 1, cost[i, j - 1] + 1), cost[i - 1, j - 1] + changed);
        var swapped = i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1];
        return swapped ? Math.Min(least, cost[i - 2, j - 2] + 1) : least;
    }

    /// <summary>A name in small letters, without spaces, hyphens and underscores.</summary>
    public static string Loose(string name) =>
        string.Concat(name.Where(character => character is not (' ' or '-' or '_'))).ToLowerInvariant();
}
