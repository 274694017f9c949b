using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Cli.Printing;

/// <summary>Prints where the values of crops, tray types and houses come from.</summary>
internal static class SourcePrinter
{
    private const int LongestSource = 160;

    /// <summary>Prints the values that rest on memory or assumption, by crop, or all of them with their sources.</summary>
    public static void Print(Desk desk, Scenario scenario, bool all)
    {
        var values = SourcedValue.Of(scenario);
        if (all)
        {
            PrintAll(desk, values);
        }
        else
        {
            PrintWeak(desk, values);
        }
    }

    private static void PrintAll(Desk desk, ImmutableArray<SourcedValue> values)
    {
        PlanPrinter.Heading(desk, "Values in use, and where they come from");
        var table = new TextTable(["of", "column", "value", "trust", "source"], LongestSource);
        foreach (var value in values)
        {
            table.Add(
                SafeText.Short(value.Owner, 40),
                value.Column,
                SafeText.Short(value.Value, 60),
                value.TrustWords,
                value.Provenance.Source
            );
        }

        table.Print(desk);
    }

    private static void PrintWeak(Desk desk, ImmutableArray<SourcedValue> values)
    {
        ImmutableArray<SourcedValue> weak = [.. values.Where(value => value.IsWeak)];
        if (weak.IsEmpty)
        {
            PlanPrinter.Heading(desk, "No value of a crop, tray type or house rests on memory or assumption.");
            return;
        }

        PlanPrinter.Heading(desk, $"Values from memory or assumption: {Figures.Whole(weak.Length)} of {Figures.Whole(values.Length)}");
        desk.SayWrapped(
            "Check those that matter to you, and write your own into the file that is named. The option --sources prints every value with its source.",
            2
        );
        foreach (var owner in weak.GroupBy(value => (value.File, value.Owner)))
        {
            desk.Say($"  {SafeText.Short(owner.Key.Owner, 40)} ({owner.Key.File})");
            foreach (var trust in owner.GroupBy(value => value.TrustWords, StringComparer.Ordinal))
            {
                desk.SayWrapped($"{trust.Key}: {string.Join(", ", trust.Select(Shown))}", 4);
            }
        }
    }

    private static string Shown(SourcedValue value) =>
        value.Value.Length == 0 ? value.Column : $"{value.Column} {SafeText.Short(value.Value, 60)}";
}
