namespace BenchSim.Study.Invest;

/// <summary>One part of the yearly net benefit, a mean of the seasons with its 95 % interval (paired, Student).</summary>
public sealed record MoneyPart
{
    /// <summary>What it is.</summary>
    public required MoneyKind Kind { get; init; }

    /// <summary>Name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>Unit of the quantity, in the plural.</summary>
    public required string Unit { get; init; }

    /// <summary>Quantity of the variant less that of the base, mean of a season.</summary>
    public required double Quantity { get; init; }

    /// <summary>Half the width of the interval of the quantity; NaN for one season.</summary>
    public required double QuantityHalfWidth { get; init; }

    /// <summary>Whether it has a price; without one it is not counted in money.</summary>
    public required bool IsPriced { get; init; }

    /// <summary>Money gained a season, less where negative; 0 without a price.</summary>
    public required double Benefit { get; init; }

    /// <summary>Half the width of the interval of the money; NaN for one season.</summary>
    public required double BenefitHalfWidth { get; init; }
}
