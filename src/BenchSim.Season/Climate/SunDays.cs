using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>
/// The sun over the days of a season at one place: what it gives above the air, and how a day's radiation falls on its hours, by the sine
/// of the sun's height at each (docs/model.md section 6). Day -1 is there too. Immutable.
/// </summary>
public sealed class SunDays
{
    // Watts a square metre that are a megajoule in an hour.
    private const double WattsAMegajouleAnHour = 1e6 / 3600;

    // A sun on the horizon, told apart from one below it only by rounding, is none.
    private const double Lowest = 1e-6;

    private readonly double[] _aboveTheAir;
    private readonly double[] _byDay;
    private readonly double[] _byHour;
    private readonly double[] _aNightHour;

    /// <summary>Works them out.</summary>
    /// <param name="latitude">Latitude, degrees, north positive.</param>
    /// <param name="coefficient">Coefficient of radiation from the range of temperature.</param>
    /// <param name="opens">Date of day 0.</param>
    /// <param name="days">Days from day 0 on.</param>
    public SunDays(double latitude, double coefficient, DateOnly opens, int days)
    {
        Coefficient = coefficient;
        Stride = days + 1 + AirHours.Step;
        _aboveTheAir = new double[Stride];
        _aNightHour = new double[Stride];
        _byDay = new double[Stride * HourlyClimate.Hours];
        _byHour = new double[Stride * HourlyClimate.Hours];
        Span<double> heights = stackalloc double[HourlyClimate.Hours];
        for (var at = 0; at < Stride; at++)
        {
            var dayOfYear = opens.AddDays(at - 1).DayOfYear;
            _aboveTheAir[at] = Sun.AboveTheAir(latitude, dayOfYear);
            var sum = 0.0;
            var dark = 0;
            for (var hour = 0; hour < HourlyClimate.Hours; hour++)
            {
                var height = Sun.SineOfHeight(latitude, dayOfYear, hour);
                heights[hour] = height > Lowest ? height : 0;
                sum += heights[hour];
                dark += heights[hour] > 0 ? 0 : 1;
            }

            _aNightHour[at] = dark == 0 ? 0 : WattsAMegajouleAnHour / dark;
            for (var hour = 0; hour < HourlyClimate.Hours; hour++)
            {
                var watts = sum > 0 ? heights[hour] / sum * WattsAMegajouleAnHour : 0;
                _byDay[(at * HourlyClimate.Hours) + hour] = watts;
                _byHour[(hour * Stride) + at] = watts;
            }
        }
    }

    /// <summary>Coefficient of radiation from the range of temperature.</summary>
    public double Coefficient { get; }

    /// <summary>Days that are there, day -1 and some past the end included.</summary>
    public int Stride { get; }

    /// <summary>Radiation above the air by day, megajoules a square metre; day -1 first.</summary>
    public ReadOnlySpan<double> AboveTheAir => _aboveTheAir;

    /// <summary>Watts a square metre, of each hour without sun, that spread a megajoule over the night; by day, day -1 first.</summary>
    public ReadOnlySpan<double> ANightHour => _aNightHour;

    /// <summary>Watts a square metre at each hour of a day for each megajoule of it; 0 at night.</summary>
    /// <param name="day">Day, -1 or later.</param>
    public ReadOnlySpan<double> HoursOf(int day) => _byDay.AsSpan((day + 1) * HourlyClimate.Hours, HourlyClimate.Hours);

    /// <summary>Watts a square metre at an hour for each megajoule of the day, by day, day -1 first.</summary>
    /// <param name="hour">Hour, 0 to 23.</param>
    public ReadOnlySpan<double> DaysAt(int hour) => _byHour.AsSpan(hour * Stride, Stride);
}
