using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>What to do with the trays on the hardening tables on a night of a forecast low.</summary>
public sealed record ColdNight
{
    /// <summary>What the advice keeps in hand below the forecast, kelvin: 3 degrees Fahrenheit.</summary>
    public const double InHandK = 3 / 1.8;

    /// <summary>Lowest temperature of the forecast outdoors, degrees Celsius.</summary>
    public required double LowC { get; init; }

    /// <summary>Trays to cover.</summary>
    public required ImmutableArray<ColdTrays> Cover { get; init; }

    /// <summary>Trays to carry in.</summary>
    public required ImmutableArray<ColdTrays> CarryIn { get; init; }

    /// <summary>Carrying them in and out again, minutes; 0 where none are, or the site gives no time for it.</summary>
    public required double Minutes { get; init; }

    /// <summary>Places that those to be carried in take indoors.</summary>
    public required int Places { get; init; }

    /// <summary>The night of a low, for what stands on the tables by the log.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="ledger">What stands where.</param>
    /// <param name="lowC">Lowest temperature of the forecast outdoors, degrees Celsius.</param>
    /// <param name="correctionK">What one's own thermometer adds to the forecast, kelvin.</param>
    public static ColdNight Of(SeasonPlan plan, BenchLedger ledger, double lowC, double correctionK)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ledger);
        var cover = ImmutableArray.CreateBuilder<ColdTrays>();
        var carry = ImmutableArray.CreateBuilder<ColdTrays>();
        foreach (var trays in OnTables(plan, ledger))
        {
            var crop = plan.Batches[trays.Batch].Crop;
            var night = Where(plan.Scenario, trays.Space, lowC + correctionK - InHandK);
            if (night >= crop.TableAboveC)
            {
                continue;
            }

            var under = WeatherHold.UnderCover(night, plan.Scenario.Rules, crop.TableAboveC);
            (under < crop.DamageBelowC ? carry : cover).Add(trays);
        }

        return new ColdNight
        {
            LowC = lowC,
            Cover = cover.ToImmutable(),
            CarryIn = carry.ToImmutable(),
            Minutes = carry.Sum(trays => trays.Count) * plan.Scenario.Rules.Minutes.CarryIn,
            Places = carry.Sum(trays => trays.Count * plan.Batches[trays.Batch].Tray.PlacesEach),
        };
    }

    /// <summary>The trays that stand on hardening tables, in order of table and batch.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="ledger">What stands where.</param>
    public static IEnumerable<ColdTrays> OnTables(SeasonPlan plan, BenchLedger ledger)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ledger);
        return Enumerable
            .Range(0, plan.Scenario.Spaces.Length)
            .Where(space => plan.Scenario.Spaces[space].Kind == SpaceKind.Table)
            .SelectMany(space => ledger.Batches.Select((book, batch) => new ColdTrays(batch, space, book.Standing(areFlats: false, space))))
            .Where(each => each.Count > 0);
    }

    /// <summary>Free places on the benches of the houses, where trays can be carried in.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="ledger">What stands where.</param>
    /// <param name="today">The day.</param>
    public static int RoomIndoors(SeasonPlan plan, BenchLedger ledger, DateOnly today) =>
        SpaceToday
            .Of(plan, ledger, today)
            .Where(space => space.Space is { Kind: SpaceKind.Bench, HouseId: not null })
            .Sum(space => Math.Max(0, space.Free));

    // A heated house holds its set-point; an unheated one is taken to be as cold as outdoors.
    private static double Where(Scenario scenario, int space, double outdoorsC)
    {
        var house = scenario.Houses.FirstOrDefault(each =>
            string.Equals(each.Id, scenario.Spaces[space].HouseId, StringComparison.Ordinal)
        );
        return house?.NightC is { } set ? Math.Max(set, outdoorsC) : outdoorsC;
    }
}

/// <summary>Trays of a batch on a hardening table.</summary>
/// <param name="Batch">Position of the batch.</param>
/// <param name="Space">Position of the table.</param>
/// <param name="Count">How many.</param>
public readonly record struct ColdTrays(int Batch, int Space, int Count);
