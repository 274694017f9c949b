using BenchSim.Report.Words;
using BenchSim.Study.Compare;

namespace BenchSim.Report.Case;

/// <summary>The sentences of a case report about the plan with and without a change.</summary>
internal static class CaseWords
{
    private const int LongestName = 40;

    /// <summary>The question in one sentence: the user's own, or what was asked of the program.</summary>
    public static string Question(CaseInput input)
    {
        string asked = PlainText.Short(input.Base.Plan.Scenario.Question, 300);
        if (input.Variant is { } variant)
        {
            string change = $"What does {Name(variant.Name)} change?";
            return asked.Length > 0 ? $"{asked} {change}" : change;
        }

        return asked.Length > 0 ? asked : "Does the plan fit the benches, season after season?";
    }

    /// <summary>The name of a variant or space, in quotation marks and short.</summary>
    public static string Name(string name) => $"“{PlainText.Short(name, LongestName)}”";

    /// <summary>What becomes of the chance of fit.</summary>
    public static string Fits(VariantResult variant, int seasons)
    {
        FitChange fits = variant.Fits;
        string played = $"{Numbers.Count(seasons, "season", "seasons")} of each, on the same luck";
        string name = Name(variant.Name);
        if (fits.Differing == 0)
            return $"The same seasons fit with and without {name}: {Numbers.Whole(fits.Both)} of {Numbers.Whole(seasons)} ({played}).";
        if (!fits.IsReal)
            return $"No difference can be told in the chance that the plan fits: with {name} it changes by {Points(fits.Low)} to {Points(fits.High)} percentage points ({played}).";
        (double least, double most) = fits.Difference > 0 ? (fits.Low, fits.High) : (-fits.High, -fits.Low);
        return $"With {name} the plan fits in {Numbers.Percent(fits.Variant.Share)} % of seasons instead of {Numbers.Percent(fits.Base.Share)} %: "
            + $"{Points(Math.Abs(fits.Difference))} percentage points {(fits.Difference > 0 ? "more" : "fewer")} (interval {Points(least)} to {Points(most)}; {played}).";
    }

    /// <summary>A difference that is real, in a sentence.</summary>
    public static string Real(MeasureChange change)
    {
        string name = change.Measure.Name;
        string unit = change.Measure.Kind == MeasureKind.EnergyCost ? "" : " " + change.Measure.Unit;
        (double least, double most) = change.Difference > 0 ? (change.Low, change.High) : (-change.High, -change.Low);
        string range = change.HalfWidth == 0 ? "the same in every season" : $"{Amount(change.Measure, least)} to {Amount(change.Measure, most)}";
        return $"{char.ToUpperInvariant(name[0])}{name[1..]}: {Amount(change.Measure, change.Variant)}{unit} instead of {Amount(change.Measure, change.Base)}, "
            + $"{Amount(change.Measure, Math.Abs(change.Difference))} {More(change)} ({range}).";
    }

    private static string More(MeasureChange change)
    {
        bool isAmount = change.Measure.Kind is MeasureKind.LabourHours or MeasureKind.Fuel or MeasureKind.MatPower or MeasureKind.EnergyCost or MeasureKind.MixLitres;
        return change.Difference > 0 ? "more" : isAmount ? "less" : "fewer";
    }

    /// <summary>The interval of a difference for a cell; a dash where one season tells nothing of it.</summary>
    public static string Interval(MeasureChange change) =>
        CaseMoneyWords.Range(change.Low, change.High, amount => Signed(change.Measure, amount));

    /// <summary>An amount in the unit of a measure, money with its sign in front.</summary>
    public static string Amount(Measure measure, double amount) => measure.Kind == MeasureKind.EnergyCost ? InvestNames.Money(amount, measure.Unit) : SavingWords.Signed(amount);

    /// <summary>With a plus or minus.</summary>
    public static string Signed(Measure measure, double amount)
    {
        string text = Amount(measure, amount);
        return amount > 0 && text.Any(character => character is >= '1' and <= '9') ? "+" + text : text;
    }

    /// <summary>Percentage points, one decimal.</summary>
    public static string Points(double share)
    {
        string text = Math.Round(share * 100, 1, MidpointRounding.AwayFromZero).ToString("0.#", null);
        return text is "-0" ? "0" : text;
    }

    /// <summary>Percentage points with a plus or minus.</summary>
    public static string SignedPoints(double share) => Points(share) is var text && share > 0 && text is not "0" ? "+" + text : text;
}
