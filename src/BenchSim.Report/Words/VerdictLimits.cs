using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>What the numbers leave out.</summary>
internal static class VerdictLimits
{
    public static ImmutableArray<string> Sentences(StudyResult result)
    {
        var scenario = result.Plan.Scenario;
        var sentences = ImmutableArray.CreateBuilder<string>();
        if (!scenario.Rules.Reliefs.IsEmpty)
        {
            sentences.Add(
                $"Ways of making room in force, in this order: {string.Join(", ", scenario.Rules.Reliefs.Select(ReliefFields.Deed))}. The "
                    + "report counts each use."
            );
        }
        else if (result.Groups.Any(group => group.RunsOut.Hits > 0))
        {
            sentences.Add(
                "No way of making room is in force: a tray that finds no place stays where it is and blocks others. A grower would squeeze "
                    + "trays in somewhere, so the figures overstate how often the plan fails."
            );
        }

        sentences.Add(Mishaps(result.Plan.Scenario));
        sentences.Add("The weather forecast is taken as perfect for the nights it covers; a real one is not.");
        switch (scenario.Weather)
        {
            case ConstantWeather:
                sentences.Add("The weather is the same every day and every season: differences in the weather are left out.");
                break;
            case RecordedWeather { FixedYear: { } year }:
                sentences.Add($"Every season has the weather of {year}: differences in the weather are left out.");
                break;
            case GeneratedWeather { Fitted: { } fitted }:
                sentences.Add(
                    "The weather is generated: its years differ as those of the record do, and springs earlier, later or colder "
                        + "than any on record are a guess from these."
                );
                if (fitted.Years < WeatherFitReport.ShortRecordYears)
                {
                    sentences.Add(
                        $"It is fitted to {fitted.Years.ToString("0.0", null)} years of record, which is short: "
                            + "chances of frost and of holds may be off either way."
                    );
                }

                break;
            case GeneratedWeather:
                sentences.Add(
                    "The weather is generated: its years differ somewhat less from one another than real ones, so very early, late or "
                        + "cold springs are rarer here than in truth."
                );
                sentences.Add("It is made from monthly normals: how days differ from one another is assumed, not measured at the site.");
                break;
            default:
                break;
        }

        if (result.Houses.Any(house => house.Fuel is not null))
        {
            sentences.Add(FuelWords(result.Plan.Scenario));
        }

        if (result.Seasons > 1)
        {
            sentences.Add(
                "“Eight seasons of ten” runs from the tenth to the ninetieth percentile of "
                    + $"{Numbers.Count(result.Seasons, "season", "seasons")} played; “typically” is the median."
            );
        }

        return sentences.ToImmutable();
    }

    private static string Mishaps(Scenario scenario) =>
        scenario.Mishaps.IsEmpty
            ? "No mishap is counted: a night without heat, a missed watering or mice would come on top."
            : "Mishaps counted, with their chance a season: "
                + MishapWords.First(scenario, each => $"{PlainText.Short(each.Name, 60)} ({ChanceWords.Setting(each.Chance)})")
                + ". Other mishaps would come on top.";

    private static string FuelWords(Scenario scenario) =>
        scenario.Houses.Where(house => house.Heat is not null).All(house => house.HasSunAt(scenario.Latitude))
            ? "Fuel follows from temperatures, set-points and the sun that a day's range of temperature stands for: wind and "
                + "open doors are left out."
            : "Fuel follows from temperatures, set-points and the same lift of the sun every day: wind, cloud and open doors are left out.";
}
