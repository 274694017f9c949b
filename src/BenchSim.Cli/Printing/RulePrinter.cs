using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Cli.Printing;

/// <summary>Prints the rules in force under the names of their keys in site.toml.</summary>
internal static class RulePrinter
{
    // Longer than any meaning: a test prints them all.
    private const int LongestMeaning = 400;

    public static void Print(Desk desk, Scenario scenario)
    {
        PlanPrinter.Heading(desk, "Rules in force");
        var table = new TextTable(["rule", "in force", "what it means"], longestCell: LongestMeaning);
        var rules = scenario.Rules;
        Add(table, RuleFields.Table, rules, scenario.Units);
        Add(table, ReliefFields.Table, rules, scenario.Units);
        Add(table, WorkMinuteFields.Table, rules.Minutes, scenario.Units);
        Add(table, SeedFields.Table, rules.SeedStorage ?? SeedFields.NotSaid, scenario.Units);
        Add(table, PriceFields.Table, rules.Prices, scenario.Units);
        table.Print(desk);
    }

    private static void Add<TRecord>(TextTable table, FieldTable<TRecord> fields, TRecord record, UnitSystem units)
    {
        foreach (var field in fields.Values)
        {
            table.Add($"{field.Section}.{field.Name}", field.Show(record, units), field.Help);
        }
    }
}
