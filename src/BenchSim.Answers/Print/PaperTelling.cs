using BenchSim.Answers.Words;
using BenchSim.Report.Papers;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Print;

/// <summary>Tells which papers were written.</summary>
internal static class PaperTelling
{
    public static void Tell(Passages words, SeasonPlan plan, string place, PaperSummary summary)
    {
        words.Line($"Papers from {Figures.Date(summary.From)} to {Figures.Date(summary.To)}:");
        foreach (var file in summary.Files)
        {
            words.Line(Path.Combine(place, file), 2);
        }

        words.Gap();
        words.Sentence(
            $"{Figures.Count(summary.Tasks, "job", "jobs")} in {Figures.Count(summary.Weeks, "week", "weeks")}, "
                + $"{Figures.Plain(Math.Round(summary.Hours, 1))} "
                + $"{(Math.Round(summary.Hours, 1) == 1 ? "hour" : "hours")} of work, thinning not counted."
        );
        words.Sentence(
            $"Needed: {Figures.Count(summary.Seeds, "seed", "seeds")}, {Figures.Count(summary.Trays, "tray", "trays")}, "
                + $"{Figures.Count(summary.Flats, "flat", "flats")}, {Mix(summary, plan.Scenario.Units)}"
                + (summary.Cost is { } cost ? $"; seed and mix cost {Figures.Money(cost, plan.Scenario.Rules.Prices.Currency)}." : ".")
        );
        if (summary.LabelSheets > 0)
        {
            words.Sentence(
                $"{Figures.Count(summary.Labels, "label", "labels")}, one a tray or flat, "
                    + $"on {Figures.Count(summary.LabelSheets, "sheet", "sheets")} ({summary.Sheet.Words}). "
                    + "Print them at their true size (100 %), not fitted to the page."
            );
        }

        words.Gap();
        words.Sentence(
            "The dates are those of the plan: normal weather, and a place for every tray. "
                + "Where the plan does not fit, trays will mostly be later; "
                + "\"benchsim run\" tells how much."
        );
    }

    private static string Mix(PaperSummary summary, UnitSystem units)
    {
        var litres = $"{Figures.Tenths(summary.MixLitres)} litres";
        var feet = $"{Figures.Tenths(summary.MixCubicFeet)} cubic feet";
        return units == UnitSystem.Imperial ? $"{feet} of mix ({litres})" : $"{litres} of mix ({feet})";
    }
}
