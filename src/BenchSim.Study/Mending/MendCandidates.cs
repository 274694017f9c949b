using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Bottlenecks;
using BenchSim.Study.Compare;
using BenchSim.Study.Levelling;

namespace BenchSim.Study.Mending;

/// <summary>Everything that is tried to mend a plan, in a fixed order. Which of it can be done, reading and planning say.</summary>
public static class MendCandidates
{
    private const double FootM = 0.3048;
    private const double FinishAt = 0.6;

    // Units, or lengths, by which a space is made larger.
    private static readonly int[] s_sizes = [1, 2, 3, 6];
    private static readonly int[] s_daysEarlier = [7, 14, 28];
    private static readonly int[] s_moreSlack = [3, 7];

    // Night and day: cooler and warmer nights, days, and both.
    private static readonly (int Night, int Day)[] s_steps = [(-1, 0), (-1, -1), (0, -1), (0, 1), (1, 0), (1, 1)];

    // A step of the set-points, kelvin: 5 F, or 3 C.
    private static double DegreesK(UnitSystem units) => units == UnitSystem.Imperial ? 5 / 1.8 : 3;

    // Warmth that a row cover is taken to add, kelvin: 6 F (a trade magazine of December 2020, for a medium cover).
    private static double CoverGainK(UnitSystem units) => units == UnitSystem.Imperial ? 6 / 1.8 : 3.3;

    /// <summary>Ids of the lines of a plan, as they are written.</summary>
    public static IEnumerable<string> Lines(SeasonPlan plan) => PlanLine.Of(plan).Select(line => line.Id);

    /// <summary>The changes of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="flat">Open flat that a crop may be sown dense in; null for none.</param>
    public static ImmutableArray<MendChange> Of(SeasonPlan plan, TrayType? flat)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. Reliefs(plan.Scenario),
            .. Slack(plan),
            .. SowingMoves.Of(plan),
            .. flat is null ? [] : Dense(plan, flat),
            .. Finish(plan),
            .. SetPoints(plan.Scenario),
            .. Openings(plan.Scenario),
            .. Cover(plan.Scenario),
            .. Places(plan),
            .. OfTheOrder(plan),
        ];
    }

    /// <summary>
    /// The moves of a levelled plan as one change; none where they are fewer than two. Only lines that are sown once and have a set-out
    /// date of their own: that a variant can say, and the date stays.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="moves">Sowings that levelling moves.</param>
    public static ImmutableArray<MendChange> Levelled(SeasonPlan plan, ImmutableArray<MovedSowing> moves)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<SowingMove> own =
        [
            .. from line in PlanLine.Of(plan)
            where line.IsSingle && line.First.Order.SetOut is not null
            from move in moves
            where string.Equals(move.Batch, line.Id, StringComparison.Ordinal)
            select SowingMoves.MoveOf(line, move.To),
        ];
        return own.Length < 2 ? [] : [new SowChange(own)];
    }

    private static IEnumerable<MendChange> Reliefs(Scenario scenario) =>
        Enum.GetValues<Relief>()
            .Where(relief => !scenario.Rules.Reliefs.Contains(relief))
            .Where(relief => relief != Relief.Aisle || scenario.Spaces.Any(space => space.AislePlaces > 0))
            .Select(relief => new ReliefChange(relief));

    private static IEnumerable<MendChange> Slack(SeasonPlan plan) =>
        plan.Batches.Any(batch => batch.Order is { Sow: null, SetOut: not null })
            ? s_moreSlack.Select(days => new SlackChange(plan.Scenario.Rules.SlackDays, plan.Scenario.Rules.SlackDays + days))
            : [];

    private static IEnumerable<MendChange> Dense(SeasonPlan plan, TrayType flat)
    {
        var lines = PlanLine.Of(plan);
        foreach (var crop in plan.Batches.Select(batch => batch.Order.CropId).Distinct(StringComparer.Ordinal))
        {
            PlanLine[] own = [.. lines.Where(line => string.Equals(line.First.Order.CropId, crop, StringComparison.Ordinal))];
            if (own.Any(line => line.First.Flat is not null || line.First.Mats.IsEmpty || !line.KeepsItsDate))
            {
                continue;
            }

            ImmutableArray<(string, DateOnly)> dates =
            [
                .. own.Where(line => line.First.Order.SetOut is null).Select(line => (line.Id, line.First.SetOutOn)),
            ];
            foreach (var seeds in new[] { flat.SeedsPerFlat, flat.SeedsPerFlat / 2 }.Where(seeds => seeds > 0 && Fits(plan, own, seeds)))
            {
                yield return new DenseChange(crop, flat, seeds, dates);
            }
        }
    }

    // Trays that one flat fills, above all bench places of the group, would wait for ever (docs/model.md section 2, step 3).
    private static bool Fits(SeasonPlan plan, PlanLine[] lines, int seeds) =>
        Array.TrueForAll(lines, line =>
            (seeds + line.First.Tray.Cells - 1) / line.First.Tray.Cells
            <= line.First.Benches.Sum(bench => (long)plan.Scenario.Spaces[bench].Places) / line.First.Tray.PlacesEach
        );

    private static IEnumerable<MendChange> Finish(SeasonPlan plan)
    {
        var spaces = plan.Scenario.Spaces;
        foreach (var crop in plan.Batches.GroupBy(batch => batch.Order.CropId, StringComparer.Ordinal))
        {
            HashSet<int> used = [.. crop.SelectMany(batch => batch.Benches.Concat(batch.Finish))];
            HashSet<string?> houses = [.. used.Select(space => spaces[space].HouseId)];
            if (crop.Any(batch => !batch.Finish.IsEmpty))
            {
                continue;
            }

            foreach (var bench in spaces.Where(space => space.Kind == SpaceKind.Bench && !houses.Contains(space.HouseId)))
            {
                yield return new FinishChange(crop.Key, bench, FinishAt);
            }
        }
    }

    private static IEnumerable<MendChange> SetPoints(Scenario scenario)
    {
        var step = DegreesK(scenario.Units);
        foreach (var house in scenario.Houses.Where(house => house.IsHeated))
        {
            var (night, day) = (house.NightC!.Value, house.DayC ?? house.NightC.Value);
            foreach (var (nights, days) in s_steps)
            {
                var (newNight, newDay) = (night + (nights * step), day + (days * step));
                if (newNight > 0 && newDay > 0 && newNight <= newDay + 1e-9 && newDay < house.VentC)
                {
                    yield return new SetPointChange(house, newNight, newDay);
                }
            }
        }
    }

    private static IEnumerable<MendChange> Openings(Scenario scenario) =>
        from house in scenario.Houses
        where house is { Opening: HouseOpening.FromDate, OpensOn: not null }
        from days in s_daysEarlier
        let date = house.OpensOn!.Value.AddDays(-days)
        where date >= scenario.Window.Opens
        select new OpeningChange(house, date);

    private static IEnumerable<MendChange> Cover(Scenario scenario)
    {
        var places = scenario.Spaces.Where(space => space is { Kind: SpaceKind.Table, HouseId: null }).Sum(space => space.Places);
        return scenario.Rules.CoverGainK == 0 && places > 0 ? [new CoverChange(CoverGainK(scenario.Units), places)] : [];
    }

    private static IEnumerable<MendChange> Places(SeasonPlan plan)
    {
        var used = plan
            .Batches.SelectMany(batch => batch.Mats.Concat(batch.Benches).Concat(batch.Finish).Concat(batch.Tables))
            .Distinct()
            .Order();
        foreach (var space in used.Select(at => plan.Scenario.Spaces[at]))
        {
            var length =
                space.Size is { LengthM: { } sides, WidthM: not null } && space.Changes.IsEmpty && space.UnitPlaces is null
                    ? LengthStep(sides, plan.Scenario.Units)
                    : 0;
            var unit =
                length > 0
                    ? Math.Max(1, (int)Math.Round(space.Places * length / space.Size.LengthM!.Value))
                    : BottleneckTrials.UnitOf(space);
            foreach (var steps in s_sizes.Where(steps => space.Places + (steps * unit) <= SpaceFields.MostPlaces))
            {
                yield return new PlacesChange(space, steps, steps * unit, steps * length);
            }
        }
    }

    // A ninth of the length, in whole four feet or metres.
    private static double LengthStep(double lengthM, UnitSystem units)
    {
        var grid = units == UnitSystem.Imperial ? 4 * FootM : 1;
        return Math.Ceiling((lengthM / 9 / grid) - 1e-6) * grid;
    }

    private static IEnumerable<MendChange> OfTheOrder(SeasonPlan plan)
    {
        foreach (var line in PlanLine.Of(plan))
        {
            var fewer = line.First.Order.Plants * 3 / 4;
            if (fewer > 0)
            {
                yield return new FewerChange(line.Id, line.First.Order.Plants, fewer);
            }

            yield return new LaterChange(line.Id, 7);
        }
    }
}
