namespace BenchSim.Season.Play;

/// <summary>
/// What became of one batch in one played season. Days count from 0; -1 means it never happened. Reused from season to season by the
/// player that fills it: read it before the next play.
/// </summary>
public sealed class BatchOutcome
{
    /// <summary>Day the first tray or flat was sown.</summary>
    public int SownFirst { get; set; }

    /// <summary>Day the last tray or flat was sown, when all were sown; -1 when some were given up or still wait.</summary>
    public int SownLast { get; set; }

    /// <summary>Day the last tray or flat left the mats.</summary>
    public int OffMat { get; set; }

    /// <summary>Day the last flat was potted up.</summary>
    public int PottedUp { get; set; }

    /// <summary>Day the first tray reached a bench to finish on.</summary>
    public int Finishing { get; set; }

    /// <summary>Day the first tray reached a table.</summary>
    public int OnTable { get; set; }

    /// <summary>Day the first tray went out.</summary>
    public int OutFirst { get; set; }

    /// <summary>Day the median tray of those that went out did so (the smallest day by which at least half of them were out).</summary>
    public int OutMedian { get; set; }

    /// <summary>Day the last tray went out.</summary>
    public int OutLast { get; set; }

    /// <summary>Plants that reached the field.</summary>
    public int PlantsOut { get; set; }

    /// <summary>Wanted plants out in time, days of weather hold excepted; at most the plants wanted.</summary>
    public int PlantsInTime { get; set; }

    /// <summary>Wanted plants out in time, every late day counted; at most <see cref="PlantsInTime"/>.</summary>
    public int PlantsInTimeWeatherCounted { get; set; }

    /// <summary>Wanted plants that never reached the field: wanted less out, not below 0.</summary>
    public int PlantsShort { get; set; }

    /// <summary>
    /// Late plant-days: over the wanted plants, earliest out first, days late less hold days; plants never out are charged to the season's
    /// last day.
    /// </summary>
    public long LatePlantDays { get; set; }

    /// <summary>Whole hours from sowing to field size, summed over the trays that went out.</summary>
    public long GrowingHours { get; set; }

    /// <summary>Trays over-held at any time.</summary>
    public int OverHeld { get; set; }

    /// <summary>Trays over-held for lack of a place: without the days of place refusal since grown they would not have been.</summary>
    public int OverHeldForPlace { get; set; }

    /// <summary>Trays and flats thrown out, by <see cref="DiscardReason"/>.</summary>
    public int[] Discarded { get; private set; } = new int[Enum.GetValues<DiscardReason>().Length];

    /// <summary>Trays or flats given up unsown (surplus flats not counted).</summary>
    public int GivenUp { get; set; }

    /// <summary>Tray-days on which a weather hold was the only failed condition.</summary>
    public long HoldTrayDays { get; set; }

    /// <summary>Tray-days refused a place, by space of first preference.</summary>
    public long[] BlockedTrayDays { get; internal set; } = [];

    /// <summary>Flats sown.</summary>
    public int FlatsSown { get; set; }

    /// <summary>Flats potted up.</summary>
    public int FlatsPotted { get; set; }

    /// <summary>Flats thrown out.</summary>
    public int FlatsDiscarded { get; set; }

    /// <summary>Flats standing on the last day.</summary>
    public int FlatsStanding { get; set; }

    /// <summary>Trays sown (direct) or potted (pot-up).</summary>
    public int TraysStarted { get; set; }

    /// <summary>Trays set out.</summary>
    public int TraysOut { get; set; }

    /// <summary>Trays thrown out.</summary>
    public int TraysDiscarded { get; set; }

    /// <summary>Trays standing on the last day.</summary>
    public int TraysStanding { get; set; }

    internal BatchOutcome Copy()
    {
        var copy = (BatchOutcome)MemberwiseClone();
        copy.Discarded = [.. Discarded];
        copy.BlockedTrayDays = [.. BlockedTrayDays];
        return copy;
    }

    internal void Clear(int spaces)
    {
        SownFirst = SownLast = OffMat = PottedUp = Finishing = OnTable = OutFirst = OutMedian = OutLast = -1;
        PlantsOut = PlantsInTime = PlantsInTimeWeatherCounted = PlantsShort = 0;
        LatePlantDays = HoldTrayDays = GrowingHours = 0;
        OverHeld = OverHeldForPlace = GivenUp = 0;
        Array.Clear(Discarded);
        if (BlockedTrayDays.Length != spaces)
        {
            BlockedTrayDays = new long[spaces];
        }

        Array.Clear(BlockedTrayDays);
        FlatsSown = FlatsPotted = FlatsDiscarded = FlatsStanding = 0;
        TraysStarted = TraysOut = TraysDiscarded = TraysStanding = 0;
    }
}
