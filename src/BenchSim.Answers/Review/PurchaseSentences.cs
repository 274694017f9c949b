using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Mending;
using BenchSim.Study.Review;

namespace BenchSim.Answers.Review;

/// <summary>What a purchase would have changed on top of what would have cost nothing, in words.</summary>
internal static class PurchaseSentences
{
    private const int LongestName = 24;
    private const int MostNamed = 3;

    /// <summary>The judgement in a sentence or two.</summary>
    public static string Judgement(PurchaseJudged purchase)
    {
        var name = Name(purchase);
        var late = purchase.Gain.Late;
        var plants = late is { IsReal: true }
            ? $"{Numbers.Whole(Math.Abs(late.Difference))} {(late.Difference < 0 ? "more" : "fewer")} plants in time on average "
                + $"({Numbers.Whole(Math.Min(Math.Abs(late.Low), Math.Abs(late.High)))} to "
                + $"{Numbers.Whole(Math.Max(Math.Abs(late.Low), Math.Abs(late.High)))})"
            : null;
        var would =
            plants is not null ? $"{name} would have brought {plants}."
            : purchase.Gain.Fits.IsReal
                ? $"{name} would have made the plan fit {(purchase.Gain.Fits.Difference > 0 ? "more" : "less")} often."
            : $"{name} would have changed nothing that shows.";
        return $"On top of what would have cost nothing, {would} {CompareSentences.FitsWith(name, purchase.Gain.Fits, purchase.Seasons)}";
    }

    /// <summary>Columns of the plans side by side.</summary>
    public static ImmutableArray<string> Columns { get; } = ["the plan", ">fits in", ">plants late or never out", ">one time in ten"];

    /// <summary>Puts the plans into a table of these columns.</summary>
    public static void Fill(Table table, PurchaseJudged purchase)
    {
        Add("as planned", purchase.Agreed);
        Add("with what costs nothing", purchase.Free);
        Add($"with {Name(purchase)} on top", purchase.Bought);

        void Add(string plan, MendFigures figures) =>
            table.Add(plan, ChanceWords.Percent(figures.Fits.Share), Numbers.Whole(figures.Late), Numbers.Whole(figures.LateBad));
    }

    /// <summary>What the purchase would seem to bring to someone who changes nothing else.</summary>
    public static string Alone(PurchaseJudged purchase)
    {
        var late = purchase.Alone.Late;
        var brings = late is { IsReal: true }
            ? $"{Numbers.Whole(Math.Abs(late.Difference))} {(late.Difference < 0 ? "more" : "fewer")} plants in time"
            : "no clear difference in plants in time";
        return $"Set beside the plan as it was, without the changes that cost nothing, it would seem to bring {brings}. "
            + CompareSentences.FitsWith(Name(purchase), purchase.Alone.Fits, purchase.Seasons);
    }

    /// <summary>What was played.</summary>
    public static string Method(PurchaseJudged purchase)
    {
        var weather =
            purchase.Observed > 0
                ? $"in the weather observed on {Numbers.Count(purchase.Observed, "day", "days")} of this season, seed and growth drawn"
                : "in drawn weather, as none of this season was observed";
        return "A season cannot be gone through again: each plan was played "
            + $"{Numbers.Count(purchase.Seasons, "time", "times")} {weather}; "
            + "the seasons are the same for all. What costs nothing was sought by the weather of any year, as before the season. "
            + "The intervals allow for all of them.";
    }

    /// <summary>The changes that cost nothing, in a sentence.</summary>
    public static string Free(MendResult sought)
    {
        if (sought.Steps.IsEmpty)
        {
            return sought.IsMetBefore
                ? "Nothing that costs nothing was needed: the plan fits often enough as it is."
                : "Nothing that costs nothing was found to help.";
        }

        var words = new MendWords(sought.Plan);
        var named = sought.Steps.Take(MostNamed).Select(step => words.Short(step.Change)).ToList();
        if (sought.Steps.Length > MostNamed)
        {
            named.Add($"{Numbers.Whole(sought.Steps.Length - MostNamed)} more");
        }

        return $"What costs nothing: {PlainText.List(named)}.";
    }

    /// <summary>The name of the purchase.</summary>
    public static string Name(PurchaseJudged purchase) => PlainText.Quote(PlainText.Short(purchase.Name, LongestName));
}
