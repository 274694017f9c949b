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
            return Figures.List([.. group.Spaces.Select(space => SafeText.Short(scenario.Spaces[space].Name, 30))]) + " alone";
        }

        return group.Kind switch
        {
            SpaceKind.Mat => "heat mats",
            SpaceKind.Bench => "benches",
            _ => "hardening tables",
        };
    }

    /// <summary>Fewest and most places: "52", "200 to 296".</summary>
    public static string Places(LevelGroup group)
    {
        (var least, var most) = (group.Places.Min(), group.Places.Max());
        return least == most ? Figures.Whole(most) : $"{Figures.Whole(least)} to {Figures.Whole(most)}";
    }

    /// <summary>Days moved: "3 earlier", "1 later".</summary>
    public static string Days(MovedSowing move) => $"{Figures.Whole(Math.Abs(move.Days))} {(move.Days < 0 ? "earlier" : "later")}";

    /// <summary>What to do, and why.</summary>
    public static string Verdict(LevelResult result) =>
        result.Verdict switch
        {
            LevelVerdict.NothingMayMove => "Nothing moves: no sowing may. Write the days by which each may be sown earlier or later "
                + "into the columns \"earlier\" and \"later\" of plan.csv.",
            LevelVerdict.NothingIsOver => $"Nothing moves: the expected trays have room as planned{Filled(result)}. "
                + "To leave more room for luck, ask for less with --fill.",
            LevelVerdict.NothingHelps => "Nothing moves: no move within the days allowed leaves fewer trays without a "
                + $"place{(result.IsOverProved ? "" : ", as far as was searched")}.",
            LevelVerdict.Adopt => $"Verdict: adopt the levelled plan. On the same luck {Reasons(result)}.",
            LevelVerdict.Keep => $"Verdict: keep the plan as it is. {WhyKept(result)}",
            _ => throw new InvalidOperationException("An unknown verdict."),
        };

    /// <summary>How good the choice is.</summary>
    public static string Proof(LevelResult result)
    {
        var over = result.IsOverProved
            ? "No choice of days within the tolerances leaves fewer place-days over: this is proved."
            : "The search was stopped by its limit: it is not proved that nothing leaves fewer place-days over, "
                + $"but none leaves fewer than {Figures.Tenths(result.OverBound)}.";
        var shift = result.IsShiftProved
            ? "None as good moves fewer days in all."
            : $"Some choice as good may move fewer days, but none fewer than {Figures.Whole(result.ShiftBound)}.";
        return result.Moves.IsEmpty ? over : $"{over} {shift}";
    }

    private static string Filled(LevelResult result) =>
        result.Options.Fill < 1 ? $", with {Figures.Percent(1 - result.Options.Fill)} of the places left free" : "";

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
                $"the plan fits in {Figures.Percent(trial.Fits.Variant.Share)} of seasons "
                    + $"instead of {Figures.Percent(trial.Fits.Base.Share)}"
            );
        }

        if (reasons.Count == 1)
        {
            reasons.Add(
                late.IsReal
                    ? "no difference can be told in the chance that the plan fits"
                    : "no difference can be told in the late plant-days"
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
            : "The play does not show that the levelled plan has fewer late plant-days or fits in more seasons: "
                + "no difference can be told in either.";
    }
}
