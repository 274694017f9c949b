using System.Collections.Immutable;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

public class WeatherFitTests
{
    private static readonly WeatherNormals s_truth = new()
    {
        Source = "invented",
        Months =
        [
            .. Enumerable
                .Range(1, 12)
                .Select(month => new MonthNormals(
                    8 - (9 * Math.Cos((month - 1) * Math.PI / 6)),
                    18 - (11 * Math.Cos((month - 1) * Math.PI / 6)),
                    9,
                    60
                )),
        ],
    };

    [Fact]
    public void Fitting_what_was_generated_gives_the_model_back()
    {
        // 100 generated years, seed 11. Standard errors: chance of rain 0.01, means of wet days 0.2 C, spreads 2 %, A 0.005. Tolerances
        // are above four of them: over about 130 numbers the error chance is below 1 %.
        var model = s_truth.ToModel();
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
        var model = s_truth.ToModel();
        var brief = WeatherFit.Fit(Draw(model, 4));
        Assert.StartsWith(
            "The record is short: 4.0 years, and 10 or more are wanted.",
            Warnings(brief.Report)[0],
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(Warnings(WeatherFit.Fit(Draw(model, 12)).Report), warning =>
            warning.StartsWith("The record is short", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void The_report_says_in_words_how_well_the_record_is_reproduced()
    {
        var words = Sentences(WeatherFit.Fit(Draw(s_truth.ToModel(), 12)).Report);
        Assert.StartsWith(
            "Fitted to 12.0 years of days, 2001-01-01 to 2012-12-31, and compared with 400 generated years.",
            words[0],
            StringComparison.Ordinal
        );
        Assert.StartsWith("Mean lowest temperature: the worst month, ", words[1], StringComparison.Ordinal);
        Assert.Contains(words, line => line.StartsWith("Nights below 4.4 C in April, a year: ", StringComparison.Ordinal));
        Assert.Contains(words, line => line.StartsWith("How far one day is like the next", StringComparison.Ordinal));
    }

    [Fact]
    public void Same_record_same_report()
    {
        var record = Draw(s_truth.ToModel(), 3);
        Lines.Equal(Sentences(WeatherFit.Fit(record).Report), Sentences(WeatherFit.Fit(record).Report));
    }

    [Fact]
    public void Months_without_rain_borrow_and_say_so()
    {
        var record = Draw(s_truth.ToModel(), 3).Select(day => day.Date.Month == 7 ? day with { RainMm = 0 } : day).ToImmutableArray();
        var fitted = WeatherFit.FitModel(record);
        Assert.Equal(0, fitted.Months[6].WetAfterDry, 0.02);
        Lines.Contain("July has only 0 wet days: its rain amounts are those of the whole year.", fitted.Assumptions);
        Assert.True(double.IsFinite(fitted.Months[6].TmaxWetC));
        _ = new WeatherGenerator(fitted);
    }

    [Fact]
    public void A_record_without_any_rain_can_be_fitted()
    {
        var record = Draw(s_truth.ToModel(), 2).Select(day => day with { RainMm = 0 }).ToImmutableArray();
        var fitted = WeatherFit.FitModel(record);
        Assert.All(fitted.Months, month => Assert.Equal(0, month.WetShare));
        _ = new WeatherGenerator(fitted);
    }

    [Fact]
    public void A_record_that_never_changes_can_be_fitted()
    {
        var record = Enumerable
            .Range(0, 730)
            .Select(day => new DailyWeather(new DateOnly(2001, 1, 1).AddDays(day), 8, 16, 0))
            .ToImmutableArray();
        var fitted = WeatherFit.FitModel(record);
        Assert.All(fitted.Months, month => Assert.Equal((8, 16), (Math.Round(month.TminDryC, 6), Math.Round(month.TmaxDryC, 6))));
        _ = new WeatherGenerator(fitted);
    }

    [Fact]
    public void What_cannot_be_fitted_says_why()
    {
        var record = Draw(s_truth.ToModel(), 1);
        Assert.Null(WeatherFit.WhyNot(record));
        Assert.Equal("the record is empty", WeatherFit.WhyNot([]));
        Assert.Equal("each month needs 20 days or more, but January has 0, February has 19", WeatherFit.WhyNot([.. record.Skip(40)]));
        Assert.Equal("2001-01-01 stands after 2001-01-02", WeatherFit.WhyNot([record[1], record[0]]));
        Assert.Throws<ArgumentException>(() => WeatherFit.Fit([]));
    }

    [Fact]
    public void A_day_that_is_none_says_which()
    {
        var record = Draw(s_truth.ToModel(), 1);
        DailyWeather[] wrong =
        [
            record[9] with
            {
                TminC = double.NaN,
            },
            record[9] with
            {
                TmaxC = double.PositiveInfinity,
            },
            record[9] with
            {
                RainMm = -0.1,
            },
            record[9] with
            {
                RainMm = double.NaN,
            },
            record[9] with
            {
                TminC = record[9].TmaxC + 0.1,
            },
        ];
        Assert.All(wrong, day =>
            Assert.Equal("the values of 2001-01-10 are not a day's weather", WeatherFit.WhyNot(record.SetItem(9, day)))
        );
        Assert.Null(WeatherFit.WhyNot(record.SetItem(9, record[9] with { TminC = record[9].TmaxC })));
        Assert.Equal("2001-01-10 stands after 2001-01-10", WeatherFit.WhyNot(record.Insert(9, record[9])));
        Assert.Null(WeatherFit.WhyNot([.. record.Where(day => day.Date.Month != 2 || day.Date.Day <= 20)]));
        Assert.Throws<ArgumentException>(() => WeatherFitReport.Of(s_truth.ToModel(), []));
    }

    // Twelve years of 4 and 16 C, 10 mm on the first of January and of July, -1 C on 10 March, and three days of October missing. The model
    // knows no luck of temperature: its February is 9 C too cold at night, its September 2 C too cool by day, its July rains each day, 1000
    // x 0.01 = 10 mm of it, 310 in all (0.09 either way).
    [Fact]
    public void A_model_that_misses_its_record_is_said_to()
    {
        var first = new DateOnly(2001, 1, 1);
        var record = Enumerable
            .Range(0, first.AddYears(12).DayNumber - first.DayNumber)
            .Select(first.AddDays)
            .Where(date => date.Year != 2005 || date.Month != 10 || date.Day is < 10 or > 12)
            .Select(date => new DailyWeather(date, date is { Month: 3, Day: 10 } ? -1 : 4, 16, date is { Month: 1 or 7, Day: 1 } ? 10 : 0))
            .ToImmutableArray();
        var dry = new MonthWeather
        {
            WetAfterDry = 0,
            WetAfterWet = 0,
            RainShape = 1000,
            RainScaleMm = 0.01,
            TminWetC = 4,
            TminDryC = 4,
            TmaxWetC = 16,
            TmaxDryC = 16,
            TminSdC = 1e-9,
            TmaxSdC = 1e-9,
        };
        var months = Enumerable.Repeat(dry, 12).ToArray();
        months[1] = dry with { TminDryC = -5 };
        months[6] = dry with { WetAfterDry = 1, WetAfterWet = 1 };
        months[8] = dry with { TmaxDryC = 14 };
        var model = new WeatherModel
        {
            Months = [.. months],
            Residuals = ResidualModel.UnitedStatesAverage,
            LeastRangeC = 0,
            Source = "invented",
            Assumptions = ["Something was assumed."],
        };
        var report = WeatherFitReport.Of(model, record);

        Assert.Equal((new DateOnly(2001, 1, 1), new DateOnly(2012, 12, 31), 3), (report.First, report.Last, report.MissingDays));
        string[] warnings =
        [
            "3 days are missing between the first and the last day; the fit uses the days there are.",
            "January: the generated share of wet days misses the record by -3.2 percentage points.",
            "February: generated mean temperatures miss the record by -9.0 C (lowest) and +0.0 C (highest).",
            "July: the generated share of wet days misses the record by +96.8 percentage points.",
            "September: generated mean temperatures miss the record by +0.0 C (lowest) and -2.0 C (highest).",
            "Something was assumed.",
        ];
        Lines.Equal(warnings, Warnings(report).Where(warning => !warning.Contains("in 12 springs. ", StringComparison.Ordinal)));
        Lines.Equal(
            [
                "Fitted to 12.0 years of days, 2001-01-01 to 2012-12-31, and compared with 400 generated years.",
                "Mean lowest temperature: the worst month, February, misses by 9.0 C.",
                "Mean highest temperature: the worst month, September, misses by 2.0 C.",
                "Share of wet days: the worst month, July, misses by 96.8 percentage points.",
            ],
            Sentences(report)[..4]
        );
        Lines.Contain("Rain of a year: 20 mm in the record, 310 mm generated.", Sentences(report));
        Assert.Contains(Sentences(report), line =>
            line.StartsWith("Nights below 4.4 C in April, a year: 30.0 in the record, ", StringComparison.Ordinal)
        );

        // The generated frosts end where the curve through the months comes up through 0 C.
        var curve = MeanPreservingCurve.Daily([.. months.Select(month => month.TminDryC)]);
        var last = Enumerable.Range(0, 181).Select(first.AddDays).Last(date => curve[MeanPreservingCurve.PlaceOf(date)] <= 0);
        Assert.Contains(Sentences(report), line =>
            line.StartsWith(
                $"Last night at or below 0 C, on average: 10 March in the record, {last.Day} "
                    + $"{(last.Month == 2 ? "February" : "March")} generated; years differ from it by 0 days and ",
                StringComparison.Ordinal
            )
        );

        // The same in Fahrenheit and inches: 9 K are 16.2 F and 2 K are 3.6 F; 20 mm are 0.8 inches, 310 mm 12.2; 4.4 C is 40 F in tenths
        // of a degree Celsius.
        Lines.Contain(
            "February: generated mean temperatures miss the record by -16.2 F (lowest) and +0.0 F (highest).",
            WeatherFitWords.Warnings(report, UnitSystem.Imperial)
        );
        var imperial = WeatherFitWords.Sentences(report, UnitSystem.Imperial, UnitSystem.Imperial);
        Lines.Contain("Mean highest temperature: the worst month, September, misses by 3.6 F.", imperial);
        Lines.Contain("Rain of a year: 0.8 inches in the record, 12.2 inches generated.", imperial);
        Assert.Contains(imperial, line => line.StartsWith("Nights below 40 F in April, a year: ", StringComparison.Ordinal));
        Assert.Contains(imperial, line => line.StartsWith("Last night at or below 32 F, on average: ", StringComparison.Ordinal));
    }

    private static ImmutableArray<DailyWeather> Draw(WeatherModel model, int years)
    {
        var first = new DateOnly(2001, 1, 1);
        var count = first.AddYears(years).DayNumber - first.DayNumber;
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        new WeatherGenerator(model).Draw(11, 0, first, tmin, tmax, rain);
        return [.. Enumerable.Range(0, count).Select(day => new DailyWeather(first.AddDays(day), tmin[day], tmax[day], rain[day]))];
    }

    private static ImmutableArray<string> Warnings(WeatherFitReport report) => WeatherFitWords.Warnings(report, UnitSystem.Metric);

    private static ImmutableArray<string> Sentences(WeatherFitReport report) =>
        WeatherFitWords.Sentences(report, UnitSystem.Metric, UnitSystem.Metric);
}
