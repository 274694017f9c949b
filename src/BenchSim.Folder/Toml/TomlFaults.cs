using System.Text.RegularExpressions;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using Tomlyn.Syntax;

namespace BenchSim.Folder.Toml;

/// <summary>Says the parser's findings in a grower's words, one a line: what follows on the same line follows from the first.</summary>
internal static partial class TomlFaults
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
        var first = FirstDefined().Match(message);
        var where = first.Success ? $" (first on line {first.Groups["line"].Value})" : "";
        var what = text.TrimStart().StartsWith('[')
            ? $"the section {text.Split('#')[0].Trim()} is here a second time{where}"
            : $"the key {Words.Quote(text.Split('=')[0].Trim())} is here a second time{where}";
        faults.Add(place, what, text.TrimStart().StartsWith('[') ? "put all its keys under one heading" : "keep one of the two");
    }

    private static void ReportGrammar(SourcePlace place, string text, string message, FaultList faults)
    {
        var (what, instead) = Explain(text, message);
        faults.Add(place, what, instead);
    }

    private static (string What, string Instead) Explain(string text, string message)
    {
        if (UnquotedUnit().Match(text) is { Success: true } unit)
        {
            return ("a number with a unit is a text and goes in quotation marks", $"write {unit.Groups["key"].Value} = \"{unit.Groups["value"].Value.Trim()}\"");
        }

        if (UnquotedWord().Match(text) is { Success: true } word)
        {
            return ($"the text {Words.Quote(word.Groups["value"].Value.Trim())} is not in quotation marks", $"write {word.Groups["key"].Value} = \"{word.Groups["value"].Value.Trim()}\"");
        }

        if (DecimalComma().Match(text) is { Success: true } comma)
        {
            return ("a number has a comma in it", $"write {comma.Groups["whole"].Value}.{comma.Groups["part"].Value} with a decimal point");
        }

        if (NoValue().Match(text) is { Success: true } none)
        {
            return ($"{Words.Quote(none.Groups["key"].Value)} has no value", "write one after the =, or take the line out");
        }

        if (message.Contains("string", StringComparison.Ordinal))
        {
            return ("a text is not closed, or holds a character that it cannot", "close the quotation mark on the same line");
        }

        return text.TrimStart().StartsWith('[')
            ? ("this heading or list cannot be read", "write a heading such as [rules] or [[house]], and a list such as [1, 2, 3]")
            : ("this line cannot be read", "write key = value, with texts in quotation marks");
    }

    [GeneratedRegex(@"at \((?<line>\d+),", RegexOptions.NonBacktracking)]
    private static partial Regex FirstDefined();

    [GeneratedRegex(@"^\s*(?<key>[A-Za-z0-9_-]+)\s*=\s*(?<value>[+-]?[0-9][0-9.]*\s*(?:%|[A-Za-z°][A-Za-z]{0,5}))\s*(?:#.*)?\z", RegexOptions.NonBacktracking)]
    private static partial Regex UnquotedUnit();

    [GeneratedRegex(@"^\s*(?<key>[A-Za-z0-9_-]+)\s*=\s*(?<value>[A-Za-z][A-Za-z0-9 _-]{0,40})\s*(?:#.*)?\z", RegexOptions.NonBacktracking)]
    private static partial Regex UnquotedWord();

    [GeneratedRegex(@"^\s*[A-Za-z0-9_-]+\s*=\s*(?<whole>[+-]?[0-9]+),(?<part>[0-9]+)\s*(?:#.*)?\z", RegexOptions.NonBacktracking)]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"^\s*(?<key>[A-Za-z0-9_-]+)\s*=\s*(?:#.*)?\z", RegexOptions.NonBacktracking)]
    private static partial Regex NoValue();
}
