using System.Collections.Immutable;

namespace BenchSim.Report.Charts;

/// <summary>One thing drawn on a chart. Places are in the units of the axes.</summary>
internal abstract record Mark;

/// <summary>A line through points, or the dots alone where its look has no line.</summary>
/// <param name="Look">How it looks.</param>
/// <param name="Points">Its points, from left to right.</param>
internal sealed record LineMark(Look Look, ImmutableArray<(double X, double Y)> Points) : Mark
{
    /// <summary>Steps: a number holds for the whole of its day.</summary>
    public static LineMark OfDays(Look look, Range days, Func<int, int> value) =>
        new(look, [.. Each(days).SelectMany(day => new (double, double)[] { (day, value(day)), (day + 1, value(day)) })]);

    /// <summary>Days, both ends counted from the first of the play.</summary>
    internal static IEnumerable<int> Each(Range days) => Enumerable.Range(days.Start.Value, days.End.Value - days.Start.Value);
}

/// <summary>All between two lines.</summary>
/// <param name="Look">How it looks.</param>
/// <param name="Points">The points of both lines, from left to right.</param>
internal sealed record BandMark(Look Look, ImmutableArray<(double X, double Low, double High)> Points) : Mark
{
    /// <summary>Steps, as of <see cref="LineMark.OfDays"/>.</summary>
    public static BandMark OfDays(Look look, Range days, Func<int, int> low, Func<int, int> high) =>
        new(
            look,
            [
                .. LineMark
                    .Each(days)
                    .SelectMany(day => new (double, double, double)[] { (day, low(day), high(day)), (day + 1, low(day), high(day)) }),
            ]
        );
}

/// <summary>A straight line from edge to edge.</summary>
/// <param name="Look">How it looks.</param>
/// <param name="At">Where it stands on the axis that it crosses.</param>
/// <param name="IsUpright">True where it crosses the axis below.</param>
internal sealed record EdgeMark(Look Look, double At, bool IsUpright) : Mark;

/// <summary>A bar in a row.</summary>
/// <param name="Look">How it looks.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other end, on either side.</param>
/// <param name="Lane">Which of the bars of the row it is, 0 for the uppermost.</param>
internal sealed record BarMark(Look Look, double From, double To, int Lane = 0) : Mark;

/// <summary>A thin line along a row.</summary>
/// <param name="Look">How it looks.</param>
/// <param name="From">Left end.</param>
/// <param name="To">Right end.</param>
/// <param name="Lane">On which of the bars of the row it lies.</param>
internal sealed record SpanMark(Look Look, double From, double To, int Lane = 0) : Mark
{
    /// <summary>True where it lies under the bar and not on its middle.</summary>
    public bool IsBelow { get; init; }
}

/// <summary>A point of a row, such as a date: its look says of what shape.</summary>
/// <param name="Look">How it looks.</param>
/// <param name="At">Where it stands.</param>
internal sealed record PointMark(Look Look, double At) : Mark;

/// <summary>Words in a row, in place of its bars.</summary>
/// <param name="Text">The words.</param>
/// <param name="At">Where they begin.</param>
internal sealed record NoteMark(string Text, double At) : Mark;

/// <summary>A figure at the end of a bar, outside it.</summary>
/// <param name="Text">The figure.</param>
/// <param name="At">The end of the bar.</param>
/// <param name="IsLeft">True where it stands left of that end.</param>
/// <param name="Lane">Which of the bars of the row it belongs to.</param>
internal sealed record FigureMark(string Text, double At, bool IsLeft, int Lane = 0) : Mark;
