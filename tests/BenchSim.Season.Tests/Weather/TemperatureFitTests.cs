using System.Collections.Immutable;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

/// <summary>
/// The fit of temperatures and of the chance of rain to records whose answer is known: invented ones, day by day, and ones drawn from a
/// model.
/// </summary>
public class TemperatureFitTests
{
    private const int Year = 2001;

    /// <summary>
    /// Days of rain by month, the rest dry. May 5 single days; June 4; July 6, August 10 and November 25 in a row; October 28 and December
    /// 21 in a row from the 1st.
    /// </summary>
    private static readonly Dictionary<int, int[]> s_wet = new()
    {
        [5] = [3, 9, 15, 21, 27],
        [6] = [10, 11, 12, 20],
        [7] = [1, 2, 3, 4, 5, 6],
        [8] = [5, 6, 7, 8, 9, 10, 11, 12, 13, 14],
        [10] = [.. Enumerable.Range(1, 28)],
        [11] = [.. Enumerable.Range(1, 25)],
        [12] = [.. Enumerable.Range(1, 21)],
    };

    // November follows three dry days, so that its first wet day comes after a dry one. Pairs of days, yesterday wet: May 5, June 4, July
    // 6, August 10, October 28, November 25, December 21, 99 in all, of which wet again 0, 2, 5, 9, 27, 24 and 20, 87. Yesterday dry: 364 -
    // 99 = 265, of which wet 5, 2, 1, 1, 1, 1 and 1, 12.
    [Fact]
    public void A_month_with_few_days_of_a_kind_before_leans_on_the_year()
    {
        var model = Fitted();
        var (dry, wet) = (12 / 265.0, 87 / 99.0);
        Equal(2 / 26.0, model.Months[5].WetAfterDry);
        Equal((2 + (6 * wet)) / 10, model.Months[5].WetAfterWet);
        Equal((0 + (5 * wet)) / 10, model.Months[4].WetAfterWet);
        Equal(wet, model.Months[0].WetAfterWet);
        Equal(9 / 10.0, model.Months[7].WetAfterWet);
        Equal(27 / 28.0, model.Months[9].WetAfterWet);
        Equal((1 + (7 * dry)) / 10, model.Months[9].WetAfterDry);
        Equal((1 + (5 * dry)) / 10, model.Months[10].WetAfterDry);
        Equal(1 / 10.0, model.Months[11].WetAfterDry);
    }

    [Fact]
    public void A_place_without_a_dry_day_has_rain_every_day()
    {
        var first = new DateOnly(2001, 1, 1);
        var record = Enumerable
            .Range(0, 730)
            .Select(day => new DailyWeather(first.AddDays(day), 5 + (day % 3), 12 + (day % 5), 0.1 + (day % 2)))
            .ToImmutableArray();
        Assert.All(WeatherFit.FitModel(record).Months, month =>
            Assert.Equal((1, 1, 1), (month.WetAfterDry, month.WetAfterWet, month.WetShare))
        );
    }

    [Fact]
    public void What_a_fit_leans_on_is_said()
    {
        string[] thinAfterWet =
        [
            "January has only 0",
            "February has only 0",
            "March has only 0",
            "April has only 0",
            "May has only 5",
            "June has only 4",
            "July has only 6",
            "September has only 0",
        ];
        string[] thinWet =
        [
            "January has only 0",
            "February has only 0",
            "March has only 0",
            "April has only 0",
            "June has only 4",
            "September has only 0",
        ];
        Lines.Equal(
            [
                .. thinAfterWet.Select(month => $"{month} days after a wet day: its chance of rain then leans on the whole year's."),
                "October has only 3 days after a dry day: its chance of rain then leans on the whole year's.",
                "November has only 5 days after a dry day: its chance of rain then leans on the whole year's.",
                .. thinWet.Select(month => $"{month} wet days: its rain amounts are those of the whole year."),
                .. thinWet.Select(month =>
                    $"{month} wet days: their temperatures are those of its dry days and the year's usual difference."
                ),
                "October has only 3 dry days: their temperatures are those of its wet days and the year's usual difference.",
                "How temperatures carry over from day to day is not to be had from this record: it is taken as in the average of "
                    + "United States stations (Richardson and Wright 1984).",
            ],
            Fitted().Assumptions
        );
    }

    // Five days of rain or more have a law of their own: the mean of May is 4 mm, of June and all other days 10 mm.
    [Fact]
    public void A_month_with_few_wet_days_takes_the_rain_of_the_year()
    {
        var months = Fitted().Months;
        Equal(4, months[4].RainShape * months[4].RainScaleMm);
        Equal(months[0].RainShape, months[5].RainShape);
        Equal(((94 * 10) + (5 * 4)) / 99.0, months[5].RainShape * months[5].RainScaleMm);
    }

    // Dry days have 5 and 15 C, wet ones are 2 C warmer at night and 3 C cooler by day. What the few wet days of June and the few dry days
    // of October had is not believed.
    [Fact]
    public void A_month_with_few_days_of_a_kind_takes_the_usual_difference()
    {
        var months = Fitted().Months;
        Assert.All(months, month =>
            Assert.Equal(
                (5, 7, 15, 12),
                (Rounded(month.TminDryC), Rounded(month.TminWetC), Rounded(month.TmaxDryC), Rounded(month.TmaxWetC))
            )
        );
    }

    // Days alternate between a degree above and a degree below the mean, the last of 31 is on it. Each mean that was fitted takes a degree
    // of freedom: 30 squares of 31 days and one mean have the spread 1, 28 of 28 days sqrt(28 / 27); with wet and dry days alike sqrt(30 /
    // 29), sqrt(30 / 28) and sqrt(28 / 26). The spread runs smoothly from month to month, so the months keep these to half a per cent.
    [Theory]
    [InlineData(false, 1, 1.0171, 1.0184)]
    [InlineData(true, 1.0171, 1.0351, 1.0377)]
    public void Each_mean_takes_a_degree_of_freedom_of_the_spread(bool isHalfWet, double of31, double of30, double of28)
    {
        var days = Days(
            (date, _) =>
            {
                var place = date.Day - 1;
                var up =
                    date.Day == 31 ? 0
                    : place % 2 == 0 ? 1
                    : -1;
                return new DailyWeather(date, 5 + up, 15 + (2 * up), isHalfWet && date.Day < 31 && place % 4 < 2 ? 10 : 0);
            }
        );
        var months = WeatherFit.FitModel(days).Months;
        for (var month = 1; month <= 12; month++)
        {
            var wanted = DateTime.DaysInMonth(Year, month) switch
            {
                31 => of31,
                30 => of30,
                _ => of28,
            };
            Assert.Equal(wanted, months[month - 1].TminSdC, 0.006);
            Assert.Equal(2 * wanted, months[month - 1].TmaxSdC, 0.012);
        }
    }

    // Without two days in a row nothing is known of how one carries over to the next.
    [Fact]
    public void A_record_of_every_second_day_takes_the_carry_over_of_the_literature()
    {
        var drawn = Drawn(Carrying(0.3, 0.7, 0.25, 0.2, 0.4), years: 3);
        Assert.Equal(ResidualModel.UnitedStatesAverage, WeatherFit.FitModel([.. drawn.Where((_, day) => day % 2 == 0)]).Residuals);
    }

    // 200 generated years, seed 11: a correlation of 73,000 days has a standard error of about 0.004, and the tolerance is five of it. Wet
    // days differ from dry ones by 3 and 4 C.
    [Theory]
    [InlineData(0.3, 0.7, 0.25, 0.2, 0.4)]
    [InlineData(-0.2, 0.2, -0.1, 0.1, 0.6)]
    public void The_carry_over_of_the_temperatures_is_found_again(double cross, double lag11, double lag12, double lag21, double lag22)
    {
        var truth = Carrying(cross, lag11, lag12, lag21, lag22);
        var found = WeatherFit.FitModel(Drawn(truth, years: 200)).Residuals;
        var wanted = truth.Residuals;
        Assert.Equal(wanted.A11, found.A11, 0.02);
        Assert.Equal(wanted.A12, found.A12, 0.02);
        Assert.Equal(wanted.A21, found.A21, 0.02);
        Assert.Equal(wanted.A22, found.A22, 0.02);
        Assert.Equal(wanted.B11, found.B11, 0.02);
        Assert.Equal(wanted.B21, found.B21, 0.02);
        Assert.Equal(wanted.B22, found.B22, 0.02);
    }

    // Rain cools the air by and by: half of what a wet day takes comes on that day, and half of what is there is left for the next. So the
    // residual of a day goes with the departure of the day before, and what carries over in the record as a whole carries over in what is
    // generated, to two hundredths. By themselves the residuals carry over a tenth less.
    [Fact]
    public void Temperatures_as_a_whole_carry_over_as_in_the_record()
    {
        var report = WeatherFit.Fit(CooledByRain(1)).Report;
        Assert.Equal(report.TminLag1.Record, report.TminLag1.Generated, 0.02);
        Assert.Equal(report.TmaxLag1.Record, report.TmaxLag1.Generated, 0.02);
    }

    // Where rain cools by much more than the days differ, no residuals without regard to rain can carry over so much: then they carry over
    // as they do by themselves, not as in the literature. Worked out anew: the correlations of the standardized residuals about the means
    // of wet and of dry days, which what a year has in common and what carries over make up together.
    [Fact]
    public void What_no_residuals_can_carry_over_is_left_to_the_residuals_themselves()
    {
        var days = CooledByRain(3);
        var model = WeatherFit.FitModel(days);
        var (high, low) = (Standardized(days, day => day.TmaxC), Standardized(days, day => day.TminC));
        var residuals = model.Residuals;
        var cross = residuals.LongRun().Covariance;
        var (ofHigh, ofLow) = (model.Months.Average(month => month.TmaxYearShare), model.Months.Average(month => month.TminYearShare));
        var ofBoth = model.YearCorrelation * Math.Sqrt(ofHigh * ofLow);
        var rest = Math.Sqrt((1 - ofHigh) * (1 - ofLow));
        Assert.Equal(Lag(high, high), ofHigh + ((1 - ofHigh) * (residuals.A11 + (residuals.A12 * cross))), 0.02);
        Assert.Equal(Lag(high, low), ofBoth + (rest * ((residuals.A11 * cross) + residuals.A12)), 0.02);
        Assert.Equal(Lag(low, high), ofBoth + (rest * (residuals.A21 + (residuals.A22 * cross))), 0.02);
        Assert.Equal(Lag(low, low), ofLow + ((1 - ofLow) * ((residuals.A21 * cross) + residuals.A22)), 0.02);

        static double Lag(double[] today, double[] yesterday) => today.Skip(1).Zip(yesterday, (a, b) => a * b).Average();
    }

    private static double[] Standardized(ImmutableArray<DailyWeather> days, Func<DailyWeather, double> value)
    {
        var means = days.GroupBy(day => day.RainMm > 0).ToDictionary(kind => kind.Key, kind => kind.Average(value));
        var residuals = days.Select(day => value(day) - means[day.RainMm > 0]).ToArray();
        var spread = Math.Sqrt(residuals.Average(residual => residual * residual));
        return Array.ConvertAll(residuals, residual => residual / spread);
    }

    // Sixty years of 365 days, without seasons.
    private static ImmutableArray<DailyWeather> CooledByRain(double drop)
    {
        var random = new Random(5);
        var (cool, luck, isWet) = (0.0, 0.0, false);
        return
        [
            .. Enumerable
                .Range(0, 60 * 365)
                .Select(day =>
                {
                    isWet = random.NextDouble() < (isWet ? 0.6 : 0.25);
                    cool = (0.5 * cool) + (isWet ? drop : 0);
                    luck = (0.5 * luck) + Gaussian();
                    return new DailyWeather(
                        new DateOnly(Year, 1, 1).AddDays(day),
                        10 - cool + luck,
                        30 - cool + (0.5 * luck) + Gaussian(),
                        isWet ? 8 : 0
                    );
                }),
        ];

        double Gaussian() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }

    private static WeatherModel Fitted() =>
        WeatherFit.FitModel(
            Days(
                (date, isWet) =>
                    new DailyWeather(
                        date,
                        isWet ? (date.Month == 6 ? 12 : 7)
                            : date.Month == 10 ? 11
                            : 5,
                        isWet ? 12 : 15,
                        isWet ? (date.Month == 5 ? 4 : 10) : 0
                    )
            )
        );

    private static ImmutableArray<DailyWeather> Days(Func<DateOnly, bool, DailyWeather> day) =>
        [
            .. Enumerable
                .Range(0, 365)
                .Select(at => new DateOnly(Year, 1, 1).AddDays(at))
                .Select(date => day(date, s_wet.GetValueOrDefault(date.Month, []).Contains(date.Day))),
        ];

    private static WeatherModel Carrying(double cross, double lag11, double lag12, double lag21, double lag22) =>
        new()
        {
            Months =
            [
                .. Enumerable.Repeat(
                    new MonthWeather
                    {
                        WetAfterDry = 0.25,
                        WetAfterWet = 0.6,
                        RainShape = 0.8,
                        RainScaleMm = 7,
                        TminWetC = 7,
                        TminDryC = 4,
                        TmaxWetC = 31,
                        TmaxDryC = 35,
                        TminSdC = 3,
                        TmaxSdC = 4,
                    },
                    12
                ),
            ],
            Residuals = ResidualModel.FromCorrelations(cross, lag11, lag12, lag21, lag22),
            LeastRangeC = 0,
            Source = "invented",
        };

    private static ImmutableArray<DailyWeather> Drawn(WeatherModel model, int years)
    {
        var first = new DateOnly(Year, 1, 1);
        var count = first.AddYears(years).DayNumber - first.DayNumber;
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        new WeatherGenerator(model).Draw(11, 0, first, tmin, tmax, rain);
        return [.. Enumerable.Range(0, count).Select(day => new DailyWeather(first.AddDays(day), tmin[day], tmax[day], rain[day]))];
    }

    private static void Equal(double expected, double actual) => Assert.Equal(expected, actual, 1e-9);

    private static double Rounded(double value) => Math.Round(value, 6);
}
