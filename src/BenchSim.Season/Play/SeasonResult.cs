namespace BenchSim.Season.Play;

/// <summary>
/// One played season. All arrays are indexed by position in the scenario (space, batch, grower in order of first appearance in the plan)
/// and day. Reused from season to season by the player that fills it: read it before the next play.
/// </summary>
public sealed class SeasonResult
{
    /// <summary>Days of a week.</summary>
    public const int DaysAWeek = 7;

    /// <summary>Number of the season, from 0.</summary>
    public int Season { get; internal set; }

    /// <summary>Places held just after the round of each day: [space][day].</summary>
    public int[][] Held { get; internal set; } = [];

    /// <summary>Places refused, charged to the first preference: [space][day]. Days without a round repeat the last round.</summary>
    public int[][] Waiting { get; internal set; } = [];

    /// <summary>
    /// The same by who waits, a week at a time. Over all pairs of a space and all days of a week they are the sum of
    /// <see cref="Waiting"/>.
    /// </summary>
    public RefusedPlaces Refused { get; internal set; } = new();

    /// <summary>Places held by a grower's trays: [grower][day].</summary>
    public int[][] HeldByGrower { get; internal set; } = [];

    /// <summary>Tray-days (place-days) by grower and space: [grower][space].</summary>
    public long[][] TrayDays { get; internal set; } = [];

    /// <summary>Batches.</summary>
    public BatchOutcome[] Batches { get; internal set; } = [];

    /// <summary>Trays and flats sown: [day].</summary>
    public int[] Sown { get; internal set; } = [];

    /// <summary>Seeds sown: [day].</summary>
    public long[] SeedsSown { get; internal set; } = [];

    /// <summary>Cells sown, of trays sown directly: [day].</summary>
    public long[] CellsSown { get; internal set; } = [];

    /// <summary>Cells thinned, all those of each tray that is thinned: [day].</summary>
    public long[] CellsThinned { get; internal set; } = [];

    /// <summary>Seedlings potted up: [day].</summary>
    public long[] PlantsPotted { get; internal set; } = [];

    /// <summary>Trays filled by potting up: [day].</summary>
    public int[] Potted { get; internal set; } = [];

    /// <summary>Moves of one tray or flat between spaces: [day].</summary>
    public int[] Moved { get; internal set; } = [];

    /// <summary>Trays set out: [day].</summary>
    public int[] SetOut { get; internal set; } = [];

    /// <summary>Trays carried in for the night after the day: [day].</summary>
    public int[] CarriedIn { get; internal set; } = [];

    /// <summary>
    /// Heat put into each house by day, whole watt-hours: [house][day]. 0 where the house's shell is not given, it is unheated or shut.
    /// </summary>
    public long[][] HeatWattHours { get; internal set; } = [];

    /// <summary>Days each house was open and heated, or would have been, were it heated: [house].</summary>
    public int[] DaysOpen { get; internal set; } = [];

    /// <summary>Days with trays on the mats of each space, its mats switched on: [space]; 0 for other spaces.</summary>
    public int[] MatDays { get; internal set; } = [];

    /// <summary>Uses of each relief in the order of the site's list: trays moved, or tray-days in the aisle.</summary>
    public long[] ReliefUses { get; internal set; } = [];

    /// <summary>Trays and flats that each mishap struck, in the order of the site's list.</summary>
    public long[] MishapTrays { get; internal set; } = [];

    /// <summary>Plants by which mishaps lessened those of the trays that went to the field; of flats nothing is counted.</summary>
    public long PlantsLostToMishaps { get; internal set; }

    /// <summary>True when every batch's last tray was sown in time (docs/model.md section 9).</summary>
    public bool SownInTime { get; internal set; }

    /// <summary>True when no tray was over-held for lack of a place.</summary>
    public bool NoneOverHeldForPlace { get; internal set; }

    /// <summary>Wanted plants out in time over all batches, weather holds excepted.</summary>
    public long PlantsInTime { get; internal set; }

    /// <summary>Wanted plants out in time over all batches, every late day counted.</summary>
    public long PlantsInTimeWeatherCounted { get; internal set; }

    /// <summary>Wanted plants that reached the field, in time or not: the sum over batches of the lesser of wanted and out.</summary>
    public long PlantsOut { get; internal set; }

    /// <summary>True when the season fits, days of weather hold excepted.</summary>
    public bool Fits { get; internal set; }

    /// <summary>True when the season fits with every late day counted.</summary>
    public bool FitsWeatherCounted { get; internal set; }

    /// <summary>
    /// True when at least half of the plants that never reach the field are of batches of which something was thrown out after standing too
    /// long.
    /// </summary>
    public bool IsShortForThrownOut { get; internal set; }

    /// <summary>True when a tray or flat still waits for a place on the last day.</summary>
    public bool Gridlock { get; internal set; }

    /// <summary>
    /// True when a limit of places ever kept anything from what it would have had without one. When false, a play of the same season
    /// without limits
    /// holds the same places on every day.
    /// </summary>
    public bool LimitEverBit { get; internal set; }

    /// <summary>Makes or clears the arrays for a play.</summary>
    internal void Prepare(int spaces, int houses, int batches, int growers, int days, int reliefs, int mishaps)
    {
        Held = Cleared(Held, spaces, days);
        Waiting = Cleared(Waiting, spaces, days);
        Refused.Prepare((days + DaysAWeek - 1) / DaysAWeek);
        HeldByGrower = Cleared(HeldByGrower, growers, days);
        TrayDays = Cleared(TrayDays, growers, spaces);
        Sown = Cleared(Sown, days);
        SeedsSown = Cleared(SeedsSown, days);
        CellsSown = Cleared(CellsSown, days);
        CellsThinned = Cleared(CellsThinned, days);
        PlantsPotted = Cleared(PlantsPotted, days);
        Potted = Cleared(Potted, days);
        Moved = Cleared(Moved, days);
        SetOut = Cleared(SetOut, days);
        CarriedIn = Cleared(CarriedIn, days);
        ReliefUses = Cleared(ReliefUses, reliefs);
        MishapTrays = Cleared(MishapTrays, mishaps);
        PlantsLostToMishaps = 0;
        HeatWattHours = Cleared(HeatWattHours, houses, days);
        DaysOpen = Cleared(DaysOpen, houses);
        MatDays = Cleared(MatDays, spaces);
        Batches = Batches.Length == batches ? Batches : [.. Enumerable.Range(0, batches).Select(_ => new BatchOutcome())];
        foreach (var batch in Batches)
        {
            batch.Clear(spaces);
        }
    }

    /// <summary>A copy that no play changes.</summary>
    internal SeasonResult Copy()
    {
        var copy = (SeasonResult)MemberwiseClone();
        copy.CopyFrom(this);
        return copy;
    }

    /// <summary>Takes over what another has counted, in arrays of its own.</summary>
    internal void CopyFrom(SeasonResult other)
    {
        Held = Copied(other.Held);
        Waiting = Copied(other.Waiting);
        Refused = other.Refused.Copy();
        HeldByGrower = Copied(other.HeldByGrower);
        TrayDays = Copied(other.TrayDays);
        HeatWattHours = Copied(other.HeatWattHours);
        (Sown, Potted, Moved) = ([.. other.Sown], [.. other.Potted], [.. other.Moved]);
        (SeedsSown, CellsSown) = ([.. other.SeedsSown], [.. other.CellsSown]);
        (CellsThinned, PlantsPotted) = ([.. other.CellsThinned], [.. other.PlantsPotted]);
        (SetOut, CarriedIn) = ([.. other.SetOut], [.. other.CarriedIn]);
        (DaysOpen, MatDays, ReliefUses) = ([.. other.DaysOpen], [.. other.MatDays], [.. other.ReliefUses]);
        (MishapTrays, PlantsLostToMishaps) = ([.. other.MishapTrays], other.PlantsLostToMishaps);
        Batches = [.. other.Batches.Select(batch => batch.Copy())];
    }

    private static T[][] Copied<T>(T[][] rows) => [.. rows.Select(row => (T[])[.. row])];

    private static T[] Cleared<T>(T[] row, int length)
    {
        if (row.Length != length)
        {
            return new T[length];
        }

        Array.Clear(row);
        return row;
    }

    private static T[][] Cleared<T>(T[][] rows, int count, int length)
    {
        if (rows.Length != count)
        {
            rows = new T[count][];
        }

        for (var index = 0; index < count; index++)
        {
            rows[index] = Cleared(rows[index] ?? [], length);
        }

        return rows;
    }
}
