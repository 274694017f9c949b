using BenchSim.Report.Case;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Report.Tests.Case;

/// <summary>What a case report says that a variant changes: nothing that differs is left out.</summary>
public sealed class CaseChangesTests
{
    private static readonly SeasonPlan s_base = SyntheticPlan.Tiny();

    [Fact]
    public void A_rule_is_told_with_both_values()
    {
        var rules = s_base.Scenario.Rules with { SlackDays = 4, MoveBack = true, CoverGainK = 3 };
        Assert.Equal(
            [
                "Whether trays move back to an earlier preference as room appears: yes instead of no.",
                "Days of slack between being ready and the planned set-out date, for a batch with only one of its two dates: "
                    + "4 days instead of 0 days.",
                "Warmth a row cover adds on the table: 3 °C instead of 0 °C.",
            ],
            Changes(s_base.Scenario with { Rules = rules, Units = UnitSystem.Metric }, s_base.Scenario with { Units = UnitSystem.Metric })
        );
    }

    [Fact]
    public void What_changes_alike_for_several_is_told_once_with_both_values()
    {
        var scenario = s_base.Scenario;
        var batches = scenario.Batches.Select(order => order with { TrayId = "other", Plants = order.Plants + 1 });
        Assert.Equal(
            [
                "Plants wanted in the field, of each succession: "
                    + $"{Values(scenario, order => $"{order.Plants + 1} plants instead of {order.Plants} plants")}.",
                $"Tray it goes to the field in: {Values(scenario, order => $"other instead of {order.TrayId}")}.",
            ],
            Changes(scenario with { Batches = [.. batches] }, scenario)
        );
    }

    [Fact]
    public void What_comes_and_goes_is_named()
    {
        var scenario = s_base.Scenario;
        var mats = scenario.Spaces[0];
        var changed = scenario with { Spaces = [mats with { Id = "new", Name = "New mats", Places = 7 }, .. scenario.Spaces[1..]] };
        Assert.Equal(["\"New mats\" is new: 7 heat mat places.", "\"Heat mats\" is gone."], Changes(changed, scenario));
    }

    private static string Values(Scenario scenario, Func<BatchOrder, string> words)
    {
        string[] values = [.. scenario.Batches.Select(words).Distinct(StringComparer.Ordinal)];
        return values.Length == 1
            ? $"{values[0]}, for {scenario.Batches.Length} batches"
            : $"other values for {scenario.Batches.Length} batches";
    }

    // The last sentence says where all values stand.
    private static string[] Changes(Scenario after, Scenario before) =>
        [.. CaseChanges.Of(s_base with { Scenario = before }, s_base with { Scenario = after }).SkipLast(1)];
}
