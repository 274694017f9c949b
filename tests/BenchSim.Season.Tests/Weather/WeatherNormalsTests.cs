using System.Collections.Immutable;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

public class WeatherNormalsTests
{
    private static WeatherNormals Valley { get; } =
        new()
        {
            Source = "invented",
            Months =
            [
                new(-6, 1, 10, 60),
                new(-5, 3, 9, 55),
                new(0, 8, 11, 70),
                new(4, 15, 12, 85),
                new(9, 21, 12, 95),
                new(14, 26, 11, 90),
                new(17, 28, 10, 80),
                new(16, 27, 9, 75),
                new(12, 23, 9, 80),
                new(5, 16, 9, 75),
                new(1, 9, 10, 80),
                new(-4, 3, 11, 70),
            ],
        };

    [Fact]
    public void Generated_years_have_the_normals_they_were_made_from()
    {
        // 2,000 years, seed 3: the standard error of a month's mean temperature is below 0.05 C, of its rain days below 0.1, of its rain
        // below 2 mm.
        var drawn = WeatherStatistics.Of(Years(2000));
        for (var month = 0; month < 12; month++)
        {
            var normals = Valley.Months[month];
            Assert.Equal(normals.TminC, drawn.Months[month].TminMeanC, 0.25);
            Assert.Equal(normals.TmaxC, drawn.Months[month].TmaxMeanC, 0.25);
            Assert.Equal(normals.RainDays, drawn.Months[month].WetDays / 2000.0, 0.35);
            Assert.Equal(1, drawn.Months[month].RainMm / 2000 / normals.RainMm, 0.06);
            Assert.Equal(1, drawn.Months[month].TminSdC / WeatherNormals.DefaultTminSdC, 0.06);
            Assert.Equal(1, drawn.Months[month].TmaxSdC / WeatherNormals.DefaultTmaxSdC, 0.06);
        }
    }

    [Fact]
    public void What_is_assumed_is_said()
    {
        var model = Valley.ToModel();
        Assert.Equal(5, model.Assumptions.Length);
        Lines.Contain(
            "Rain follows rain as in Geng and others 1986: the chance after a dry day is 0.75 times the share of wet days.",
            model.Assumptions
        );
        Assert.DoesNotContain((Valley with { RainPersistence = 0.4 }).ToModel().Assumptions, said =>
            said.StartsWith("Rain follows", StringComparison.Ordinal)
        );

        // In both units: 1.43 K are 2.6 F, 1.02 K 1.8 F.
        const string wet =
            "Wet days are 1.43 C (2.6 F) milder by night and 1.02 C (1.8 F) cooler by day, the average of two cities' record.";
        Lines.Contain(wet, model.Assumptions);
        Assert.DoesNotContain(wet, (Valley with { WetLessDryTminC = 1 }).ToModel().Assumptions, StringComparer.Ordinal);
        Assert.DoesNotContain(wet, (Valley with { WetLessDryTmaxC = -1 }).ToModel().Assumptions, StringComparer.Ordinal);
    }

    // Each month has both spreads, or one of one month is missing.
    [Theory]
    [InlineData(3, 3, false)]
    [InlineData(null, 3, true)]
    [InlineData(3, null, true)]
    public void A_spread_that_is_missing_in_one_month_is_assumed_there(int? low, int? high, bool isSaid)
    {
        var given = Valley.Months.Select(month => month with { TminSdC = 4, TmaxSdC = 4 }).ToImmutableArray();
        var normals = Valley with { Months = given.SetItem(6, given[6] with { TminSdC = low, TmaxSdC = high }) };
        Assert.Equal(
            isSaid,
            normals
                .ToModel()
                .Assumptions.Any(said =>
                    said.StartsWith(
                        "Where the spread of daily temperatures is not given: 3.15 C (5.7 F) for the lowest",
                        StringComparison.Ordinal
                    )
                )
        );
    }

    [Fact]
    public void Persistence_of_a_quarter_is_three_quarters_of_the_wet_share_after_a_dry_day()
    {
        // January: 10 wet days of 31.
        var january = Valley.ToModel().Months[0];
        Assert.Equal(0.75 * 10 / 31, january.WetAfterDry, 1e-12);
        Assert.Equal(0.25 + (0.75 * 10 / 31), january.WetAfterWet, 1e-12);
        Assert.Equal(10 / 31.0, january.WetShare, 1e-12);
        Assert.Equal(6, january.RainShape * january.RainScaleMm, 1e-12);
    }

    [Fact]
    public void All_faults_are_listed_at_once()
    {
        var bad = Valley with { Months = Valley.Months.SetItem(0, new(5, 1, 40, -3)).SetItem(1, new(-5, 3, 0, 10)), RainPersistence = 1 };
        Lines.Equal(
            [
                "January: the mean highest temperature is below the mean lowest",
                "January: rain days must lie between 0 and 31",
                "January: rain must be 0 mm or more",
                "February: rain and rain days must both be 0 or both be above 0",
                "the persistence of rain must be 0 or more and below 1",
            ],
            bad.Problems()
        );
        Assert.Throws<InvalidOperationException>(() => bad.ToModel());
    }

    [Fact]
    public void Wet_and_dry_days_lie_about_the_month_s_mean_and_take_their_part_of_its_spread()
    {
        // Every month alike, so the seasonal curve takes nothing. April: 10 wet days of 30. Wet less dry 2 and -4 K: a third of the days
        // lies two thirds of it from the mean, two thirds a third. Their difference makes up 2/9 of its square of the variance: 9 - 8/9 and
        // 49 - 32/9 are left.
        var model = (
            Alike(new MonthNormals(5, 15, 10, 60) { TminSdC = 3, TmaxSdC = 7 }) with
            {
                WetLessDryTminC = 2,
                WetLessDryTmaxC = -4,
            }
        ).ToModel();
        var april = model.Months[3];
        Assert.Equal(5 + (4 / 3.0), april.TminWetC, 1e-9);
        Assert.Equal(5 - (2 / 3.0), april.TminDryC, 1e-9);
        Assert.Equal(15 - (8 / 3.0), april.TmaxWetC, 1e-9);
        Assert.Equal(15 + (4 / 3.0), april.TmaxDryC, 1e-9);
        Assert.Equal(Math.Sqrt(9 - (8 / 9.0)), april.TminSdC, 1e-6);
        Assert.Equal(Math.Sqrt(49 - (32 / 9.0)), april.TmaxSdC, 1e-6);

        // Not below half of it, however much the wet days explain.
        Assert.Equal(
            1.5,
            (Alike(new MonthNormals(5, 15, 10, 60) { TminSdC = 3 }) with { WetLessDryTminC = 20 }).ToModel().Months[3].TminSdC,
            1e-9
        );
    }

    // One limit of each figure a line: at it, and a hair past it.
    [Theory]
    [InlineData(-59.9, 15, 10, 60, null, true)]
    [InlineData(-60, 15, 10, 60, null, false)]
    [InlineData(5, 59.9, 10, 60, null, true)]
    [InlineData(5, 60, 10, 60, null, false)]
    [InlineData(15, 15, 10, 60, null, true)]
    [InlineData(15.1, 15, 10, 60, null, false)]
    [InlineData(5, 15, 28, 60, null, true)]
    [InlineData(5, 15, 28.1, 60, null, false)]
    [InlineData(5, 15, -0.1, 0, null, false)]
    [InlineData(5, 15, 10, 9999, null, true)]
    [InlineData(5, 15, 10, 10_000, null, false)]
    [InlineData(5, 15, 10, 60, 0.0, false)]
    [InlineData(5, 15, 10, 60, 0.1, true)]
    [InlineData(5, 15, 10, 60, 29.9, true)]
    [InlineData(5, 15, 10, 60, 30.0, false)]
    public void Normals_are_taken_within_their_limits(double tmin, double tmax, double rainDays, double rain, double? spread, bool isTaken)
    {
        var february = new MonthNormals(tmin, tmax, rainDays, rain);
        Assert.Equal(isTaken ? 0 : 1, Problems(february with { TminSdC = spread }));
        Assert.Equal(isTaken ? 0 : 1, Problems(february with { TmaxSdC = spread }));

        static int Problems(MonthNormals month) => (Valley with { Months = Valley.Months.SetItem(1, month) }).Problems().Length;
    }

    [Fact]
    public void The_rest_of_the_normals_is_taken_within_its_limits()
    {
        Assert.All(
            [
                Valley with
                {
                    RainShape = 0.05,
                },
                Valley with
                {
                    RainShape = 100,
                },
                Valley with
                {
                    RainPersistence = 0,
                },
                Valley with
                {
                    RainPersistence = 0.99,
                },
            ],
            normals => Assert.Empty(normals.Problems())
        );
        Assert.All(
            [
                Valley with
                {
                    RainShape = 0.04,
                },
                Valley with
                {
                    RainShape = 101,
                },
                Valley with
                {
                    RainPersistence = -0.1,
                },
                Valley with
                {
                    WetLessDryTminC = double.NaN,
                },
                Valley with
                {
                    WetLessDryTmaxC = double.PositiveInfinity,
                },
                Valley with
                {
                    Months = [.. Valley.Months.Take(11)],
                },
                Valley with
                {
                    Months = default,
                },
                Valley with
                {
                    Residuals = ResidualModel.UnitedStatesAverage with { A11 = 1.2 },
                },
            ],
            normals => Assert.Single(normals.Problems())
        );
    }

    private static WeatherNormals Alike(MonthNormals month) => new() { Source = "invented", Months = [.. Enumerable.Repeat(month, 12)] };

    [Fact]
    public void A_year_without_rain_can_be_given()
    {
        var desert = Valley with { Months = [.. Valley.Months.Select(month => month with { RainDays = 0, RainMm = 0 })] };
        Assert.Empty(desert.Problems());
        Assert.All(desert.ToModel().Months, month => Assert.Equal((0, true), (month.WetShare, double.IsFinite(month.RainScaleMm))));
    }

    private static DailyWeather[] Years(int years)
    {
        var first = new DateOnly(2001, 1, 1);
        var count = first.AddYears(years).DayNumber - first.DayNumber;
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        new WeatherGenerator(Valley.ToModel()).Draw(3, 0, first, tmin, tmax, rain);
        return [.. Enumerable.Range(0, count).Select(day => new DailyWeather(first.AddDays(day), tmin[day], tmax[day], rain[day]))];
    }
}
