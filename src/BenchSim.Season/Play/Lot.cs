namespace BenchSim.Season.Play;

/// <summary>What kept a tray from moving at the last round, as far as it counts.</summary>
public enum Hindrance
{
    /// <summary>Nothing that counts: not ready, not yet the date, no labour, or it moved.</summary>
    None,

    /// <summary>Only a place was lacking.</summary>
    Place,

    /// <summary>Only the weather was against it.</summary>
    Hold,
}

/// <summary>
/// Trays of one batch that stand in the same space and share their past: a run of indices, so that the lowest move first. Heats are banked
/// when the lot moves; within a stay they are looked up. Instants are hours from the midnight that opens day 0.
/// </summary>
internal sealed class Lot
{
    public bool IsFlat { get; set; }

    /// <summary>Lowest index in the lot, from 0.</summary>
    public int First { get; set; }

    public int Count { get; set; }

    public int Space { get; set; }

    public double SowHour { get; set; }

    public double EntryHour { get; set; }

    /// <summary>Instant up to which its heats are banked: of its entry, or of the dawn from which a season is played on.</summary>
    public double BankedHour { get; set; }

    /// <summary>Heat of emergence up to then, in units of the heat table.</summary>
    public long EmergenceHeat { get; set; }

    /// <summary>Sum of the medium's temperature up to then, in units of the heat table, shifted.</summary>
    public long TemperatureSum { get; set; }

    /// <summary>Instant at which half the coming seedlings are up, should it stay; known for good once past.</summary>
    public double EmergedHour { get; set; }

    /// <summary>Instant at which enough are up to leave the mat, should it stay.</summary>
    public double LeaveMatHour { get; set; }

    /// <summary>Mean temperature of the medium along the path to emergence, degrees Celsius; not-a-number until banked.</summary>
    public double PathMeanC { get; set; }

    /// <summary>Heat of growth from emergence up to then.</summary>
    public long GrowthHeat { get; set; }

    /// <summary>Heat of growth it needs in all.</summary>
    public long GrowthNeed { get; set; }

    public double PotHour { get; set; }

    /// <summary>Instant from which it may go to finish, should it stay; infinite where it finishes already, or nowhere.</summary>
    public double FinishHour { get; set; }

    public double GrownHour { get; set; }

    /// <summary>Instant at which it was filled by potting up; not-a-number where it was sown directly.</summary>
    public double PottedHour { get; set; }

    /// <summary>Instant of leaving the table where stays are given from outside; not used otherwise.</summary>
    public double HardenedHour { get; set; }

    /// <summary>Nights on the table.</summary>
    public int Nights { get; set; }

    public int NightsCounted { get; set; }

    /// <summary>Days on which the weather was the only hindrance.</summary>
    public int HoldDays { get; set; }

    /// <summary>Days of place refusal since grown.</summary>
    public int PlaceDays { get; set; }

    public Hindrance Hindrance { get; set; }

    /// <summary>Places it was refused, each tray.</summary>
    public int PlacesRefused { get; set; }

    /// <summary>Number of the round in which it last moved.</summary>
    public int MovedRound { get; set; }

    /// <summary>Day on which it left a mat; -1 where it never stood on one, or still does.</summary>
    public int OffMatDay { get; set; } = -1;

    /// <summary>A plants-a-tray figure fixed at potting up for one lot of potted trays; 0 means full trays.</summary>
    public int PottedPlants { get; set; }

    /// <summary>Share of its plants that mishaps have left, 0 to 1.</summary>
    public double Spared { get; set; } = 1;

    /// <summary>Makes it a lot without a past.</summary>
    public void Clear()
    {
        (EmergenceHeat, TemperatureSum, GrowthHeat) = (0, 0, 0);
        EmergedHour = LeaveMatHour = PotHour = FinishHour = GrownHour = HardenedHour = double.PositiveInfinity;
        PathMeanC = PottedHour = double.NaN;
        (Nights, NightsCounted, HoldDays, PlaceDays, PlacesRefused, PottedPlants) = (0, 0, 0, 0, 0, 0);
        OffMatDay = -1;
        Spared = 1;
    }

    public void CopyFrom(Lot other)
    {
        IsFlat = other.IsFlat;
        First = other.First;
        Count = other.Count;
        Space = other.Space;
        SowHour = other.SowHour;
        EntryHour = other.EntryHour;
        BankedHour = other.BankedHour;
        EmergenceHeat = other.EmergenceHeat;
        TemperatureSum = other.TemperatureSum;
        EmergedHour = other.EmergedHour;
        LeaveMatHour = other.LeaveMatHour;
        PathMeanC = other.PathMeanC;
        GrowthHeat = other.GrowthHeat;
        GrowthNeed = other.GrowthNeed;
        PotHour = other.PotHour;
        FinishHour = other.FinishHour;
        GrownHour = other.GrownHour;
        PottedHour = other.PottedHour;
        HardenedHour = other.HardenedHour;
        Nights = other.Nights;
        NightsCounted = other.NightsCounted;
        HoldDays = other.HoldDays;
        PlaceDays = other.PlaceDays;
        Hindrance = other.Hindrance;
        PlacesRefused = other.PlacesRefused;
        MovedRound = other.MovedRound;
        OffMatDay = other.OffMatDay;
        PottedPlants = other.PottedPlants;
        Spared = other.Spared;
    }

    /// <summary>Whether two lots differ in nothing but their indices, so that they may be one.</summary>
    public bool SharesPast(Lot other) =>
        IsFlat == other.IsFlat
        && Space == other.Space
        && SowHour.Equals(other.SowHour)
        && EntryHour.Equals(other.EntryHour)
        && EmergenceHeat == other.EmergenceHeat
        && TemperatureSum == other.TemperatureSum
        && EmergedHour.Equals(other.EmergedHour)
        && LeaveMatHour.Equals(other.LeaveMatHour)
        && PotHour.Equals(other.PotHour)
        && FinishHour.Equals(other.FinishHour)
        && GrownHour.Equals(other.GrownHour)
        && PottedHour.Equals(other.PottedHour)
        && PathMeanC.Equals(other.PathMeanC)
        && GrowthHeat == other.GrowthHeat
        && GrowthNeed == other.GrowthNeed
        && Nights == other.Nights
        && NightsCounted == other.NightsCounted
        && HoldDays == other.HoldDays
        && PlaceDays == other.PlaceDays
        && Hindrance == other.Hindrance
        && PlacesRefused == other.PlacesRefused
        && MovedRound == other.MovedRound
        && OffMatDay == other.OffMatDay
        && PottedPlants == other.PottedPlants
        && Spared.Equals(other.Spared);
}
