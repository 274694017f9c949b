using System.Text.RegularExpressions;
using SkiaSharp;

namespace EndToEnd;

/// <summary>Compares a report with the approved one: text byte for byte, pictures by their pixels.</summary>
internal static partial class ReportComparison
{
    // Fonts are drawn a shade differently from one processor family to the next; a moved line or another number changes far more.
    private const int MostChannelDifference = 24;
    private const double MostPixelsDifferent = 0.002;

    /// <summary>Differences, one a line; none when the reports agree.</summary>
    /// <param name="approved">Folder of the approved report.</param>
    /// <param name="made">Folder of the report just made.</param>
    public static IEnumerable<string> Differences(string approved, string made)
    {
        var expected = Files(approved);
        var found = Files(made);
        foreach (var name in expected.Except(found, StringComparer.Ordinal))
        {
            yield return $"{name} is approved but was not written";
        }

        foreach (var name in found.Except(expected, StringComparer.Ordinal))
        {
            yield return $"{name} was written but is not approved";
        }

        foreach (var name in expected.Intersect(found, StringComparer.Ordinal))
        {
            var was = Bytes(approved, name);
            var now = Bytes(made, name);
            if (was.AsSpan().SequenceEqual(now))
            {
                continue;
            }

            var difference = name.EndsWith(".png", StringComparison.Ordinal) ? PictureDifference(was, now) : TextDifference(was, now);
            if (difference is not null)
            {
                yield return $"{name}: {difference}";
            }
        }
    }

    /// <summary>How two pictures differ; null when they do not, beyond shades.</summary>
    public static string? PictureDifference(byte[] was, byte[] now)
    {
        using var left = SKBitmap.Decode(was);
        using var right = SKBitmap.Decode(now);
        if (left is null || right is null)
        {
            return "is no picture";
        }

        if (left.Width != right.Width || left.Height != right.Height)
        {
            return $"was {left.Width} by {left.Height} pixels, is {right.Width} by {right.Height}";
        }

        var before = left.Pixels;
        var after = right.Pixels;
        var different = 0;
        for (var i = 0; i < before.Length; i++)
        {
            if (IsDifferent(before[i], after[i]))
            {
                different++;
            }
        }

        return different > before.Length * MostPixelsDifferent ? $"{different} of {before.Length} pixels differ" : null;
    }

    private static bool IsDifferent(SKColor left, SKColor right) =>
        Math.Abs(left.Red - right.Red) > MostChannelDifference
        || Math.Abs(left.Green - right.Green) > MostChannelDifference
        || Math.Abs(left.Blue - right.Blue) > MostChannelDifference
        || Math.Abs(left.Alpha - right.Alpha) > MostChannelDifference;

    private static string TextDifference(byte[] was, byte[] now)
    {
        var at = was.AsSpan().CommonPrefixLength(now);
        var line = was.AsSpan(0, at).Count((byte)'\n') + 1;
        return $"differs from line {line} on:\n    was: {Excerpt(was, at)}\n    is:  {Excerpt(now, at)}";
    }

    private static string Excerpt(byte[] text, int at)
    {
        var from = Math.Max(0, at - 40);
        return System.Text.Encoding.UTF8.GetString(text, from, Math.Min(100, text.Length - from)).ReplaceLineEndings(" ");
    }

    // Pictures may differ in a shade, and so in their hash.
    private static byte[] Bytes(string folder, string name)
    {
        var bytes = File.ReadAllBytes(Path.Combine(folder, name));
        return string.Equals(name, ".benchsim-files", StringComparison.Ordinal)
            ? System.Text.Encoding.UTF8.GetBytes(HashOfPicture().Replace(System.Text.Encoding.UTF8.GetString(bytes), "$1"))
            : bytes;
    }

    [GeneratedRegex("^[0-9a-f]{64}(?<picture>  .*[.]png)$", RegexOptions.Multiline, 1000)]
    private static partial Regex HashOfPicture();

    private static string[] Files(string folder) =>
        [
            .. Directory
                .EnumerateFiles(
                    folder,
                    "*",
                    new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None }
                )
                .Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/'))
                .Order(StringComparer.Ordinal),
        ];
}
