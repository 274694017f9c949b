using System.Globalization;

namespace BenchSim.Answers.Laying;

/// <summary>A line of a starter's plan, dated by the last frost of a late year.</summary>
/// <param name="Id">Id of the batch.</param>
/// <param name="Crop">Id of its crop.</param>
/// <param name="Plants">Plants wanted.</param>
/// <param name="Days">Days from that frost, or from the first warm nights, to its first set-out date; below 0 for before.</param>
public sealed record StarterLine(string Id, string Crop, int Plants, int Days)
{
    /// <summary>Whether it is dated by the first warm nights instead of the last frost.</summary>
    public bool IsTender { get; init; }

    /// <summary>Who grows it; empty for the site.</summary>
    public string Grower { get; init; } = "";

    /// <summary>Days between successions; 0 for one sowing alone.</summary>
    public int EveryDays { get; init; }

    /// <summary>Sowings of a run of successions.</summary>
    public int Times { get; init; } = 1;

    /// <summary>Tray type; empty for the crop's own.</summary>
    public string Tray { get; init; } = "";

    /// <summary>Whether it is sown dense in an open flat and potted up.</summary>
    public bool IsPottedUp { get; init; }

    /// <summary>Anything one should know; without a comma.</summary>
    public string Note { get; init; } = "";

    /// <summary>The line as <see cref="FarmTexts.PlanHead"/> has its columns.</summary>
    /// <param name="climate">The climate.</param>
    /// <param name="year">The year.</param>
    public string Text(StarterClimate climate, int year)
    {
        ArgumentNullException.ThrowIfNull(climate);
        var first = (IsTender ? climate.WarmNightsIn(year) : climate.LateFrostIn(year)).AddDays(Days);
        first = first.AddDays(first.DayOfWeek == DayOfWeek.Sunday ? 1 : 0);
        var isRun = Times > 1;
        string[] cells =
        [
            Id,
            Crop,
            Grower,
            Plants.ToString(CultureInfo.InvariantCulture),
            "",
            first.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            isRun ? EveryDays.ToString(CultureInfo.InvariantCulture) : "",
            isRun ? Times.ToString(CultureInfo.InvariantCulture) : "",
            IsPottedUp ? "pot up" : "direct",
            Tray,
            IsPottedUp ? "open-flat" : "",
            Note,
        ];
        return string.Join(',', cells) + "\n";
    }
}
