using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Play;

/// <summary>One batch while a season is played: its fixed figures, its luck of the season, and its lots by where they stand.</summary>
internal sealed class BatchState
{
    public BatchState(BatchPlan plan, int index, int crop, int grower, BatchLuck luck, SiteRules rules, DateOnly opens)
    {
        Plan = plan;
        Index = index;
        CropIndex = crop;
        Grower = grower;
        Luck = luck;
        SowDay = plan.SowOn.DayNumber - opens.DayNumber;
        SetOutDay = plan.SetOutOn.DayNumber - opens.DayNumber;
        TableFromDay = SetOutDay - plan.Crop.HardeningNights - rules.TableLeadDays;
        OutFromDay = SetOutDay - rules.SetOutEarlyDays;
        Mats = [.. plan.Mats];
        Benches = [.. plan.Benches];
        Tables = [.. plan.Tables];
        Finish = [.. plan.Finish];
        Fill = new BinomialCache(plan.Tray.Cells);
        FlatFill = new BinomialCache(plan.Order.SeedsPerFlat);
        var scale = plan.Crop.ReferenceC - plan.Crop.GrowthBaseC;
        GrowthDegreeDays = plan.Crop.GrowthDays * scale;
        PotUpDegreeDays = plan.Crop.PotUpDays * scale;
        CheckUnits = HeatTable.Units(plan.Crop.PotUpCheckDays * scale);
        LeaveSpread = Math.Exp(plan.Crop.EmergeSigma * Engine.Randomness.Normal.Quantile(Math.Clamp(plan.Crop.LeaveMatAt, 1e-9, 1 - 1e-9)));
        EarlySpread = Math.Exp(plan.Crop.EmergeSigma * Engine.Randomness.Normal.Quantile(Math.Clamp(rules.EarlyOffMatAt, 1e-9, 1 - 1e-9)));
    }

    public BatchPlan Plan { get; }

    public int Index { get; }

    public int CropIndex { get; }

    public int Grower { get; }

    public BatchLuck Luck { get; }

    public Crop Crop => Plan.Crop;

    public bool IsPotUp => Plan.Flat is not null;

    /// <summary>Place in the order in which batches are asked: by date in the field, then by sow date, then by id.</summary>
    public int Rank { get; set; }

    public int SowDay { get; set; }

    /// <summary>Day from which a sowing that is due waits for a place, where that is later than its own.</summary>
    public int WaitsFrom { get; set; }

    /// <summary>Days that what is unsown has waited by a day.</summary>
    public int DaysWaited(int day) => day - Math.Max(SowDay, WaitsFrom);

    public int SetOutDay { get; }

    public int TableFromDay { get; }

    public int OutFromDay { get; }

    public int[] Mats { get; }

    /// <summary>Benches on which its trays finish; none for most.</summary>
    public int[] Finish { get; }

    public int[] Benches { get; }

    public int[] Tables { get; }

    public BinomialCache Fill { get; }

    public BinomialCache FlatFill { get; }

    public double GrowthDegreeDays { get; }

    public double PotUpDegreeDays { get; }

    public long CheckUnits { get; }

    public double LeaveSpread { get; }

    public double EarlySpread { get; }

    // The luck of the season.

    /// <summary>Season whose luck was drawn last; -1 before the first.</summary>
    public int SeasonDrawn { get; set; } = -1;

    public long EmergeNeed { get; set; }

    public long LeaveNeed { get; set; }

    public long EarlyNeed { get; set; }

    public long GrowthNeed { get; set; }

    public long PotUpNeed { get; set; }

    public double PacketGermination { get; set; }

    /// <summary>Share of its plants that is lost between emergence and the field.</summary>
    public double StandLoss { get; set; }

    // Where it stands.

    public List<Lot> OnMat { get; } = [];

    public List<Lot> OnBench { get; } = [];

    public List<Lot> OnTable { get; } = [];

    /// <summary>
    /// Whether a lot may do anything but grow or stand its nights, as far as is known. While none may, the steps pass the batch by until
    /// the calendar says
    /// that the first of them is due; only sowings are asked.
    /// </summary>
    public bool IsAwake { get; set; }

    /// <summary>The first night that is not yet counted for its trays on tables, by its day.</summary>
    public int NightsFrom { get; set; }

    /// <summary>Whether it is among the batches that a round asks, or will be from the next one on.</summary>
    public bool IsAsked { get; set; }

    /// <summary>Instant at which the calendar wakes it, hours; infinite when it does not.</summary>
    public double WakesAt { get; set; }

    /// <summary>Whether it is among those that are played.</summary>
    public bool IsPlayed { get; set; } = true;

    /// <summary>
    /// Whether a limit of places, its own refusal or another's, has kept any of it from what it would have had without one.
    /// </summary>
    public bool HasMetLimit { get; set; }

    /// <summary>What it took and left, in order.</summary>
    public List<Holding> Holdings { get; } = [];

    /// <summary>Trays or flats not sown yet.</summary>
    public int Unsown { get; set; }

    /// <summary>Index of the next tray or flat to be sown.</summary>
    public int NextSown { get; set; }

    /// <summary>Unsown trays that only lacked a place at the last round.</summary>
    public int SowWaiting { get; set; }

    /// <summary>Space the waiting sowing is charged to.</summary>
    public int SowWaitingAt { get; set; }

    /// <summary>Day of the latest sowing; -1 before the first.</summary>
    public int LastSown { get; set; }

    /// <summary>Plants out up to now.</summary>
    public int PlantsOut { get; set; }

    /// <summary>Plants out in time up to now, weather excepted.</summary>
    public int PlantsInTime { get; set; }

    /// <summary>Plants out in time up to now, weather counted.</summary>
    public int PlantsInTimeWeatherCounted { get; set; }

    /// <summary>Seedlings passed on from flat to flat.</summary>
    public int Carry { get; set; }

    /// <summary>Trays filled by potting up.</summary>
    public int Filled { get; set; }

    /// <summary>Trays out by day, for the median.</summary>
    public List<(int Day, int Trays)> OutByDay { get; } = [];

    /// <summary>Whether a space is one on which its trays finish.</summary>
    public bool FinishesOn(int space) => Array.IndexOf(Finish, space) >= 0;

    /// <summary>The benches of which a lot stands on one: those to finish on, or the others.</summary>
    public int[] BenchesAround(Lot lot) => FinishesOn(lot.Space) ? Finish : Benches;

    public int PlacesEach(bool flat) => flat ? Plan.Flat!.PlacesEach : Plan.Tray.PlacesEach;

    public int Sowings => IsPotUp ? Plan.Flats : Plan.Trays;

    public bool IsStanding => OnMat.Count + OnBench.Count + OnTable.Count > 0;

    /// <summary>
    /// Whether a round has anything to ask of it: sowings that are due, or a lot that may do anything but grow or stand its nights.
    /// </summary>
    public bool HasToAsk => Unsown > 0 || (IsAwake && IsStanding);

    /// <summary>
    /// The earliest instant at which a lot on mats or benches may do anything but grow, hours: leave the mat, be potted, go to the table,
    /// or be given up,
    /// should it not be up by then. Past for a lot that is due, refused or held.
    /// </summary>
    public double NextDue(double now)
    {
        var next = double.PositiveInfinity;
        foreach (var lot in OnMat)
        {
            next = Math.Min(next, Math.Min(lot.LeaveMatHour, DueOf(lot, now)));
        }

        foreach (var lot in OnBench)
        {
            next = Math.Min(next, DueOf(lot, now));
        }

        return next;
    }

    /// <summary>The earliest instant after now at which a lot anywhere reaches a threshold, hours.</summary>
    public double NextThreshold(double now) =>
        Math.Min(NextThreshold(OnMat, now), Math.Min(NextThreshold(OnBench, now), NextThreshold(OnTable, now)));

    public void Clear()
    {
        Unsown = Sowings;
        (IsAwake, IsAsked, WakesAt, NightsFrom) = (true, false, double.PositiveInfinity, 0);
        NextSown = 0;
        WaitsFrom = 0;
        SowWaiting = 0;
        Carry = 0;
        Filled = 0;
        LastSown = -1;
        PlantsOut = 0;
        PlantsInTime = 0;
        PlantsInTimeWeatherCounted = 0;
        OutByDay.Clear();
        HasMetLimit = false;
        Holdings.Clear();
    }

    private double DueOf(Lot lot, double now)
    {
        var ready = Math.Min(Math.Min(lot.PotHour, lot.FinishHour), lot.GrownHour);
        return lot.EmergedHour <= now ? ready : Math.Min(ready, lot.SowHour + (Crop.EmergeGiveUpDays * 24.0));
    }

    private static double NextThreshold(List<Lot> lots, double now)
    {
        var next = double.PositiveInfinity;
        foreach (var lot in lots)
        {
            ReadOnlySpan<double> hours = [lot.EmergedHour, lot.LeaveMatHour, lot.PotHour, lot.FinishHour, lot.GrownHour, lot.HardenedHour];
            foreach (var hour in hours)
            {
                next = hour > now && hour < next ? hour : next;
            }
        }

        return next;
    }
}
