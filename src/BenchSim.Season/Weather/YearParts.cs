namespace BenchSim.Season.Weather;

/// <summary>What the days of a calendar year have in common: shares of the variance of the scores, and one correlation.</summary>
/// <param name="Tmax">Share of the highest temperature by month, 0 to below 1.</param>
/// <param name="Tmin">Share of the lowest temperature by month, 0 to below 1.</param>
/// <param name="Correlation">Correlation of the two, -1 to 1.</param>
internal sealed record YearParts(double[] Tmax, double[] Tmin, double Correlation)
{
    /// <summary>Nothing in common.</summary>
    public static YearParts None { get; } = new(new double[12], new double[12], 0);

    /// <summary>The carry-over of the rest: correlations of the scores less what the days of a year have in common.</summary>
    /// <param name="cross">Correlation of highest and lowest temperature of one day.</param>
    /// <param name="lag">Correlations of today with yesterday: highest with highest, highest with lowest, lowest with highest, lowest with
    /// lowest.</param>
    public ResidualModel TakeFrom(double cross, double[] lag)
    {
        var (max, min) = (Tmax.Average(), Tmin.Average());
        var both = Correlation * Math.Sqrt(max * min);
        var rest = Math.Sqrt((1 - max) * (1 - min));
        return ResidualModel.FromCorrelations(
            Math.Clamp((cross - both) / rest, -0.99, 0.99),
            (lag[0] - max) / (1 - max),
            (lag[1] - both) / rest,
            (lag[2] - both) / rest,
            (lag[3] - min) / (1 - min)
        );
    }
}
