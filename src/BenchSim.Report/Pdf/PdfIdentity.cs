using System.Text;
using System.Text.RegularExpressions;
using BenchSim.Study.Marks;

namespace BenchSim.Report.Pdf;

/// <summary>
/// Takes clock and chance out of a PDF as the library writes it: the time of making, the random part of font names and the random
/// identifiers of the file. Every change keeps its length, for the file lists where its parts begin.
/// </summary>
internal static partial class PdfIdentity
{
    private const int LettersInPrefix = 6;

    /// <summary>The same pages always give the same bytes.</summary>
    public static byte[] Fixed(byte[] bytes)
    {
        // One character a byte, both ways.
        var text = WithoutMetadata(Encoding.Latin1.GetString(bytes));
        text = CreationDate().Replace(text, match => new string(' ', match.Length));
        var prefixes = new Dictionary<string, string>(StringComparer.Ordinal);
        text = FontPrefix()
            .Replace(text, match =>
            {
                var random = match.Groups["prefix"].Value;
                if (!prefixes.TryGetValue(random, out var known))
                {
                    prefixes.Add(random, known = Prefix(prefixes.Count));
                }

                return match.Groups["key"].Value + known;
            });
        return Encoding.Latin1.GetBytes(WithFixedIdentifier(text));
    }

    // A second copy of title and dates, which the library writes without escaping them.
    private static string WithoutMetadata(string text)
    {
        text = MetadataEntry().Replace(text, match => new string(' ', match.Length));
        var head = MetadataHead().Match(text);
        if (!head.Success)
        {
            return text;
        }

        var from = head.Index + head.Length;
        var length = int.Parse(head.Groups["length"].ValueSpan, System.Globalization.CultureInfo.InvariantCulture);
        return string.Concat(text.AsSpan(0, from), new string(' ', length), text.AsSpan(from + length));
    }

    // The identifier is made from what the file holds, as ISO 32000-1 section 14.4 suggests, but for the clock.
    private static string WithFixedIdentifier(string text)
    {
        var blank = Identifier().Replace(text, match => $"/ID[<{new string('0', 32)}><{new string('0', 32)}>]".PadRight(match.Length));
        var hash = Convert.ToHexString(Sha256.HashData(Encoding.Latin1.GetBytes(blank)))[..32];
        return Identifier().Replace(blank, match => $"/ID[<{hash}><{hash}>]".PadRight(match.Length));
    }

    // AAAAAA, AAAAAB, ...: in order of appearance.
    private static string Prefix(int number)
    {
        var letters = new char[LettersInPrefix];
        for (var at = LettersInPrefix - 1; at >= 0; at--, number /= 26)
        {
            letters[at] = (char)('A' + (number % 26));
        }

        return new string(letters);
    }

    [GeneratedRegex(@"/CreationDate\(D:[^)]*\)|/ModDate\(D:[^)]*\)", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex CreationDate();

    [GeneratedRegex(@"/Metadata \d+ 0 R(?=[/>])", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex MetadataEntry();

    [GeneratedRegex(
        @"<</Type/Metadata/Subtype/XML/Length (?<length>\d+)>>\s*stream\r?\n",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        10_000
    )]
    private static partial Regex MetadataHead();

    [GeneratedRegex(
        @"(?<key>/(FontName|BaseFont)/)(?<prefix>[A-Z]{6})(?=\+DejaVu)",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        10_000
    )]
    private static partial Regex FontPrefix();

    [GeneratedRegex(@"/ID\s?\[\s?<[0-9A-Fa-f]{32}>\s?<[0-9A-Fa-f]{32}>\s?\]", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex Identifier();
}
