namespace BenchSim.Study.Figures;

/// <summary>What is compared between a base and its variants, one number a season.</summary>
public enum MeasureKind
{
    /// <summary>Wanted plants out in time, days of weather hold excepted.</summary>
    PlantsInTime,

    /// <summary>Late plant-days.</summary>
    LatePlantDays,

    /// <summary>Most places held on any day on all heat mats together.</summary>
    MatPeak,

    /// <summary>Most places held on any day on all benches together.</summary>
    BenchPeak,

    /// <summary>Most places held on any day on all hardening tables together.</summary>
    TablePeak,

    /// <summary>Tray-days on heat mats: the sum over days of places held.</summary>
    MatTrayDays,

    /// <summary>Tray-days on benches.</summary>
    BenchTrayDays,

    /// <summary>Places held, mean over the days played, in all spaces together.</summary>
    MeanHeld,

    /// <summary>Hours of work.</summary>
    LabourHours,

    /// <summary>Fuel of one kind in all houses, in the unit it is bought by.</summary>
    Fuel,

    /// <summary>Electricity of heat mats, kilowatt-hours.</summary>
    MatPower,

    /// <summary>Cost of fuel and of the mats' electricity, in the user's money.</summary>
    EnergyCost,

    /// <summary>Wanted plants not out in time, days of weather hold excepted.</summary>
    PlantsLate,

    /// <summary>Open flats sown.</summary>
    Flats,

    /// <summary>Trays sown or potted.</summary>
    Trays,

    /// <summary>Potting mix, litres.</summary>
    MixLitres,

    /// <summary>Seeds sown.</summary>
    Seeds,
}
