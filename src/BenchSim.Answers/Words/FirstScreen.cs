using System.Collections.Immutable;
using BenchSim.Report.Words;

namespace BenchSim.Answers.Words;

/// <summary>
/// What people read first of an answer, in ten seconds: no more than a screen of 24 lines of 80 columns. The whole answer has it all in
/// more detail.
/// </summary>
/// <param name="Headline">The answer itself, in sentences of at most five lines together.</param>
public sealed record FirstScreen(string Headline)
{
    /// <summary>The two or three facts that decide, each a sentence or two, what decides most first.</summary>
    public ImmutableArray<string> Facts { get; init; } = [];

    /// <summary>What to know before relying on it, each a sentence or two.</summary>
    public ImmutableArray<string> Warnings { get; init; } = [];

    /// <summary>What to do next; null where nothing follows.</summary>
    public NextStep? Next { get; init; }

    /// <summary>The one table; null for none. Rows that find no room on the screen are left out, the last first.</summary>
    public Table? Table { get; init; }

    /// <summary>Statistics in words, and whatever else belongs under a line; null for none.</summary>
    public string? Footnote { get; init; }

    /// <summary>Where something was written, on a line of its own that is never broken; null for nothing.</summary>
    public string? Written { get; init; }

    /// <summary>
    /// What a headline speaks of, to stand before a colon: the name of the site and, where one was played, the variant and the day from
    /// which on.
    /// </summary>
    internal static string Subject(string name, string? variant, DateOnly? from = null)
    {
        const int LongestName = 40;
        const int LongestVariant = 24;
        var with = variant is null ? "" : $" with {PlainText.Quote(PlainText.Short(variant, LongestVariant))}";
        return $"{PlainText.Short(name, LongestName)}{with}{(from is { } day ? $" from {Dates.Full(day)} on" : "")}";
    }
}

/// <summary>What to do next.</summary>
/// <param name="What">What for: a few words, to stand before a colon.</param>
/// <param name="Command">The command to type.</param>
public sealed record NextStep(string What, string Command)
{
    /// <summary>A command of this program, its words quoted where a shell would take them apart.</summary>
    /// <param name="what">What for.</param>
    /// <param name="command">Name of the command.</param>
    /// <param name="words">The words after it.</param>
    internal static NextStep Of(string what, string command, params IEnumerable<string> words) =>
        new(what, string.Join(' ', [Shell.Program, command, .. words.Select(Shell.Word)]));
}
