using System.Collections.Immutable;

namespace BenchSim.Season.Play;

/// <summary>
/// A season as it stands before the work of a day: what is sown, what stands where and with which past, and what has been counted so far.
/// The rest of
/// the season can be played from it. One is taken of a season that is played (<see cref="SeasonView.Capture"/>), or made of what is seen on
/// the benches.
/// </summary>
public sealed record SeasonStart
{
    /// <summary>The first day that is still to be played, 0 the first of the season.</summary>
    public required int Day { get; init; }

    /// <summary>Instant of the last round, hours from the midnight that opens day 0; -1 when there was none.</summary>
    public double LastRoundHour { get; init; } = -1;

    /// <summary>Batches in the order of the plan.</summary>
    public required ImmutableArray<BatchStart> Batches { get; init; }

    /// <summary>What has been counted of the days before; null for nothing.</summary>
    public SeasonResult? Counted { get; init; }
}

/// <summary>A batch as it stands before the work of a day.</summary>
public sealed record BatchStart
{
    /// <summary>Trays or flats still to be sown.</summary>
    public required int Unsown { get; init; }

    /// <summary>Trays or flats sown so far: the index, from 0, of the next one.</summary>
    public required int Sown { get; init; }

    /// <summary>Day of the latest sowing; -1 before the first.</summary>
    public int LastSown { get; init; } = -1;

    /// <summary>Sowings that lacked a place at the last round, and only that.</summary>
    public int Waiting { get; init; }

    /// <summary>Position of the space whose places they lacked.</summary>
    public int WaitingAt { get; init; }

    /// <summary>Seedlings that were passed on from flat to flat.</summary>
    public int Carry { get; init; }

    /// <summary>Trays filled by potting up so far.</summary>
    public int Filled { get; init; }

    /// <summary>Plants out so far.</summary>
    public int PlantsOut { get; init; }

    /// <summary>Those of them out in time, days of weather hold excepted.</summary>
    public int PlantsInTime { get; init; }

    /// <summary>Those of them out in time, every late day counted.</summary>
    public int PlantsInTimeWeatherCounted { get; init; }

    /// <summary>Trays that went out, by day, in order.</summary>
    public ImmutableArray<(int Day, int Trays)> OutByDay { get; init; } = [];

    /// <summary>Its lots that stand somewhere.</summary>
    public required ImmutableArray<LotStart> Lots { get; init; }
}

/// <summary>
/// Trays or flats of one batch that stand in one space and share their past. Heats in millionths of a degree-day up to the midnight that
/// opens the day;
/// instants in hours from the midnight that opens day 0, null where they are still to come.
/// </summary>
public sealed record LotStart
{
    /// <summary>Whether they are flats.</summary>
    public bool IsFlat { get; init; }

    /// <summary>Lowest index, from 0.</summary>
    public required int First { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>Position of the space.</summary>
    public required int Space { get; init; }

    /// <summary>Instant of sowing.</summary>
    public required double SowHour { get; init; }

    /// <summary>Instant since which they stand in the space: who came first goes first.</summary>
    public required double EntryHour { get; init; }

    /// <summary>Heat of emergence so far.</summary>
    public long EmergenceHeat { get; init; }

    /// <summary>Sum of the medium's temperature above -100 C so far, until they are up.</summary>
    public long TemperatureSum { get; init; }

    /// <summary>Instant at which half the coming seedlings were up.</summary>
    public double? UpHour { get; init; }

    /// <summary>Instant at which enough were up to leave the mat.</summary>
    public double? LeaveMatHour { get; init; }

    /// <summary>Mean temperature of the medium from sowing until they were up, degrees Celsius; null where they are not up.</summary>
    public double? PathMeanC { get; init; }

    /// <summary>Heat of growth so far.</summary>
    public long GrowthHeat { get; init; }

    /// <summary>Instant at which flats were ready to pot.</summary>
    public double? PotHour { get; init; }

    /// <summary>Instant at which trays were filled by potting up; null where they were sown directly.</summary>
    public double? PottedHour { get; init; }

    /// <summary>Instant from which they may go to finish on other benches.</summary>
    public double? FinishHour { get; init; }

    /// <summary>Instant at which trays were grown.</summary>
    public double? GrownHour { get; init; }

    /// <summary>Nights on the table.</summary>
    public int Nights { get; init; }

    /// <summary>Those of them that counted.</summary>
    public int NightsCounted { get; init; }

    /// <summary>Days on which the weather alone kept them.</summary>
    public int HoldDays { get; init; }

    /// <summary>Days since they were grown on which they lacked a place, and only that.</summary>
    public int PlaceDays { get; init; }

    /// <summary>What kept them at the last round.</summary>
    public Hindrance Hindrance { get; init; }

    /// <summary>Places each was refused, where it lacked them.</summary>
    public int PlacesRefused { get; init; }

    /// <summary>Share of its plants that mishaps have left.</summary>
    public double Spared { get; init; } = 1;

    /// <summary>Plants of a tray that was not filled; 0 for full trays.</summary>
    public int PottedPlants { get; init; }
}
