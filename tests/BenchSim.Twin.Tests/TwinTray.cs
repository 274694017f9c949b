namespace BenchSim.Twin.Tests;

/// <summary>What has become of a tray or flat.</summary>
internal enum TrayFate
{
    /// <summary>Not sown yet.</summary>
    Unsown,

    /// <summary>Stands in a space.</summary>
    Standing,

    /// <summary>A flat that has been potted up.</summary>
    PottedUp,

    /// <summary>Out in the field.</summary>
    Out,

    /// <summary>Thrown out.</summary>
    ThrownOut,

    /// <summary>Given up unsown.</summary>
    GivenUp,

    /// <summary>A flat not needed any more before it was sown.</summary>
    Dropped,
}

/// <summary>One tray or flat with a past of its own. Instants in hours, heat in millionths of a degree-day.</summary>
internal sealed class TwinTray(TwinBatch batch, bool isFlat, int index)
{
    public TwinBatch Batch => batch;

    public bool IsFlat => isFlat;

    public int Index => index;

    public TrayFate Fate { get; set; }

    public int Space { get; private set; } = -1;

    public double Entered { get; private set; }

    public int SownDay { get; private set; }

    /// <summary>Instant of sowing.</summary>
    public double SownHour { get; set; }

    /// <summary>Day on which it left a mat before the season is played; 0 where it did not.</summary>
    public int LeftMat { get; set; }

    /// <summary>Instant at which half of the coming seedlings are up; endless until then.</summary>
    public double Emerged { get; private set; } = double.PositiveInfinity;

    /// <summary>Instant at which a tray is of field size, or a flat at its pot-up stage; endless until then.</summary>
    public double Grown { get; private set; } = double.PositiveInfinity;

    /// <summary>Instant at which a tray was filled from a flat; not a number for one that was sown.</summary>
    public double Filled { get; private set; } = double.NaN;

    /// <summary>Mean temperature of the medium from sowing to emergence.</summary>
    public double MeanMedium { get; private set; }

    /// <summary>Seedlings potted into a tray of a pot-up batch.</summary>
    public int Seedlings { get; set; }

    /// <summary>Share of the plants that mishaps have left.</summary>
    public double Left { get; set; } = 1;

    public bool IsThinned { get; set; }

    public int OutDay { get; set; } = -1;

    public int Plants { get; set; }

    public int NightsStood { get; set; }

    public int NightsCounted { get; set; }

    public int HoldDays { get; set; }

    public int RefusedDaysSinceGrown { get; set; }

    public bool MovedThisRound { get; set; }

    /// <summary>Refused a place at the last round: the space charged, or -1.</summary>
    public int RefusedBy { get; set; } = -1;

    /// <summary>Trays that were refused: 1, or all the trays of a flat.</summary>
    public int RefusedTrays { get; set; }

    /// <summary>True for a flat that was refused the places of the trays it fills.</summary>
    public bool RefusedAsTrays { get; set; }

    /// <summary>At the last round the weather was the only hindrance.</summary>
    public bool Held { get; set; }

    public int PlacesEach => isFlat ? batch.Plan.Flat!.PlacesEach : batch.Plan.Tray.PlacesEach;

    /// <summary>Whole hours from sowing to field size.</summary>
    public long GrowingHours => (long)Math.Floor(Grown - SownHour);

    private double HeatBefore { get; set; }

    private double MediumBefore { get; set; }

    private double GrowthBefore { get; set; }

    private double GrowthNeeded => isFlat ? batch.FlatGrowth : batch.TrayGrowth;

    public void Sow(int space, double now, int day)
    {
        (Fate, Space, Entered, SownHour, SownDay, MovedThisRound) = (TrayFate.Standing, space, now, now, day, true);
    }

    /// <summary>A tray that is filled from a flat takes the flat's past.</summary>
    public void FillFrom(TwinTray flat, int space, double now)
    {
        (Fate, Space, Entered, SownHour, SownDay, MovedThisRound) = (TrayFate.Standing, space, now, flat.SownHour, flat.SownDay, true);
        (HeatBefore, MediumBefore, GrowthBefore) = (flat.HeatAt(now), flat.MediumAt(now), flat.GrowthAt(now));
        (Emerged, MeanMedium, Filled) = (flat.Emerged, flat.MeanMedium, now);
        Look(now);
    }

    public void MoveTo(int space, double now)
    {
        (HeatBefore, MediumBefore, GrowthBefore) = (HeatAt(now), MediumAt(now), GrowthAt(now));
        (Space, Entered, MovedThisRound) = (space, now, true);
    }

    /// <summary>Sees whether it has come up or grown since it was last looked at.</summary>
    public void Look(double now)
    {
        var climate = batch.Climate;
        if (double.IsInfinity(Emerged) && HeatAt(now) >= batch.HeatAtFraction(0.5))
        {
            Emerged = climate.Warmth(Space, batch.Crop).Reaches(Entered, now, batch.HeatAtFraction(0.5) - HeatBefore);
            MeanMedium = Emerged > SownHour ? MediumAt(Emerged) / 1e6 / ((Emerged - SownHour) / 24) : 0;
        }

        if (double.IsInfinity(Grown) && GrowthAt(now) >= GrowthNeeded)
        {
            Grown = climate.Growth(Space, batch.Crop).Reaches(Math.Max(Entered, Emerged), now, GrowthNeeded - GrowthBefore);
        }
    }

    /// <summary>It went to the field, so it is up and grown by then.</summary>
    public void Finish(double now)
    {
        if (Emerged > now)
        {
            Emerged = now;
            MeanMedium = now > SownHour ? MediumAt(now) / 1e6 / ((now - SownHour) / 24) : batch.Crop.GerminateAtC;
        }

        Grown = Math.Min(Grown, now);
    }

    /// <summary>True when a fraction of the coming seedlings is up.</summary>
    public bool IsUp(double fraction, double now) => HeatAt(now) >= batch.HeatAtFraction(fraction);

    /// <summary>True when it has grown a fraction of what it must.</summary>
    public bool HasGrown(double fraction, double now) => Emerged <= now && GrowthAt(now) >= fraction * GrowthNeeded;

    private double HeatAt(double now) =>
        HeatBefore + batch.Climate.Warmth(Space, batch.Crop).At(now) - batch.Climate.Warmth(Space, batch.Crop).At(Entered);

    private double MediumAt(double now) => MediumBefore + batch.Climate.Medium(Space).At(now) - batch.Climate.Medium(Space).At(Entered);

    private double GrowthAt(double now)
    {
        if (Emerged > now)
        {
            return 0;
        }

        var sum = batch.Climate.Growth(Space, batch.Crop);
        return GrowthBefore + sum.At(now) - sum.At(Math.Max(Entered, Emerged));
    }
}
