using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Check;

/// <summary>Tells the rules in force under the names of their keys in site.toml.</summary>
internal static class RuleTelling
{
    // Longer than any meaning: a test prints them all.
    private const int LongestMeaning = 400;

    public static void Tell(Passages words, Scenario scenario)
    {
        words.Heading("Rules in force");
        var table = words.Table(["rule", "in force", "what it means"], longestCell: LongestMeaning);
        var rules = scenario.Rules;
        Add(table, RuleFields.Table, rules, scenario.Units);
        Add(table, ReliefFields.Table, rules, scenario.Units);
        Add(table, WorkMinuteFields.Table, rules.Minutes, scenario.Units);
        Add(table, WorkSecondFields.Table, rules.Seconds, scenario.Units);
        Add(table, SeedFields.Table, rules.SeedStorage ?? SeedFields.NotSaid, scenario.Units);
        Add(table, MixFields.Table, rules.Mix, scenario.Units);
        Add(table, PriceFields.Table, rules.Prices, scenario.Units);
        words.Sentence($"{PlainText.Capital(WorkWords.NotCounted(rules))} are not counted as work.", 2);
    }

    private static void Add<TRecord>(Table table, FieldTable<TRecord> fields, TRecord record, UnitSystem units)
    {
        foreach (var field in fields.Values)
        {
            table.Add($"{field.Section}.{field.Name}", field.Show(record, units), field.Help);
        }
    }
}
