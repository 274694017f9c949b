using System.Globalization;
using System.Text.RegularExpressions;
using BenchSim.Season.Heat;
using BenchSim.Season.Weather;
using Published.Weather;

namespace Published.Heat;

/// <summary>The degree-day rows of heat_examples.csv: single sine, triangle and mean (Baskerville and Emin 1969; D1 is printed by the
/// TrenchR package).</summary>
public partial class DegreeDayTests
{
    [Fact]
    public void Days_in_closed_form()
    {
        var rows = DataFolder.Rows("heat_examples.csv").Where(row => row["category"] == "degree_days").ToList();
        Assert.Equal(13, rows.Count);
        foreach (var row in rows)
        {
            var inputs = row["inputs"];
            var (tmin, tmax, lower) = (After(inputs, "Tmin"), After(inputs, "Tmax"), After(inputs, "lower"));
            var found = row["formula"] switch
            {
                "single sine" => DegreeDays.SingleSine(tmin, tmax, lower),
                "single triangle" => DegreeDays.SingleTriangle(tmin, tmax, lower),
                "average, floor 0" => DegreeDays.Mean(tmin, tmax, lower),
                _ => DegreeDays.SingleSine(tmin, tmax, lower, After(inputs, "upper")),
            };

            // D1 is printed with two decimals; the others are computed.
            Assert.Equal(DataFolder.Number(row["value"]), found, row["id"] == "D1" ? 0.005 : 1e-7);
        }
    }

    [Fact]
    public void Months_and_years_of_heating_degree_days()
    {
        var rows = DataFolder.Rows("heat_examples.csv").Where(row => row["category"] == "heating_degree_days").ToList();
        Assert.Equal(2 * 2 * 4 * 5, rows.Count);
        foreach (var row in rows)
        {
            var sum = Days(row["inputs"])
                .Sum(day =>
                    row["quantity"] == "HDD mean"
                        ? DegreeDays.HeatingMean(F(day.TminC), F(day.TmaxC), 55)
                        : DegreeDays.HeatingSine(F(day.TminC), F(day.TmaxC), 55)
                );
            Assert.Equal(DataFolder.Number(row["value"]), sum, 0.005);
        }
    }

    [Fact]
    public void Propane_by_degree_days()
    {
        // The house of case C1, without sun: UA = 1411.2034 Btu/h F including leaking air.
        const double Loss = 1411.2034 * 1.8 / HeatUnits.BtuPerWattHour;
        var rows = DataFolder.Rows("heat_examples.csv").Where(row => row["category"] == "fuel_by_degree_days").ToList();
        Assert.Equal(2 * 4 * 5, rows.Count);
        foreach (var row in rows)
        {
            var kelvinDays = Days(row["inputs"]).Sum(day => DegreeDays.HeatingSine(F(day.TminC), F(day.TmaxC), 55)) / 1.8;
            Assert.Equal(1, Fuels.Propane.Units(Loss * 24 * kelvinDays, 0.80) / DataFolder.Number(row["value"]), 1e-5);
        }
    }

    [Fact]
    public void Hourly_sums_agree_with_the_sine_within_2_percent_on_months()
    {
        // The same months and years, our 24 samples a day against the area of the sine.
        foreach (var row in DataFolder.Rows("heat_examples.csv").Where(row => row["quantity"] == "HDD single sine"))
        {
            var hourly = Days(row["inputs"])
                .Sum(day => 1.8 / 24 * HourlyClimate.HeatingKelvinHours(day.TminC, day.TmaxC, 0, 23 / 1.8, 23 / 1.8));
            Assert.Equal(1, hourly / DataFolder.Number(row["value"]), 0.02);
        }
    }

    [Theory]
    [InlineData("Seattle", 55)]
    [InlineData("New York", 55)]
    [InlineData("Seattle", 65)]
    [InlineData("New York", 65)]
    [InlineData("Seattle", 45)]
    [InlineData("New York", 45)]
    public void Hourly_days_above_half_a_degree_day_agree_with_the_sine_within_2_percent(string place, double setPointF)
    {
        var set = (setPointF - 32) / 1.8;
        var worst = 0.0;
        foreach (var day in DataFolder.Days(place))
        {
            var sine = DegreeDays.HeatingSine(day.TminC, day.TmaxC, set);
            if (sine > 0.5)
            {
                worst = Math.Max(worst, Math.Abs((HourlyClimate.HeatingKelvinHours(day.TminC, day.TmaxC, 0, set, set) / 24 / sine) - 1));
            }
        }

        Assert.InRange(worst, 0, 0.02);
    }

    private static IEnumerable<DailyWeather> Days(string inputs)
    {
        var match = PlaceYearMonth().Match(inputs);
        var year = int.Parse(match.Groups["year"].Value, CultureInfo.InvariantCulture);
        var month = match.Groups["month"].Value;
        return DataFolder
            .Days(match.Groups["place"].Value)
            .Where(day => day.Date.Year == year && (month == "year" || day.Date.ToString("MMM", CultureInfo.InvariantCulture) == month));
    }

    private static double F(double celsius) => (celsius * 9 / 5) + 32;

    private static double After(string inputs, string name) =>
        DataFolder.Number(Regex.Match(inputs, name + @" (-?[\d.]+)", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups[1].Value);

    [GeneratedRegex(@"^(?<place>[A-Za-z ]+) (?<year>\d{4}) (?<month>\w+) ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex PlaceYearMonth();
}
