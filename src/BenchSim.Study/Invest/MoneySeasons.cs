using System.Collections.Immutable;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Invest;

/// <summary>
/// What the variant takes more or less of, season by season. Lives are drawn from the seasons, so each is kept: a few numbers a season.
/// Each thread writes the seasons it played and no other.
/// </summary>
internal sealed class MoneySeasons(ImmutableArray<SeasonPart> parts, int seasons)
{
    private readonly long[][] _quantities = [.. parts.Select(_ => new long[seasons])];
    private readonly long[][] _costs = [.. parts.Select(_ => new long[seasons])];
    private readonly bool[] _baseFits = new bool[seasons];
    private readonly bool[] _variantFits = new bool[seasons];

    /// <summary>The parts.</summary>
    public ImmutableArray<SeasonPart> Parts => parts;

    /// <summary>Seasons.</summary>
    public int Count => seasons;

    /// <summary>Seasons that fit in the base.</summary>
    public int BaseFits => _baseFits.Count(fits => fits);

    /// <summary>Seasons that fit in the variant.</summary>
    public int VariantFits => _variantFits.Count(fits => fits);

    /// <summary>Keeps the differences of one season, variant less base, in whole parts as <see cref="SeasonMoney"/> reads them.</summary>
    public void Set(int season, int part, long quantity, long cost) => (_quantities[part][season], _costs[part][season]) = (quantity, cost);

    /// <summary>Keeps whether a season fits.</summary>
    public void SetFits(int season, bool inBase, bool inVariant) => (_baseFits[season], _variantFits[season]) = (inBase, inVariant);

    /// <summary>Differences of a part's quantity by season, in its unit.</summary>
    public double[] Quantities(int part) => [.. _quantities[part].Select(each => each / parts[part].Parts)];

    /// <summary>Money saved by a part, by season, at the prices given.</summary>
    public double[] Savings(int part) => [.. _costs[part].Select(each => -each / SeasonEnergy.Thousandths)];

    /// <summary>By kind and season, as <see cref="CaseInputs.Benefit"/> takes them: plants in time gained; the rest money saved.</summary>
    public double[][] ByKind()
    {
        double[][] saved = [.. Enumerable.Range(0, CaseInputs.Kinds).Select(_ => new double[seasons])];
        for (var part = 0; part < parts.Length; part++)
        {
            var ofPart = parts[part].Kind == MoneyKind.Plants ? Quantities(part) : Savings(part);
            var sum = saved[(int)parts[part].Kind];
            for (var season = 0; season < seasons; season++)
            {
                sum[season] += ofPart[season];
            }
        }

        return saved;
    }
}
