using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Doubt;
using BenchSim.Study.Trust;

namespace BenchSim.Answers.Trust;

/// <summary>Tells all that hangs on values: the figures over their ranges, groups, and each value.</summary>
internal static class TrustTelling
{
    private const int LongestName = 40;

    public static void Tell(Passages words, TrustResult result, string? folder)
    {
        words.Sentence($"{PlainText.Short(result.Plan.Scenario.Name, 60)}: {TrustSentences.Headline(result)}");
        if (result.Values.IsEmpty)
        {
            return;
        }

        words.Sentence(TrustSentences.Widths(result));
        foreach (var sentence in new[] { TrustSentences.First(result), TrustSentences.Next(result) }.OfType<string>())
        {
            words.Point(sentence, isSure: true);
        }

        if (result.Choice is { } choice)
        {
            words.Point(TrustSentences.Choice(result, choice), isSure: true);
            foreach (var (value, gain) in choice.Decides.Worth)
            {
                words.Point(
                    $"Knowing {DoubtWords.Name(value)} before choosing brings {TrustSentences.Gain(result, choice, gain.Share)} "
                        + $"(90 % interval {Numbers.Short(Math.Max(0, gain.Low))} to {Numbers.Short(gain.High)})."
                );
            }
        }

        TellRanges(words, result);
        TellGroups(words, result);
        TellValues(words, result);
        words.Gap();
        words.Sentence(
            $"{TrustSentences.Played(result)} In all {Numbers.Count(result.SeasonsPlayed, "season", "seasons")}, "
                + $"seed {result.Options.Seed}."
        );
        if (folder is not null)
        {
            words.Line($"Picture and tables: {folder}");
        }
    }

    /// <summary>A value in a table: whose it is first, so that it can be found.</summary>
    public static string Name(DoubtfulValue value) => $"{value.Owners}: {value.Column.Title}";

    private static void TellRanges(Passages words, TrustResult result)
    {
        words.Gap();
        words.Heading("Over the ranges of the values:");
        var table = words.Table(["", ">as given", ">5 %", ">middle", ">95 %", ">by the values"], LongestName);
        foreach (var range in result.Ranges)
        {
            table.Add(
                range.Measure.Name,
                DoubtWords.Figure(range.Measure, range.AsGiven),
                DoubtWords.Figure(range.Measure, range.Low),
                DoubtWords.Figure(range.Measure, range.Middle),
                DoubtWords.Figure(range.Measure, range.High),
                ChanceWords.Percent(range.Widths.ShareOfValues)
            );
        }

        words.Sentence("By the values: their part of how far seasons differ; the rest is luck.");
    }

    private static void TellGroups(Passages words, TrustResult result)
    {
        words.Gap();
        words.Heading("What would stay open if all the rest were known:");
        var table = words.Table(["", ">values", ">of seasons that fit", ">of late plant-days"], LongestName);
        foreach (var group in result.Groups)
        {
            table.Add(
                DoubtWords.Of(group.Group),
                Numbers.Whole(group.Values),
                DoubtWords.Share(group.Fits),
                DoubtWords.Share(group.LatePlantDays)
            );
        }

        words.Sentence(
            $"Total shares (Jansen) of how far the sets of values differ, over {result.Groups[0].Sets} sets, with 90 % intervals. "
                + "Together they may come to more than all of it, as values work together."
        );
    }

    private static void TellValues(Passages words, TrustResult result)
    {
        words.Gap();
        words.Heading("Each value wrong alone, those that move most first:");
        var table = words.Table(
            ["value", "from", "to", ">fits at from", ">fits at to", "given", ">late at from", ">late at to", ">own share"],
            LongestName
        );
        foreach (var value in result.InOrder.Where(value => value.Swing(0) > 0 || value.Swing(1) > 0))
        {
            table.Add([
                Name(value.Value),
                value.Value.At(0.05),
                value.Value.At(0.95),
                ChanceWords.Fine(value.AtLow[0]),
                ChanceWords.Fine(value.AtHigh[0]),
                value.Value.Now,
                Numbers.Short(value.AtLow[1]),
                Numbers.Short(value.AtHigh[1]),
                DoubtWords.Share(value.Shares[0]),
            ]);
        }

        var still = result.Values.Count(value => value.Swing(0) == 0 && value.Swing(1) == 0);
        words.Sentence(
            "From and to: one in twenty lies below, one in twenty above. Own share: the part of how far the seasons that fit differ "
                + $"between sets that the value makes by itself. {Numbers.Count(still, "value moves", "values move")} nothing."
        );
    }
}
