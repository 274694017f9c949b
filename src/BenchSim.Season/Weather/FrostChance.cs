namespace BenchSim.Season.Weather;

/// <summary>How often a frost still comes after a date.</summary>
/// <param name="From">The date: nights of this date and later are counted, to the end of the summary.</param>
/// <param name="Hits">Years with at least one such night at or below the threshold. The sense: the chance of frost AFTER the date, not of
/// being safe.</param>
/// <param name="Years">Years counted.</param>
public readonly record struct FrostChance(DateOnly From, int Hits, int Years)
{
    /// <summary>Share of the years, 0 to 1.</summary>
    public double Share => (double)Hits / Years;
}
