using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// Which spaces a crop may stand in, in order of preference: a list of the crop's own where it gives one, else every space of the kind that
/// suits it, in the order of the file, with spaces of "when needed" houses last (docs/model.md section 1).
/// </summary>
public static class SpaceGroups
{
    // Published limits are mostly whole degrees Fahrenheit rounded to a tenth of a degree Celsius: 55 F, which is 12.78 C, is written 12.8
    // C. A house kept at 55 F must still do for such a crop, so limits are compared to half of that tenth.
    private const double RoundingC = 0.05;

    /// <summary>
    /// Mats the crop may stand on: none when it wants no bottom heat, else its list, else every mat no hotter than it can bear.
    /// </summary>
    /// <param name="scenario">The site.</param>
    /// <param name="crop">The crop.</param>
    /// <returns>Positions in <see cref="Scenario.Spaces"/>, first preference first; ids that name no mat are left out.</returns>
    public static ImmutableArray<int> Mats(Scenario scenario, Crop crop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(crop);
        if (!crop.BottomHeat)
        {
            return [];
        }

        return crop.Mats.IsDefaultOrEmpty
            ? Suitable(scenario, SpaceKind.Mat, (space, _) => crop.MaxMatC is not { } hottest || space.MatC <= hottest + RoundingC)
            : Listed(scenario, SpaceKind.Mat, crop.Mats);
    }

    /// <summary>
    /// Benches the crop may stand on: its list, else every bench in a heated house whose night set-point is at least the crop's coldest
    /// night; every bench, heated or not, for a crop without one.
    /// </summary>
    /// <param name="scenario">The site.</param>
    /// <param name="crop">The crop.</param>
    /// <returns>Positions in <see cref="Scenario.Spaces"/>, first preference first; ids that name no bench are left out.</returns>
    public static ImmutableArray<int> Benches(Scenario scenario, Crop crop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(crop);
        return crop.Benches.IsDefaultOrEmpty
            ? Suitable(scenario, SpaceKind.Bench, (_, house) => crop.MinNightC is not { } coldest || house?.NightC >= coldest - RoundingC)
            : Listed(scenario, SpaceKind.Bench, crop.Benches);
    }

    /// <summary>A batch with the benches on which it finishes, and from when on: what its line of the plan says, else its crop.</summary>
    /// <param name="scenario">The site.</param>
    /// <param name="batch">The batch, its order and crop those of the site.</param>
    public static BatchPlan WithFinish(Scenario scenario, BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(batch);
        var (order, crop) = (batch.Order, batch.Crop);
        var ids = order.Finish.IsDefaultOrEmpty ? crop.Finish : order.Finish;
        var own = order.FinishAt is not null || order.FinishAfterDays is not null;
        var (at, days) = own ? (order.FinishAt, order.FinishAfterDays) : (crop.FinishAt, crop.FinishAfterDays);
        return batch with
        {
            Finish = ids.IsDefaultOrEmpty ? [] : Listed(scenario, SpaceKind.Bench, ids),
            FinishAt = days is null ? at ?? FinishFields.UsualShare : null,
            FinishAfterDays = days,
        };
    }

    /// <summary>Tables: every hardening table, for any crop.</summary>
    /// <param name="scenario">The site.</param>
    /// <returns>Positions in <see cref="Scenario.Spaces"/>, first preference first.</returns>
    public static ImmutableArray<int> Tables(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return Suitable(scenario, SpaceKind.Table, (_, _) => true);
    }

    private static ImmutableArray<int> Suitable(Scenario scenario, SpaceKind kind, Func<Space, House?, bool> suits)
    {
        // By id, so that the time grows with the spaces and the houses and not with their product.
        var houses = scenario.Houses.ToDictionary(house => house.Id, StringComparer.Ordinal);

        // OrderBy is stable: within each half the order of the file stays.
        return
        [
            .. Enumerable
                .Range(0, scenario.Spaces.Length)
                .Where(index => scenario.Spaces[index].Kind == kind && suits(scenario.Spaces[index], HouseOf(index)))
                .OrderBy(index => HouseOf(index)?.Opening == HouseOpening.WhenNeeded),
        ];

        House? HouseOf(int index) => scenario.Spaces[index].HouseId is { } id ? houses.GetValueOrDefault(id) : null;
    }

    private static ImmutableArray<int> Listed(Scenario scenario, SpaceKind kind, ImmutableArray<string> ids)
    {
        var found = ImmutableArray.CreateBuilder<int>(ids.Length);
        foreach (var id in ids)
        {
            for (var index = 0; index < scenario.Spaces.Length; index++)
            {
                if (scenario.Spaces[index].Kind == kind && string.Equals(scenario.Spaces[index].Id, id, StringComparison.Ordinal))
                {
                    found.Add(index);
                }
            }
        }

        return found.ToImmutable();
    }
}
