using System.Collections.Immutable;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

public class WeatherSummaryTests
{
    [Fact]
    public void Frost_after_a_date_is_counted_by_hand()
    {
        // Two years of 1 March to 30 April at 5 C, but -1 C on 10 March of the first year and on 10 March and 20 April of the second.
        // Fortnights start 1, 15, 29 March, 12 and 26 April. Frost on or after them: 2, 1, 1, 1, 0 years of 2.
        var days = Year(2021, [new(2021, 3, 10)]).Concat(Year(2022, [new(2022, 3, 10), new(2022, 4, 20)])).ToImmutableArray();
        var summary = WeatherSummary.Of(days, new DateOnly(2026, 3, 1), new DateOnly(2026, 4, 30), 0, [4.4, 10])!;
        Assert.Equal(2, summary.Years);
        Assert.Equal([2, 1, 1, 1, 0], summary.FrostAfter.Select(frost => frost.Hits));
        Assert.Equal(new DateOnly(2026, 3, 29), summary.FrostAfter[2].From);
        Assert.Equal(0.5, summary.FrostAfter[3].Share);

        // Nights below 4.4 C: one in each year's first fortnight; one in the fourth of one year, so mean 0.5 and deviation sqrt(1/2).
        Assert.Equal([1, 0, 0, 0.5, 0], summary.Nights.Where(nights => nights.ThresholdC == 4.4).Select(nights => nights.Mean));
        Assert.Equal(Math.Sqrt(0.5), summary.Nights[3].StandardDeviation, 1e-12);

        // Nights below 10 C: all of them, and the last fortnight has 5 days.
        Assert.Equal([14, 14, 14, 14, 5], summary.Nights.Where(nights => nights.ThresholdC == 10).Select(nights => nights.Mean));
        Assert.Equal(5, summary.Nights[9].Days);
    }

    [Fact]
    public void Years_that_lack_a_day_are_left_out()
    {
        var days = Year(2021, []).Concat(Year(2022, []).Skip(1)).ToImmutableArray();
        Assert.Equal(1, WeatherSummary.Of(days, new DateOnly(2026, 3, 1), new DateOnly(2026, 4, 30), 0, [4.4])!.Years);
        Assert.Null(WeatherSummary.Of([], new DateOnly(2026, 3, 1), new DateOnly(2026, 4, 30), 0, [4.4]));
    }

    [Fact]
    public void A_night_at_zero_is_a_frost_and_a_night_at_a_threshold_is_not_below_it()
    {
        // One year at 5 C but for 0 C on 15 March, the first day of the second fortnight, and 0.1 C on 29 March, the first of the third.
        var days = Year(2021, [])
            .Select(day =>
                day.Date switch
                {
                    { Month: 3, Day: 15 } => day with { TminC = 0 },
                    { Month: 3, Day: 29 } => day with { TminC = 0.1 },
                    _ => day,
                }
            );
        var summary = WeatherSummary.Of([.. days], new DateOnly(2026, 3, 1), new DateOnly(2026, 4, 11), 0, [0, 0.1, 5])!;
        Assert.Equal([1, 1, 0], summary.FrostAfter.Select(frost => frost.Hits));
        Assert.Equal([0, 0, 0, 0, 1, 0, 0, 1, 1], summary.Nights.Select(nights => nights.Mean));
        Assert.All(summary.Nights, nights => Assert.Equal((0, 14, 1), (nights.StandardDeviation, nights.Days, nights.Years)));
        Assert.Equal((new DateOnly(2026, 3, 1), new DateOnly(2026, 4, 11), 0), (summary.First, summary.Last, summary.FrostC));
    }

    [Fact]
    public void Nights_of_three_years_have_their_spread()
    {
        // Two frosts in the first fortnight of one year and none in two more: mean 2/3, variance ((4/3)^2 + 2 (2/3)^2) / 2 = 4/3.
        ImmutableArray<DailyWeather> days = [.. Year(2021, [new(2021, 3, 3), new(2021, 3, 4)]), .. Year(2022, []), .. Year(2023, [])];
        var nights = WeatherSummary.Of(days, new DateOnly(2026, 3, 1), new DateOnly(2026, 4, 30), 0, [0])!.Nights[0];
        Assert.Equal(2 / 3.0, nights.Mean, 1e-12);
        Assert.Equal(Math.Sqrt(4 / 3.0), nights.StandardDeviation, 1e-12);
    }

    // Six weeks are three fortnights; a day more begins a fourth, of one day.
    [Theory]
    [InlineData(11, 3, 14)]
    [InlineData(12, 4, 1)]
    [InlineData(25, 4, 14)]
    public void Fortnights_run_to_the_last_day(int april, int fortnights, int daysOfLast)
    {
        var summary = WeatherSummary.Of([.. Year(2021, [])], new DateOnly(2026, 3, 1), new DateOnly(2026, 4, april), 0, [10])!;
        Assert.Equal((fortnights, fortnights), (summary.FrostAfter.Length, summary.Nights.Length));
        Assert.Equal((daysOfLast, daysOfLast), (summary.Nights[^1].Days, summary.Nights[^1].Mean));
    }

    [Fact]
    public void The_29th_of_February_takes_the_28th_where_the_year_has_none()
    {
        // 28 February, 29 February and 1 March 2028 against 2021, with frost on 28 February alone: two nights of frost.
        ImmutableArray<DailyWeather> days = [new(new DateOnly(2021, 2, 28), -3, 5, 0), new(new DateOnly(2021, 3, 1), 2, 5, 0)];
        var summary = WeatherSummary.Of(days, new DateOnly(2028, 2, 28), new DateOnly(2028, 3, 1), 0, [0])!;
        Assert.Equal((2, 1), (summary.Nights[0].Mean, summary.FrostAfter[0].Hits));
    }

    [Fact]
    public void A_summary_over_the_turn_of_the_year_takes_the_winters_of_the_record()
    {
        // 31 December to 1 January: the winters of 2021 and 2022 are whole, that of 2023 is not.
        ImmutableArray<DailyWeather> days =
        [
            new(new DateOnly(2021, 12, 31), -1, 5, 0),
            new(new DateOnly(2022, 1, 1), 1, 5, 0),
            new(new DateOnly(2022, 12, 31), 1, 5, 0),
            new(new DateOnly(2023, 1, 1), 1, 5, 0),
            new(new DateOnly(2023, 12, 31), -1, 5, 0),
        ];
        var summary = WeatherSummary.Of(days, new DateOnly(2026, 12, 31), new DateOnly(2027, 1, 1), 0, [0])!;
        Assert.Equal((2, 1), (summary.Years, summary.FrostAfter[0].Hits));
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        var (first, generator) = (new DateOnly(2026, 3, 1), new WeatherGenerator(Even.ToModel()));
        ImmutableArray<DailyWeather> days = [.. Year(2021, [])];
        Assert.Throws<ArgumentOutOfRangeException>(() => WeatherSummary.Of(generator, 1, 0, first, first, 0, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeatherSummary.Of(generator, 1, 1, first, first.AddDays(-1), 0, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeatherSummary.Of(days, first, first.AddDays(-1), 0, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeatherSummary.Of(days, first, first.AddDays(366), 0, []));
        Assert.Null(WeatherSummary.Of(days, first, first.AddDays(365), 0, []));
        Assert.Equal(1, WeatherSummary.Of(days, first, first, 0, [])!.Years);
        Assert.Equal(1, WeatherSummary.Of(generator, 1, 1, first, first, 0, []).Years);
    }

    private static WeatherNormals Even { get; } =
        new() { Source = "invented", Months = [.. Enumerable.Repeat(new MonthNormals(5, 15, 10, 60), 12)] };

    [Fact]
    public void Generated_years_agree_with_the_distribution_they_are_drawn_from()
    {
        // Lowest temperature normal with mean 5 C and spread 5 C, the same every day: a night is below 0 C with chance 0.15866, so 14
        // nights hold 2.221. 4,000 years; nights carry over with r = 0.7, so the standard error is below sqrt(14 * 0.1335 * 5.7 / 4000) =
        // 0.052. Tolerance five of these: error chance below 1e-6.
        var month = new MonthWeather
        {
            WetAfterDry = 0,
            WetAfterWet = 0,
            RainShape = 1,
            RainScaleMm = 1,
            TminWetC = 5,
            TminDryC = 5,
            TmaxWetC = 60,
            TmaxDryC = 60,
            TminSdC = 5,
            TmaxSdC = 5,
        };
        var model = new WeatherModel
        {
            Months = [.. Enumerable.Repeat(month, 12)],
            Residuals = ResidualModel.FromCorrelations(0.6, 0.7, 0.45, 0.45, 0.7),
            LeastRangeC = 0,
            Source = "test",
        };
        var summary = WeatherSummary.Of(new WeatherGenerator(model), 1, 4000, new DateOnly(2026, 3, 1), new DateOnly(2026, 4, 30), 0, [0]);
        Assert.All(summary.Nights.Take(4), nights => Assert.Equal(2.221, nights.Mean, 0.26));
        for (var fortnight = 1; fortnight < 5; fortnight++)
        {
            Assert.True(summary.FrostAfter[fortnight].Hits <= summary.FrostAfter[fortnight - 1].Hits);
        }
    }

    private static IEnumerable<DailyWeather> Year(int year, DateOnly[] frosts)
    {
        for (var date = new DateOnly(year, 3, 1); date <= new DateOnly(year, 4, 30); date = date.AddDays(1))
        {
            yield return new DailyWeather(date, frosts.Contains(date) ? -1 : 5, 15, 0);
        }
    }
}
