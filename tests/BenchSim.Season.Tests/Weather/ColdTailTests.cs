using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

/// <summary>
/// Late frosts and the spread between years, of a generator fitted to 100 years of a climate whose laws are known, against 5,000 years of
/// that climate. A record of 100 years has a last frost of its own to s / 10 for a standard deviation s between years, a standard deviation
/// to 7 %, and a share p to sqrt(p (1 - p) / 100): a fit can know no better, and the tolerances are three and a half of these standard
/// errors. Twelve comparisons: a right generator whose only error were that of its record would fail one with a chance of 0.6 %. Seeds are
/// fixed.
/// </summary>
public class ColdTailTests
{
    private const double Errors = 3.5;
    private const int RecordYears = 100;
    private const int TrueYears = 5000;
    private const int MadeYears = 2000;

    [Theory]
    [InlineData(-1, 0.8)]
    [InlineData(1, 0)]
    [InlineData(0, 1.5)]
    public void Last_frosts_and_the_spread_of_springs_are_those_of_the_climate(double skew, double yearSdC)
    {
        var climate = new InventedClimate(skew, yearSdC);
        var truth = InventedClimate.Figures(climate.Record(TrueYears, 1));
        var made = InventedClimate.Figures(InventedClimate.Generated(WeatherFit.FitModel(climate.Record(RecordYears, 2)), MadeYears));
        var share = Errors / Math.Sqrt(2.0 * RecordYears);
        Assert.Equal(truth.LastFrost, made.LastFrost, Errors * truth.LastFrostSd / Math.Sqrt(RecordYears));
        Assert.Equal(1, made.LastFrostSd / truth.LastFrostSd, share);
        Assert.Equal(
            truth.FrostAfter,
            made.FrostAfter,
            (Errors * Math.Sqrt(truth.FrostAfter * (1 - truth.FrostAfter) / RecordYears)) + 0.005
        );
        Assert.Equal(1, made.MeanSd / truth.MeanSd, share);
    }

    // The same comparison refuses a generator without the cold tail, and one without cold and mild years.
    [Fact]
    public void Symmetric_residuals_and_years_alike_would_be_noticed()
    {
        var climate = new InventedClimate(-1, 0.8);
        var truth = InventedClimate.Figures(climate.Record(TrueYears, 1));
        var model = WeatherFit.FitModel(climate.Record(RecordYears, 2));
        var symmetric = model with { Months = [.. model.Months.Select(month => month with { TminShape = ResidualShape.Normal })] };
        var alike = model with { Months = [.. model.Months.Select(month => month with { TminYearShare = 0, TmaxYearShare = 0 })] };
        var frost = InventedClimate.Figures(InventedClimate.Generated(symmetric, MadeYears));
        Assert.True(Math.Abs(frost.LastFrostSd / truth.LastFrostSd - 1) > Errors / Math.Sqrt(2.0 * RecordYears));
        Assert.True(truth.FrostAfter - frost.FrostAfter > Errors * Math.Sqrt(truth.FrostAfter * (1 - truth.FrostAfter) / RecordYears));
        var spread = InventedClimate.Figures(InventedClimate.Generated(alike, MadeYears)).MeanSd;
        Assert.True(spread / truth.MeanSd < 1 - (Errors / Math.Sqrt(2.0 * RecordYears)));
    }

    // A shift of 1.5 K beside 3 K of the lows' days is a share of 1.5^2 / (1.5^2 + 3^2) = 0.2, beside 3.5 K of the highs' days 0.155; both
    // are shifted alike. A share of n years is known to about sqrt(2 / n) of itself, 14 % for 100: three of these, and what is drawn
    // towards 0.
    [Fact]
    public void What_a_year_has_in_common_is_found_again()
    {
        var model = WeatherFit.FitModel(new InventedClimate(0, 1.5).Record(RecordYears, 2));
        Assert.Equal(0.2, model.Months.Average(month => month.TminYearShare), 0.09);
        Assert.Equal(2.25 / (2.25 + 12.25), model.Months.Average(month => month.TmaxYearShare), 0.07);
        Assert.InRange(model.YearCorrelation, 0.9, 1);
    }

    // Years that differ by the luck of days alone: by luck an excess is found in half the records, and what is found is no more than its
    // own error, some 0.005 of the variance in 100 years and 0.02 in 12; it is halved.
    [Fact]
    public void Where_years_are_alike_little_is_found_in_common()
    {
        var climate = new InventedClimate(0, 0);
        Assert.InRange(WeatherFit.FitModel(climate.Record(RecordYears, 2)).Months.Average(month => month.TminYearShare), 0, 0.01);
        Assert.InRange(WeatherFit.FitModel(climate.Record(12, 3)).Months.Average(month => month.TminYearShare), 0, 0.04);
    }

    // Two years tell nothing of how years differ.
    [Fact]
    public void Two_years_have_nothing_in_common()
    {
        var model = WeatherFit.FitModel(new InventedClimate(0, 1.5).Record(2, 2));
        Assert.All(model.Months, month => Assert.Equal((0, 0), (month.TminYearShare, month.TmaxYearShare)));
    }

    [Fact]
    public void The_days_of_a_year_share_its_draw_and_other_years_do_not()
    {
        // All of the variance but a hundredth is the year's.
        var month = new MonthWeather
        {
            WetAfterDry = 0.3,
            WetAfterWet = 0.3,
            RainShape = 0.8,
            RainScaleMm = 7,
            TminWetC = 5,
            TminDryC = 5,
            TmaxWetC = 45,
            TmaxDryC = 45,
            TminSdC = 1,
            TmaxSdC = 1,
            TminYearShare = 0.99,
            TmaxYearShare = 0.99,
        };
        var model = new WeatherModel
        {
            Months = [.. Enumerable.Repeat(month, 12)],
            Residuals = ResidualModel.UnitedStatesAverage,
            YearCorrelation = -1,
            LeastRangeC = 0,
            Source = "invented",
        };
        var years = InventedClimate
            .Generated(model, 2000)
            .GroupBy(day => day.Date.Year)
            .Select(year => (Low: year.Average(day => day.TminC) - 5, High: year.Average(day => day.TmaxC) - 45))
            .ToList();

        // Of 2,000 years: variance 0.99 to sqrt(2 / 2,000) = 3 %, neighbours' correlation 0 to 0.022; five standard errors. Lows and highs
        // go against each other but for the luck of days, of which a tenth of a degree is left over a year.
        Assert.Equal(0.99, years.Average(year => year.Low * year.Low), 0.16);
        Assert.Equal(0, years.Skip(1).Zip(years, (one, other) => one.Low * other.Low).Average(), 0.11);
        Assert.All(years, year => Assert.Equal(0, year.Low + year.High, 0.3));
    }

    [Theory]
    [InlineData(-0.1, 0)]
    [InlineData(1, 0)]
    [InlineData(0, 1.1)]
    public void Shares_and_correlations_out_of_range_are_refused(double share, double correlation)
    {
        var model = WeatherFit.FitModel(new InventedClimate(0, 0).Record(1, 2));
        Assert.Throws<ArgumentException>(() =>
            new WeatherGenerator(
                model with
                {
                    Months = [.. model.Months.Select(month => month with { TminYearShare = share })],
                    YearCorrelation = correlation,
                }
            )
        );
    }
}
