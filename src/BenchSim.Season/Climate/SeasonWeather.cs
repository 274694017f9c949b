namespace BenchSim.Season.Climate;

/// <summary>Outdoor weather of one season by day, with days before day 0 and after the last day.</summary>
public sealed class SeasonWeather
{
    /// <summary>Days kept before day 0.</summary>
    public const int LeadDays = 30;

    /// <summary>Makes weather for a number of days from day 0 on, all zero.</summary>
    /// <param name="days">Days from day 0, the forecast days past the end included.</param>
    public SeasonWeather(int days)
    {
        Days = days;
        Tmin = new double[LeadDays + days];
        Tmax = new double[LeadDays + days];
        Rain = new double[LeadDays + days];
    }

    /// <summary>Bytes of the weather of a number of days from day 0 on.</summary>
    internal static long BytesOf(int days) => (LeadDays + days) * 3L * sizeof(double);

    /// <summary>Whether it is kept for others to read, and must not change any more.</summary>
    internal bool IsKept { get; set; }

    /// <summary>Days from day 0 on.</summary>
    public int Days { get; }

    /// <summary>Lowest temperatures, degrees Celsius; day 0 at <see cref="LeadDays"/>.</summary>
    public double[] Tmin { get; }

    /// <summary>Highest temperatures, degrees Celsius; day 0 at <see cref="LeadDays"/>.</summary>
    public double[] Tmax { get; }

    /// <summary>Rain, millimetres; day 0 at <see cref="LeadDays"/>.</summary>
    public double[] Rain { get; }

    /// <summary>Lowest temperature of a day, degrees Celsius.</summary>
    /// <param name="day">Day, -30 or later; past the end the last day holds.</param>
    public double TminOf(int day) => Tmin[Math.Min(day + LeadDays, Tmin.Length - 1)];

    /// <summary>Highest temperature of a day, degrees Celsius.</summary>
    /// <param name="day">Day, -30 or later; past the end the last day holds.</param>
    public double TmaxOf(int day) => Tmax[Math.Min(day + LeadDays, Tmax.Length - 1)];

    /// <summary>Rain of a day, millimetres.</summary>
    /// <param name="day">Day, -30 or later; past the end the last day holds.</param>
    public double RainOf(int day) => Rain[Math.Min(day + LeadDays, Rain.Length - 1)];
}
