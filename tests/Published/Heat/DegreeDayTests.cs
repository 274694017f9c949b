using System.Globalization;
using System.Text.RegularExpressions;
using BenchSim.Season.Climate;
using BenchSim.Season.Heat;
using BenchSim.Season.Weather;
using Published.Weather;

namespace Published.Heat;

/// <summary>The heating degree-days of heat_examples.csv, by the single sine (Baskerville and Emin 1969), against the hours that are
/// played.</summary>
public partial class DegreeDayTests
{
    [Fact]
    public void Propane_by_degree_days()
    {
        // The house of case C1, without sun: UA = 1411.2034 Btu/h F including leaking air; each row beside its degree-days.
        const double Loss = 1411.2034 * 1.8 / HeatUnits.BtuPerWattHour;
        var all = DataFolder.Rows("heat_examples.csv");
        var rows = all.Where(row => row["category"] == "fuel_by_degree_days").ToList();
        Assert.Equal(2 * 4 * 5, rows.Count);
        foreach (var row in rows)
        {
            var month = all.Single(other => other["quantity"] == "HDD single sine" && other["inputs"] == row["inputs"].Split(';')[0]);
            var kelvinDays = DataFolder.Number(month["value"]) / 1.8;
            Assert.Equal(1, Fuels.Propane.Units(Loss * 24 * kelvinDays, 0.80) / DataFolder.Number(row["value"]), 1e-5);
        }
    }

    [Fact]
    public void Hourly_sums_agree_with_the_sine_within_2_percent_on_months()
    {
        // The same months and years, our 24 samples a day against the area of the sine.
        foreach (var row in DataFolder.Rows("heat_examples.csv").Where(row => row["quantity"] == "HDD single sine"))
        {
            var hourly = KelvinHours([.. Days(row["inputs"])], 23 / 1.8).Sum(hours => 1.8 / 24 * hours);
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
        DailyWeather[] days = [.. DataFolder.Days(place)];
        foreach (var (day, kelvinHours) in days.Zip(KelvinHours(days, set)))
        {
            var sine = HeatingSine(day.TminC, day.TmaxC, set);
            if (sine > 0.5)
            {
                worst = Math.Max(worst, Math.Abs((kelvinHours / 24 / sine) - 1));
            }
        }

        Assert.InRange(worst, 0, 0.02);
    }

    // What the heater of a house without sun makes up on each of the days, as a season plays it.
    private static double[] KelvinHours(DailyWeather[] days, double setC)
    {
        var weather = new SeasonWeather(days.Length + 1);
        foreach (var (at, day) in days.Index())
        {
            (weather.Tmin[SeasonWeather.LeadDays + at], weather.Tmax[SeasonWeather.LeadDays + at]) = (day.TminC, day.TmaxC);
        }

        var outdoors = new Outdoors(null);
        outdoors.Take(weather);
        var kelvinHours = new double[days.Length];
        new AirHours(new HouseAir(setC, null, 50, 0)).FillHeating(outdoors, kelvinHours);
        return kelvinHours;
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

    // Area of the sine through lowest and highest below a base: the base less the day's middle, and the area above the base.
    private static double HeatingSine(double tmin, double tmax, double threshold)
    {
        var (middle, half) = ((tmin + tmax) / 2, (tmax - tmin) / 2);
        var angle = Math.Asin(Math.Clamp((threshold - middle) / half, -1, 1));
        return threshold - middle + ((((middle - threshold) * ((Math.PI / 2) - angle)) + (half * Math.Cos(angle))) / Math.PI);
    }

    [GeneratedRegex(@"^(?<place>[A-Za-z ]+) (?<year>\d{4}) (?<month>\w+) ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex PlaceYearMonth();
}
