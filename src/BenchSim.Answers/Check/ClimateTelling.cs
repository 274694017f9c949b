using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Answers.Check;

/// <summary>Tells what the site's weather means for a plan: frosts, cold nights, fuel and electricity.</summary>
internal static class ClimateTelling
{
    private const string NotCounted = "-";

    public static void Tell(Passages words, SeasonPlan plan, ClimateSummary climate)
    {
        RecordTelling.Tell(words, plan.Scenario);
        TellNights(words, plan.Scenario, climate);
        HouseTelling.Tell(words, plan.Scenario, climate);
        EnergyTelling.TellFuel(words, plan.Scenario, climate);
        AirTelling.Tell(words, plan.Scenario);
        EnergyTelling.TellMats(words, plan.Scenario, climate);
    }

    private static void TellNights(Passages words, Scenario scenario, ClimateSummary climate)
    {
        if (scenario.Weather is ConstantWeather same)
        {
            words.Heading("Climate");
            words.Sentence(
                $"The weather is the same every day: every night is at {Quantity.Temperature.Write(same.TminC, scenario.Units)}, "
                    + "and there is no last frost to look for.",
                2
            );
            return;
        }

        if (climate is not { Frost: { } frost, Nights: { } nights })
        {
            words.Heading("Climate");
            words.Sentence("The record has no year with every day of the season, so frosts and cold nights are not counted.", 2);
            return;
        }

        words.Heading("Climate: last frost and expected hold days by fortnight");
        HoldDays[] table = [.. climate.Holds.Where(holds => holds.Kind == HoldKind.Table)];
        HoldDays[] field = [.. climate.Holds.Where(holds => holds.Kind != HoldKind.Table)];
        TellTable(words, scenario, nights, frost, table);
        words.Sentence(
            "Frost after: the chance of frost AFTER the date, that is, "
                + $"of at least one night from the first day of the line on, up to {Dates.Iso(frost.Last)}, "
                + $"at or below {Quantity.Temperature.Write(frost.FrostC, scenario.Units)}. "
                + $"Small is safe. Out of {Years(scenario, frost.Years)}.",
            2
        );
        if (table.Length > 0)
        {
            words.Sentence(
                scenario.Rules.ForecastNights == 0
                    ? "Table: no night ahead is looked at, so no day holds ready trays back from the hardening table."
                    : "Table: mean number of days in the fortnight on which ready trays may not go to the hardening table, "
                        + $"as {Nights(scenario)} there is below the temperature"
                        + (scenario.Rules.CoverGainK > 0 ? ", row cover counted in" : "")
                        + ":",
                2
            );
            TellCrops(words, scenario, table);
        }

        words.Gap();
        TellTable(words, scenario, nights, null, field);
        var isDryUnder = field.Any(holds => holds.Cover.KeepsRainOff());
        words.Sentence(
            $"Wet: mean number of days on which nothing may go to the field{(isDryUnder ? ", save under a tunnel" : "")}, "
                + $"as more than {Quantity.Rain.Write(scenario.Rules.WetLimitMm, scenario.Units)} of rain fell in the two days before. "
                + "Field: mean number of days on which hardened trays may not go to the field, "
                + $"as it is wet{(isDryUnder ? " (not under a tunnel)" : "")}"
                + $"{(scenario.Rules.ForecastNights == 0 ? "" : $" or {Nights(scenario)} is below the temperature")}:",
            2
        );
        TellCrops(words, scenario, field);
        words.Sentence(
            "These are days of weather, worked or not, whether or not a tray is ready then; the run plays what they do to the plan.",
            2
        );
        TellDoubts(words, scenario);
    }

    private static void TellTable(Passages words, Scenario scenario, WeatherSummary nights, WeatherSummary? frost, HoldDays[] holds)
    {
        string[] chance = frost is null ? [] : [">frost after"];
        var table = words.Table(["fortnight from", .. chance, .. holds.Select(kind => $">{Column(kind, scenario)}")]);
        for (var fortnight = 0; fortnight < nights.FrostAfter.Length; fortnight++)
        {
            string[] share = frost is null
                ? []
                : [fortnight < frost.FrostAfter.Length ? ChanceWords.Percent(frost.FrostAfter[fortnight].Share) : NotCounted];
            table.Add([
                Dates.Iso(nights.FrostAfter[fortnight].From),
                .. share,
                .. holds.Select(kind => Numbers.Tenths(kind.Fortnights[fortnight].Mean)),
            ]);
        }
    }

    private static string Column(HoldDays holds, Scenario scenario) =>
        holds.Kind switch
        {
            HoldKind.WetField => "wet",
            HoldKind.Field => $"field {UnitWords.Temperature(holds.AboveC!.Value, scenario.Units)}{Where(holds)}",
            _ => $"table {UnitWords.Temperature(holds.AboveC!.Value, scenario.Units)}{Where(holds)}",
        };

    // Tables outdoors and the open field go without saying.
    private static string Where(HoldDays holds) =>
        holds.Cover != FieldCover.Open ? $" ({PlanFields.FieldCoverWord[holds.Cover]})"
        : holds.Under.All(house => house.Length == 0) ? ""
        : $" ({PlainText.List([.. holds.Under.Select(house => house.Length == 0 ? "outdoors" : PlainText.Short(house, 20))])})";

    private static void TellCrops(Passages words, Scenario scenario, HoldDays[] holds)
    {
        foreach (var kind in holds.Where(kind => kind.Kind != HoldKind.WetField))
        {
            words.Sentence($"{UnitWords.Temperature(kind.AboveC!.Value, scenario.Units)}{Where(kind)}: {Names(kind.Crops)}.", 4);
        }
    }

    /// <summary>The nights of forecast that are looked at, of which one is too cold.</summary>
    public static string Nights(Scenario scenario) =>
        scenario.Rules.ForecastNights switch
        {
            1 => "the next night",
            var nights => $"one of the next {nights} nights",
        };

    private static string Years(Scenario scenario, int years) =>
        scenario.Weather is GeneratedWeather
            ? Numbers.Count(years, "generated year", "generated years")
            : Numbers.Count(years, "year of the record", "years of the record");

    private static string Names(ImmutableArray<string> names) => PlainText.List([.. names.Select(name => PlainText.Short(name, 40))]);

    private static void TellDoubts(Passages words, Scenario scenario)
    {
        if (scenario.Weather is not GeneratedWeather generated)
        {
            return;
        }

        foreach (
            var sentence in generated.Fitted is { } fitted
                ? WeatherFitWords.Warnings(fitted.Report, scenario.Units)
                : generated.Model.Assumptions
        )
        {
            words.Sentence(sentence, 2);
        }
    }
}
