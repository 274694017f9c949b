using BenchSim.Report.Words;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Case;

/// <summary>The sentences of a case report about the plan with and without a change.</summary>
internal static class CaseWords
{
    private const int LongestName = 40;

    /// <summary>The question in one sentence: the user's own, or what was asked of the program.</summary>
    public static string Question(CaseInput input)
    {
        var asked = PlainText.Short(input.Base.Plan.Scenario.Question, 300);
        if (input.Variant is { } variant)
        {
            var change = $"What does {Name(variant.Name)} change?";
            return asked.Length > 0 ? $"{asked} {change}" : change;
        }

        return asked.Length > 0 ? asked : "Does the plan fit the benches, season after season?";
    }

    /// <summary>The name of a variant or space, in quotation marks and short.</summary>
    public static string Name(string name) => $"\"{PlainText.Short(name, LongestName)}\"";

    /// <summary>A difference that is real, with what it is a difference of, in a sentence.</summary>
    public static string Real(MeasureChange change)
    {
        var decimals = CompareFigures.Decimals(change);
        string Amount(double amount) => CompareFigures.Amount(change.Measure, amount, decimals);
        var name = change.Measure.Name;
        var unit = CompareFigures.Unit(change.Measure);
        (var least, var most) = change.Difference > 0 ? (change.Low, change.High) : (-change.High, -change.Low);
        var range = change.HalfWidth == 0 ? "the same in every season" : $"{Amount(least)} to {Amount(most)}";
        return $"{PlainText.Capital(name)}: {Amount(change.Variant)}{(unit.Length > 0 ? " " + unit : "")} instead of "
            + $"{Amount(change.Base)}, {Amount(Math.Abs(change.Difference))} {More(change)} ({range}).";
    }

    private static string More(MeasureChange change)
    {
        return change.Difference > 0 ? "more"
            : change.Measure.IsAmount ? "less"
            : "fewer";
    }
}
