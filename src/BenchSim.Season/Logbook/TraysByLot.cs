using System.Collections.Immutable;
using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>
/// Trays to be looked at, drawn by lot: whoever chooses them counts bad ones. While as many stand there, the same are drawn: nobody draws
/// again until it suits, and two counts of the same seedlings are of the same trays.
/// </summary>
public sealed record TraysByLot
{
    private const int Most = 3;

    /// <summary>What is counted in them: <see cref="LogKind.Up"/> or <see cref="LogKind.Good"/>.</summary>
    public required LogKind What { get; init; }

    /// <summary>Whether they are flats.</summary>
    public required bool AreFlats { get; init; }

    /// <summary>Their numbers in the order in which they stand, from 1, rising.</summary>
    public required ImmutableArray<int> Numbers { get; init; }

    /// <summary>Seeds, or cells, in them.</summary>
    public required int Among { get; init; }

    /// <summary>Draws of what stands of a batch in a space; null where nothing does.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="batch">Position of the batch.</param>
    /// <param name="space">Position of the space.</param>
    /// <param name="trays">Trays that stand there.</param>
    /// <param name="flats">Open flats that stand there; looked at where no trays do.</param>
    public static TraysByLot? Drawn(SeasonPlan plan, int batch, int space, int trays, int flats)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (order, tray) = (plan.Batches[batch].Order, plan.Batches[batch].Tray);
        var (areFlats, there) = (trays == 0, trays == 0 ? flats : trays);
        if (there == 0)
        {
            return null;
        }

        var numbers = Draw(plan.Scenario.Play.Seed, $"lot/{order.Id}/{plan.Scenario.Spaces[space].Id}", there);

        // On mats seedlings come up; once they are off, it is the cell that has a plant or has none.
        var areSeeds = areFlats || (plan.Batches[batch].Flat is null && plan.Scenario.Spaces[space].Kind == SpaceKind.Mat);
        var each =
            areFlats ? order.SeedsPerFlat
            : areSeeds ? tray.Cells * order.SeedsPerCell
            : tray.Cells;
        return each == 0
            ? null
            : new TraysByLot
            {
                What = areSeeds ? LogKind.Up : LogKind.Good,
                AreFlats = areFlats,
                Numbers = numbers,
                Among = numbers.Length * each,
            };
    }

    /// <summary>Numbers from 1 to as many as there are, each as likely as any other.</summary>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="name">What they are drawn of.</param>
    /// <param name="there">How many there are.</param>
    internal static ImmutableArray<int> Draw(ulong seed, string name, int there)
    {
        var key = PhiloxKey.Of(seed, name);
        return
        [
            .. Enumerable
                .Range(0, there)
                .OrderBy(tray => Philox.Block(new PhiloxBlock((uint)tray, 0, (uint)LuckPurpose.Lot, 0), key).Uniform0)
                .Take(Most)
                .Select(tray => tray + 1)
                .Order(),
        ];
    }
}
