namespace BenchSim.Season.Heat;

/// <summary>
/// Degree-days of a day in closed form, from its lowest and highest temperature: the textbook methods our hourly sums are checked
/// against. In whichever degree the temperatures are in.
/// </summary>
public static class DegreeDays
{
    /// <summary>Single sine (Baskerville and Emin 1969, Ecology 50, 514-517): area of a sine through lowest and highest above a
    /// threshold.</summary>
    /// <param name="tmin">Lowest temperature.</param>
    /// <param name="tmax">Highest temperature, not below the lowest.</param>
    /// <param name="lower">Threshold.</param>
    public static double SingleSine(double tmin, double tmax, double lower)
    {
        var middle = (tmax + tmin) / 2;
        if (lower <= tmin)
        {
            return middle - lower;
        }

        if (lower >= tmax)
        {
            return 0;
        }

        var half = (tmax - tmin) / 2;
        var angle = Math.Asin((lower - middle) / half);
        return (((middle - lower) * ((Math.PI / 2) - angle)) + (half * Math.Cos(angle))) / Math.PI;
    }

    /// <summary>Single sine with a horizontal upper cut-off: no gain above the upper threshold.</summary>
    /// <param name="tmin">Lowest temperature.</param>
    /// <param name="tmax">Highest temperature, not below the lowest.</param>
    /// <param name="lower">Lower threshold.</param>
    /// <param name="upper">Upper threshold, not below the lower.</param>
    public static double SingleSine(double tmin, double tmax, double lower, double upper) =>
        SingleSine(tmin, tmax, lower) - SingleSine(tmin, tmax, upper);

    /// <summary>Single triangle: area above a threshold of straight lines from lowest to highest and back.</summary>
    /// <param name="tmin">Lowest temperature.</param>
    /// <param name="tmax">Highest temperature, not below the lowest.</param>
    /// <param name="lower">Threshold.</param>
    public static double SingleTriangle(double tmin, double tmax, double lower)
    {
        if (lower <= tmin)
        {
            return ((tmax + tmin) / 2) - lower;
        }

        return lower >= tmax ? 0 : (tmax - lower) * (tmax - lower) / (2 * (tmax - tmin));
    }

    /// <summary>Mean method: the middle of lowest and highest above a threshold, 0 below.</summary>
    /// <param name="tmin">Lowest temperature.</param>
    /// <param name="tmax">Highest temperature.</param>
    /// <param name="lower">Threshold.</param>
    public static double Mean(double tmin, double tmax, double lower) => Math.Max(0, ((tmax + tmin) / 2) - lower);

    /// <summary>Heating degree-days by the mean method: how far the day's middle lies below a base. Under-counts spring days that cross
    /// the base.</summary>
    /// <param name="tmin">Lowest temperature.</param>
    /// <param name="tmax">Highest temperature.</param>
    /// <param name="threshold">Base.</param>
    public static double HeatingMean(double tmin, double tmax, double threshold) => Math.Max(0, threshold - ((tmax + tmin) / 2));

    /// <summary>Heating degree-days by the single sine: area of the sine below a base = base - middle + area above it.</summary>
    /// <param name="tmin">Lowest temperature.</param>
    /// <param name="tmax">Highest temperature, not below the lowest.</param>
    /// <param name="threshold">Base.</param>
    public static double HeatingSine(double tmin, double tmax, double threshold) =>
        threshold - ((tmax + tmin) / 2) + SingleSine(tmin, tmax, threshold);
}
