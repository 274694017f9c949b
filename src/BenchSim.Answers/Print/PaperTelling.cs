using BenchSim.Answers.Words;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Print;

/// <summary>Tells which papers were written.</summary>
internal static class PaperTelling
{
    private const int LongestName = 60;

    public static void Tell(Passages words, SeasonPlan plan, string place, PaperSummary summary)
    {
        var whose = summary.Grower is { } grower ? $" for {PlainText.Short(grower, LongestName)}" : "";
        words.Line($"Papers{whose} from {Dates.Iso(summary.From)} to {Dates.Iso(summary.To)}:");
        foreach (var file in summary.Files)
        {
            words.Line(Path.Combine(place, file), 2);
        }

        words.Gap();
        var sentences = Sentences(plan, summary).ToArray();
        foreach (var sentence in sentences[..^1])
        {
            words.Sentence(sentence);
        }

        words.Gap();
        words.Sentence(sentences[^1]);
    }

    /// <summary>What the papers hold; and, last, what their dates are.</summary>
    public static IEnumerable<string> Sentences(SeasonPlan plan, PaperSummary summary)
    {
        yield return $"{Numbers.Count(summary.Tasks, "job", "jobs")} in {Numbers.Count(summary.Weeks, "week", "weeks")}, "
            + $"{Numbers.Plain(Math.Round(summary.Hours, 1))} "
            + $"{(Math.Round(summary.Hours, 1) == 1 ? "hour" : "hours")} of work"
            + $"{WorkWords.Watering(summary.WateringHours)}; {WorkWords.NotCounted(plan.Scenario.Rules)} are not counted.";
        yield return $"Needed: {Numbers.Count(summary.Seeds, "seed", "seeds")}, {Numbers.Count(summary.Trays, "tray", "trays")}, "
            + $"{Numbers.Count(summary.Flats, "flat", "flats")}, {Mix(summary, plan.Scenario.Units)}"
            + (summary.Cost is { } cost ? $"; seed and mix cost {new Money(plan.Scenario.Rules.Prices.Currency).Exact(cost)}." : ".");
        if (summary.LabelSheets > 0)
        {
            yield return $"{Numbers.Count(summary.Labels, "label", "labels")}, one a tray or flat, "
                + $"on {Numbers.Count(summary.LabelSheets, "sheet", "sheets")} ({summary.Sheet.Words}). "
                + "Print them at their true size (100 %), not fitted to the page.";
        }

        yield return "The dates are those of the plan: normal weather, and a place for every tray. "
            + "Where the plan does not fit, trays will mostly be later; "
            + "\"benchsim run\" tells how much.";
    }

    private static string Mix(PaperSummary summary, UnitSystem units)
    {
        var litres = $"{Numbers.Tenths(summary.MixLitres)} litres";
        var feet = $"{Numbers.Tenths(summary.MixCubicFeet)} cubic feet";
        var bought = Numbers.Count(summary.MixUnits, summary.MixSoldIn, $"{summary.MixSoldIn}s");
        return units == UnitSystem.Imperial ? $"{feet} of loose mix ({litres}, {bought})" : $"{litres} of loose mix ({feet}, {bought})";
    }
}
