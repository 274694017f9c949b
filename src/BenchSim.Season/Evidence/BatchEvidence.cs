using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Evidence;

/// <summary>What was seen of a batch, as a chance of it at any value of its crop.</summary>
public sealed record BatchEvidence
{
    /// <summary>The batch.</summary>
    public required BatchPlan Batch { get; init; }

    /// <summary>The packet it was sown from: its own id where the plan names none.</summary>
    public string Packet => Batch.Order.PacketId ?? Batch.Order.Id;

    /// <summary>Seedlings counted in what was picked by lot; null where none were.</summary>
    public SeedCount? Picked { get; init; }

    /// <summary>Seedlings counted, however they were chosen; null where none were.</summary>
    public SeedCount? Counted { get; init; }

    /// <summary>Rows that count seedlings or cells of trays that someone chose.</summary>
    public int Volunteered { get; init; }

    /// <summary>Plants counted as they went out, or cells counted in trays picked by lot; null where none were.</summary>
    public PlantCount? Plants { get; init; }

    /// <summary>What potting up brought; null where none was potted up.</summary>
    public PottedCount? Potted { get; init; }

    /// <summary>How far it had grown when it was judged; null where nobody judged it.</summary>
    public GrowthBounds? Growth { get; init; }
}

/// <summary>Seedlings that were counted of the same cells on a day or more.</summary>
public sealed class SeedCount
{
    private readonly LookChance _chance;
    private readonly Func<double, double[]> _upBy;

    internal SeedCount(LookChance chance, int among, Func<double, double[]> upBy) => (_chance, Among, _upBy) = (chance, among, upBy);

    /// <summary>Seeds in the cells looked at.</summary>
    public int Among { get; }

    /// <summary>By each day, the share of the seeds up of a packet of which all germinate, at a heat at which half are up.</summary>
    /// <param name="heat">Degree-days, above 0: that of the batch.</param>
    public double[] UpBy(double heat) => _upBy(heat);

    /// <summary>Logarithm of the chance of the count, but for the number of its orders.</summary>
    /// <param name="upBy">What <see cref="UpBy"/> gives.</param>
    /// <param name="germination">Share of the packet that germinates at its best, 0 to 1.</param>
    public double LogChance(ReadOnlySpan<double> upBy, double germination)
    {
        Span<double> by = stackalloc double[upBy.Length];
        for (var look = 0; look < by.Length; look++)
        {
            by[look] = germination * upBy[look];
        }

        return _chance.Log(by);
    }
}

/// <summary>Plants counted among cells, as they went out or before.</summary>
public sealed class PlantCount
{
    private readonly Func<double, double, double> _cell;

    internal PlantCount(CountRange plants, int cells, Func<double, double, double> cell) => (Plants, Cells, _cell) = (plants, cells, cell);

    /// <summary>Plants counted: between which numbers.</summary>
    public CountRange Plants { get; }

    /// <summary>Cells in which they may have been, as many or more.</summary>
    public int Cells { get; }

    /// <summary>Chance that a cell has a plant before the losses of the batch.</summary>
    /// <param name="germination">Share of the packet that germinates at its best, 0 to 1.</param>
    /// <param name="heat">Degree-days at which half the batch is up.</param>
    public double CellChance(double germination, double heat) => _cell(germination, heat);

    /// <summary>Logarithm of the chance of a count in words.</summary>
    /// <param name="chance">Chance that a cell has a plant after the losses of the batch.</param>
    public double LogInWords(double chance) => LookChance.InWords(Plants, Cells, chance);
}

/// <summary>What potting up brought: flats used up, and trays filled from them.</summary>
public sealed class PottedCount
{
    private readonly Func<double, double> _relative;

    internal PottedCount(long seeds, long least, long most, Func<double, double> relative) =>
        (Seeds, Least, Most, _relative) = (seeds, least, most, relative);

    /// <summary>Seeds of the flats.</summary>
    public long Seeds { get; }

    /// <summary>Fewest seedlings that fill the trays.</summary>
    public long Least { get; }

    /// <summary>Most seedlings there can have been; all seeds where no more trays were wanted.</summary>
    public long Most { get; }

    /// <summary>Germination at the temperature of the medium, relative to its best, 0 to 1.</summary>
    /// <param name="heat">Degree-days at which half the batch is up.</param>
    public double Relative(double heat) => _relative(heat);
}

/// <summary>How far a batch had grown when it was judged of field size, or not yet.</summary>
public sealed class GrowthBounds
{
    private readonly Func<double, ImmutableArray<(double Weight, double Above, double UpTo)>> _days;

    internal GrowthBounds(
        Func<double, ImmutableArray<(double Weight, double Above, double UpTo)>> days,
        ImmutableArray<HouseWeeks> houses
    ) => (_days, Houses) = (days, houses);

    /// <summary>The houses in which it grew, and how well their temperatures are known.</summary>
    public ImmutableArray<HouseWeeks> Houses { get; }

    /// <summary>
    /// Between which days of growth at the reference temperature it came to field size: 0 where nothing bounds it from below, infinite
    /// where nothing does from above. Several such intervals with how well each explains what was done, at most 1.
    /// </summary>
    /// <param name="heat">Degree-days at which half the batch is up.</param>
    public ImmutableArray<(double Weight, double Above, double UpTo)> Days(double heat) => _days(heat);
}

/// <summary>Weeks in a house, and how well its temperatures are known.</summary>
/// <param name="House">Name of the house.</param>
/// <param name="Weeks">Weeks that were begun in it.</param>
/// <param name="Unwritten">Those of them without a low by an own thermometer in it.</param>
/// <param name="Nights">Nights with such a low.</param>
/// <param name="MeanGapK">Mean of these lows less those by set-point and weather, kelvin; 0 without a night.</param>
public sealed record HouseWeeks(string House, int Weeks, int Unwritten, int Nights, double MeanGapK);
