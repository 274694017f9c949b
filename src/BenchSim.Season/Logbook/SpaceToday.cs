using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>A space as it stands on a day.</summary>
/// <param name="Space">The space.</param>
/// <param name="Trays">Trays on it.</param>
/// <param name="Flats">Flats on it.</param>
/// <param name="Held">Places they take.</param>
/// <param name="Places">Places it has on the day.</param>
public sealed record SpaceToday(Space Space, int Trays, int Flats, int Held, int Places)
{
    /// <summary>Places left; below 0 where more stand there than it has places.</summary>
    public int Free => Places - Held;

    /// <summary>The spaces of a site, in its order.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="ledger">What stands where.</param>
    /// <param name="today">The day.</param>
    public static ImmutableArray<SpaceToday> Of(SeasonPlan plan, BenchLedger ledger, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ledger);
        return [.. plan.Scenario.Spaces.Select((space, index) => Of(plan, ledger, space, index, today))];
    }

    private static SpaceToday Of(SeasonPlan plan, BenchLedger ledger, Space space, int index, DateOnly today)
    {
        var (trays, flats, held) = (0, 0, 0);
        foreach (var (batch, book) in plan.Batches.Zip(ledger.Batches))
        {
            var (hereTrays, hereFlats) = (book.Standing(areFlats: false, index), book.Standing(areFlats: true, index));
            trays += hereTrays;
            flats += hereFlats;
            held += (hereTrays * batch.Tray.PlacesEach) + (hereFlats * (batch.Flat?.PlacesEach ?? 0));
        }

        return new(space, trays, flats, held, SpacePlaces.On(plan.Scenario, index, today));
    }
}
