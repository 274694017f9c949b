using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Study.Dense;

/// <summary>Plans one crop of a plan both ways, all else as it stands.</summary>
internal sealed class DenseWays(SeasonPlan basePlan, DenseSettings settings)
{
    /// <summary>Crops of the plan that stand on a heat mat, in order of id.</summary>
    public ImmutableArray<string> MatCrops =>
        [
            .. basePlan
                .Batches.Where(batch => batch.Mats.Length > 0)
                .Select(batch => batch.Order.CropId)
                .Distinct(StringComparer.Ordinal)
                .Where(crop => settings.CropId is null || string.Equals(crop, settings.CropId, StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>The plan with a crop sown one way; the plan itself where it already is.</summary>
    /// <param name="crop">Crop.</param>
    /// <param name="isDirect">Directly, or dense.</param>
    /// <param name="skip">Why it cannot be; null when it can.</param>
    public SeasonPlan? Plan(string crop, bool isDirect, out DenseSkip? skip)
    {
        skip = null;
        var scenario = basePlan.Scenario;
        BatchPlan[] still = [.. StillToSow(basePlan, crop)];
        if (still.Length == 0)
        {
            skip = new DenseSkip(crop, isDirect ? "directly" : "dense", "all of it has been sown");
            return null;
        }

        ImmutableArray<BatchOrder> orders =
        [
            .. basePlan.Batches.Select(batch =>
                still.Contains(batch)
                    ? isDirect
                        ? Direct(batch)
                        : Dense(batch)
                    : batch.Order
            ),
        ];
        if (orders.SequenceEqual(basePlan.Batches.Select(batch => batch.Order)))
        {
            return basePlan;
        }

        var way = isDirect ? "directly" : "dense";
        if (!isDirect && still.Select(TooMany).FirstOrDefault(why => why is not null) is { } tooMany)
        {
            skip = new DenseSkip(crop, way, tooMany);
            return null;
        }

        TrayType[] trays =
        [
            .. scenario.TrayTypes,
            .. scenario.TrayTypes.Any(tray => string.Equals(tray.Id, settings.Flat.Id, StringComparison.Ordinal))
                ? Array.Empty<TrayType>()
                : [settings.Flat],
        ];
        var planned = VariantPlanner.Make(
            basePlan,
            scenario with
            {
                Batches = orders,
                TrayTypes = [.. trays.OrderBy(tray => tray.Id, StringComparer.Ordinal)],
            }
        );
        if (planned.Plan is null)
        {
            skip = new DenseSkip(crop, way, planned.Faults[0].What);
        }

        return planned.Plan;
    }

    /// <summary>The batches of a crop of which nothing has been sown: what is sown already stays as it is.</summary>
    /// <param name="plan">The plan, or a way of it.</param>
    /// <param name="crop">Crop.</param>
    public static IEnumerable<BatchPlan> StillToSow(SeasonPlan plan, string crop) =>
        plan.Batches.Where((batch, at) => IsOf(batch, crop) && plan.Past?.Batches[at].IsBegun != true);

    private static bool IsOf(BatchPlan batch, string crop) => string.Equals(batch.Order.CropId, crop, StringComparison.Ordinal);

    // The field wants it on the same day either way: a batch that is late because potting up takes time is late.
    private static BatchOrder Direct(BatchPlan batch) =>
        batch.Flat is null
            ? batch.Order
            : batch.Order with
            {
                Method = Method.Direct,
                FlatId = null,
                Flats = null,
                Trays = null,
                SeedsPerFlat = 0,
                SeedsPerCell = batch.Crop.SeedsPerCell,
                SetOut = batch.Order.SetOut ?? batch.SetOutOn,
            };

    private BatchOrder Dense(BatchPlan batch)
    {
        if (batch.Flat is not null)
        {
            return settings.SeedsPerFlat is { } seeds && seeds != batch.Order.SeedsPerFlat
                ? batch.Order with
                {
                    SeedsPerFlat = seeds,
                    Flats = null,
                }
                : batch.Order;
        }

        return batch.Order with
        {
            Method = Method.PotUp,
            FlatId = settings.Flat.Id,
            Flats = null,
            Trays = null,
            SeedsPerFlat = SeedsOf(batch),
            SeedsPerCell = 1,
            SetOut = batch.Order.SetOut ?? batch.SetOutOn,
        };
    }

    private int SeedsOf(BatchPlan batch) =>
        settings.SeedsPerFlat ?? (batch.Flat is null ? settings.Flat.SeedsPerFlat : batch.Order.SeedsPerFlat);

    // Trays that one flat fills, above all bench places of the group, would wait for ever (docs/model.md section 2, step 3).
    private string? TooMany(BatchPlan batch)
    {
        var filled = (SeedsOf(batch) + batch.Tray.Cells - 1) / batch.Tray.Cells;
        var places = batch.Benches.Sum(bench => (long)basePlan.Scenario.Spaces[bench].Places) / batch.Tray.PlacesEach;
        return filled > places ? $"one flat of {SeedsOf(batch)} seeds may fill {filled} trays, and the benches hold {places}" : null;
    }
}
