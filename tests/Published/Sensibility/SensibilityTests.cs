using BenchSim.Folder;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Published.Sensibility;

/// <summary>
/// A grower's sense of things against the published percent and days (Harrington and Minges 1954, tests/Published/data/emergence_days.csv),
/// with the built-in library, read from a scenario folder as a user would write it.
/// </summary>
public sealed class SensibilityTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("benchsim-sense-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Lettuce_in_a_30_C_house_comes_up_badly()
    {
        // 12 percent normal at 30 C, best 99 percent.
        var lettuce = PlanAt(30, "lettuce");
        Assert.Equal(12.0 / 99, lettuce.RelativeGermination, 0.01);
        Assert.True(lettuce.Trays > 5 * PlanAt(18, "lettuce").Trays);
    }

    [Fact]
    public void Spinach_at_25_C_comes_up_badly()
    {
        // 28 percent normal at 25 C, best 96 percent.
        Assert.Equal(28.0 / 96, PlanAt(25, "spinach").RelativeGermination, 0.01);
    }

    [Fact]
    public void Peppers_at_15_C_come_up_slowly()
    {
        // 25 days and 70 percent normal at 15 C, best 98 percent; the day a whole number, so at least 1.5 days of tolerance.
        var pepper = PlanAt(15, "pepper", mats: false);
        var days = pepper.Crop.EmergeHeat / EmergenceRate.Of(pepper.Crop, 15);
        Assert.InRange(days, 25 - 1.5, 25 + 1.5);
        Assert.Equal(70.0 / 98, pepper.RelativeGermination, 0.01);
        Assert.InRange(pepper.EmergeOn.DayNumber - pepper.SowOn.DayNumber, 23, 27);

        // On a 25 C mat it is up in a third of the time: 8 days in the table.
        var warm = PlanAt(15, "pepper", mats: true);
        Assert.InRange(warm.EmergeOn.DayNumber - warm.SowOn.DayNumber, 7, 10);
    }

    private BatchPlan PlanAt(int houseC, string crop, bool mats = false)
    {
        File.WriteAllText(
            Path.Combine(_folder, "site.toml"),
            $"""
            [site]
            name = "Sense"
            units = "metric"
            [season]
            opens = 2027-03-01
            closes = 2027-12-01
            [[house]]
            id = "house"
            name = "House"
            night = "{houseC} C"
            vent = "{houseC} C"
            day_lift = "0 C"
            [[space]]
            id = "bench"
            name = "Bench"
            kind = "bench"
            house = "house"
            places = 200
            [[space]]
            id = "table"
            name = "Table"
            kind = "table"
            places = 200
            {(
                mats
                    ? "[[space]]\nid = \"mat\"\nname = \"Mat\"\nkind = \"mat\"\nhouse = \"house\"\nplaces = 200\ntemperature = \"25 C\""
                    : ""
            )}
            [rules]
            medium_offset = "0 C"
            [weather]
            kind = "constant"
            low = "12 C"
            high = "14 C"
            rain = "0 mm"
            """
        );
        File.WriteAllText(Path.Combine(_folder, "plan.csv"), $"id,crop,plants,sow\na,{crop},400,2027-03-01\n");
        File.WriteAllText(Path.Combine(_folder, "crops.csv"), $"id,min_night,max_mat\n{crop},none,none\n");
        var reading = ScenarioFolder.Read(_folder);
        Assert.Empty(reading.Faults);
        var made = SeasonPlanner.Make(reading.Scenario!);
        Assert.Empty(made.Faults);
        return made.Plan!.Batches[0];
    }
}
