using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Check;

/// <summary>Tells where the values of crops, tray types and houses come from.</summary>
internal static class SourceTelling
{
    private const int LongestSource = 160;

    /// <summary>Tells the values that rest on memory or assumption, by crop, or all of them with their sources.</summary>
    public static void Tell(Passages words, Scenario scenario, bool all)
    {
        var values = SourcedValue.Of(scenario);
        if (all)
        {
            TellAll(words, values);
        }
        else
        {
            TellWeak(words, values);
        }
    }

    private static void TellAll(Passages words, ImmutableArray<SourcedValue> values)
    {
        words.Heading("Values in use, and where they come from");
        var table = words.Table(["of", "column", "value", "trust", "source"], LongestSource);
        foreach (var value in values)
        {
            table.Add(
                PlainText.Short(value.Owner, 40),
                value.Column,
                PlainText.Short(value.Value, 60),
                value.TrustWords,
                value.Provenance.Source
            );
        }
    }

    private static void TellWeak(Passages words, ImmutableArray<SourcedValue> values)
    {
        ImmutableArray<SourcedValue> weak = [.. values.Where(value => value.IsWeak)];
        if (weak.IsEmpty)
        {
            words.Heading("No value of a crop, tray type or house rests on memory or assumption.");
            return;
        }

        words.Heading($"Values from memory or assumption: {Numbers.Whole(weak.Length)} of {Numbers.Whole(values.Length)}");
        words.Sentence(
            "Check those that matter to you, and write your own into the file that is named. "
                + "The option --sources prints every value with its source.",
            2
        );
        foreach (var owner in weak.GroupBy(value => (value.File, value.Owner)))
        {
            words.Line($"{PlainText.Short(owner.Key.Owner, 40)} ({owner.Key.File})", 2);
            foreach (var trust in owner.GroupBy(value => value.TrustWords, StringComparer.Ordinal))
            {
                words.Sentence($"{trust.Key}: {string.Join(", ", trust.Select(Shown))}", 4);
            }
        }
    }

    private static string Shown(SourcedValue value) =>
        value.Value.Length == 0 ? value.Column : $"{value.Column} {PlainText.Short(value.Value, 60)}";
}
