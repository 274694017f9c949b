using System.Text;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Text;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Toml;

/// <summary>
/// Goes over the lines of a TOML text before it is parsed. A slip that has one likely meaning, such as a quotation mark that is missing, is
/// one fault that says what to type, and is mended in the text that is read on: the rest of the file then brings no faults that are none.
/// No line is added or taken away.
/// </summary>
internal sealed class MendedLines
{
    private const string Plain = "\"";
    private const string Literal = "'";
    private const int LongestAdvice = 200;

    // A text of several lines that is never closed is taken for one of its own line: the file is gone over again. So often at most.
    private const int MostOpen = 20;

    private readonly FileText _file;
    private readonly HashSet<int> _oneLine;
    private readonly List<(Fault Fault, bool IsSpelling)> _faults = [];

    // What closes a text of several lines that is open, and the line on which it was opened; null where none is.
    private string? _open;
    private int _openedOn;
    private int _depth;
    private bool _isWhole = true;

    private MendedLines(FileText file, HashSet<int> oneLine) => (_file, _oneLine) = (file, oneLine);

    /// <summary>Mends a text.</summary>
    /// <param name="file">The text; lines may end in CR alone.</param>
    /// <param name="faults">Takes the faults.</param>
    /// <param name="isWhole">Whether it could be mended everywhere; else a key that is missing may only be unreadable.</param>
    public static FileText Of(FileText file, FaultList faults, out bool isWhole)
    {
        var oneLine = new HashSet<int>();
        MendedLines lines;
        string mended;
        do
        {
            lines = new MendedLines(file, oneLine);
            mended = lines.Mend();
        } while (lines._open is not null && oneLine.Count < MostOpen && oneLine.Add(lines._openedOn));

        foreach (var (fault, isSpelling) in lines._faults)
        {
            if (isSpelling)
            {
                faults.AddSpelling(fault.Place, fault.What, fault.Instead);
            }
            else
            {
                faults.Add(fault.Place, fault.What, fault.Instead);
            }
        }

        isWhole = lines._isWhole;
        return file with { Text = mended };
    }

    private string Mend()
    {
        var lines = OneLineEnd(_file.Text).Split('\n');
        for (var index = 0; index < lines.Length; index++)
        {
            var end = lines[index].EndsWith('\r') ? "\r" : "";
            lines[index] = MendLine(lines[index][..^end.Length], index + 1) + end;
        }

        return string.Join('\n', lines);
    }

    private static string OneLineEnd(string text)
    {
        var ends = new StringBuilder(text);
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] == '\r' && (at + 1 == text.Length || text[at + 1] != '\n'))
            {
                ends[at] = '\n';
            }
        }

        return ends.ToString();
    }

    private string MendLine(string line, int number)
    {
        if (_open is null && BeginsAnew(line))
        {
            _depth = 0;
        }

        var isInside = _depth > 0 || _open is not null;
        var depth = _depth;
        var text = new StringBuilder(line);
        var at = 0;
        if (_open is not null && !SkipLong(line, ref at))
        {
            return line;
        }

        var value = isInside ? 0 : line.IndexOf('=') + 1;
        while (at < text.Length && text[at] != '#')
        {
            if (text[at] is '"' or '\'')
            {
                if (!SkipText(text, ref at, number))
                {
                    _depth = depth;
                    return Requoted(line, number, isInside ? 0 : value);
                }
            }
            else if (at >= value && Straightened(text, at))
            {
                continue;
            }
            else
            {
                _depth = Math.Max(
                    0,
                    _depth
                        + (
                            text[at] is '[' or '{' ? 1
                            : text[at] is ']' or '}' ? -1
                            : 0
                        )
                );
                at++;
            }
        }

        return isInside || _open is not null ? text.ToString() : BareValue(text.ToString(), at, number);
    }

    // A heading, or a key with its value: whatever bracket was left open, it does not reach here.
    private static bool BeginsAnew(string line)
    {
        var start = line.AsSpan().TrimStart();
        var key = start.IndexOf('=') is >= 0 and var equals ? start[..equals].Trim() : default;
        return start.StartsWith("[[", StringComparison.Ordinal)
            || (start is ['[', var first, ..] && char.IsAsciiLetter(first))
            || (!key.IsEmpty && IsKey(key.ToString()));
    }

    // Past a text, or into one of several lines; false where it is not closed on the line.
    private bool SkipText(StringBuilder line, ref int at, int number)
    {
        var mark = line[at];
        var text = line.ToString();
        var three = new string(mark, 3);
        if (text.AsSpan(at).StartsWith(three, StringComparison.Ordinal))
        {
            if (_oneLine.Contains(number))
            {
                return false;
            }

            (_open, _openedOn) = (three, number);
            at += 3;
            SkipLong(text, ref at);
            return true;
        }

        for (var next = at + 1; next < text.Length; next++)
        {
            if (text[next] == mark)
            {
                at = next + 1;
                return true;
            }

            next += mark == '"' && text[next] == '\\' ? 1 : 0;
        }

        return false;
    }

    // Past the end of a text of several lines; false where it goes on in the next line.
    private bool SkipLong(string line, ref int at)
    {
        var end = line.IndexOf(_open!, at, StringComparison.Ordinal);
        (at, var isClosed) = end < 0 ? (line.Length, false) : (end + 3, true);
        _open = isClosed ? null : _open;
        return isClosed;
    }

    // Quotation marks as a word processor sets them, around a value: read as straight ones.
    private static bool Straightened(StringBuilder line, int at)
    {
        if (!Curly.IsOpening(line[at]))
        {
            return false;
        }

        var text = line.ToString();
        var end = text.AsSpan(at + 1).IndexOfAny(Curly.Closing);
        if (end < 0 || text.AsSpan(at + 1, end).ContainsAny("\"\\"))
        {
            return false;
        }

        line[at] = '"';
        line[at + 1 + end] = '"';
        return true;
    }

    // A value that needs quotation marks and has none, on a line of its own.
    private string BareValue(string line, int end, int number)
    {
        var equals = line.AsSpan(0, end).IndexOf('=');
        if (equals < 0)
        {
            return line;
        }

        var (key, value) = (line[..equals].Trim(), line[(equals + 1)..end].Trim());
        if (value.Length == 0 || !IsKey(key) || TomlAdvice.Of(key, value) is not { } advice)
        {
            return line;
        }

        var start = equals + 1 + line[(equals + 1)..].IndexOf(value, StringComparison.Ordinal);
        _faults.Add((new Fault(Place(number, line, start), advice.What, advice.Instead), true));
        return line[..start] + advice.Value + line[(start + value.Length)..];
    }

    // A quotation mark too few: all of them are taken out, and each value that needs a pair gets one.
    private string Requoted(string line, int number, int value)
    {
        var open = line.IndexOfAny(['"', '\''], Math.Min(value, line.Length - 1));
        var comment = line.IndexOf(" #", Math.Max(0, open), StringComparison.Ordinal);
        var end = comment < 0 ? line.Length : comment;
        var body = line[value..end].Trim();
        var mended = body.StartsWith('[') || body.StartsWith('{') || value == 0 ? EachQuoted(body) : Quoted(body);
        var key = value == 0 ? "" : line[..(value - 1)].Trim();
        var typed = value == 0 ? mended : $"{key} = {mended}";
        var place = Place(number, line, Math.Max(0, open));
        var isGood = (value == 0 || IsKey(key)) && mended.Length > 0 && !mended.Contains('\\') && !Words.HasControlCharacter(typed);
        var instead =
            isGood && typed.Length < LongestAdvice
                ? $"write {typed}"
                : "put one on each side of the text; a quotation mark inside it has a \\ before it";
        _faults.Add((new Fault(place, "a quotation mark is missing on this line", instead), false));
        if (!isGood)
        {
            _isWhole = false;
            return "#" + line;
        }

        foreach (var character in mended)
        {
            _depth = Math.Max(
                0,
                _depth
                    + (
                        character is '[' or '{' ? 1
                        : character is ']' or '}' ? -1
                        : 0
                    )
            );
        }

        return line[..value] + (value == 0 ? "" : " ") + mended + line[end..];
    }

    private static string Quoted(string value) => Plain + value.Replace(Plain, "", StringComparison.Ordinal).Trim('\'').Trim() + Plain;

    // The values between brackets, commas and equals signs; a key before an equals sign, and what needs no quotation marks, stays bare.
    private static string EachQuoted(string body)
    {
        var mended = new StringBuilder();
        var start = 0;
        for (var at = 0; at <= body.Length; at++)
        {
            if (at < body.Length && body[at] is not ('[' or ']' or '{' or '}' or ',' or '='))
            {
                continue;
            }

            var part = body[start..at];
            var bare = part.Trim().Trim('"', '\'').Trim();
            var isBare = bare.Length == 0 || (at < body.Length && body[at] == '=') || TomlAdvice.NeedsNoQuotes(bare);
            var isQuotedWhole = bare.Length > 0 && part.AsSpan().ContainsAny(Plain + Literal) && !(at < body.Length && body[at] == '=');
            mended.Append(isBare && !isQuotedWhole ? part : part.Replace(part.Trim(), Quoted(part.Trim()), StringComparison.Ordinal));
            start = at + 1;
            if (at < body.Length)
            {
                mended.Append(body[at]);
            }
        }

        return mended.ToString();
    }

    private static bool IsKey(string key) =>
        key.Length > 0 && key.All(character => char.IsAsciiLetterOrDigit(character) || character is '_' or '-');

    private SourcePlace Place(int number, string line, int at) =>
        new(_file.Name, number, line.AsSpan(0, at).ToString().EnumerateRunes().Count() + 1);
}
