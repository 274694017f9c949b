using System.Collections.Immutable;
using BenchSim.Season.Air;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>What would come of it if the heater of a house stopped tonight, for what stands in it by the log.</summary>
public sealed record HeaterOut
{
    // How long nobody may notice, hours.
    private static readonly int[] s_noticedAfter = [1, 2, 4, 8];

    /// <summary>The house; it is heated, and its size is given.</summary>
    public required House House { get; init; }

    /// <summary>Hours until the air in it is at freezing; null where it is not as cold outdoors.</summary>
    public required AirRange? FreezesAfter { get; init; }

    /// <summary>How it stands when it is noticed, the soonest first.</summary>
    public required ImmutableArray<HeaterOutNoticed> Noticed { get; init; }

    /// <summary>The houses in which something stands, in the order of the file.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="ledger">What stands where.</param>
    /// <param name="outdoorC">
    /// Air outdoors, degrees Celsius, all the while: the lowest of the night, so that it comes sooner here than it may.
    /// </param>
    public static ImmutableArray<HeaterOut> Of(SeasonPlan plan, BenchLedger ledger, double outdoorC)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ledger);
        return
        [
            .. plan
                .Scenario.Houses.Where(house => house is { Body: not null, NightC: not null })
                .Select(house => Of(plan, house, StandingIn(plan, ledger, house), outdoorC))
                .OfType<HeaterOut>(),
        ];
    }

    private static HeaterOut? Of(SeasonPlan plan, House house, ImmutableArray<HousePieces> standing, double outdoorC)
    {
        if (standing.IsEmpty)
        {
            return null;
        }

        var (shell, insideC) = (house.Body!.Shell, house.NightC!.Value);
        var contents = AirRules.FloorWattHours.Range.Times(shell.FloorM2);
        var soonest = CoolDown.Of(house.Body.Loss, shell.VolumeM3, contents.Low);
        var latest = CoolDown.Of(house.Body.Loss, shell.VolumeM3, contents.High);
        return new HeaterOut
        {
            House = house,
            FreezesAfter =
                soonest.HoursTo(insideC, outdoorC, HeaterNeed.FreezingC) is { } low
                && latest.HoursTo(insideC, outdoorC, HeaterNeed.FreezingC) is { } high
                    ? new AirRange(low, high)
                    : null,
            Noticed =
            [
                .. s_noticedAfter.Select(hours =>
                {
                    var inside = new AirRange(soonest.InsideAfter(insideC, outdoorC, hours), latest.InsideAfter(insideC, outdoorC, hours));
                    return new HeaterOutNoticed(
                        hours,
                        inside,
                        [.. standing.Where(each => IsHurt(plan, each, inside.High))],
                        [.. standing.Where(each => IsHurt(plan, each, inside.Low) && !IsHurt(plan, each, inside.High))]
                    );
                }),
            ],
        };
    }

    private static bool IsHurt(SeasonPlan plan, HousePieces pieces, double insideC) =>
        insideC < plan.Batches[pieces.Batch].Crop.DamageBelowC;

    private static ImmutableArray<HousePieces> StandingIn(SeasonPlan plan, BenchLedger ledger, House house)
    {
        int[] spaces =
        [
            .. Enumerable
                .Range(0, plan.Scenario.Spaces.Length)
                .Where(space => string.Equals(plan.Scenario.Spaces[space].HouseId, house.Id, StringComparison.Ordinal)),
        ];
        return
        [
            .. ledger
                .Batches.Select(
                    (book, batch) =>
                        new HousePieces(
                            batch,
                            spaces.Sum(space => book.Standing(areFlats: false, space)),
                            spaces.Sum(space => book.Standing(areFlats: true, space))
                        )
                )
                .Where(pieces => pieces.Trays + pieces.Flats > 0),
        ];
    }
}

/// <summary>A house whose heater has stopped, when somebody notices.</summary>
/// <param name="Hours">Hours after the stop.</param>
/// <param name="InsideC">Air inside, degrees Celsius: from that of a house that holds no warmth to that of one with a damp floor.</param>
/// <param name="Hurt">What is colder than it bears, however the house cools.</param>
/// <param name="Perhaps">What is so in a house that cools fast, and not in one that cools slowly.</param>
public sealed record HeaterOutNoticed(int Hours, AirRange InsideC, ImmutableArray<HousePieces> Hurt, ImmutableArray<HousePieces> Perhaps);

/// <summary>What stands of a batch in a house.</summary>
/// <param name="Batch">Position of the batch.</param>
/// <param name="Trays">Trays.</param>
/// <param name="Flats">Flats.</param>
public readonly record struct HousePieces(int Batch, int Trays, int Flats);
