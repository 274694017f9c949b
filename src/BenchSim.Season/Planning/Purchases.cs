using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>The order in bought units: for each line of supplies.csv what the plan needs of it, less what is on hand.</summary>
public static class Purchases
{
    /// <summary>What to buy, by supplier, then in the order of the file.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="needs">What the time asked for needs.</param>
    /// <param name="from">First date of sowing or potting up that counts.</param>
    /// <param name="to">Last such date.</param>
    public static ImmutableArray<Purchase> Of(SeasonPlan plan, SupplyNeeds needs, DateOnly from, DateOnly to)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(needs);
        Use[] uses = [.. plan.Batches.SelectMany(UsesOf).Where(use => use.On >= from && use.On <= to)];
        var supplies = plan.Scenario.Supplies;
        return
        [
            .. supplies
                .Select(supply => Of(supply, supplies, needs, uses))
                .OfType<Purchase>()
                .OrderBy(purchase => purchase.Supply.Supplier.Length == 0)
                .ThenBy(purchase => purchase.Supply.Supplier, StringComparer.OrdinalIgnoreCase)
                .ThenBy(purchase => purchase.Supply.Supplier, StringComparer.Ordinal),
        ];
    }

    // Null for a thing that the plan does not use at all.
    private static Purchase? Of(Supply supply, ImmutableArray<Supply> supplies, SupplyNeeds needs, Use[] uses)
    {
        if (string.Equals(supply.Item, Supply.Carrier, StringComparison.Ordinal))
        {
            var first = uses.Where(use => use.Tray is { IsFlat: false }).Select(use => (DateOnly?)use.On).Min();
            return needs.Carriers == 0 ? null : new Purchase(supply, "Carrier", "carriers", needs.Carriers, first, []);
        }

        Use[] own =
        [
            .. uses.Where(use =>
                use.Tray is { } tray ? string.Equals(tray.Id, supply.Item, StringComparison.Ordinal) : IsSeedOf(use.Batch, supply, supplies)
            ),
        ];
        if (own.Length == 0)
        {
            return null;
        }

        var type = own[0].Tray;
        var isReused = type is not null && supply.IsReused;
        return new Purchase(
            supply,
            type?.Name ?? own[0].Batch.Crop.Name,
            type is null ? "seeds"
                : type.IsFlat ? "flats"
                : "trays",
            isReused
                ? needs
                    .Trays.Where(tray => string.Equals(tray.Type.Id, type!.Id, StringComparison.Ordinal))
                    .Sum(tray => (long)tray.MostAtOnce)
                : own.Sum(use => use.Count),
            own.Min(use => use.On),
            isReused
                ? []
                :
                [
                    .. own.GroupBy(use => use.Batch.Order.Grower, StringComparer.Ordinal)
                        .OrderBy(group => group.Key, StringComparer.OrdinalIgnoreCase)
                        .ThenBy(group => group.Key, StringComparer.Ordinal)
                        .Select(group => (group.Key, group.Sum(use => use.Count))),
                ]
        );
    }

    // A line without a variety stands for those that have none.
    private static bool IsSeedOf(BatchPlan batch, Supply supply, ImmutableArray<Supply> supplies) =>
        string.Equals(batch.Crop.Id, supply.Item, StringComparison.Ordinal)
        && (
            supply.Variety.Length > 0
                ? IsSame(supply.Variety, batch.Order.Variety)
                : !supplies.Any(other =>
                    other.Variety.Length > 0
                    && string.Equals(other.Item, supply.Item, StringComparison.Ordinal)
                    && IsSame(other.Variety, batch.Order.Variety)
                )
        );

    private static bool IsSame(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<Use> UsesOf(BatchPlan batch)
    {
        yield return new Use(batch, null, batch.Seeds, batch.SowOn);
        if (batch.Flat is { } flat && batch.PotUpOn is { } potUp)
        {
            yield return new Use(batch, flat, batch.Flats, batch.SowOn);
            yield return new Use(batch, batch.Tray, batch.Trays, potUp);
        }
        else
        {
            yield return new Use(batch, batch.Tray, batch.Trays, batch.SowOn);
        }
    }

    // Seed, where no tray is named, or trays that are filled on a day.
    private readonly record struct Use(BatchPlan Batch, TrayType? Tray, long Count, DateOnly On);
}
