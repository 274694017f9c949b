namespace BenchSim.Study.Figures;

/// <summary>Something compared between a base and its variants.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="FuelId">Fuel of <see cref="MeasureKind.Fuel"/>; empty for others.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="Unit">Unit shown to people, in the plural; a currency for money, and then it may be empty.</param>
/// <param name="Parts">Whole numbers counted to one unit.</param>
public sealed record Measure(MeasureKind Kind, string FuelId, string Name, string Unit, double Parts)
{
    /// <summary>Name for machines, lower case with underscores.</summary>
    public string Code =>
        Kind switch
        {
            MeasureKind.PlantsInTime => "plants_in_time",
            MeasureKind.LatePlantDays => "late_plant_days",
            MeasureKind.MatPeak => "mat_peak",
            MeasureKind.BenchPeak => "bench_peak",
            MeasureKind.TablePeak => "table_peak",
            MeasureKind.MatTrayDays => "mat_tray_days",
            MeasureKind.BenchTrayDays => "bench_tray_days",
            MeasureKind.MeanHeld => "mean_places_held",
            MeasureKind.LabourHours => "labour_hours",
            MeasureKind.Fuel => $"fuel_{FuelId}",
            MeasureKind.MatPower => "mat_electricity",
            MeasureKind.EnergyCost => "energy_cost",
            MeasureKind.PlantsLate => "plants_late",
            MeasureKind.Flats => "flats",
            MeasureKind.Trays => "trays",
            MeasureKind.MixLitres => "mix_litres",
            MeasureKind.Seeds => "seeds",
            _ => throw new InvalidOperationException("An unknown measure."),
        };
}
