using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>What has to be on the shelf for the sowings and pottings of a time: seed, trays, flats, carriers and potting mix.</summary>
public sealed record SupplyNeeds
{
    /// <summary>Seed by crop, variety and packet, in order of the name of the crop, then of variety and packet.</summary>
    public required ImmutableArray<SeedNeed> Seeds { get; init; }

    /// <summary>Trays and flats by type, trays first, in order of id.</summary>
    public required ImmutableArray<TrayNeed> Trays { get; init; }

    /// <summary>Carriers: one under each cell tray, each used again; as many as cell trays stand at most on one day.</summary>
    public required int Carriers { get; init; }

    /// <summary>Prices of the site.</summary>
    public required Prices Prices { get; init; }

    /// <summary>How mix settles, and what it is bought in.</summary>
    public required PottingMix Mix { get; init; }

    /// <summary>Potting mix in the trays and flats, settled, litres.</summary>
    public double FilledLitres => Trays.Sum(tray => tray.MixLitres);

    /// <summary>Potting mix to have, loose, litres.</summary>
    public double MixLitres => Mix.Loose(FilledLitres);

    /// <summary>Potting mix to have, loose, cubic feet.</summary>
    public double MixCubicFeet => MixLitres / Volumes.LitresACubicFoot;

    /// <summary>Bales, bags or totes of the site that hold it, rounded up to whole ones.</summary>
    public int MixUnits => (int)Math.Ceiling(Math.Round(MixLitres / Mix.YieldLitres, 6));

    /// <summary>Cost of the mix, in the user's money; null where no price is given.</summary>
    public double? MixCost => MixLitres * Prices.MixLitre;

    /// <summary>Cost of all seed, in the user's money; null where a price is missing.</summary>
    public double? SeedCost => Seeds.All(seed => seed.Cost is not null) ? Seeds.Sum(seed => seed.Cost) : null;

    /// <summary>Works the needs out.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="from">First date of sowing or potting up that counts.</param>
    /// <param name="to">Last such date.</param>
    public static SupplyNeeds Of(SeasonPlan plan, DateOnly from, DateOnly to)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<Stay> stays = [.. plan.Batches.SelectMany(StaysOf)];
        ImmutableArray<Stay> filled = [.. stays.Where(stay => stay.From >= from && stay.From <= to)];
        return new SupplyNeeds
        {
            Seeds = SeedsOf(plan, from, to),
            Trays =
            [
                .. filled
                    .GroupBy(stay => stay.Type.Id, StringComparer.Ordinal)
                    .Select(group => new TrayNeed(
                        group.First().Type,
                        group.Sum(stay => stay.Count),
                        MostAtOnce(stays.Where(stay => string.Equals(stay.Type.Id, group.Key, StringComparison.Ordinal)), from, to)
                    ))
                    .OrderBy(need => need.Type.IsFlat)
                    .ThenBy(need => need.Type.Id, StringComparer.Ordinal),
            ],
            Carriers = MostAtOnce(stays.Where(stay => !stay.Type.IsFlat), from, to),
            Mix = plan.Scenario.Rules.Mix,
            Prices = plan.Scenario.Rules.Prices,
        };
    }

    private static ImmutableArray<SeedNeed> SeedsOf(SeasonPlan plan, DateOnly from, DateOnly to) =>
        [
            .. plan
                .Batches.Where(batch => batch.SowOn >= from && batch.SowOn <= to)
                .GroupBy(batch =>
                    (
                        batch.Crop.Id,
                        batch.Order.Variety,
                        batch.Order.PacketId,
                        Price: batch.Order.ThousandSeeds ?? plan.Scenario.Rules.Prices.ThousandSeeds,
                        Line: batch.Order.PacketId is null && batch.Order.Variety.Length == 0 ? batch.Order.Place : default
                    )
                )
                .OrderBy(group => group.First().Crop.Name, StringComparer.OrdinalIgnoreCase)
                .ThenBy(group => group.Key.Id, StringComparer.Ordinal)
                .ThenBy(group => group.Key.Variety, StringComparer.Ordinal)
                .ThenBy(group => group.Key.PacketId ?? "", StringComparer.Ordinal)
                .ThenBy(group => group.Key.Price)
                .ThenBy(group => group.Key.Line.Line)
                .Select(group => new SeedNeed(
                    group.First().Crop,
                    group.Key.PacketId,
                    group.Count(),
                    group.Sum(batch => batch.Seeds),
                    group.Key.Price,
                    SowingOf(group.Key.Line, [.. group]),
                    group.Key.Variety
                )),
        ];

    // Successions carry the id of their line with a number behind it.
    private static string? SowingOf(SourcePlace line, ImmutableArray<BatchPlan> batches)
    {
        if (line.Line == 0)
        {
            return null;
        }

        var first = batches[0].Order.Id;
        return batches.Length > 1 && first.LastIndexOf('-') is > 0 and var end ? first[..end] : first;
    }

    // The flats of a batch that is potted up are free again on that day, its trays from then on until they are set out: for a day at least
    // where the plan's own set-out date lies before the potting.
    private static IEnumerable<Stay> StaysOf(BatchPlan batch)
    {
        if (batch.Flat is { } flat && batch.PotUpOn is { } potUp)
        {
            yield return new Stay(flat, batch.Flats, batch.SowOn, potUp);
            yield return new Stay(batch.Tray, batch.Trays, potUp, batch.SetOutOn > potUp ? batch.SetOutOn : potUp.AddDays(1));
        }
        else
        {
            yield return new Stay(batch.Tray, batch.Trays, batch.SowOn, batch.SetOutOn);
        }
    }

    // What leaves on a day is free for what is filled on it: leaving is counted first.
    private static int MostAtOnce(IEnumerable<Stay> stays, DateOnly from, DateOnly to)
    {
        var changes = new SortedDictionary<DateOnly, int>();
        foreach (var stay in stays.Where(stay => stay.From <= to && stay.Until > from))
        {
            var first = stay.From < from ? from : stay.From;
            changes[first] = changes.GetValueOrDefault(first) + stay.Count;
            changes[stay.Until] = changes.GetValueOrDefault(stay.Until) - stay.Count;
        }

        var (standing, most) = (0, 0);
        foreach (var change in changes.TakeWhile(change => change.Key <= to))
        {
            standing += change.Value;
            most = Math.Max(most, standing);
        }

        return most;
    }

    private readonly record struct Stay(TrayType Type, int Count, DateOnly From, DateOnly Until);
}
