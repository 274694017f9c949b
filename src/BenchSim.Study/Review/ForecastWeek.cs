using System.Collections.Immutable;

namespace BenchSim.Study.Review;

/// <summary>What the forecast of a Monday said of the days on which batches go out, against what came.</summary>
/// <param name="Day">The Monday.</param>
/// <param name="Cases">The batches that had still to go out then and did.</param>
public sealed record ForecastWeek(DateOnly Day, ImmutableArray<ForecastCase> Cases)
{
    /// <summary>Batches that went out within the range of eight seasons of ten.</summary>
    public int InRange => Cases.Count(one => one is { IsEarlier: false, IsLater: false });

    /// <summary>Batches that went out before it.</summary>
    public int Earlier => Cases.Count(one => one.IsEarlier);

    /// <summary>Batches that went out after it.</summary>
    public int Later => Cases.Count(one => one.IsLater);

    /// <summary>
    /// The middle number of days by which batches went out later than the middle season had it; null where there is none.
    /// </summary>
    public int? MiddleOff =>
        Cases.Where(one => one.P50 is not null).Select(one => one.OutOn.DayNumber - one.P50!.Value.DayNumber).Order().ToArray()
            is { Length: > 0 } off
            ? off[(off.Length - 1) / 2]
            : null;
}

/// <summary>What one forecast said of a batch, and what came.</summary>
/// <param name="Batch">Position in the plan.</param>
/// <param name="P10">In one season of ten its middle tray was out by that day; null where in fewer any went out.</param>
/// <param name="P50">In half of them; null likewise.</param>
/// <param name="P90">In nine of ten; null likewise.</param>
/// <param name="OutOn">The day by which at least half of the trays that went out had gone, by the log.</param>
public readonly record struct ForecastCase(int Batch, DateOnly? P10, DateOnly? P50, DateOnly? P90, DateOnly OutOn)
{
    /// <summary>Whether it went out before the range.</summary>
    public bool IsEarlier => P10 is not { } first || OutOn < first;

    /// <summary>Whether it went out after the range.</summary>
    public bool IsLater => P90 is { } last && OutOn > last;
}
