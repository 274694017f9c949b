using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Values;

namespace BenchSim.Cli.Commands;

/// <summary>Options and arguments made alike: each says in plain words what it takes.</summary>
internal static class CommonOptions
{
    /// <summary>Whether the user wrote an option, so that it is not there by its default alone.</summary>
    public static bool IsGiven(this CommandResult result, Option option) => result.GetResult(option) is { Implicit: false };

    public static Argument<string> Folder(string what)
    {
        var folder = new Argument<string>("DIR") { Description = what };
        folder.Validators.Add(result => RefuseEmpty(result, result.Tokens, "DIR"));
        return folder;
    }

    public static Argument<string[]> Folders(string what)
    {
        var folders = new Argument<string[]>("DIR") { Description = what, Arity = ArgumentArity.OneOrMore };
        folders.Validators.Add(result => RefuseEmpty(result, result.Tokens, "DIR"));
        return folders;
    }

    public static Argument<string> File(string what)
    {
        var file = new Argument<string>("FILE") { Description = what };
        file.Validators.Add(result => RefuseEmpty(result, result.Tokens, "FILE"));
        return file;
    }

    public static Argument<string[]> Parts()
    {
        var parts = new Argument<string[]>("PART")
        {
            Description = "Parts of one run, all of them, in any order.",
            Arity = ArgumentArity.OneOrMore,
        };
        parts.Validators.Add(result => RefuseEmpty(result, result.Tokens, "PART"));
        return parts;
    }

    /// <summary>An option that takes one of two words, whatever their case; the first of them when it is not given.</summary>
    public static Option<UnitSystem> Units(string name, string metric, string imperial, string what) =>
        new(name)
        {
            HelpName = $"{metric}|{imperial}",
            Description = what,
            DefaultValueFactory = _ => UnitSystem.Metric,
            CustomParser = result =>
            {
                // An option that is not given comes here too, without a word.
                var text = result.Tokens.Count == 0 ? metric : result.Tokens[0].Value;
                if (string.Equals(text, imperial, StringComparison.OrdinalIgnoreCase))
                {
                    return UnitSystem.Imperial;
                }

                if (!string.Equals(text, metric, StringComparison.OrdinalIgnoreCase))
                {
                    result.AddError($"{name} {PlainText.Quote(text)} cannot be used; write {metric} or {imperial}.");
                }

                return UnitSystem.Metric;
            },
        };

    /// <summary>An option that takes one of a few words, whatever their case.</summary>
    public static Option<T> OneOf<T>(string name, IReadOnlyList<T> all, Func<T, string> word, T otherwise, string what) =>
        new(name)
        {
            HelpName = string.Join('|', all.Select(word)),
            Description = what,
            DefaultValueFactory = _ => otherwise,
            CustomParser = result =>
            {
                if (result.Tokens.Count == 0)
                {
                    return otherwise;
                }

                var text = result.Tokens[0].Value;
                foreach (var each in all)
                {
                    if (string.Equals(text, word(each), StringComparison.OrdinalIgnoreCase))
                    {
                        return each;
                    }
                }

                result.AddError($"{name} {PlainText.Quote(text)} cannot be used; write {string.Join(" or ", all.Select(word))}.");
                return otherwise;
            },
        };

    public static Option<string?> Text(string name, string helpName, string what)
    {
        var option = new Option<string?>(name) { HelpName = helpName, Description = what };
        option.Validators.Add(result => RefuseEmpty(result, result.Tokens, name));
        return option;
    }

    public static Option<int?> Whole(string name, string helpName, int least, int most, string what) =>
        Whole(name, helpName, least, most, what, $"a whole number from {Numbers.Whole(least)} to {Numbers.Whole(most)}, without commas");

    public static Option<int?> Year(string name, int first, int last, string what) =>
        Whole(name, "N", first, last, what, FormattableString.Invariant($"a year from {first} to {last}"));

    private static Option<int?> Whole(string name, string helpName, int least, int most, string what, string right) =>
        new(name)
        {
            HelpName = helpName,
            Description = what,
            CustomParser = result =>
            {
                var text = result.Tokens[0].Value;
                if (
                    int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
                    && number >= least
                    && number <= most
                )
                {
                    return number;
                }

                result.AddError($"{name} {PlainText.Quote(text)} cannot be used; write {right}.");
                return null;
            },
        };

    public static Option<ulong?> Seed(string name, string helpName, string what) =>
        new(name)
        {
            HelpName = helpName,
            Description = what,
            CustomParser = result =>
            {
                var text = result.Tokens[0].Value;
                if (ulong.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
                {
                    return number;
                }

                result.AddError($"{name} {PlainText.Quote(text)} cannot be used; write a whole number from 0 to {ulong.MaxValue}.");
                return null;
            },
        };

    /// <summary>A share: from 0 to 1, or between them where <paramref name="endsOut"/>.</summary>
    public static Option<double?> Share(string name, string helpName, string what, bool endsOut = false) =>
        new(name)
        {
            HelpName = helpName,
            Description = what,
            CustomParser = result =>
            {
                var text = result.Tokens[0].Value.Trim();
                var percent = text.EndsWith('%');
                var digits = percent ? text[..^1].TrimEnd() : text;
                if (decimal.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
                {
                    // In decimals: 99.9 % is the double nearest 0.999, as 999 of 1,000 seasons are.
                    var share = (double)(percent ? number / 100 : number);
                    if (endsOut ? share is > 0 and < 1 : share <= 1)
                    {
                        return share;
                    }
                }

                result.AddError(
                    $"{name} {PlainText.Quote(text)} cannot be used; write a share "
                        + $"{(endsOut ? "above 0 and below 1" : "from 0 to 1")}, such as 0.9, or a percentage, such as 90%."
                );
                return null;
            },
        };

    private static void RefuseEmpty(SymbolResult result, IReadOnlyList<Token> tokens, string name)
    {
        if (tokens.Any(token => string.IsNullOrWhiteSpace(token.Value) || token.Value.Contains('\0', StringComparison.Ordinal)))
        {
            result.AddError($"{name} is empty; write a name.");
        }
    }
}
