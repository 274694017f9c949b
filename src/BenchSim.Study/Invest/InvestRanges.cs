using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Invest;

/// <summary>The ranges over which the inputs of a case are varied: the user's, or a quarter less and more.</summary>
internal static class InvestRanges
{
    private const double Quarter = 0.25;

    /// <summary>
    /// Inputs with a range; one that is 0 and has none given has none, nor has a price of something that is the same in base and variant.
    /// </summary>
    /// <param name="terms">Terms.</param>
    /// <param name="inputs">Inputs.</param>
    /// <param name="saved">Savings by kind and season.</param>
    public static ImmutableArray<(InvestInput Input, double Low, double High, bool IsGiven)> Of(
        InvestTerms terms,
        CaseInputs inputs,
        double[][] saved
    )
    {
        var ranges = ImmutableArray.CreateBuilder<(InvestInput, double, double, bool)>();
        foreach (var input in Enum.GetValues<InvestInput>())
        {
            if (KindOf(input) is { } kind && Array.TrueForAll(saved[(int)kind], each => each == 0))
            {
                continue;
            }

            var isGiven = terms.Ranges.TryGetValue(KeyOf(input), out var given);
            (var low, var high) = isGiven ? (given.Low, given.High) : Usual(input, inputs[input]);
            if (high > low)
            {
                ranges.Add((input, low, high, isGiven));
            }
        }

        return ranges.ToImmutable();
    }

    private static (double Low, double High) Usual(InvestInput input, double value)
    {
        (var low, var high) = (value * (1 - Quarter), value * (1 + Quarter));
        return input switch
        {
            InvestInput.Life => (
                Math.Clamp(Math.Floor(low), 1, BreakEvens.LongestLife),
                Math.Min(Math.Ceiling(high), BreakEvens.LongestLife)
            ),
            InvestInput.BoughtInShare => (low, Math.Min(high, 1)),
            _ => (low, high),
        };
    }

    private static MoneyKind? KindOf(InvestInput input) =>
        input switch
        {
            InvestInput.LabourPrice => MoneyKind.Labour,
            InvestInput.FuelPrice => MoneyKind.Fuel,
            InvestInput.PowerPrice => MoneyKind.MatPower,
            InvestInput.MixPrice => MoneyKind.Mix,
            InvestInput.SeedPrice => MoneyKind.Seed,
            _ => null,
        };

    // Names of the keys of [invest]; prices have no range of their own there.
    private static string KeyOf(InvestInput input) =>
        input switch
        {
            InvestInput.Capital => "capital",
            InvestInput.Life => "life_years",
            InvestInput.DiscountRate => "discount_rate",
            InvestInput.PlantOnTime => "plant_on_time",
            InvestInput.BoughtInShare => "bought_in_share",
            InvestInput.BoughtInPrice => "bought_in_price",
            InvestInput.Upkeep => "upkeep",
            InvestInput.Residual => "residual",
            _ => "",
        };
}
