using System.Collections.Immutable;
using BenchSim.Study.Money;

namespace BenchSim.Study.Invest;

/// <summary>Finds the value of one input at which the mean net present value is 0.</summary>
internal static class BreakEvens
{
    /// <summary>Longest life tried, years.</summary>
    public const int LongestLife = 60;

    /// <summary>Whether more of the input helps.</summary>
    public static bool IsFloor(InvestInput input, CaseInputs inputs, ReadOnlySpan<double> saved) =>
        input switch
        {
            InvestInput.Capital or InvestInput.DiscountRate or InvestInput.Upkeep => false,
            InvestInput.Residual => true,
            InvestInput.Life => LongerHelps(inputs, inputs.Benefit(saved)),
            _ => Slope(input, inputs, saved) >= 0,
        };

    /// <summary>The value; infinite as <see cref="BreakEven.At"/> says.</summary>
    /// <param name="input">Input.</param>
    /// <param name="inputs">All inputs.</param>
    /// <param name="saved">Mean savings of a year, as <see cref="CaseInputs.Benefit"/> takes them.</param>
    /// <param name="isFloor">Whether it is to be a floor.</param>
    public static double At(InvestInput input, CaseInputs inputs, ReadOnlySpan<double> saved, bool isFloor) =>
        input switch
        {
            InvestInput.DiscountRate => Rate(inputs.Flows(inputs.Benefit(saved))),
            InvestInput.Life => Life(inputs, inputs.Benefit(saved), isFloor),
            _ => Linear(input, inputs, saved, isFloor),
        };

    /// <summary>
    /// The greatest internal rate; infinite where there is none. As capital is paid first, the value is below 0 at every rate above it:
    /// flows that pay at some rate have their greatest above that. The lesser ones of lumpy flows, often far below 0, say nothing of use.
    /// </summary>
    public static double GreatestRate(double[] flows) => GreatestRate(flows, InternalRate.All(flows));

    /// <inheritdoc cref="GreatestRate(double[])"/>
    public static double GreatestRate(double[] flows, ImmutableArray<double> rates) =>
        !rates.IsEmpty ? rates[^1]
        : PresentValue.Net(0, flows) > 0 ? double.PositiveInfinity
        : double.NegativeInfinity;

    // A rate below 0 is none that a lender could be found for.
    private static double Rate(double[] flows)
    {
        var rate = GreatestRate(flows);
        return PresentValue.Net(0, flows) < 0 ? double.NegativeInfinity : rate;
    }

    // A year more adds its benefit and puts the worth at the end off by a year. The sign of that is the same for every year, so the first
    // tells it.
    private static bool LongerHelps(CaseInputs inputs, double benefit) =>
        (inputs with { Life = 2 }).Net(benefit) >= (inputs with { Life = 1 }).Net(benefit);

    // Where a longer life does the opposite of what it does on average, all lives will do or none does that could be named in the same
    // words.
    private static double Life(CaseInputs inputs, double benefit, bool isFloor)
    {
        int[] paying = [.. Enumerable.Range(1, LongestLife).Where(life => (inputs with { Life = life }).Net(benefit) >= 0)];
        var isEvery = paying.Length == LongestLife;
        if (paying.Length == 0 || (!isEvery && LongerHelps(inputs, benefit) != isFloor))
        {
            return isFloor ? double.PositiveInfinity : double.NegativeInfinity;
        }

        return isFloor ? (isEvery ? 0 : paying[0])
            : isEvery ? double.PositiveInfinity
            : paying[^1];
    }

    // The net present value is a straight line in each of these inputs, so two points of it are enough.
    private static double Linear(InvestInput input, CaseInputs inputs, ReadOnlySpan<double> saved, bool isFloor)
    {
        var net = inputs.Net(inputs.Benefit(saved));
        var slope = Slope(input, inputs, saved);
        var hopeless = isFloor ? double.PositiveInfinity : double.NegativeInfinity;
        var any = isFloor ? 0 : double.PositiveInfinity;
        if (slope == 0 || slope > 0 != isFloor)
        {
            return net >= 0 ? any : hopeless;
        }

        var at = inputs[input] - (net / slope);
        var most = input == InvestInput.BoughtInShare ? 1 : double.PositiveInfinity;
        return isFloor
            ? (at > most ? hopeless : Math.Max(0, at))
            : (
                at < 0 ? hopeless
                : at > most ? any
                : at
            );
    }

    private static double Slope(InvestInput input, CaseInputs inputs, ReadOnlySpan<double> saved)
    {
        var value = inputs[input];
        var step = input == InvestInput.BoughtInShare ? (value > 0.5 ? -0.5 : 0.5) : Math.Max(1, value);
        var other = inputs.With(input, value + step);
        return (other.Net(other.Benefit(saved)) - inputs.Net(inputs.Benefit(saved))) / step;
    }
}
