using System.Collections.Immutable;
using BenchSim.Folder.Faults;

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
        name.StartsWith(written, StringComparison.Ordinal) ? 0 : Spelling.Distance(written, name);
}
