using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace BenchSim.Report.Papers;

/// <summary>
/// Takes clock and chance out of a workbook: every part gets the earliest date a zip file can hold, in the order it came, and the random
/// names by which the workbook refers to its sheets become numbers.
/// </summary>
internal static partial class ZipIdentity
{
    private static readonly DateTimeOffset s_earliest = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The same entries always give the same bytes.</summary>
    public static byte[] Fixed(byte[] zip)
    {
        using var made = new MemoryStream();
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        using (var from = new ZipArchive(new MemoryStream(zip), ZipArchiveMode.Read))
        using (var to = new ZipArchive(made, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in from.Entries)
            {
                var copy = to.CreateEntry(entry.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = s_earliest;
                using var source = entry.Open();
                using var target = copy.Open();
                if (entry.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal))
                {
                    JoinPairs(source, target);
                }
                else if (entry.FullName is "xl/workbook.xml" or "xl/_rels/workbook.xml.rels")
                {
                    Rename(source, target, names);
                }
                else
                {
                    source.CopyTo(target);
                }
            }
        }

        return made.ToArray();
    }

    // The library writes a letter beyond the first plane as two halves by number, which only some programs put together again.
    private static void JoinPairs(Stream source, Stream target)
    {
        using var reader = new StreamReader(source, Encoding.UTF8);
        var text = Pair().Replace(reader.ReadToEnd(), match => new string([Half(match.Groups["high"]), Half(match.Groups["low"])]));
        target.Write(Encoding.UTF8.GetBytes(text));
    }

    private static char Half(Group digits) =>
        (char)int.Parse(digits.ValueSpan, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);

    // No text of a user stands in these two parts.
    private static void Rename(Stream source, Stream target, Dictionary<string, string> names)
    {
        using var reader = new StreamReader(source, Encoding.UTF8);
        var text = RandomName()
            .Replace(reader.ReadToEnd(), match =>
            {
                if (!names.TryGetValue(match.Value, out var name))
                {
                    names.Add(match.Value, name = $"sheet{names.Count + 1}");
                }

                return name;
            });
        target.Write(Encoding.UTF8.GetBytes(text));
    }

    [GeneratedRegex(
        "_x(?<high>D[89AB][0-9A-F]{2})__x(?<low>D[C-F][0-9A-F]{2})_",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        10_000
    )]
    private static partial Regex Pair();

    [GeneratedRegex("R[0-9a-f]{32}", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex RandomName();
}
