namespace BenchSim.Season.Heat;

/// <summary>Heat a house loses on a chosen cold night without sun: what a heater must give.</summary>
/// <param name="Watts">Watts, 0 or more.</param>
/// <param name="InsideC">Temperature kept, degrees Celsius.</param>
/// <param name="OutdoorC">Outdoor temperature of the night, degrees Celsius.</param>
public readonly record struct DesignLoad(double Watts, double InsideC, double OutdoorC)
{
    /// <summary>The load in Btu an hour.</summary>
    public double BtuPerHour => Watts * HeatUnits.BtuPerWattHour;

    /// <summary>To stand beside the figure.</summary>
    public static string Caution => HeatCautions.DesignLoad;

    /// <summary>Loss times difference; 0 when it is warmer outdoors.</summary>
    /// <param name="loss">Loss of the house.</param>
    /// <param name="insideC">Temperature to keep, degrees Celsius.</param>
    /// <param name="outdoorC">Outdoor temperature of the night, degrees Celsius.</param>
    public static DesignLoad Of(HeatLoss loss, double insideC, double outdoorC) =>
        new(loss.WattsPerKelvin * Math.Max(0, insideC - outdoorC), insideC, outdoorC);
}
