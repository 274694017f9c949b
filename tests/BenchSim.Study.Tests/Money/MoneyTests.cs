using BenchSim.Study.Money;

namespace BenchSim.Study.Tests.Money;

/// <summary>Present value, internal rate and payback against closed forms and hand calculations.</summary>
public class MoneyTests
{
    [Fact]
    public void An_annuity_is_its_closed_form()
    {
        // (1 - 1.06^-15) / 0.06, and the number of years at no interest.
        Assert.Equal((1 - Math.Pow(1.06, -15)) / 0.06, PresentValue.Annuity(0.06, 15), 1e-12);
        Assert.Equal(15, PresentValue.Annuity(0, 15));
        Assert.Equal(0, PresentValue.Annuity(0.06, 0));
        Assert.Equal(PresentValue.Annuity(0.08, 3), PresentValue.Net(0.08, [0, 1, 1, 1]), 1e-14);
    }

    [Fact]
    public void One_change_of_sign_is_one_rate()
    {
        // 110 a year after 100 is 10 %; a loan taken has a rate as well.
        Assert.Equal(0.10, Assert.Single(InternalRate.All([-100, 110])), 1e-14);
        Assert.Equal(0.10, Assert.Single(InternalRate.All([100, -110])), 1e-14);

        // -100 + 50 x + 60.5 x^2: the positive root of a quadratic, x = (-50 + sqrt(50^2 + 4 x 60.5 x 100)) / (2 x 60.5).
        var x = (-50 + Math.Sqrt(2500 + 24200)) / 121;
        Assert.Equal((1 / x) - 1, Assert.Single(InternalRate.All([-100, 50, 60.5])), 1e-14);
    }

    [Fact]
    public void A_loss_has_a_negative_rate() => Assert.Equal(-0.5, Assert.Single(InternalRate.All([-100, 50])), 1e-14);

    [Theory]
    [InlineData(new[] { -100.0, -10, -10 })]
    [InlineData(new[] { 0.0, 10, 10 })]
    [InlineData(new[] { 0.0, 0, 0 })]
    public void Flows_of_one_sign_have_no_rate(double[] flows) => Assert.Empty(InternalRate.All(flows));

    [Fact]
    public void Two_changes_of_sign_may_have_no_rate() =>
        // 100 - 200 x + 150 x^2 has the discriminant 200^2 - 4 x 100 x 150 below 0.
        Assert.Empty(InternalRate.All([100, -200, 150]));

    [Fact]
    public void Several_rates_are_all_found()
    {
        // With y = 1 + rate: -1000 y^2 + 2300 y - 1320 = -1000 (y - 1.1)(y - 1.2).
        var two = InternalRate.All([-1000, 2300, -1320]);
        Assert.Equal(2, two.Length);
        Assert.Equal(0.10, two[0], 1e-12);
        Assert.Equal(0.20, two[1], 1e-12);

        // (y - 1)(y - 1.5)(y - 3) = y^3 - 5.5 y^2 + 9 y - 4.5: rates of 0, 50 and 200 %.
        var three = InternalRate.All([-1, 5.5, -9, 4.5]);
        Assert.Equal(3, three.Length);
        Assert.Equal(0, three[0], 1e-12);
        Assert.Equal(0.5, three[1], 1e-12);
        Assert.Equal(2, three[2], 1e-12);
    }

    [Fact]
    public void A_value_that_touches_zero_has_one_rate() =>
        // -(y - 1.25)^2 = -y^2 + 2.5 y - 1.5625, exact in binary.
        Assert.Equal(0.25, Assert.Single(InternalRate.All([-1, 2.5, -1.5625])), 1e-7);

    [Fact]
    public void Every_rate_found_brings_the_value_to_zero_and_none_is_missed()
    {
        // Fixed seed, so no chance of error. The value on a fine grid of rates changes sign as often as there are rates.
        var luck = new Random(11);
        for (var trial = 0; trial < 200; trial++)
        {
            double[] flows = [.. Enumerable.Range(0, luck.Next(2, 25)).Select(_ => Math.Round((luck.NextDouble() * 200) - 100))];
            var rates = InternalRate.All(flows);
            var size = flows.Max(Math.Abs);
            foreach (var rate in rates)
            {
                Assert.True(
                    Math.Abs(PresentValue.Net(rate, flows)) <= 1e-9 * size * Math.Max(1, Math.Pow(1 / (1 + rate), flows.Length)),
                    $"trial {trial}, rate {rate:R}"
                );
            }

            double[] grid =
            [
                .. Enumerable.Range(0, 20_001).Select(step => Math.Exp(Math.Log(0.001) + (step / 20_000.0 * Math.Log(1_001_000))) - 1),
            ];
            Assert.True(
                InternalRate.SignChanges([.. grid.Select(rate => PresentValue.Net(rate, flows))]) <= rates.Length,
                $"trial {trial}"
            );
        }
    }

    [Fact]
    public void Payback_by_hand()
    {
        // 100 out, 40 a year: 2 whole years bring 80, the last 20 take half a year.
        Assert.Equal(2.5, Payback.Years(0, [-100, 40, 40, 40])!.Value, 1e-12);

        // At 10 %: 36.364 + 33.058 = 69.421 after 2 years; 30.579 of the third year's 30.053 is more than there is; of the fourth 27.321
        // the last 0.526.
        var left = 100 - (40 / 1.1) - (40 / 1.21) - (40 / 1.331);
        Assert.Equal(3 + (left / (40 / 1.4641)), Payback.Years(0.1, [-100, 40, 40, 40, 40])!.Value, 1e-12);
        Assert.Null(Payback.Years(0, [-100, 40, 40]));
        Assert.Equal(0.0, Payback.Years(0, [0, -5, 1]));
        Assert.Equal(1.0, Payback.Years(0, [-100, 100, -50]));
    }

    [Fact]
    public void Rates_that_mean_nothing_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PresentValue.Net(-1, [1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PresentValue.Annuity(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Payback.Years(-2, [1]));
        Assert.Throws<ArgumentException>(() => InternalRate.All([1, double.NaN]));
    }
}
