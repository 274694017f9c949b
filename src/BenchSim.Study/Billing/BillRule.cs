using System.Collections.Immutable;

namespace BenchSim.Study.Billing;

/// <summary>How the growers divide what all of them share among themselves.</summary>
public enum BillRule
{
    /// <summary>All growers alike.</summary>
    Equal,

    /// <summary>By the places held, each for the days it is held.</summary>
    TrayDays,

    /// <summary>
    /// An open house costs the same whatever stands in it: those who have trays in it in a week pay alike; in a week in which it is full,
    /// by tray-days.
    /// </summary>
    FullWeeks,
}

/// <summary>The rules by name.</summary>
public static class BillRules
{
    private static readonly (string Word, BillRule Rule)[] s_words =
    [
        ("equal", BillRule.Equal),
        ("tray-days", BillRule.TrayDays),
        ("full-weeks", BillRule.FullWeeks),
    ];

    /// <summary>All of them, in the order in which they are shown.</summary>
    public static ImmutableArray<BillRule> All { get; } = [.. s_words.Select(each => each.Rule)];

    /// <summary>Name of a rule, as it is typed and kept.</summary>
    public static string Word(this BillRule rule) => s_words.First(each => each.Rule == rule).Word;

    /// <summary>The rule of a name, whatever its case; null for none.</summary>
    public static BillRule? Find(string word) =>
        s_words
            .Where(each => string.Equals(each.Word, word, StringComparison.OrdinalIgnoreCase))
            .Select(each => (BillRule?)each.Rule)
            .FirstOrDefault();
}
