using System.CommandLine;
using BenchSim.Answers.Words;
using BenchSim.Report.Labels;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;

namespace BenchSim.Cli.Commands;

/// <summary>The options of <c>print</c> that take words of their own.</summary>
internal static class PrintOptions
{
    private static readonly (string Name, PaperKinds Kind)[] s_kinds =
    [
        ("list", PaperKinds.WorkList),
        ("labels", PaperKinds.Labels),
        ("order", PaperKinds.Order),
        ("calendar", PaperKinds.Calendar),
        ("workbook", PaperKinds.Workbook),
    ];

    /// <summary>Papers, by name, with commas between them.</summary>
    public static Option<PaperKinds> Kinds(string name, string what) =>
        new(name)
        {
            HelpName = "PAPERS",
            Description = what,
            DefaultValueFactory = _ => PaperKinds.All,
            CustomParser = result =>
            {
                var kinds = PaperKinds.None;
                if (result.Tokens.Count == 0)
                {
                    return PaperKinds.All;
                }

                foreach (var word in result.Tokens[0].Value.Split(',', StringSplitOptions.TrimEntries))
                {
                    var kind = Array.Find(s_kinds, each => string.Equals(each.Name, word, StringComparison.OrdinalIgnoreCase)).Kind;
                    if (kind == PaperKinds.None)
                    {
                        result.AddError(
                            $"{name} {PlainText.Quote(word)} cannot be used; "
                                + $"write one or more of {string.Join(", ", s_kinds.Select(each => each.Name))}, with commas between them."
                        );
                    }

                    kinds |= kind;
                }

                return kinds;
            },
        };

    /// <summary>A sheet of labels.</summary>
    public static Option<LabelSheet?> Sheet(string name, string what) =>
        new(name)
        {
            HelpName = "SHEET",
            Description = what,
            CustomParser = result =>
            {
                var text = result.Tokens[0].Value;
                if (LabelSheets.Parse(text, out var why) is { } sheet)
                {
                    return sheet;
                }

                result.AddError($"{name} {PlainText.Quote(text)} cannot be used; {why}.");
                return null;
            },
        };
}
