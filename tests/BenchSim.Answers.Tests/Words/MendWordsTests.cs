using BenchSim.Answers.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Tests.Words;

/// <summary>What a grower is to do, in the units of the site.</summary>
public sealed class MendWordsTests
{
    // 18 C is 64.4 F, 15 C is 59 F; 20 C is 68 F and 17 C is 62.6 F.
    [Theory]
    [InlineData(
        UnitSystem.Metric,
        "Heat main to 18 °C at night, not 15 °C, and 20 °C by day, not 17 °C.",
        "main at 18 °C by night and 20 °C by day"
    )]
    [InlineData(
        UnitSystem.Imperial,
        "Heat main to 64 °F at night, not 59 °F, and 68 °F by day, not 63 °F.",
        "main at 64 °F by night and 68 °F by day"
    )]
    public void Set_points(UnitSystem units, string deed, string few)
    {
        var plan = Plan(units);
        var house = new House
        {
            Id = "main",
            Name = "main",
            NightC = 15,
            DayC = 17,
        };
        var words = new MendWords(plan);
        Assert.Equal(deed, words.Deed(new SetPointChange(house, 18, 20), plan));
        Assert.Equal(few, words.Short(new SetPointChange(house, 18, 20)));
    }

    // A difference of 3 K is one of 5.4 F.
    [Theory]
    [InlineData(UnitSystem.Metric, "adds 3 °C")]
    [InlineData(UnitSystem.Imperial, "adds 5.4 °F")]
    public void A_row_cover(UnitSystem units, string gain) =>
        Assert.Equal(
            $"Lay a row cover over the hardening table on cold nights (one that {gain}).",
            new MendWords(Plan(units)).Deed(new CoverChange(3, 20), Plan(units))
        );

    // A foot is 0.3048 m: 4 feet are 1.2192 m.
    [Theory]
    [InlineData(UnitSystem.Metric, 2, "2 m")]
    [InlineData(UnitSystem.Imperial, 1.2192, "4 ft")]
    public void A_longer_table(UnitSystem units, double metres, string length)
    {
        var plan = Plan(units);
        var table = plan.Scenario.Spaces[2];
        var longer = plan with { Scenario = plan.Scenario with { Spaces = plan.Scenario.Spaces.SetItem(2, table with { Places = 24 }) } };
        Assert.Equal(
            $"Make Table {length} longer: 24 places, not 20.",
            new MendWords(plan).Deed(new PlacesChange(table, 1, 4, metres), longer)
        );
    }

    private static SeasonPlan Plan(UnitSystem units) =>
        SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(4), SmallSite.Bench(20), SmallSite.Table(20)],
                [SmallSite.Batch("B", 100, SmallSite.Monday)]
            ) with
            {
                Units = units,
            }
        );
}
