using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Invest;
using BenchSim.Study.Money;

namespace BenchSim.Study.Tests.Invest;

/// <summary>Money cases made by hand: what a year brings is known, so everything that follows from it is known too.</summary>
public class InvestCaseTests
{
    private static readonly InvestTerms s_terms = new()
    {
        Capital = 5000,
        LifeYears = 10,
        DiscountRate = 0.08,
        PlantOnTime = 1,
        BoughtInShare = 0.4,
        BoughtInPrice = 0.5,
        Upkeep = 100,
        Residual = 200,
    };

    // 0.4 x 0.50 + 0.6 x 1.00.
    private const double Worth = 0.8;

    // 1,500 plants at 0.80 less 150 of labour, 10 hours more at 15, and 100 of upkeep.
    private const double Benefit = 950;

    [Fact]
    public void Every_year_alike_is_the_closed_form()
    {
        var result = Case(s_terms, Same(20, 1500, 10));
        Assert.Equal(Benefit, result.YearlyBenefit.Mean, 1e-9);
        Assert.Equal(0, result.YearlyBenefit.HalfWidth, 1e-9);
        var annuity = (1 - Math.Pow(1.08, -10)) / 0.08;
        var net = -5000 + (Benefit * annuity) + (200 / Math.Pow(1.08, 10));
        foreach (
            var figure in new[]
            {
                result.NetPresentValue.Mean,
                result.NetPresentValue.P10,
                result.NetPresentValue.P50,
                result.NetPresentValue.P90,
            }
        )
        {
            Assert.Equal(net, figure, 1e-6);
        }

        Assert.Equal(1, result.Pays.Share);
        Assert.True(result.Pays.High == 1 && result.Pays.Low > 0.999);

        // The rate brings the value to nothing; the simple payback is 5000 / 950 years; the discounted one solves the annuity for its
        // years.
        Assert.Equal(
            0,
            PresentValue.Net(result.InternalRate.OfAverageYear, [-5000, .. Enumerable.Repeat(Benefit, 9), Benefit + 200]),
            1e-6
        );
        Assert.Equal(result.InternalRate.OfAverageYear, result.InternalRate.P10, 1e-12);
        Assert.Equal(5000 / Benefit, result.SimplePayback.OfAverageYear, 1e-9);
        var years = 0;
        while (Benefit * PresentValue.Annuity(0.08, years + 1) < 5000)
        {
            years++;
        }

        var left = 5000 - (Benefit * PresentValue.Annuity(0.08, years));
        Assert.Equal(years + (left / (Benefit / Math.Pow(1.08, years + 1))), result.DiscountedPayback.P90, 1e-9);
    }

    [Fact]
    public void What_one_must_believe_is_the_closed_form()
    {
        var result = Case(s_terms, Same(20, 1500, 10));
        var annuity = (1 - Math.Pow(1.08, -10)) / 0.08;
        var end = 200 / Math.Pow(1.08, 10);
        Assert.Equal((Benefit * annuity) + end, Of(InvestInput.Capital).At, 1e-6);
        Assert.False(Of(InvestInput.Capital).IsFloor);

        // The year must bring (5000 - end) / annuity; the plants must bring what 100 of upkeep and 150 of labour take away.
        var worth = (((5000 - end) / annuity) + 250) / 1500;
        Assert.Equal((worth - (0.4 * 0.5)) / 0.6, Of(InvestInput.PlantOnTime).At, 1e-9);
        Assert.Equal(result.InternalRate.OfAverageYear, Of(InvestInput.DiscountRate).At, 1e-12);
        var life = Of(InvestInput.Life).At;
        Assert.True(Net(life) >= 0 && Net(life - 1) < 0);

        BreakEven Of(InvestInput input) => result.BreakEvens.Single(each => each.Input == input);
        double Net(double years) => -5000 + (Benefit * (1 - Math.Pow(1.08, -years)) / 0.08) + (200 / Math.Pow(1.08, years));
    }

    [Fact]
    public void The_tornado_is_the_closed_form_and_names_what_decides()
    {
        var terms = s_terms with
        {
            Ranges = ImmutableSortedDictionary<string, InvestRange>.Empty.Add("plant_on_time", new InvestRange(0.2, 2)),
        };
        var result = Case(terms, Same(20, 1500, 10));
        var annuity = (1 - Math.Pow(1.08, -10)) / 0.08;
        var plant = result.Tornado[0];
        Assert.Equal((InvestInput.PlantOnTime, true), (plant.Input, plant.IsGiven));
        Assert.Equal(1500 * 0.6 * (2 - 0.2) * annuity, plant.Size, 1e-6);
        Assert.True(plant.TurnsTheCase);
        var capital = result.Tornado.Single(swing => swing.Input == InvestInput.Capital);
        Assert.Equal((3750.0, 6250.0, 2500.0), (capital.Low, capital.High, Math.Round(capital.Size, 6)));
        var labour = result.Tornado.Single(swing => swing.Input == InvestInput.LabourPrice);
        Assert.Equal((11.25, 18.75), (labour.Low, labour.High));
        Assert.Equal(10 * 7.5 * annuity, labour.Size, 1e-6);
        Assert.True(labour.AtHigh < labour.AtLow);

        // Nothing of fuel, electricity, mix or seed changes, so their prices are no inputs.
        Assert.DoesNotContain(result.Tornado, swing =>
            swing.Input is InvestInput.FuelPrice or InvestInput.PowerPrice or InvestInput.MixPrice or InvestInput.SeedPrice
        );
        Assert.InRange(result.Deciding, 2, 3);
        Assert.Equal(
            result.Tornado.OrderByDescending(swing => swing.Size).Select(swing => swing.Input),
            result.Tornado.Select(swing => swing.Input)
        );
    }

    [Fact]
    public void Where_nothing_changes_the_capital_is_lost()
    {
        var result = Case(s_terms with { Upkeep = 0, Residual = 0 }, Same(20, 0, 0));
        Assert.Equal((-5000.0, 0.0), (result.NetPresentValue.P50, result.Pays.Share));
        Assert.Equal(double.NegativeInfinity, result.InternalRate.OfAverageYear);
        Assert.Equal((result.Lives, 0), (result.InternalRate.LivesWithout, result.InternalRate.LivesWithSeveral));
        Assert.Equal(double.PositiveInfinity, result.SimplePayback.P10);
        Assert.True(result.BreakEvens.Single(each => each.Input == InvestInput.PlantOnTime).IsHopeless);
        Assert.True(result.BreakEvens.Single(each => each.Input == InvestInput.Life).IsHopeless);
        Assert.Equal(0, result.BreakEvens.Single(each => each.Input == InvestInput.Capital).At);
    }

    // The worth at the end is above the capital and the years bring nothing: 180 / 1.03^n is 100 or more to n = ln 1.8 / ln 1.03 = 19.9.
    // With 70 to pay a year only the first will do: -100 + (180 - 70) / 1.03 = 6.8, and after two years -100 - 70 / 1.03 + 110 / 1.03^2 =
    // -64.3. With 90 none: -100 + 90 / 1.03 = -12.6.
    [Theory]
    [InlineData(0, 19)]
    [InlineData(70, 1)]
    [InlineData(90, double.NegativeInfinity)]
    public void A_worth_at_the_end_above_the_capital_pays_the_sooner_the_better(double upkeep, double most)
    {
        var result = Case(
            s_terms with
            {
                Capital = 100,
                LifeYears = 5,
                DiscountRate = 0.03,
                Upkeep = upkeep,
                Residual = 180,
            },
            Same(20, 0, 0)
        );
        var life = result.BreakEvens.Single(each => each.Input == InvestInput.Life);
        Assert.Equal((false, most), (life.IsFloor, life.At));
        Assert.Equal(double.IsInfinity(most), life.IsHopeless);
    }

    // Half the seasons bring 175 plants, worth 140, half none: 70 a year on average, above the 66 that a year's delay of the 1,100 at the
    // end costs at 6 %, so that a longer life helps and every life pays: -1000 + (70 + 1100) / 1.06 = 103.8 after one year. With other
    // seasons, 40 a year say, it pays for a few years only: no shortest life could be named.
    [Fact]
    public void Where_other_seasons_turn_what_a_longer_life_does_the_interval_is_open()
    {
        var result = Case(
            s_terms with
            {
                Capital = 1000,
                LifeYears = 10,
                DiscountRate = 0.06,
                Upkeep = 0,
                Residual = 1100,
            },
            (season, kind) => kind == MoneyKind.Plants && season % 2 == 0 ? (175, 0) : (0, 0),
            20
        );
        var life = result.BreakEvens.Single(each => each.Input == InvestInput.Life);
        Assert.Equal((true, 0.0, 0.0, double.PositiveInfinity), (life.IsFloor, life.At, life.Low, life.High));
    }

    [Fact]
    public void Luck_from_year_to_year_spreads_a_life_as_the_binomial_law_says()
    {
        // Half the seasons bring 1,000 plants, half none; at 0.80 and 5 years without interest 3 good years of 5 are worth 2,400 and 2 are
        // worth 1,600.
        var terms = s_terms with { Capital = 2000, LifeYears = 5, DiscountRate = 0, Upkeep = 0, Residual = 0 };
        var result = Case(terms, (season, kind) => kind == MoneyKind.Plants && season % 2 == 0 ? (1000, 0) : (0, 0), 200);

        // P(3 or more of 5) = 1/2. A share of 10,000 strays by 4 of its standard deviations of 0.005 once in 16,000; the seed is fixed.
        Assert.Equal(0.5, result.Pays.Share, 0.02);
        Assert.True(result.Pays.Low < 0.5 && result.Pays.High > 0.5);
        Assert.Equal(400 * 5, result.NetPresentValue.Mean + 2000, 1e-6);

        // Of five fair years 1 good one is not exceeded in 6 of 32, none in 1 of 32; 4 in 31 of 32.
        Assert.Equal((-2000 + (Worth * 1000), -2000 + (Worth * 4000)), (result.NetPresentValue.P10, result.NetPresentValue.P90));

        // Which seasons were played matters more than how many lives are drawn: with 200 fair seasons the share of good ones has the
        // deviation 0.035, and near a half the chance moves 15/8 times as fast, so that its interval reaches about 1.96 x 0.066 to either
        // side.
        Assert.InRange(result.Pays.High - result.Pays.Low, 0.2, 0.34);
    }

    [Fact]
    public void Lumpy_years_have_several_rates_and_a_life_that_pays_ranks_above_the_discount_rate()
    {
        // 2,000 out, then in half the years 790 and in half a loss of 10: the sign changes often. Three good years of five pay at no
        // interest, two do not.
        var terms = s_terms with { Capital = 2000, LifeYears = 5, DiscountRate = 0, Upkeep = 10, Residual = 0 };
        var result = Case(terms, (season, kind) => kind == MoneyKind.Plants && season % 2 == 0 ? (1000, 0) : (0, 0), 200);
        Assert.True(result.InternalRate.LivesWithSeveral > 0);

        // Four good years or more come in 6 lives of 32, so the 90 % point is one of these: at least the worst order of four, the bad year
        // first, at most five good ones. One good year or none comes in 6 of 32 as well, and 790 never brings back 2,000.
        var rate = result.InternalRate.P90;
        Assert.True(PresentValue.Net(rate, [-2000, -10, 790, 790, 790, 790]) <= 1e-6);
        Assert.True(PresentValue.Net(rate, [-2000, 790, 790, 790, 790, 790]) >= -1e-6);
        Assert.True(result.InternalRate.P10 < 0);
    }

    [Fact]
    public void What_has_no_price_is_left_out_and_named()
    {
        var result = Case(s_terms, (_, part) => part == MoneyKind.Mix ? (12, 0) : (0, 0), 5);
        var mix = result.Parts.Single(part => part.Kind == MoneyKind.Mix);
        Assert.Equal((12.0, 0.0, false), (mix.Quantity, mix.Benefit, mix.IsPriced));
        Assert.Equal(["potting mix"], result.LeftOut.ToArray());
        Assert.Equal(-s_terms.Upkeep, result.YearlyBenefit.Mean);
    }

    [Fact]
    public void One_season_has_no_interval()
    {
        var result = Case(s_terms, Same(1, 1500, 10));
        Assert.True(double.IsNaN(result.NetPresentValue.HalfWidth) && double.IsNaN(result.InternalRate.Low));
        Assert.True(double.IsFinite(result.NetPresentValue.P50));
    }

    private static (int Seasons, double Plants, double Hours) Same(int seasons, double plants, double hours) => (seasons, plants, hours);

    private static InvestResult Case(InvestTerms terms, (int Seasons, double Plants, double Hours) same) =>
        Case(
            terms,
            (_, kind) =>
                kind switch
                {
                    MoneyKind.Plants => ((long)same.Plants, 0),
                    MoneyKind.Labour => ((long)(same.Hours * 60_000), (long)(same.Hours * 15 * 1000)),
                    _ => (0, 0),
                },
            same.Seasons
        );

    private static InvestResult Case(InvestTerms terms, Func<int, MoneyKind, (long Quantity, long Cost)> of, int count)
    {
        var plan = Plans.Small();
        plan = plan with
        {
            Scenario = plan.Scenario with { Invest = terms, Rules = plan.Scenario.Rules with { Prices = new Prices { LabourHour = 15 } } },
        };
        var parts = SeasonPart.Of(plan, plan);
        var seasons = new MoneySeasons(parts, count);
        for (var season = 0; season < count; season++)
        {
            for (var part = 0; part < parts.Length; part++)
            {
                (var quantity, var cost) = of(season, parts[part].Kind);
                if (parts[part].Kind == MoneyKind.Mix)
                {
                    quantity *= (long)parts[part].Parts;
                }

                seasons.Set(season, part, quantity, cost);
            }
        }

        return new InvestCase(plan, "by hand", plan, seasons, 7).ToResult(CancellationToken.None);
    }
}
