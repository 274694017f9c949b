using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Levelling;

namespace BenchSim.Answers.Words;

/// <summary>Says what levelling found and what to do, in a sentence each.</summary>
public static class LevelWords
{
    /// <summary>Name of a group of spaces.</summary>
    public static string Group(LevelGroup group, Scenario scenario)
    {
        if (!group.IsWholeKind)
        {
            return PlainText.List([.. group.Spaces.Select(space => PlainText.Short(scenario.Spaces[space].Name, 30))]) + " alone";
        }

        return group.Kind switch
        {
            SpaceKind.Mat => "heat mats",
            SpaceKind.Bench => "benches",
            _ => group.Spaces.Length == 1 ? "hardening table" : "hardening tables",
        };
    }

    /// <summary>Fewest and most places: "52", "200 to 296".</summary>
    public static string Places(LevelGroup group)
    {
        (var least, var most) = (group.Places.Min(), group.Places.Max());
        return least == most ? Numbers.Whole(most) : $"{Numbers.Whole(least)} to {Numbers.Whole(most)}";
    }

    /// <summary>Whose sowings move: "Ada moves 4, Ben 2."; the most first.</summary>
    public static string ByGrower(LevelResult result)
    {
        var own = result
            .Moves.GroupBy(move => move.Grower, StringComparer.Ordinal)
            .OrderByDescending(moves => moves.Count())
            .ThenBy(moves => moves.Key, StringComparer.Ordinal)
            .Select(
                (moves, at) =>
                    PlainText.Short(moves.Key, 30)
                    + (at == 0 ? $" moves {Numbers.Count(moves.Count(), "sowing", "sowings")}" : $" {Numbers.Whole(moves.Count())}")
            );
        return $"In the levelled plan {PlainText.List([.. own])}. "
            + "Where several choices are as good, the moves are spread over the growers.";
    }

    /// <summary>What to do, and why.</summary>
    public static string Verdict(LevelResult result) =>
        result.Verdict switch
        {
            LevelVerdict.NothingMayMove => "Nothing moves: no sowing may. Write the days by which each may be sown earlier or later "
                + "into the columns \"earlier\" and \"later\" of plan.csv.",
            LevelVerdict.NothingIsOver => $"Nothing moves: the expected trays have room as planned{Filled(result)}. "
                + "To leave more room to spare, ask for less with --fill.",
            LevelVerdict.NothingHelps => "Nothing moves: no move within the days allowed leaves fewer trays without a "
                + $"place{(result.IsOverProved ? "" : ", as far as was searched")}.",
            LevelVerdict.Adopt => $"Use the levelled plan: in the same seasons {Reasons(result)}.",
            LevelVerdict.Keep => $"Keep the plan as it is. {WhyKept(result)}",
            _ => throw new InvalidOperationException("An unknown verdict."),
        };

    /// <summary>How good the choice is.</summary>
    public static string Proof(LevelResult result)
    {
        var over = result.IsOverProved
            ? "No choice of days within the tolerances leaves fewer place-days over: this is proved."
            : "The search was stopped by its limit: it is not proved that nothing leaves fewer place-days over, "
                + $"but none leaves fewer than {Numbers.Tenths(result.OverBound)}.";
        var shift = result.IsShiftProved
            ? "None as good moves fewer days in all."
            : $"Some choice as good may move fewer days, but none fewer than {Numbers.Whole(result.ShiftBound)}.";
        return result.Moves.IsEmpty ? over : $"{over} {shift}";
    }

    private static string Filled(LevelResult result) =>
        result.Options.Fill < 1 ? $", with {ChanceWords.Setting(1 - result.Options.Fill)} of the places left free" : "";

    private static string Reasons(LevelResult result)
    {
        var trial = result.Trial!.Variants[0];
        var late = trial.Of(Measures.LatePlantDays)!;
        var reasons = new List<string>();
        if (late.IsReal && late.Difference < 0)
        {
            var decimals = CompareFigures.Decimals(late);
            reasons.Add(
                $"there are {CompareFigures.Amount(late.Measure, -late.Difference, decimals)} fewer late plant-days a season "
                    + $"({CompareFigures.Amount(late.Measure, -late.High, decimals)} to "
                    + $"{CompareFigures.Amount(late.Measure, -late.Low, decimals)})"
            );
        }

        if (trial.Fits.IsReal && trial.Fits.Difference > 0)
        {
            reasons.Add(
                $"the plan fits in {ChanceWords.Fine(trial.Fits.Variant.Share)} of seasons "
                    + $"instead of {ChanceWords.Fine(trial.Fits.Base.Share)}"
            );
        }

        if (reasons.Count == 1)
        {
            reasons.Add(
                late.IsReal ? "the chance that the plan fits shows no clear difference" : "the late plant-days show no clear difference"
            );
        }

        return string.Join(", and ", reasons);
    }

    private static string WhyKept(LevelResult result)
    {
        var trial = result.Trial!.Variants[0];
        var late = trial.Of(Measures.LatePlantDays)!;
        if (late.IsReal && late.Difference > 0)
        {
            return "The levelled plan has more late plant-days.";
        }

        return trial.Fits.IsReal && trial.Fits.Difference < 0
            ? "The levelled plan fits in fewer seasons."
            : "The levelled plan shows no clear gain, neither in late plant-days nor in the seasons in which " + "the plan fits.";
    }
}
