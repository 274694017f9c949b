using System.Collections.Immutable;
using BenchSim.Report.Words;

namespace BenchSim.Report.Charts;

/// <summary>An axis of a chart.</summary>
/// <param name="Low">Its lower end, in its own unit.</param>
/// <param name="High">Its upper end.</param>
internal sealed record ChartAxis(double Low, double High)
{
    /// <summary>What it counts; empty where that is plain.</summary>
    public string Name { get; init; } = "";

    /// <summary>Its marks, at the most about so many; null where a painter chooses its own.</summary>
    public Func<int, ImmutableArray<AxisTick>>? Ticks { get; init; }

    /// <summary>Words of a mark that a painter has chosen; null for a plain number.</summary>
    public Func<double, string>? Format { get; init; }

    /// <summary>Room beyond either end for figures that stand outside the bars, as a share of the length.</summary>
    public double Air { get; init; }

    /// <summary>The marks; the two ends where none are given.</summary>
    /// <param name="most">About so many at the most.</param>
    public ImmutableArray<AxisTick> TicksOrEnds(int most = 14) => Ticks?.Invoke(most) ?? [End(Low), End(High)];

    /// <summary>The days of a play.</summary>
    public static ChartAxis OfDates(Dates dates) => new(0, Math.Max(1, dates.Days)) { Ticks = most => AxisTick.OfDates(dates, most) };

    /// <summary>Whole places from 0 to a little more than that many.</summary>
    public static ChartAxis OfPlaces(int largest)
    {
        var scale = new PlaceScale(largest);
        return new ChartAxis(0, scale.Top) { Ticks = _ => [.. scale.Marks.Select(mark => new AxisTick(mark, Numbers.Whole(mark)))] };
    }

    private AxisTick End(double at) => new(at, Format?.Invoke(at) ?? Numbers.Whole(at));
}
