using System.Collections.Immutable;
using BenchSim.Season.Weather;

namespace BenchSim.Answers.Laying;

/// <summary>
/// A climate made up from what a grower knows by heart: when the last frost is, and how cold the coldest night gets. It stands in until
/// there is a record or a table of normals, and says so wherever it is shown.
/// </summary>
/// <remarks>
/// The mean lowest temperature of the day runs through the year as a cosine with its trough on 20 January; single nights spread about it.
/// Trough, swing and spread are found by drawing years from the generator that will play the seasons, and moving each of the three until
/// the last frosts of the drawn years and their coldest nights are those that were asked for.
/// </remarks>
/// <param name="LowC">Mean lowest temperature of the day by month, degrees Celsius.</param>
/// <param name="HighC">Mean highest temperature of the day by month, degrees Celsius.</param>
/// <param name="SpreadK">Standard deviation of the lowest temperatures of each month's days, kelvin.</param>
/// <param name="RainDays">Days with rain in each month.</param>
/// <param name="RainMm">Rain of each month, millimetres.</param>
public sealed record FarmClimate(
    ImmutableArray<double> LowC,
    ImmutableArray<double> HighC,
    ImmutableArray<double> SpreadK,
    ImmutableArray<int> RainDays,
    ImmutableArray<int> RainMm
)
{
    // Both assumptions, alike in every month.
    private const int UsualRainDays = 10;
    private const int UsualRainMm = 90;

    private const double YearDays = 365;
    private const double TroughDay = 20;

    // Warmest less coldest of a day: an assumption.
    private const double RangeK = 11;
    private const double UsualSpreadK = 4;
    private const double LeastSpreadK = 1.5;
    private const double MostSpreadK = 7;
    private const int Rounds = 30;
    private const int Years = 400;
    private const ulong Seed = 1;

    private static readonly double[] s_midMonth = [16, 45, 75, 105, 136, 166, 197, 228, 258, 289, 319, 350];

    /// <summary>Makes a climate up.</summary>
    /// <param name="lastFrost">Day of the year of the last frost of a usual year.</param>
    /// <param name="lateFrost">That of a late year, one in ten; after the usual one.</param>
    /// <param name="coldestC">Coldest night of a usual winter, degrees Celsius.</param>
    public static FarmClimate Of(int lastFrost, int lateFrost, double coldestC)
    {
        var (trough, atFrost, spread) = (coldestC + (2.5 * UsualSpreadK), 2 * UsualSpreadK, UsualSpreadK);
        var climate = Of(trough, atFrost, spread, lastFrost);
        for (var round = 0; round < Rounds; round++)
        {
            var (usual, late, coldest) = Drawn(climate);
            var warming = Slope(lastFrost) * Swing(trough, atFrost, lastFrost);
            var wider = Math.Clamp((double)(lateFrost - lastFrost) / Math.Max(1, late - usual), 0.7, 1.4);

            // A part of the way, since each of the three moves what the other two are measured by.
            trough += 0.5 * (coldestC - coldest);
            atFrost += 0.5 * warming * Math.Clamp(usual - lastFrost, -20, 20);
            spread = Math.Clamp(spread * Math.Pow(wider, 0.15), LeastSpreadK, MostSpreadK);
            climate = Of(trough, atFrost, spread, lastFrost);
        }

        return climate;
    }

    private static FarmClimate Of(double trough, double atFrost, double spread, int lastFrost)
    {
        var swing = Swing(trough, atFrost, lastFrost);
        ImmutableArray<double> low = [.. s_midMonth.Select(day => Math.Round(trough + (swing * (1 - Cosine(day))), 1))];
        return new FarmClimate(
            low,
            [.. low.Select(celsius => Math.Round(celsius + RangeK, 1))],
            Twelve(Math.Round(spread, 1)),
            Twelve(UsualRainDays),
            Twelve(UsualRainMm)
        );
    }

    private static ImmutableArray<T> Twelve<T>(T value) => [.. Enumerable.Repeat(value, s_midMonth.Length)];

    // Never a year that gets colder towards summer, whatever was answered.
    private static double Swing(double trough, double atFrost, int lastFrost) =>
        Math.Max(2, (atFrost - trough) / Math.Max(0.05, 1 - Cosine(lastFrost)));

    private static double Cosine(double day) => Math.Cos(2 * Math.PI * (day - TroughDay) / YearDays);

    // Kelvin a day for each kelvin of swing.
    private static double Slope(double day) =>
        Math.Max(0.004, 2 * Math.PI / YearDays * Math.Sin(2 * Math.PI * (day - TroughDay) / YearDays));

    // The median and the ninth tenth of the last frosts, as days of the year, and the median of the coldest nights, November to July.
    private static (int Usual, int Late, double ColdestC) Drawn(FarmClimate climate)
    {
        var first = new DateOnly(2026, 11, 1);
        var newYear = new DateOnly(2027, 1, 1).DayNumber - first.DayNumber;
        var days = newYear + 212;
        var generator = new WeatherGenerator(climate.Normals.ToModel());
        var (low, high, rain) = (new double[days], new double[days], new double[days]);
        var (last, lowest) = (new int[Years], new double[Years]);
        for (var year = 0; year < Years; year++)
        {
            generator.Draw(Seed, year, first, low, high, rain);
            last[year] = Array.FindLastIndex(low, celsius => celsius <= 0) - newYear + 1;
            lowest[year] = low.Min();
        }

        Array.Sort(last);
        Array.Sort(lowest);
        return (last[Years / 2], last[Years * 9 / 10], lowest[Years / 2]);
    }

    /// <summary>The normals that the generator is made of.</summary>
    internal WeatherNormals Normals =>
        new()
        {
            Months =
            [
                .. LowC.Select(
                    (low, month) => new MonthNormals(low, HighC[month], RainDays[month], RainMm[month]) { TminSdC = SpreadK[month] }
                ),
            ],
            Source = "",
        };
}
