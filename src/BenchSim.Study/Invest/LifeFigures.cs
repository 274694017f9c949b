using BenchSim.Study.Money;

namespace BenchSim.Study.Invest;

/// <summary>What lives bring whose years are seasons drawn from those played.</summary>
internal sealed class LifeFigures
{
    /// <summary>Draws the lives and works each out.</summary>
    /// <param name="inputs">Inputs.</param>
    /// <param name="benefits">Net benefit by season.</param>
    /// <param name="draws">Draws.</param>
    /// <param name="lives">Lives.</param>
    /// <param name="cancel">Stops the work.</param>
    public LifeFigures(CaseInputs inputs, double[] benefits, Lives draws, int lives, CancellationToken cancel)
    {
        (NetValues, Rates, SimplePaybacks, DiscountedPaybacks) = (
            new double[lives],
            new double[lives],
            new double[lives],
            new double[lives]
        );
        var years = new int[inputs.Life];
        var flows = new double[inputs.Life + 1];
        for (var life = 0; life < lives; life++)
        {
            cancel.ThrowIfCancellationRequested();
            draws.Draw(0, life, years);
            flows[0] = -inputs.Capital;
            for (var year = 0; year < years.Length; year++)
            {
                flows[year + 1] = benefits[years[year]];
            }

            SimplePaybacks[life] = Payback.Years(0, flows) ?? double.PositiveInfinity;
            DiscountedPaybacks[life] = Payback.Years(inputs.Rate, flows) ?? double.PositiveInfinity;
            flows[^1] += inputs.Residual;
            NetValues[life] = PresentValue.Net(inputs.Rate, flows);
            Rates[life] = RateOf(flows);
        }
    }

    /// <summary>Net present value of each life.</summary>
    public double[] NetValues { get; }

    /// <summary>Internal rate of each life; infinite where there is none.</summary>
    public double[] Rates { get; }

    /// <summary>Payback of each life, not discounted; infinite where it is never reached.</summary>
    public double[] SimplePaybacks { get; }

    /// <summary>Discounted payback of each life; infinite where it is never reached.</summary>
    public double[] DiscountedPaybacks { get; }

    /// <summary>Lives without a rate.</summary>
    public int WithoutRate { get; private set; }

    /// <summary>Lives with several.</summary>
    public int WithSeveralRates { get; private set; }

    /// <summary>Payback when every year brings the same benefit.</summary>
    public static double PaybackOf(CaseInputs inputs, double rate, double benefit) =>
        Payback.Years(rate, (inputs with { Residual = 0 }).Flows(benefit)) ?? double.PositiveInfinity;

    /// <summary>A mean with the spread of values.</summary>
    public static MoneySpread Spread(double mean, double halfWidth, double[] values) =>
        new(mean, halfWidth, Quantile(values, 10), Quantile(values, 50), Quantile(values, 90));

    /// <summary>The smallest value that at least so many of 100 do not exceed.</summary>
    public static double Quantile(double[] values, int percent)
    {
        double[] sorted = [.. values.Order()];
        return sorted[(int)((((long)sorted.Length * percent) + 99) / 100) - 1];
    }

    private double RateOf(double[] flows)
    {
        var rates = InternalRate.All(flows);
        WithSeveralRates += rates.Length > 1 ? 1 : 0;
        WithoutRate += rates.IsEmpty ? 1 : 0;
        return BreakEvens.GreatestRate(flows, rates);
    }
}
