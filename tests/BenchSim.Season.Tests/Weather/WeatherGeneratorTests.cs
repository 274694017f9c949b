using System.Collections.Immutable;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

public class WeatherGeneratorTests
{
    private static readonly DateOnly s_first = new(2026, 2, 1);

    private static MonthWeather Mild { get; } =
        new()
        {
            WetAfterDry = 0.2,
            WetAfterWet = 0.6,
            RainShape = 0.8,
            RainScaleMm = 7,
            TminWetC = 6,
            TminDryC = 4,
            TmaxWetC = 12,
            TmaxDryC = 15,
            TminSdC = 3,
            TmaxSdC = 4,
        };

    [Fact]
    public void Same_seed_and_season_give_the_same_days_whatever_was_drawn_before()
    {
        var generator = new WeatherGenerator(Every(Mild));
        var once = Draw(generator, 7, 3, s_first, 100);
        Draw(generator, 8, 2, s_first, 40);
        var again = Draw(new WeatherGenerator(Every(Mild)), 7, 3, s_first, 100);
        Assert.Equal(once.Tmin, again.Tmin);
        Assert.Equal(once.Tmax, again.Tmax);
        Assert.Equal(once.Rain, again.Rain);
    }

    [Fact]
    public void More_days_do_not_change_the_first_ones()
    {
        var generator = new WeatherGenerator(Every(Mild));
        Assert.Equal(Draw(generator, 7, 3, s_first, 50).Tmin, Draw(generator, 7, 3, s_first, 270).Tmin[..50]);
    }

    // Days are drawn several at a step, the last of a stretch by themselves: where a day falls in its step changes no bit.
    [Fact]
    public void Any_number_of_days_begins_alike()
    {
        var generator = new WeatherGenerator(Every(Mild));
        var all = Draw(generator, 7, 3, s_first, 150);
        for (var days = 0; days < 150; days++)
        {
            var some = Draw(generator, 7, 3, s_first, days);
            Assert.Equal(all.Tmin[..days], some.Tmin);
            Assert.Equal(all.Tmax[..days], some.Tmax);
            Assert.Equal(all.Rain[..days], some.Rain);
        }
    }

    [Fact]
    public void Another_first_day_leaves_the_weather_of_a_date_alone()
    {
        // After 30 hidden days what is left of the start is 0.8^30, about a thousandth of a degree; rain falls into step by the shared
        // luck.
        var generator = new WeatherGenerator(Every(Mild));
        for (var season = 0; season < 50; season++)
        {
            var late = Draw(generator, 1, season, s_first, 30);
            var early = Draw(generator, 1, season, s_first.AddDays(-45), 75);
            for (var day = 0; day < 30; day++)
            {
                Assert.Equal(early.Rain[day + 45], late.Rain[day]);
                Assert.Equal(early.Tmin[day + 45], late.Tmin[day], 0.02);
                Assert.Equal(early.Tmax[day + 45], late.Tmax[day], 0.02);
            }
        }
    }

    [Fact]
    public void Seasons_and_seeds_differ()
    {
        var generator = new WeatherGenerator(Every(Mild));
        var one = Draw(generator, 7, 3, s_first, 20).Tmin;
        Assert.NotEqual(one, Draw(generator, 7, 4, s_first, 20).Tmin);
        Assert.NotEqual(one, Draw(generator, 8, 3, s_first, 20).Tmin);
    }

    [Fact]
    public void The_highest_is_never_below_the_lowest_and_keeps_the_days_mean()
    {
        // Means only 1 C apart and wide spreads: the rule must act on many days.
        var narrow = Every(Mild with { TmaxWetC = 7, TmaxDryC = 5 });
        var days = Draw(new WeatherGenerator(narrow with { LeastRangeC = 1.5 }), 1, 0, s_first, 2000);
        var free = Draw(new WeatherGenerator(narrow with { LeastRangeC = 0 }), 1, 0, s_first, 2000);
        for (var day = 0; day < 2000; day++)
        {
            Assert.True(days.Tmax[day] - days.Tmin[day] >= 1.5 - 1e-12);
            Assert.True(free.Tmax[day] >= free.Tmin[day]);
            Assert.Equal(free.Tmax[day] + free.Tmin[day], days.Tmax[day] + days.Tmin[day], 1e-9);
        }
    }

    [Fact]
    public void A_constant_month_is_stationary_from_the_first_day_on()
    {
        // Day 0 over 20,000 seasons: wet share 0.2 / (1 + 0.2 - 0.6) = 1/3, mean lowest temperature 4 + 2/3, its spread sqrt(9 v + 2^2 *
        // 2/9), v = 0.993 the residuals' own. Tolerances are five standard errors: error chance below 1e-5 in all.
        const int Seasons = 20_000;
        var generator = new WeatherGenerator(Every(Mild));
        var (wet, sum, squares) = (0, 0.0, 0.0);
        for (var season = 0; season < Seasons; season++)
        {
            var day = Draw(generator, 5, season, s_first, 1);
            wet += day.Rain[0] > 0 ? 1 : 0;
            sum += day.Tmin[0];
            squares += day.Tmin[0] * day.Tmin[0];
        }

        var mean = sum / Seasons;
        Assert.Equal(1 / 3.0, (double)wet / Seasons, 5 * Math.Sqrt(2 / 9.0 / Seasons));
        Assert.Equal(4 + (2 / 3.0), mean, 5 * 3.2 / Math.Sqrt(Seasons));
        Assert.Equal(Math.Sqrt((9 * 0.993) + (8 / 9.0)), Math.Sqrt((squares / Seasons) - (mean * mean)), 5 * 3.2 / Math.Sqrt(2 * Seasons));
    }

    [Fact]
    public void Chances_of_0_and_1_give_a_desert_and_a_rainforest()
    {
        Assert.All(Draw(new WeatherGenerator(Every(Mild with { WetAfterDry = 0, WetAfterWet = 0 })), 1, 0, s_first, 400).Rain, rain =>
            Assert.Equal(0, rain)
        );
        Assert.All(Draw(new WeatherGenerator(Every(Mild with { WetAfterDry = 1, WetAfterWet = 1 })), 1, 0, s_first, 400).Rain, rain =>
            Assert.True(rain > 0)
        );
    }

    [Fact]
    public void Leap_days_are_drawn_and_dates_stay_in_step()
    {
        // Hot March, cold February, no spread: the calendar shows in the numbers.
        var months = Enumerable
            .Range(1, 12)
            .Select(month =>
                Mild with
                {
                    TminWetC = month,
                    TminDryC = month,
                    TmaxWetC = month + 10,
                    TmaxDryC = month + 10,
                    TminSdC = 1e-9,
                    TmaxSdC = 1e-9,
                }
            );
        var generator = new WeatherGenerator(Every(Mild) with { Months = [.. months] });
        foreach (var year in new[] { 2023, 2024, 2100 })
        {
            var first = new DateOnly(year, 1, 1);
            var days = Draw(generator, 1, 0, first, 400);
            for (var day = 0; day < 400; day++)
            {
                Assert.Equal(generator.MeanOf(first.AddDays(day)).TminC, days.Tmin[day], 1e-6);
            }
        }
    }

    [Fact]
    public void Residual_model_of_the_literature_has_variance_one()
    {
        // Standardized residuals have variance 1 by definition, so the published A and B must give it back; leaving out sunshine costs less
        // than 1 %.
        var (max, _, min) = ResidualModel.UnitedStatesAverage.LongRun();
        Assert.Equal(1, max, 0.01);
        Assert.Equal(1, min, 0.01);
    }

    [Fact]
    public void Residual_model_gives_back_the_correlations_it_was_made_from()
    {
        var model = ResidualModel.FromCorrelations(0.58, 0.67, 0.42, 0.58, 0.69);
        var (max, both, min) = model.LongRun();
        Assert.Equal(1, max, 1e-10);
        Assert.Equal(1, min, 1e-10);
        Assert.Equal(0.58, both, 1e-10);
        Assert.Equal(0.67, model.A11 + (model.A12 * 0.58), 1e-10);
        Assert.Equal(0.69, (model.A21 * 0.58) + model.A22, 1e-10);
    }

    // Each entry of A and B by itself: M = A M A' + B B' is then a row of quotients.
    [Fact]
    public void Long_run_variances_by_hand()
    {
        Equal((0.25 / 0.75, 0.5 * 0.3 / (1 - (0.5 * 0.8)), (0.09 + 0.16) / (1 - 0.64)), Carry(0.5, 0, 0, 0.8).LongRun());
        Equal((0.25 + (0.36 * 0.25), 0.15, 0.25), Carry(0, 0.6, 0, 0).LongRun());
        Equal((0.25, 0.15, 0.25 + (0.36 * 0.25)), Carry(0, 0, 0.6, 0).LongRun());

        // A11 and A21: m11 = 0.25 / 0.75, m12 = 0.5 x 0.6 m11 + 0.15, m22 = 0.36 m11 + 0.25.
        Equal((1 / 3.0, 0.1 + 0.15, 0.12 + 0.25), Carry(0.5, 0, 0.6, 0).LongRun());

        // A12 and A22: m22 = 0.25 / 0.75, m12 = 0.6 x 0.5 m22 + 0.15, m11 = 0.36 m22 + 0.25.
        Equal((0.12 + 0.25, 0.1 + 0.15, 1 / 3.0), Carry(0, 0.6, 0, 0.5).LongRun());

        static void Equal((double Max, double Both, double Min) wanted, (double Max, double Both, double Min) found)
        {
            Assert.Equal(wanted.Max, found.Max, 1e-10);
            Assert.Equal(wanted.Both, found.Both, 1e-10);
            Assert.Equal(wanted.Min, found.Min, 1e-10);
        }
    }

    // Eigenvalues: 0.5 and 0.9; 1 and 0.5; 1.05 and 0.9; 1.1 and -0.1; a turn with a stretch of 1.2; one of 0.9; 1 and -1.
    [Theory]
    [InlineData(0.5, 0, 0, 0.9, true)]
    [InlineData(1, 0, 0, 0.5, false)]
    [InlineData(1.05, 0, 0, 0.9, false)]
    [InlineData(0.5, 0.6, 0.6, 0.5, false)]
    [InlineData(0, 1.2, -1.2, 0, false)]
    [InlineData(0, 0.9, -0.9, 0, true)]
    [InlineData(0, 1, -1, 0, false)]
    public void Residuals_that_grow_without_bound_are_told_and_refused(double a11, double a12, double a21, double a22, bool isStable)
    {
        var model = Carry(a11, a12, a21, a22);
        Assert.Equal(isStable, model.IsStable);
        if (!isStable)
        {
            Assert.Throws<InvalidOperationException>(() => model.LongRun());
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_correlation_that_leaves_no_luck_is_refused(double cross) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ResidualModel.FromCorrelations(cross, 0.5, 0.3, 0.3, 0.5));

    // A third of the days is wet: 4 + 2/3 and 15 - 1 C.
    [Fact]
    public void Mean_temperatures_of_a_date_are_those_of_wet_and_dry_days_in_their_shares()
    {
        var mean = new WeatherGenerator(Every(Mild)).MeanOf(s_first);
        Assert.Equal(4 + (2 / 3.0), mean.TminC, 1e-12);
        Assert.Equal(14, mean.TmaxC, 1e-12);
    }

    [Fact]
    public void A_model_out_of_range_is_refused()
    {
        MonthWeather[] wrong =
        [
            Mild with
            {
                WetAfterDry = -0.1,
            },
            Mild with
            {
                WetAfterDry = 1.1,
            },
            Mild with
            {
                WetAfterWet = -0.1,
            },
            Mild with
            {
                WetAfterWet = 1.1,
            },
            Mild with
            {
                RainScaleMm = 0,
            },
            Mild with
            {
                TminSdC = 0,
            },
            Mild with
            {
                TmaxSdC = 0,
            },
            Mild with
            {
                TminSdC = double.NaN,
            },
        ];
        Assert.All(wrong, month =>
            Assert.Throws<ArgumentException>(() =>
                new WeatherGenerator(Every(Mild) with { Months = [.. Enumerable.Repeat(Mild, 11), month] })
            )
        );
        Assert.Throws<ArgumentException>(() => new WeatherGenerator(Every(Mild) with { Months = [.. Enumerable.Repeat(Mild, 11)] }));
        Assert.Throws<ArgumentException>(() => new WeatherGenerator(Every(Mild) with { LeastRangeC = -0.1 }));
        Assert.ThrowsAny<ArgumentException>(() => new WeatherGenerator(Every(Mild with { RainShape = 0.009 })));
        Assert.ThrowsAny<ArgumentException>(() => new WeatherGenerator(Every(Mild with { RainShape = 1000.1 })));
        _ = new WeatherGenerator(Every(Mild with { RainShape = 0.01 }));
        _ = new WeatherGenerator(Every(Mild with { RainShape = 1000 }));
    }

    // B is 0.5, 0.3 and 0.4: B B' is 0.25, 0.15 and 0.25.
    private static ResidualModel Carry(double a11, double a12, double a21, double a22) =>
        new()
        {
            A11 = a11,
            A12 = a12,
            A21 = a21,
            A22 = a22,
            B11 = 0.5,
            B21 = 0.3,
            B22 = 0.4,
        };

    [Fact]
    public void Spans_of_different_length_are_refused() =>
        Assert.Throws<ArgumentException>(() =>
            new WeatherGenerator(Every(Mild)).Draw(1, 0, s_first, new double[3], new double[3], new double[2])
        );

    private static WeatherModel Every(MonthWeather month) =>
        new()
        {
            Months = [.. Enumerable.Repeat(month, 12)],
            Residuals = ResidualModel.UnitedStatesAverage,
            LeastRangeC = 0.5,
            Source = "test",
        };

    private static (double[] Tmin, double[] Tmax, double[] Rain) Draw(
        WeatherGenerator generator,
        ulong seed,
        int season,
        DateOnly first,
        int count
    )
    {
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        generator.Draw(seed, season, first, tmin, tmax, rain);
        return (tmin, tmax, rain);
    }
}
