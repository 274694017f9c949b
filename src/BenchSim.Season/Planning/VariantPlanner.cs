using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>
/// Makes the plan of a variant of a scenario. What the variant leaves as it was keeps the dates and numbers of the base; what it changes is
/// planned anew in the variant (docs/model.md section 5).
/// </summary>
public static class VariantPlanner
{
    /// <summary>Makes the plan of a variant.</summary>
    /// <param name="basePlan">Plan of the base scenario.</param>
    /// <param name="variant">The variant, read without faults; its season opens on the day of the base's.</param>
    /// <returns>The plan, played to the last day of the base or later where a changed batch needs it.</returns>
    /// <exception cref="ArgumentException">The variant's season opens on another day.</exception>
    public static PlanResult Make(SeasonPlan basePlan, Scenario variant)
    {
        ArgumentNullException.ThrowIfNull(basePlan);
        ArgumentNullException.ThrowIfNull(variant);
        if (variant.Window.Opens != basePlan.FirstDay)
        {
            throw new ArgumentException("A variant opens its season on the first day of the base.", nameof(variant));
        }

        var past = VariantPast.Of(basePlan);
        var faults = ImmutableArray.CreateBuilder<Fault>();
        faults.AddRange(past?.Faults(variant) ?? []);
        if (faults.Count > 0)
        {
            return new PlanResult(null, faults.ToImmutable());
        }

        variant = Judged(basePlan.Scenario, past?.Under(variant) ?? variant);
        var frozen = variant.Batches.Select(order => past?.Kept(variant, order) ?? Frozen(basePlan, variant, order)).ToArray();
        if (IsStandChanged(basePlan.Scenario.Rules, variant.Rules))
        {
            frozen = [.. frozen.Select(kept => kept is null || IsBegun(kept) ? kept : BatchNumbers.Again(variant, kept, faults))];
        }

        if (faults.Count > 0)
        {
            return new PlanResult(null, faults.ToImmutable());
        }

        var changed = variant.Batches.Where((_, index) => frozen[index] is null).ToImmutableArray();
        var planned = new Dictionary<string, BatchPlan>(StringComparer.Ordinal);
        ImmutableArray<Fault> ofDates = [];
        if (changed.Length > 0)
        {
            var made = SeasonPlanner.Make(variant with { Batches = changed });
            if (made.Plan is not { } plan)
            {
                return made;
            }

            ofDates = plan.Warnings;
            planned = plan.Batches.ToDictionary(batch => batch.Order.Id, StringComparer.Ordinal);
        }

        var batches = variant
            .Batches.Select((order, index) => frozen[index] ?? AsPromised(basePlan, variant, planned[order.Id]))
            .ToImmutableArray();
        if (past?.TooLate(batches).ToImmutableArray() is { IsEmpty: false } late)
        {
            return new PlanResult(null, late);
        }

        var days = Math.Max(basePlan.Days, SeasonPlanner.DaysOf(variant, batches));
        if (SeasonPlanner.NoYear(variant, days) is { } tooShort)
        {
            return tooShort;
        }

        // What is said of the dates of changed sowings, and what is said of the plan as a whole, once.
        var warnings = ImmutableArray.CreateBuilder<Fault>();
        PlanWarnings.Add(variant, batches, warnings);
        return new PlanResult(
            new SeasonPlan
            {
                Scenario = variant,
                Batches = batches,
                Days = days,
                SownInTimeDays = basePlan.SownInTimeDays,
                Past = past?.In(variant),
                Warnings = [.. ofDates.Union(warnings)],
            },
            []
        );

        bool IsBegun(BatchPlan batch) => past?.IsBegun(batch.Order.Id) == true;
    }

    // Another relative would lend a crop other days past which its trays are over-held, and they decide whether a season fits.
    private static Scenario Judged(Scenario below, Scenario variant)
    {
        Crop As(Crop crop) =>
            below.Crops.FirstOrDefault(each => string.Equals(each.Id, crop.Id, StringComparison.Ordinal)) is { } same
            && same.HoldDays != crop.HoldDays
                ? crop with
                {
                    HoldDays = same.HoldDays,
                }
                : crop;

        var crops = variant.Crops.Select(As).ToImmutableArray();
        return crops.SequenceEqual(variant.Crops) ? variant : variant with { Crops = crops };
    }

    // The batch as the base planned it, in the spaces of the variant; null when the base has none like it.
    private static BatchPlan? Frozen(SeasonPlan basePlan, Scenario variant, BatchOrder order)
    {
        var below = Below(basePlan, order);
        var crop = variant.Crops.First(each => string.Equals(each.Id, order.CropId, StringComparison.Ordinal));
        var tray = variant.TrayTypes.First(each => string.Equals(each.Id, order.TrayId, StringComparison.Ordinal));
        var flat = order.FlatId is null
            ? null
            : variant.TrayTypes.First(each => string.Equals(each.Id, order.FlatId, StringComparison.Ordinal));
        if (
            below is null
            || !IsSameOrder(below.Order, order)
            || !IsSameCulture(below.Crop, crop)
            || !IsSame(below.Tray, tray)
            || !IsSame(below.Flat, flat)
            || IsDatedAnew(basePlan.Scenario, variant, order)
        )
        {
            return null;
        }

        var kept = below with
        {
            Order = order,
            Crop = crop,
            Tray = tray,
            Flat = flat,
            Mats = SpaceGroups.Mats(variant, crop),
            Benches = SpaceGroups.Benches(variant, crop),
            Tables = SpaceGroups.Tables(variant),
        };
        return SpaceGroups.WithFinish(variant, kept);
    }

    // Where it is written, what is noted of it, its variety, how far levelling may move it, where it finishes and what covers it in the
    // field plan nothing.
    private static bool IsSameOrder(BatchOrder left, BatchOrder right) => Bare(left) == Bare(right);

    internal static BatchOrder Bare(BatchOrder order) =>
        order with
        {
            Place = default,
            Note = "",
            Variety = "",
            EarlierDays = 0,
            LaterDays = 0,
            Finish = [],
            FinishAt = null,
            FinishAfterDays = null,
            FieldCover = default,
        };

    // Which spaces suit the crop says where it stands, not how it grows. Lists compare by what they hold, not by the array that holds it.
    private static bool IsSameCulture(Crop left, Crop right) =>
        left.GerminationCurve.SequenceEqual(right.GerminationCurve) && Culture(left) with { Sources = right.Sources } == Culture(right);

    private static Crop Culture(Crop crop) =>
        crop with
        {
            GerminationCurve = [],
            Benches = [],
            Mats = [],
            Finish = [],
            FinishAt = null,
            FinishAfterDays = null,
            MinNightC = null,
            MaxMatC = null,
            HarvestAfterDays = null,
            HarvestDays = null,
            WeeksMin = null,
            WeeksMax = null,
        };

    private static bool IsSame(TrayType? left, TrayType? right) =>
        left is null || right is null ? left is null && right is null : left with { Sources = right.Sources } == right;

    // More slack is sooner sown. A date that follows from the sow date stays: it is what late is counted from.
    private static bool IsDatedAnew(Scenario below, Scenario variant, BatchOrder order) =>
        (variant.IsPlannedAnew || below.Rules.SlackDays != variant.Rules.SlackDays) && order is { Sow: null, SetOut: not null };

    // Other work days in a variant would set out a sowing on another day for the same wanted date: what was promised stays.
    private static BatchPlan AsPromised(SeasonPlan basePlan, Scenario variant, BatchPlan planned) =>
        variant.IsPlannedAnew
        && Below(basePlan, planned.Order) is { } below
        && planned.Order.SetOut is { } wanted
        && wanted == below.Order.SetOut
            ? planned with
            {
                SetOutOn = below.SetOutOn,
            }
            : planned;

    private static BatchPlan? Below(SeasonPlan basePlan, BatchOrder order) =>
        basePlan.Batches.FirstOrDefault(batch => string.Equals(batch.Order.Id, order.Id, StringComparison.Ordinal));

    private static bool IsStandChanged(SiteRules left, SiteRules right) =>
        left.StandAssurance != right.StandAssurance
        || left.GerminationSample != right.GerminationSample
        || left.SeedStorage != right.SeedStorage;
}
