using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Check;

/// <summary>Tells what the sun, the vents and the heater do in each house, month by month.</summary>
internal static class HouseTelling
{
    public static void Tell(Passages words, Scenario scenario, ClimateSummary climate)
    {
        if (climate.Airs.IsEmpty)
        {
            return;
        }

        words.Heading($"Air of the houses, mean of {Numbers.Count(climate.Years, "year", "years")} of weather");
        var table = words.Table(["house", "month", ">noon, vents shut", ">noon, vents used", ">days vented", ">hours heated"]);
        foreach (var (house, months) in climate.Airs)
        {
            foreach (var month in months)
            {
                table.Add([
                    house.Name,
                    month.First.ToString("yyyy-MM", null),
                    UnitWords.Temperature(month.NoonShutC, scenario.Units),
                    UnitWords.Temperature(month.NoonC, scenario.Units),
                    ChanceWords.Percent(month.VentShare),
                    house.IsHeated ? Numbers.Short(month.HeatedHours) : "-",
                ]);
            }
        }

        foreach (var (house, _) in climate.Airs.Where(each => !each.House.HasSunAt(scenario.Latitude)))
        {
            words.Sentence($"{PlainText.Short(house.Name, 40)}: {WhySun(house, scenario)}", 2);
        }
    }

    private static string WhySun(House house, Scenario scenario) =>
        house.DayLiftK is { } lift
            ? $"the sun warms it by {UnitWords.Difference(lift, scenario.Units)} at noon on every day, as given by day_lift."
            : $"the sun is taken to warm it by {UnitWords.Difference(House.UsualLiftK, scenario.Units)} at noon on every day, because "
                + (scenario.Latitude is null ? "the site has no latitude" : "its size is not given")
                + ". Give both, and the sun is worked out from the weather.";
}
