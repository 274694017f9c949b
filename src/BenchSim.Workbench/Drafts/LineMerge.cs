namespace BenchSim.Workbench.Drafts;

/// <summary>
/// Puts two changes of a text together, line by line. Where both change the same lines, or lines that touch, nothing is put together.
/// </summary>
internal static class LineMerge
{
    // Lines times lines: more is taken for one change.
    private const long MostWork = 25_000_000;

    /// <summary>The text with both changes; null where they meet.</summary>
    /// <param name="from">The text that both changed.</param>
    /// <param name="one">One change.</param>
    /// <param name="other">The other.</param>
    public static string? Of(string from, string one, string other)
    {
        var (lines, left, right) = (Lines(from), Lines(one), Lines(other));
        var changes = Changes(lines, left).Select(hunk => (hunk, Of: left)).ToList();
        foreach (var hunk in Changes(lines, right))
        {
            if (changes.Any(each => Same(each, (hunk, right))))
            {
                continue;
            }

            if (changes.Any(each => hunk.Start <= each.hunk.End && each.hunk.Start <= hunk.End))
            {
                return null;
            }

            changes.Add((hunk, right));
        }

        var merged = new List<string>();
        var at = 0;
        foreach (var (hunk, source) in changes.OrderBy(each => each.hunk.Start))
        {
            merged.AddRange(lines[at..hunk.Start]);
            merged.AddRange(source[hunk.NewStart..hunk.NewEnd]);
            at = hunk.End;
        }

        merged.AddRange(lines[at..]);
        return string.Concat(merged);
    }

    private static bool Same((Hunk Hunk, string[] Of) one, (Hunk Hunk, string[] Of) other) =>
        one.Hunk.Start == other.Hunk.Start
        && one.Hunk.End == other.Hunk.End
        && one.Of.AsSpan(one.Hunk.NewStart..one.Hunk.NewEnd).SequenceEqual(other.Of.AsSpan(other.Hunk.NewStart..other.Hunk.NewEnd));

    // With their line ends, so that what is put together again is what was taken apart.
    private static string[] Lines(string text)
    {
        var lines = new List<string>();
        var at = 0;
        while (at < text.Length)
        {
            var end = text.IndexOf('\n', at) is >= 0 and var found ? found + 1 : text.Length;
            lines.Add(text[at..end]);
            at = end;
        }

        return [.. lines];
    }

    private static List<Hunk> Changes(string[] from, string[] to)
    {
        var front = from.AsSpan().CommonPrefixLength(to, StringComparer.Ordinal);
        var back = 0;
        while (back < Math.Min(from.Length, to.Length) - front && from[^(back + 1)] == to[^(back + 1)])
        {
            back++;
        }

        var (rows, columns) = (from.Length - front - back, to.Length - front - back);
        if (rows == 0 && columns == 0)
        {
            return [];
        }

        return rows == 0 || columns == 0 || (long)rows * columns > MostWork
            ? [new Hunk(front, front + rows, front, front + columns)]
            : Between(from.AsSpan(front, rows), to.AsSpan(front, columns), front);
    }

    // The longest common subsequence of lines, and what lies between its members.
    private static List<Hunk> Between(ReadOnlySpan<string> from, ReadOnlySpan<string> to, int shift)
    {
        var longest = new int[from.Length + 1, to.Length + 1];
        for (var row = from.Length - 1; row >= 0; row--)
        {
            for (var column = to.Length - 1; column >= 0; column--)
            {
                longest[row, column] =
                    from[row] == to[column]
                        ? longest[row + 1, column + 1] + 1
                        : Math.Max(longest[row + 1, column], longest[row, column + 1]);
            }
        }

        var hunks = new List<Hunk>();
        var (x, y) = (0, 0);
        while (x < from.Length || y < to.Length)
        {
            var (startX, startY) = (x, y);
            while ((x < from.Length || y < to.Length) && !(x < from.Length && y < to.Length && from[x] == to[y]))
            {
                var isOut = y == to.Length || (x < from.Length && longest[x + 1, y] >= longest[x, y + 1]);
                (x, y) = isOut ? (x + 1, y) : (x, y + 1);
            }

            if (x > startX || y > startY)
            {
                hunks.Add(new Hunk(startX + shift, x + shift, startY + shift, y + shift));
            }

            while (x < from.Length && y < to.Length && from[x] == to[y])
            {
                (x, y) = (x + 1, y + 1);
            }
        }

        return hunks;
    }

    /// <summary>Lines that gave way to others.</summary>
    private readonly record struct Hunk(int Start, int End, int NewStart, int NewEnd);
}
