using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

public class WeatherFitTests
{
    private static readonly WeatherNormals Truth = new()
    {
        Source = "invented",
        Months = [.. Enumerable.Range(1, 12).Select(month => new MonthNormals(8 - (9 * Math.Cos((month - 1) * Math.PI / 6)), 18 - (11 * Math.Cos((month - 1) * Math.PI / 6)), 9, 60))],
    };

    [Fact]
    public void Fitting_what_was_generated_gives_the_model_back()
    {
        // 100 generated years, seed 11. Standard errors: chance of rain 0.01, means of wet days 0.2 C, spreads 2 %, A 0.005. Tolerances
        // are above four of them: over about 130 numbers the error chance is below 1 %.
        var model = WeatherModel.FromNormals(Truth);
        var fitted = WeatherFit.FitModel(Draw(model, 100));
        for (var month = 0; month < 12; month++)
        {
            var (true_, found) = (model.Months[month], fitted.Months[month]);
            Assert.Equal(true_.WetAfterDry, found.WetAfterDry, 0.05);
            Assert.Equal(true_.WetAfterWet, found.WetAfterWet, 0.08);
            Assert.Equal(true_.TminDryC, found.TminDryC, 0.7);
            Assert.Equal(true_.TmaxDryC, found.TmaxDryC, 0.7);
            Assert.Equal(true_.TminWetC, found.TminWetC, 0.9);
            Assert.Equal(1, found.TminSdC / true_.TminSdC, 0.1);
            Assert.Equal(1, found.TmaxSdC / true_.TmaxSdC, 0.1);
            Assert.Equal(1, found.RainShape / true_.RainShape, 0.2);
        }

        Assert.Equal(model.Residuals.A11, fitted.Residuals.A11, 0.03);
        Assert.Equal(model.Residuals.A22, fitted.Residuals.A22, 0.03);
        Assert.Equal(model.Residuals.B11, fitted.Residuals.B11, 0.03);
        Assert.Equal(model.Residuals.B22, fitted.Residuals.B22, 0.03);
    }

    [Fact]
    public void A_short_record_is_warned_of_and_a_long_one_is_not()
    {
        var model = WeatherModel.FromNormals(Truth);
        var brief = WeatherFit.Fit(Draw(model, 4));
        Assert.StartsWith("The record is short: 4.0 years, and 10 or more are wanted.", brief.Report.Warnings[0], StringComparison.Ordinal);
        Assert.DoesNotContain(WeatherFit.Fit(Draw(model, 12)).Report.Warnings, warning => warning.StartsWith("The record is short", StringComparison.Ordinal));
    }

    [Fact]
    public void The_report_says_in_words_how_well_the_record_is_reproduced()
    {
        var words = WeatherFit.Fit(Draw(WeatherModel.FromNormals(Truth), 12)).Report.Words;
        Assert.StartsWith("Fitted to 12.0 years of days, 2001-01-01 to 2012-12-31, and compared with 400 generated years.", words[0], StringComparison.Ordinal);
        Assert.StartsWith("Mean lowest temperature: the worst month, ", words[1], StringComparison.Ordinal);
        Assert.Contains(words, line => line.StartsWith("Nights below 4.4 C in April, a year: ", StringComparison.Ordinal));
        Assert.Contains(words, line => line.StartsWith("Day-to-day persistence", StringComparison.Ordinal));
    }

    [Fact]
    public void Same_record_same_report()
    {
        var record = Draw(WeatherModel.FromNormals(Truth), 3);
        Lines.Equal(WeatherFit.Fit(record).Report.Words, WeatherFit.Fit(record).Report.Words);
    }

    [Fact]
    public void Months_without_rain_borrow_and_say_so()
    {
        var record = Draw(WeatherModel.FromNormals(Truth), 3).Select(day => day.Date.Month == 7 ? day with { RainMm = 0 } : day).ToImmutableArray();
        var fitted = WeatherFit.FitModel(record);
        Assert.Equal(0, fitted.Months[6].WetAfterDry, 0.02);
        Lines.Contain("July has only 0 wet days: its rain amounts are those of the whole year.", fitted.Assumptions);
        Assert.True(double.IsFinite(fitted.Months[6].TmaxWetC));
        _ = new WeatherGenerator(fitted);
    }

    [Fact]
    public void A_record_without_any_rain_can_be_fitted()
    {
        var record = Draw(WeatherModel.FromNormals(Truth), 2).Select(day => day with { RainMm = 0 }).ToImmutableArray();
        var fitted = WeatherFit.FitModel(record);
        Assert.All(fitted.Months, month => Assert.Equal(0, month.WetShare));
        _ = new WeatherGenerator(fitted);
    }

    [Fact]
    public void A_record_that_never_changes_can_be_fitted()
    {
        var record = Enumerable.Range(0, 730).Select(day => new DailyWeather(new DateOnly(2001, 1, 1).AddDays(day), 8, 16, 0)).ToImmutableArray();
        var fitted = WeatherFit.FitModel(record);
        Assert.All(fitted.Months, month => Assert.Equal((8, 16), (Math.Round(month.TminDryC, 6), Math.Round(month.TmaxDryC, 6))));
        _ = new WeatherGenerator(fitted);
    }

    [Fact]
    public void What_cannot_be_fitted_says_why()
    {
        var record = Draw(WeatherModel.FromNormals(Truth), 1);
        Assert.Null(WeatherFit.WhyNot(record));
        Assert.Equal("the record is empty", WeatherFit.WhyNot([]));
        Assert.Equal("each month needs 20 days or more, but January has 0, February has 19", WeatherFit.WhyNot([.. record.Skip(40)]));
        Assert.Equal("2001-01-01 stands after 2001-01-02", WeatherFit.WhyNot([record[1], record[0]]));
        Assert.Throws<ArgumentException>(() => WeatherFit.Fit([]));
    }

    private static ImmutableArray<DailyWeather> Draw(WeatherModel model, int years)
    {
        var first = new DateOnly(2001, 1, 1);
        var count = first.AddYears(years).DayNumber - first.DayNumber;
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        new WeatherGenerator(model).Draw(11, 0, first, tmin, tmax, rain);
        return [.. Enumerable.Range(0, count).Select(day => new DailyWeather(first.AddDays(day), tmin[day], tmax[day], rain[day]))];
    }
}
