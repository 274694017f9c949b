using System.Text.RegularExpressions;
using Support;

namespace Rooms;

/// <summary>
/// Words that a grower of today would not use, or would understand otherwise, stand in nothing that people read: not in what the program
/// says, not in its help, its schemas and its starter folder, and not in the pages. What is to be written instead stands beside each.
/// </summary>
public sealed partial class PlainWordsTests
{
    private static readonly (string Words, string Instead)[] s_words =
    [
        (@"reckon\w*", "work out, count"),
        (@"doubts?|doubtful", "not sure, uncertain"),
        (@"for want of|want of", "for lack of"),
        (@"be told", "shows, is clear"),
        (@"said to be", "is, is called"),
        (@"lives", "is in, years, runs"),
        (@"other luck|the same luck", "other seasons, the same seasons"),
        (@"chances? of (?:the|a) stand", "chance of enough plants"),
        (@"must believe", "would have to be true"),
    ];

    [Fact]
    public void What_people_read_is_in_plain_words()
    {
        string[] found =
        [
            .. from text in ProgramTexts().Concat(Schemas()).Concat(Pages())
            from word in s_words
            from match in Regex.Matches(text.Words, $@"\b(?:{word.Words})\b", RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1))
            select $"{text.Place}: \"{match.Value}\" in \"{Around(text.Words, match.Index)}\"; write: {word.Instead}",
        ];
        Assert.True(found.Length == 0, string.Join('\n', found));
    }

    [Fact]
    public void Texts_of_a_source_are_found_without_their_remarks_and_what_is_filled_in()
    {
        const string Source = """
            // "a remark" and more
            /// <summary>"Another"</summary>
            var one = "It \"fits\" // well";
            var two = $"In {Count(seasons, "season")} it fits";
            """;
        Assert.Equal(["It \\\"fits\\\" // well", "In  it fits"], Strings(Source), StringComparer.Ordinal);
    }

    private static IEnumerable<(string Place, string Words)> ProgramTexts() =>
        from path in Sources.Of("src")
        from text in Strings(Sources.Text(path))
        where text.Contains(' ')
        select (path, text);

    private static IEnumerable<(string Place, string Words)> Schemas() =>
        from path in Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs", "schemas"), "*.json").Order(StringComparer.Ordinal)
        from Match text in Description().Matches(File.ReadAllText(path))
        select (Path.GetFileName(path), text.Groups["text"].Value);

    private static IEnumerable<(string Place, string Words)> Pages() =>
        from path in PageTests.All
        select (path, Code().Replace(Block().Replace(Sources.Text(path).ReplaceLineEndings("\n"), ""), "").Replace('\n', ' '));

    // What stands in an interpolated string between braces is code, with strings of its own at times.
    private static IEnumerable<string> Strings(string source)
    {
        var code = source;
        var before = "";
        while (!string.Equals(before, code, StringComparison.Ordinal))
        {
            (before, code) = (code, FilledIn().Replace(code, ""));
        }

        return RemarkOrString().Matches(code).Where(match => match.Groups["text"].Success).Select(match => match.Groups["text"].Value);
    }

    private static string Around(string text, int at) => text[Math.Max(0, at - 40)..Math.Min(text.Length, at + 40)];

    // Innermost first: braces that hold no braces and no line's end.
    [GeneratedRegex(@"(?<=\$""[^\n]*)\{[^{}\n]*\}", RegexOptions.None, 10000)]
    private static partial Regex FilledIn();

    [GeneratedRegex(@"//[^\n]*|""(?<text>(?:[^""\\\n]|\\.)*)""", RegexOptions.ExplicitCapture, 10000)]
    private static partial Regex RemarkOrString();

    [GeneratedRegex(@"""description"": ""(?<text>(?:[^""\\]|\\.)*)""", RegexOptions.ExplicitCapture, 10000)]
    private static partial Regex Description();

    [GeneratedRegex("^```.*?^```$", RegexOptions.Multiline | RegexOptions.Singleline, 10000)]
    private static partial Regex Block();

    [GeneratedRegex("`[^`]*`", RegexOptions.None, 10000)]
    private static partial Regex Code();
}
