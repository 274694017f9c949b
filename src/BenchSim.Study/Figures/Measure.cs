namespace BenchSim.Study.Figures;

/// <summary>
/// Something compared between a base and its variants, one whole number a season. Two of one <see cref="Code"/> measure the same.
/// </summary>
/// <param name="Code">Name for machines, lower case with underscores.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="Unit">Unit shown to people, in the plural; a currency for money, and then it may be empty.</param>
/// <param name="Parts">Whole numbers counted to one unit.</param>
public sealed record Measure(string Code, string Name, string Unit, double Parts)
{
    /// <summary>What is compared, in a sentence: "the hours of work".</summary>
    public string Subject { get; init; } = "the " + Name;

    /// <summary>
    /// What a difference means, in a sentence. In braces stand: {amount}, with {more} "more" or "fewer" after it; {less} "more" or "less";
    /// {s} and {be} after the number; {unit}; {range}, the interval. Empty where no sentence is made of it.
    /// </summary>
    public string Change { get; init; } = "";

    /// <summary>Whether it is an amount, of which there is less, and not a number, of which there are fewer.</summary>
    public bool IsAmount { get; init; }

    /// <summary>Whether it is money: <see cref="Unit"/> is its sign.</summary>
    public bool IsMoney { get; init; }

    /// <summary>Whether it is fuel of one kind.</summary>
    public bool IsFuel { get; init; }

    internal Func<MeasuredSeason, long> Read { get; init; } = _ => 0;

    /// <summary>Whether both measure the same.</summary>
    /// <param name="other">The other.</param>
    public bool Is(Measure other) => string.Equals(Code, other?.Code, StringComparison.Ordinal);

    /// <summary>The same as written in its code.</summary>
    public bool Equals(Measure? other) => other is not null && Is(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Code);
}
