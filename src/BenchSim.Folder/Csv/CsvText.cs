using System.Text;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Sheets;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Csv;

/// <summary>
/// Splits a CSV text (RFC 4180) into records and fields with the line and column of each. Comma, semicolon or tab separate, as the first
/// record does; lines end in LF, CRLF or CR; quoted fields may hold separators, doubled quotes and line breaks. A bad field is a fault and
/// reading goes on.
/// </summary>
internal sealed class CsvText
{
    private const int LongestAdvice = 60;

    private readonly FileText _file;
    private readonly FaultList _faults;
    private readonly char _separator;
    private int _next;
    private int _line = 1;
    private int _column = 1;
    private List<SheetField> _record = [];
    private int _columns;

    private CsvText(FileText file, FaultList faults)
    {
        _file = file;
        _faults = faults;
        SkipSeparatorLine();
        _separator = SeparatorOf(file.Text.AsSpan(_next));
    }

    /// <summary>The records of a text, blank ones too; none for an empty text.</summary>
    public static List<List<SheetField>> Split(FileText file, FaultList faults)
    {
        var text = new CsvText(file, faults);
        var records = new List<List<SheetField>>();
        while (text._next < file.Text.Length)
        {
            records.Add(text.ReadRecord());
        }

        return records;
    }

    // Some spreadsheets write a first line such as "sep=;".
    private void SkipSeparatorLine()
    {
        var end = _file.Text.AsSpan().IndexOfAny('\r', '\n');
        var first = (end < 0 ? _file.Text : _file.Text[..end]).Trim('"');
        if (first.Length == 5 && first.StartsWith("sep=", StringComparison.OrdinalIgnoreCase))
        {
            while (_next < _file.Text.Length && !IsLineEnd())
            {
                Advance();
            }

            SkipLineEnd();
        }
    }

    // The commonest of the three outside quotes in the first record that is not blank; comma on a tie.
    private static char SeparatorOf(ReadOnlySpan<char> text)
    {
        var (commas, semicolons, tabs, isQuoted) = (0, 0, 0, false);
        foreach (var character in text.TrimStart("\r\n \t"))
        {
            if (!isQuoted && character is '\r' or '\n')
            {
                break;
            }

            isQuoted ^= character == '"';
            commas += !isQuoted && character == ',' ? 1 : 0;
            semicolons += !isQuoted && character == ';' ? 1 : 0;
            tabs += !isQuoted && character == '\t' ? 1 : 0;
        }

        return commas >= semicolons && commas >= tabs ? ','
            : semicolons >= tabs ? ';'
            : '\t';
    }

    private List<SheetField> ReadRecord()
    {
        _record = [];
        _record.Add(ReadField());
        while (_next < _file.Text.Length && _file.Text[_next] == _separator)
        {
            Advance();
            _record.Add(ReadField());
        }

        SkipLineEnd();
        _columns = _columns == 0 && _record.Exists(field => field.Text.Length > 0) ? _record.Count : _columns;
        return _record;
    }

    private SheetField ReadField()
    {
        while (_next < _file.Text.Length && _file.Text[_next] is ' ' or '\u00A0' && _file.Text[_next] != _separator)
        {
            Advance();
        }

        return _next < _file.Text.Length && _file.Text[_next] == '"' ? ReadQuoted() : ReadBare();
    }

    private SheetField ReadBare()
    {
        var (start, line, column) = (_next, _line, _column);
        while (_next < _file.Text.Length && _file.Text[_next] != _separator && !IsLineEnd())
        {
            Advance();
        }

        return new SheetField(_file.Text[start.._next].Trim(), line, column, start, _next);
    }

    private SheetField ReadQuoted()
    {
        var (start, line, column) = (_next, _line, _column);
        var content = new StringBuilder();
        Advance();
        while (_next < _file.Text.Length)
        {
            if (_file.Text[_next] != '"')
            {
                content.Append(_file.Text[_next]);
                Advance();
            }
            else if (_next + 1 < _file.Text.Length && _file.Text[_next + 1] == '"')
            {
                content.Append('"');
                Advance();
                Advance();
            }
            else
            {
                Advance();
                if (line < _line && HasTextBehind())
                {
                    // The mark that seems to close it opens a cell further down.
                    break;
                }

                RefuseTextAfterQuote();
                return new SheetField(content.ToString().Trim(), line, column, start, _next);
            }
        }

        (_next, _line, _column) = (start, line, column);
        return ReadUnclosed();
    }

    // A cell whose quotation mark is never closed: it ends where its cell would without the mark, so that the rest can be read. A separator
    // is part of it only where the row would be too long.
    private SheetField ReadUnclosed()
    {
        var (start, line, column) = (_next, _line, _column);
        var end = _file.Text.AsSpan(start).IndexOfAny('\r', '\n') is >= 0 and var length ? start + length : _file.Text.Length;
        var isSplit = _columns == 0 || _record.Count + 1 + _file.Text.AsSpan(start, end - start).Count(_separator) <= _columns;
        Advance();
        while (_next < end && !(isSplit && _file.Text[_next] == _separator))
        {
            Advance();
        }

        var text = _file.Text[(start + 1).._next].Trim();
        _faults.Add(
            new SourcePlace(_file.Name, line, column),
            "this quotation mark is never closed",
            text.Length is > 0 and <= LongestAdvice && !text.Contains('"', StringComparison.Ordinal) && !Words.HasControlCharacter(text)
                ? $"write \"{text}\""
                : "close it at the end of the cell, or take it out"
        );
        return new SheetField(text, line, column, start, _next);
    }

    private bool HasTextBehind()
    {
        var rest = _file.Text.AsSpan(_next).TrimStart(' ');
        return rest is [var next, ..] && next != _separator && next is not ('\r' or '\n');
    }

    private void RefuseTextAfterQuote()
    {
        var (start, line, column) = (_next, _line, _column);
        while (_next < _file.Text.Length && _file.Text[_next] != _separator && !IsLineEnd())
        {
            Advance();
        }

        var rest = _file.Text[start.._next];
        if (rest.Trim().Length > 0)
        {
            _faults.Add(
                new SourcePlace(_file.Name, line, column),
                $"there is text after the closing quotation mark: {Words.Quote(rest.Trim())}",
                "put it inside the quotation marks; a quotation mark inside a quoted cell is written twice"
            );
        }
    }

    private bool IsLineEnd() => _file.Text[_next] is '\r' or '\n';

    private void SkipLineEnd()
    {
        if (_next < _file.Text.Length && IsLineEnd())
        {
            Advance();
        }
    }

    // One character on: CRLF counts as one line end, a surrogate pair as one character.
    private void Advance()
    {
        var character = _file.Text[_next++];
        if (character == '\r' && _next < _file.Text.Length && _file.Text[_next] == '\n')
        {
            _next++;
        }

        if (character is '\r' or '\n')
        {
            (_line, _column) = (_line + 1, 1);
        }
        else if (!char.IsLowSurrogate(character))
        {
            _column++;
        }
    }
}
