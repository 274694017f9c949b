using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Doubt;

/// <summary>A value of a plan that may be wrong, or several that go together.</summary>
/// <param name="Column">The key or column.</param>
/// <param name="Parts">Whose value it is; one, or those that a row of ranges.csv moves together.</param>
public sealed record DoubtfulValue(DoubtColumn Column, ImmutableArray<DoubtfulPart> Parts)
{
    /// <summary>Whose value it is: "Tomato, Pepper".</summary>
    public string Owners => string.Join(", ", Parts.Select(part => part.Owner));

    /// <summary>The values at a chance of their ranges, in words.</summary>
    /// <param name="chance">Chance strictly between 0 and 1.</param>
    public string At(double chance) =>
        string.Join("; ", Parts.Select(part => part.Say(part.Range.Quantile(chance))).Distinct(StringComparer.Ordinal));

    /// <summary>The values in force, in words.</summary>
    public string Now => string.Join("; ", Parts.Select(part => part.Say(part.Value)).Distinct(StringComparer.Ordinal));
}

/// <summary>A value of one crop, house or rule that may be wrong.</summary>
/// <param name="OwnerId">Id of the crop or house; empty for a rule.</param>
/// <param name="Owner">Its name; "the site" for a rule.</param>
/// <param name="Trust">Where the value comes from.</param>
/// <param name="Value">The value in force, in the units used inside.</param>
/// <param name="Range">What it may truly be.</param>
/// <param name="Say">A value in words, with its unit.</param>
public sealed record DoubtfulPart(string OwnerId, string Owner, Trust Trust, double Value, ValueRange Range, Func<double, string> Say);
