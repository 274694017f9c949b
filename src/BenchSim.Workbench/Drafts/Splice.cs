using System.Collections.Immutable;

namespace BenchSim.Workbench.Drafts;

/// <summary>A part of a text that gave way to another. A file that was not there, or is there no more, has no text on that side.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="At">Where the part begins, in characters.</param>
/// <param name="Out">What stood there; null where the file was not there.</param>
/// <param name="In">What stands there now; null where the file is no more.</param>
internal sealed record Splice(string File, int At, string? Out, string? In)
{
    /// <summary>The smallest splices that make one set of texts of another.</summary>
    public static ImmutableArray<Splice> Between(
        ImmutableSortedDictionary<string, string> before,
        ImmutableSortedDictionary<string, string> after
    ) => [.. Texts.Differing(before, after).Select(file => Between(file, before.Of(file), after.Of(file)))];

    /// <summary>The texts with the splice made; null where the text is not the one it was made for.</summary>
    public ImmutableSortedDictionary<string, string>? Made(ImmutableSortedDictionary<string, string> texts) =>
        Made(texts, Out, In, out var made) ? made : null;

    /// <summary>The texts with the splice taken back; null where the text is not the one that it made.</summary>
    public ImmutableSortedDictionary<string, string>? TakenBack(ImmutableSortedDictionary<string, string> texts) =>
        Made(texts, In, Out, out var made) ? made : null;

    private static Splice Between(string file, string? before, string? after)
    {
        if (before is null || after is null)
        {
            return new Splice(file, 0, before, after);
        }

        var front = before.AsSpan().CommonPrefixLength(after);
        var back = 0;
        var most = Math.Min(before.Length, after.Length) - front;
        while (back < most && before[^(back + 1)] == after[^(back + 1)])
        {
            back++;
        }

        // Half of a pair of characters that make one cannot be written by itself.
        front -= front > 0 && char.IsHighSurrogate(before[front - 1]) ? 1 : 0;
        back -= back > 0 && char.IsLowSurrogate(before[^back]) ? 1 : 0;
        return new Splice(file, front, before[front..^back], after[front..^back]);
    }

    private bool Made(
        ImmutableSortedDictionary<string, string> texts,
        string? old,
        string? instead,
        out ImmutableSortedDictionary<string, string> made
    )
    {
        var text = texts.Of(File);
        made = texts;
        if (old is null || text is null)
        {
            made = texts.With(File, instead);
            return old is null == text is null;
        }

        if (At < 0 || At + old.Length > text.Length || !text.AsSpan(At, old.Length).SequenceEqual(old))
        {
            return false;
        }

        made = texts.With(File, instead is null ? null : string.Concat(text.AsSpan(0, At), instead, text.AsSpan(At + old.Length)));
        return true;
    }
}
