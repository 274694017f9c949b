using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Season.Values;
using Tomlyn.Syntax;

namespace BenchSim.Folder.Toml;

/// <summary>Says the parser's findings in a grower's words, one a line: what follows on the same line follows from the first.</summary>
internal static class TomlFaults
{
    /// <summary>Reports the findings of the parser.</summary>
    /// <param name="file">The text that was parsed.</param>
    /// <param name="findings">What the parser found.</param>
    /// <param name="faults">Takes the faults.</param>
    /// <returns>Lines, counted from 0, that cannot be trusted and are not to be read further.</returns>
    public static HashSet<int> Report(FileText file, DiagnosticsBag findings, FaultList faults)
    {
        var lines = file.Text.Split('\n');
        var seen = new HashSet<int>();
        var bad = new HashSet<int>();
        foreach (var finding in findings.OrderBy(each => each.Span.Start.Line).ThenBy(each => each.Span.Start.Column))
        {
            var line = finding.Span.Start.Line;
            if (!seen.Add(line))
            {
                continue;
            }

            var text = line < lines.Length ? lines[line].TrimEnd('\r') : "";
            var place = new SourcePlace(file.Name, line + 1, finding.Span.Start.Column + 1);
            if (finding.Message.Contains("is already defined", StringComparison.Ordinal))
            {
                ReportDoubled(place, text, finding.Message, faults);
            }
            else if (!finding.Message.Contains("date time", StringComparison.Ordinal))
            {
                bad.Add(line);
                ReportGrammar(place, text, finding.Message, faults);
            }
        }

        // A date the parser cannot read stays in the tree as text; the reader of the key says what is wrong with it.
        return bad;
    }

    private static void ReportDoubled(SourcePlace place, string text, string message, FaultList faults)
    {
        var where = FirstLine(message) is { Length: > 0 } first ? $" (first on line {first})" : "";
        var what = text.TrimStart().StartsWith('[')
            ? $"the section {text.Split('#')[0].Trim()} is here a second time{where}"
            : $"the key {Words.Quote(text.Split('=')[0].Trim())} is here a second time{where}";
        faults.Add(place, what, text.TrimStart().StartsWith('[') ? "put all its keys under one heading" : "keep one of the two");
    }

    // The parser says "... is already defined at (8,1) with ...".
    private static string FirstLine(string message)
    {
        var start = message.IndexOf("defined at (", StringComparison.Ordinal);
        return start < 0 ? "" : string.Concat(message[(start + "defined at (".Length)..].TakeWhile(char.IsAsciiDigit));
    }

    private static void ReportGrammar(SourcePlace place, string text, string message, FaultList faults)
    {
        var (what, instead) = Explain(text, message);
        faults.Add(place, what, instead);
    }

    private static (string What, string Instead) Explain(string text, string message)
    {
        var parts = text.Split('#')[0].Split('=', 2);
        if (parts.Length == 2 && parts[0].Trim() is { Length: > 0 } key && parts[1].AsSpan().Trim().IsEmpty)
        {
            return ($"{Words.Quote(key)} has no value", "write one after the =, or take the line out");
        }

        if (message.Contains("string", StringComparison.Ordinal))
        {
            return ("a text is not closed, or holds a character that it cannot", "close the quotation mark on the same line");
        }

        return text.TrimStart().StartsWith('[')
            ? ("this heading or list cannot be read", "write a heading such as [rules] or [[house]], and a list such as [1, 2, 3]")
            : ("this line cannot be read", "write key = value, with texts in quotation marks");
    }
}
