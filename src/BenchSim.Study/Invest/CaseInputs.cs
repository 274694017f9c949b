using BenchSim.Season.Inputs;
using BenchSim.Study.Money;

namespace BenchSim.Study.Invest;

/// <summary>
/// The inputs of a money case as numbers, any one of which can be changed, and what follows from them for a year's savings.
/// </summary>
internal sealed record CaseInputs
{
    public const int Kinds = (int)MoneyKind.Seed + 1;

    public required double Capital { get; init; }

    public required int Life { get; init; }

    public required double Rate { get; init; }

    public required double PlantOnTime { get; init; }

    public required double BoughtInShare { get; init; }

    public required double BoughtInPrice { get; init; }

    public required double Upkeep { get; init; }

    public required double Residual { get; init; }

    /// <summary>An hour of work and a litre of mix at the prices given; 0 where none is.</summary>
    public required double LabourPrice { get; init; }

    public required double MixPrice { get; init; }

    /// <summary>Multiples of the prices given.</summary>
    public double LabourFactor { get; init; } = 1;

    public double FuelFactor { get; init; } = 1;

    public double PowerFactor { get; init; } = 1;

    public double MixFactor { get; init; } = 1;

    public double SeedFactor { get; init; } = 1;

    public double PlantWorth => (BoughtInShare * BoughtInPrice) + ((1 - BoughtInShare) * PlantOnTime);

    public static CaseInputs Of(InvestTerms terms, Prices prices) =>
        new()
        {
            Capital = terms.Capital,
            Life = terms.LifeYears,
            Rate = terms.DiscountRate,
            PlantOnTime = terms.PlantOnTime,
            BoughtInShare = terms.BoughtInShare,
            BoughtInPrice = terms.BoughtInPrice,
            Upkeep = terms.Upkeep,
            Residual = terms.Residual,
            LabourPrice = prices.LabourHour ?? 0,
            MixPrice = prices.MixLitre ?? 0,
        };

    /// <summary>The value of an input.</summary>
    public double this[InvestInput input] =>
        input switch
        {
            InvestInput.Capital => Capital,
            InvestInput.Life => Life,
            InvestInput.DiscountRate => Rate,
            InvestInput.PlantOnTime => PlantOnTime,
            InvestInput.BoughtInShare => BoughtInShare,
            InvestInput.BoughtInPrice => BoughtInPrice,
            InvestInput.Upkeep => Upkeep,
            InvestInput.Residual => Residual,
            InvestInput.LabourPrice => LabourPrice * LabourFactor,
            InvestInput.FuelPrice => FuelFactor,
            InvestInput.PowerPrice => PowerFactor,
            InvestInput.MixPrice => MixPrice * MixFactor,
            InvestInput.SeedPrice => SeedFactor,
            _ => throw new InvalidOperationException("An unknown input."),
        };

    /// <summary>The same with one input changed.</summary>
    public CaseInputs With(InvestInput input, double value) =>
        input switch
        {
            InvestInput.Capital => this with { Capital = value },
            InvestInput.Life => this with { Life = (int)value },
            InvestInput.DiscountRate => this with { Rate = value },
            InvestInput.PlantOnTime => this with { PlantOnTime = value },
            InvestInput.BoughtInShare => this with { BoughtInShare = value },
            InvestInput.BoughtInPrice => this with { BoughtInPrice = value },
            InvestInput.Upkeep => this with { Upkeep = value },
            InvestInput.Residual => this with { Residual = value },
            InvestInput.LabourPrice => this with { LabourFactor = value / LabourPrice },
            InvestInput.FuelPrice => this with { FuelFactor = value },
            InvestInput.PowerPrice => this with { PowerFactor = value },
            InvestInput.MixPrice => this with { MixFactor = value / MixPrice },
            InvestInput.SeedPrice => this with { SeedFactor = value },
            _ => throw new InvalidOperationException("An unknown input."),
        };

    /// <summary>Net benefit of a year.</summary>
    /// <param name="saved">By <see cref="MoneyKind"/>: plants in time gained; the rest money saved at the prices given.</param>
    public double Benefit(ReadOnlySpan<double> saved) =>
        (saved[(int)MoneyKind.Plants] * PlantWorth)
        + (saved[(int)MoneyKind.Labour] * LabourFactor)
        + (saved[(int)MoneyKind.Fuel] * FuelFactor)
        + (saved[(int)MoneyKind.MatPower] * PowerFactor)
        + (saved[(int)MoneyKind.Mix] * MixFactor)
        + (saved[(int)MoneyKind.Seed] * SeedFactor)
        - Upkeep;

    /// <summary>Net present value when every year brings the same benefit.</summary>
    public double Net(double benefit) => -Capital + (Annuity * benefit) + (Residual / Math.Pow(1 + Rate, Life));

    /// <summary>Present value of 1 in each year of the life.</summary>
    public double Annuity => PresentValue.Annuity(Rate, Life);

    /// <summary>Flows when every year brings the same benefit: capital now, and the worth at the end with the last year's.</summary>
    public double[] Flows(double benefit)
    {
        var flows = new double[Life + 1];
        Array.Fill(flows, benefit);
        flows[0] = -Capital;
        flows[Life] += Residual;
        return flows;
    }
}
