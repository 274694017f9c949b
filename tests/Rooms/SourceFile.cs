using System.Text.RegularExpressions;

namespace Rooms;

/// <summary>What of a source file says which room it stands in and which others it uses.</summary>
/// <param name="Path">Path within the repository.</param>
/// <param name="Room">Its namespace.</param>
/// <param name="Opened">Rooms whose types it may name bare: those of its usings, its own, and those around it.</param>
/// <param name="Declared">Types that it declares, and names of its extension methods.</param>
/// <param name="Named">Words that may be names of types or methods.</param>
/// <param name="Qualified">Words with the word before the dot in front of them, as in <c>Charts.Week</c>.</param>
internal sealed partial record SourceFile(
    string Path,
    string Room,
    HashSet<string> Opened,
    HashSet<string> Declared,
    HashSet<string> Named,
    HashSet<(string Owner, string Name)> Qualified
)
{
    /// <summary>Reads a file; null when it declares no namespace.</summary>
    public static SourceFile? Read(string path, string text)
    {
        var code = PlainString().Replace(Comment().Replace(text, ""), "\"\"");
        if (NamespaceLine().Match(code) is not { Success: true } found)
        {
            return null;
        }

        var room = found.Groups["name"].Value;
        return new SourceFile(
            path,
            room,
            Set([.. Names(Usings(), code), .. Around(room)]),
            Set([.. Names(Types(), code), .. Names(Extensions(), code)]),
            Set(Names(Word(), code)),
            [.. Dotted().Matches(code).Select(match => (match.Groups["owner"].Value, match.Groups["name"].Value))]
        );
    }

    /// <summary>What of another room this file uses; none where it is its own.</summary>
    public IEnumerable<string> Uses(string room, HashSet<string> declared) =>
        room == Room ? []
        : Opened.Contains(room) ? Named.Where(declared.Contains)
        : Qualified
            .Where(pair => room.EndsWith("." + pair.Owner, StringComparison.Ordinal))
            .Select(pair => pair.Name)
            .Where(declared.Contains);

    private static HashSet<string> Set(IEnumerable<string> names) => new(names, StringComparer.Ordinal);

    private static IEnumerable<string> Names(Regex pattern, string code) =>
        pattern.Matches(code).Select(match => match.Groups["name"].Value);

    private static IEnumerable<string> Around(string room)
    {
        for (var end = room.Length; end > 0; end = room.LastIndexOf('.', end - 1))
        {
            yield return room[..end];
        }
    }

    [GeneratedRegex(@"//[^\n]*")]
    private static partial Regex Comment();

    // A string without anything filled in holds no code.
    [GeneratedRegex(@"(?<![$@""])""(?:[^""\\\n]|\\.)*""(?!"")")]
    private static partial Regex PlainString();

    [GeneratedRegex(@"^namespace (?<name>[\w.]+)", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex(@"^(?:global )?using (?:static )?(?:\w+ = )?(?<name>[\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Usings();

    [GeneratedRegex(@"\b(?:class|struct|record(?: struct)?|interface|enum) (?<name>[A-Z]\w*)")]
    private static partial Regex Types();

    [GeneratedRegex(@"\b(?<name>[A-Z]\w*)(?:<[\w, ]+>)?\(\s*this ")]
    private static partial Regex Extensions();

    [GeneratedRegex(@"\b(?<name>[A-Z]\w*)")]
    private static partial Regex Word();

    [GeneratedRegex(@"\b(?<owner>[A-Z]\w*)\.(?<name>[A-Z]\w*)")]
    private static partial Regex Dotted();
}
