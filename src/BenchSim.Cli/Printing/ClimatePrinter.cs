using System.Collections.Immutable;
using BenchSim.Cli.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Weather;

namespace BenchSim.Cli.Printing;

/// <summary>Prints what the site's weather means for a plan: frosts, cold nights, fuel and electricity.</summary>
internal static class ClimatePrinter
{
    private const string NotCounted = "-";

    public static void Print(Desk desk, SeasonPlan plan, ClimateSummary climate)
    {
        RecordPrinter.Print(desk, plan.Scenario);
        PrintNights(desk, plan.Scenario, climate);
        EnergyPrinter.PrintFuel(desk, plan.Scenario, climate);
        EnergyPrinter.PrintMats(desk, plan.Scenario, climate);
    }

    private static void PrintNights(Desk desk, Scenario scenario, ClimateSummary climate)
    {
        if (scenario.Weather is ConstantWeather same)
        {
            PlanPrinter.Heading(desk, "Climate");
            desk.SayWrapped($"The weather is the same every day: every night is at {Figures.Temperature(same.TminC, scenario.Units)}, and there is no last frost to look for.", 2);
            return;
        }

        if (climate is not { Frost: { } frost, Nights: { } nights })
        {
            PlanPrinter.Heading(desk, "Climate");
            desk.SayWrapped("The record has no year with every day of the season, so frosts and cold nights are not counted.", 2);
            return;
        }

        PlanPrinter.Heading(desk, "Climate: last frost and cold nights by fortnight");
        PrintTable(desk, scenario, climate, frost, nights);
        desk.SayWrapped($"Frost after: the chance of frost AFTER the date, that is, of at least one night from the first day of the line on, up to {Figures.Date(frost.Last)}, "
            + $"at or below {Figures.Temperature(frost.FrostC, scenario.Units)}. Small is safe. Out of {Years(scenario, frost.Years)}.", 2);
        desk.SayWrapped($"Nights below: mean number of such nights outdoors in the days of the line, out of {Years(scenario, nights.Years)}, without the warmth of a row cover. They hold back:", 2);
        foreach (HoldThreshold threshold in climate.Thresholds)
            desk.SayWrapped($"{Degrees(threshold.TemperatureC, scenario.Units)}: {Held(threshold)}", 4);
        PrintDoubts(desk, scenario);
    }

    private static void PrintTable(Desk desk, Scenario scenario, ClimateSummary climate, WeatherSummary frost, WeatherSummary nights)
    {
        string[] columns = ["from", "to", ">frost after", .. climate.Thresholds.Select(threshold => $">nights below {Degrees(threshold.TemperatureC, scenario.Units)}")];
        var table = new TextTable(columns);
        int fortnights = nights.FrostAfter.Length;
        for (int fortnight = 0; fortnight < fortnights; fortnight++)
        {
            DateOnly first = nights.FrostAfter[fortnight].From;
            DateOnly last = first.AddDays(13) < nights.Last ? first.AddDays(13) : nights.Last;
            string chance = fortnight < frost.FrostAfter.Length ? Figures.Percent(frost.FrostAfter[fortnight].Share) : NotCounted;
            IEnumerable<string> cold = Enumerable.Range(0, climate.Thresholds.Length).Select(threshold => Figures.Tenths(nights.Nights[(threshold * fortnights) + fortnight].Mean));
            table.Add([Figures.Date(first), Figures.Date(last), chance, .. cold]);
        }

        table.Print(desk);
    }

    // To a tenth: thresholds are often round in the other unit.
    private static string Degrees(double celsius, UnitSystem units) => units == UnitSystem.Imperial
        ? $"{Figures.Plain(Math.Round((celsius * 1.8) + 32, 1))} F"
        : $"{Figures.Plain(Math.Round(celsius, 1))} C";

    private static string Years(Scenario scenario, int years) =>
        scenario.Weather is GeneratedWeather ? Figures.Count(years, "generated year", "generated years") : Figures.Count(years, "year of the record", "years of the record");

    private static string Held(HoldThreshold threshold)
    {
        var parts = new List<string>();
        if (!threshold.ToTable.IsEmpty)
            parts.Add($"from the hardening table {Names(threshold.ToTable)}");
        if (!threshold.ToField.IsEmpty)
            parts.Add($"from the field {Names(threshold.ToField)}");
        return string.Join("; ", parts) + ".";
    }

    private static string Names(ImmutableArray<string> names) => Figures.List([.. names.Select(name => SafeText.Short(name, 40))]);

    private static void PrintDoubts(Desk desk, Scenario scenario)
    {
        if (scenario.Weather is not GeneratedWeather generated)
            return;
        foreach (string sentence in generated.Fit?.Warnings ?? generated.Model.Assumptions)
            desk.SayWrapped(sentence, 2);
    }
}
