using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Compare;

namespace BenchSim.Answers.Words;

/// <summary>Says which sowings move where a variant is planned anew.</summary>
internal static class ReplanWords
{
    private const int LongestName = 24;
    private const int MostNamed = 2;

    /// <summary>How many sowings move, by how much, and those that move most.</summary>
    /// <param name="before">Plan of the base.</param>
    /// <param name="variant">Name of the variant.</param>
    /// <param name="after">Its plan.</param>
    public static string Moved(SeasonPlan before, string variant, SeasonPlan after)
    {
        var anew = $"Planned anew with {PlainText.Quote(PlainText.Short(variant, LongestName))}";
        var moves = MovedSowing.Between(before, after);
        if (moves.IsEmpty)
        {
            return after.Batches.Any(batch => batch.Order is { Sow: null, SetOut: not null })
                ? $"{anew}, no sowing moves."
                : $"{anew}, no sowing may move: the plan gives every sow date itself.";
        }

        var dates = new Dates(before);
        var named = moves
            .OrderByDescending(move => Math.Abs(move.Days))
            .Take(MostNamed)
            .Select(move => $"{PlainText.Short(move.Batch, LongestName)} from {dates.Plain(move.From)} to {dates.Plain(move.To)}");
        return $"{anew}, {Numbers.Whole(moves.Length)} of {Numbers.Count(after.Batches.Length, "sowing", "sowings")} "
            + $"{(moves.Length == 1 ? "moves" : "move")} ({Ways(moves)}): {string.Join(", ", named)}"
            + $"{(moves.Length > MostNamed ? " and others" : "")}. {Promised(moves)}";
    }

    /// <summary>Days moved: "3 earlier", "1 later".</summary>
    public static string Days(MovedSowing move) => $"{Numbers.Whole(Math.Abs(move.Days))} {(move.Days < 0 ? "earlier" : "later")}";

    private static string Ways(ImmutableArray<MovedSowing> moves)
    {
        var days = moves.Select(move => Math.Abs(move.Days)).ToArray();
        var range = days.Min() == days.Max() ? $"{days.Max()}" : $"{days.Min()} to {days.Max()}";
        var by = $"{range} {(days.Max() == 1 ? "day" : "days")}";
        var later = moves.Count(move => move.Days > 0);
        return later == 0 ? $"{by} earlier"
            : later == moves.Length ? $"{by} later"
            : $"by {by}, {Numbers.Whole(moves.Length - later)} earlier and {Numbers.Whole(later)} later";
    }

    // A variant may itself ask for other dates, and those are not promised ones.
    private static string Promised(ImmutableArray<MovedSowing> moves) =>
        moves.Count(move => move.SetOutFrom != move.SetOutTo) is > 0 and var moved
            ? $"{Numbers.Count(moved, "set-out date moves", "set-out dates move")} too, as the variant writes them."
            : "Set-out dates stay.";
}
