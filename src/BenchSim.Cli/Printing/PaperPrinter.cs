using BenchSim.Answers.Words;
using BenchSim.Report.Papers;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Cli.Printing;

/// <summary>Tells which papers were written.</summary>
internal static class PaperPrinter
{
    public static void Print(Desk desk, SeasonPlan plan, string place, PaperSummary summary)
    {
        desk.Say($"Papers from {Figures.Date(summary.From)} to {Figures.Date(summary.To)}:");
        foreach (var file in summary.Files)
        {
            desk.Say($"  {Path.Combine(place, file)}");
        }

        desk.Say();
        desk.SayWrapped(
            $"{Figures.Count(summary.Tasks, "job", "jobs")} in {Figures.Count(summary.Weeks, "week", "weeks")}, "
                + $"{Figures.Plain(Math.Round(summary.Hours, 1))} {(Math.Round(summary.Hours, 1) == 1 ? "hour" : "hours")} of work, thinning not counted."
        );
        desk.SayWrapped(
            $"Needed: {Figures.Count(summary.Seeds, "seed", "seeds")}, {Figures.Count(summary.Trays, "tray", "trays")}, "
                + $"{Figures.Count(summary.Flats, "flat", "flats")}, {Mix(summary, plan.Scenario.Units)}"
                + (summary.Cost is { } cost ? $"; seed and mix cost {Figures.Money(cost, plan.Scenario.Rules.Prices.Currency)}." : ".")
        );
        if (summary.LabelSheets > 0)
        {
            desk.SayWrapped(
                $"{Figures.Count(summary.Labels, "label", "labels")}, one a tray or flat, on {Figures.Count(summary.LabelSheets, "sheet", "sheets")} ({summary.Sheet.Words}). "
                    + "Print them at their true size (100 %), not fitted to the page."
            );
        }

        desk.Say();
        desk.SayWrapped(
            "The dates are those of the plan: normal weather, and a place for every tray. Where the plan does not fit, trays will mostly be later; "
                + "\"benchsim run\" tells how much."
        );
    }

    private static string Mix(PaperSummary summary, UnitSystem units)
    {
        var litres = $"{Figures.Tenths(summary.MixLitres)} litres";
        var feet = $"{Figures.Tenths(summary.MixCubicFeet)} cubic feet";
        return units == UnitSystem.Imperial ? $"{feet} of mix ({litres})" : $"{litres} of mix ({feet})";
    }

    public static void PrintJson(Desk desk, SeasonPlan plan, string place, PaperSummary summary) =>
        desk.SayJson(json =>
        {
            json.WriteString("name", plan.Scenario.Name);
            json.WriteString("folder", place);
            json.WriteString("from", Figures.Date(summary.From));
            json.WriteString("to", Figures.Date(summary.To));
            json.WriteStartArray("files");
            foreach (var file in summary.Files)
            {
                json.WriteStringValue(file);
            }

            json.WriteEndArray();
            json.WriteNumber("weeks", summary.Weeks);
            json.WriteNumber("jobs", summary.Tasks);
            json.WriteNumber("hours", Math.Round(summary.Hours, 6));
            json.WriteNumber("seeds", summary.Seeds);
            json.WriteNumber("trays", summary.Trays);
            json.WriteNumber("flats", summary.Flats);
            json.WriteNumber("mix_litres", Math.Round(summary.MixLitres, 6));
            json.WriteNumber("mix_cubic_feet", Math.Round(summary.MixCubicFeet, 6));
            if (summary.Cost is { } cost)
            {
                json.WriteNumber("cost", Math.Round(cost, 6));
            }
            else
            {
                json.WriteNull("cost");
            }

            json.WriteStartObject("labels");
            json.WriteString("sheet", summary.Sheet.Name);
            json.WriteNumber("labels", summary.Labels);
            json.WriteNumber("sheets", summary.LabelSheets);
            json.WriteEndObject();
        });
}
