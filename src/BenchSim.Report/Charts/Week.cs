using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Charts;

/// <summary>One week of a space: the fullest day of each figure.</summary>
/// <param name="From">First day of the week.</param>
/// <param name="Places">Most places on any of its days.</param>
/// <param name="Held">Highest median of places held.</param>
/// <param name="HeldHigh">Highest ninetieth percentile of places held.</param>
/// <param name="Wanted">Highest median of places wanted.</param>
/// <param name="WantedHigh">Highest ninetieth percentile of places wanted.</param>
/// <param name="Waiting">Highest median of places refused.</param>
/// <param name="WaitingHigh">Highest ninetieth percentile of places refused.</param>
/// <param name="HeldShare">Highest share of the day's places held at the median, 0 to 1; 0 where there are no places.</param>
internal sealed record Week(
    DateOnly From,
    int Places,
    int Held,
    int HeldHigh,
    int Wanted,
    int WantedHigh,
    int Waiting,
    int WaitingHigh,
    double HeldShare
)
{
    /// <summary>True when some tray waits in at least one season of ten.</summary>
    public bool IsShort => WaitingHigh > 0;

    /// <summary>The weeks of a space; the last may be shorter.</summary>
    public static Week[] Of(SpaceResult space, Dates dates) =>
        [.. Enumerable.Range(0, (dates.Days + 6) / 7).Select(week => Make(space, dates, 7 * week, Math.Min(dates.Days, (7 * week) + 7)))];

    private static Week Make(SpaceResult space, Dates dates, int from, int to)
    {
        int[] days = [.. Enumerable.Range(from, to - from)];
        return new Week(
            dates.Day(from),
            days.Max(day => space.Places[day]),
            days.Max(day => space.Held[day].P50),
            days.Max(day => space.Held[day].P90),
            days.Max(day => space.Wanted[day].P50),
            days.Max(day => space.Wanted[day].P90),
            days.Max(day => space.Waiting[day].P50),
            days.Max(day => space.Waiting[day].P90),
            days.Max(day => space.Places[day] == 0 ? 0 : (double)space.Held[day].P50 / space.Places[day])
        );
    }
}
