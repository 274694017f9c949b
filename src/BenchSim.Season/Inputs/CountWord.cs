using System.Collections.Immutable;

namespace BenchSim.Season.Inputs;

/// <summary>A word in the place of a count of seedlings or cells: a share that the eye takes in.</summary>
public enum CountWord
{
    /// <summary>A number was written.</summary>
    None,

    /// <summary>A quarter of what was looked at, or fewer.</summary>
    Few,

    /// <summary>More than a quarter, and no more than three quarters.</summary>
    Half,

    /// <summary>More than three quarters, and no more than 95 of 100.</summary>
    Most,

    /// <summary>More than 95 of 100.</summary>
    All,
}

/// <summary>The words that stand for counts. Together they leave nothing out, and no count has two of them.</summary>
public static class CountWords
{
    /// <summary>Fewest seeds or cells of which a word can be said: of fewer some word would mean no number at all.</summary>
    public const int Fewest = 5;

    private const int Parts = 20;

    /// <summary>How they are written.</summary>
    public static ImmutableArray<(string Word, CountWord Value)> All { get; } =
    [("few", CountWord.Few), ("half", CountWord.Half), ("most", CountWord.Most), ("all", CountWord.All)];

    /// <summary>The numbers that a word stands for.</summary>
    /// <param name="word">The word.</param>
    /// <param name="of">Seeds or cells looked at, <see cref="Fewest"/> or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such word.</exception>
    public static CountRange Range(CountWord word, int of)
    {
        return word switch
        {
            CountWord.Few => new CountRange(0, UpTo(5)),
            CountWord.Half => new CountRange(UpTo(5) + 1, UpTo(15)),
            CountWord.Most => new CountRange(UpTo(15) + 1, UpTo(19)),
            CountWord.All => new CountRange(UpTo(19) + 1, of),
            _ => throw new ArgumentOutOfRangeException(nameof(word), word, "No word for a count."),
        };

        int UpTo(int twentieths) => (int)((long)of * twentieths / Parts);
    }
}

/// <summary>Between which numbers a count lies.</summary>
/// <param name="Least">The least.</param>
/// <param name="Most">The most.</param>
/// <param name="IsExact">Whether it was counted; else a word stands for it.</param>
public readonly record struct CountRange(int Least, int Most, bool IsExact = false)
{
    /// <summary>A number that was counted.</summary>
    public static CountRange Exactly(int count) => new(count, count, IsExact: true);
}
