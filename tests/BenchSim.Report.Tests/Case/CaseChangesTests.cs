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
                "Plants wanted in the field, of each succession"
                    + $"{Values(scenario, order => $"{order.Plants + 1} plants instead of {order.Plants} plants")}.",
                $"Tray it goes to the field in{Values(scenario, order => $"other instead of {order.TrayId}")}.",
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
        Mishap mice = new() { Id = "mice", Name = "Mice" };
        Assert.Equal(["The mishap \"Mice\" is new."], Changes(scenario with { Mishaps = [mice] }, scenario));
    }

    [Fact]
    public void Values_that_change_unlike_are_named_one_by_one()
    {
        var scenario = s_base.Scenario;
        var mats = scenario.Spaces.Where(space => space.Kind == SpaceKind.Mat).ToArray();
        var crops = scenario.Crops.Select((crop, at) => crop with { LeaveMatAt = 0.5 + (at / 100.0) });
        var changes = Changes(scenario with { Crops = [.. crops] }, scenario);
        var told = Assert.Single(changes);
        Assert.All(
            scenario.Crops.Take(6).Select((crop, at) => $"\"{crop.Name}\" {50 + at} % instead of {crop.LeaveMatAt * 100} %"),
            words => Assert.Contains(words, told, StringComparison.Ordinal)
        );
        Assert.NotEmpty(mats);
        Assert.Contains(
            "40 °C instead of",
            Changes(
                scenario with
                {
                    Units = UnitSystem.Metric,
                    Spaces = [.. scenario.Spaces.Select(space => space == mats[0] ? space with { MatC = 40 } : space)],
                },
                scenario with
                {
                    Units = UnitSystem.Metric,
                }
            )[0],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_new_house_comes_with_its_warmth()
    {
        var scenario = s_base.Scenario with { Units = UnitSystem.Metric };
        var house = new House
        {
            Id = "new",
            Name = "New house",
            NightC = 12,
            DayC = 15,
        };
        Assert.Equal(
            ["The house \"New house\" is new: heated to 12 °C at night and 15 °C by day."],
            Changes(scenario with { Houses = scenario.Houses.Add(house) }, scenario)
        );
        Assert.Equal(
            ["The house \"New house\" is new: unheated."],
            Changes(scenario with { Houses = scenario.Houses.Add(house with { NightC = null, DayC = null }) }, scenario)
        );
    }

    private static string Values(Scenario scenario, Func<BatchOrder, string> words)
    {
        var batches = scenario.Batches;
        return batches.Select(words).Distinct(StringComparer.Ordinal).Count() == 1
            ? $": {words(batches[0])}, for {batches.Length} batches"
            : $", for {batches.Length} batches: {string.Join("; ", batches.Select(order => $"\"{order.Id}\" {words(order)}"))}";
    }

    // The last sentence says where all values stand.
    private static string[] Changes(Scenario after, Scenario before) =>
        [.. CaseChanges.Of(s_base with { Scenario = before }, s_base with { Scenario = after }).SkipLast(1)];
}
