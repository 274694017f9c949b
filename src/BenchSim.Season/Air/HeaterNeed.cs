using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Air;

/// <summary>The heater of a house on its coldest night.</summary>
public sealed record HeaterNeed
{
    /// <summary>Temperature at which plants freeze, degrees Celsius. Tender crops are hurt by cold before that.</summary>
    public const double FreezingC = 0;

    /// <summary>Heat lost on that night.</summary>
    public required DesignLoad Load { get; init; }

    /// <summary>Heat lost for each kelvin, watts.</summary>
    public required double WattsPerKelvin { get; init; }

    /// <summary>Output that a heater should have, margin and all, watts.</summary>
    public required AirRange Wanted { get; init; }

    /// <summary>Output of the heaters there, watts; null where it is not given.</summary>
    public required double? OutputW { get; init; }

    /// <summary>Hours from the stop of the heater until the air is at freezing; null where it is not as cold outdoors.</summary>
    public required AirRange? FreezesAfter { get; init; }

    /// <summary>Whether the heaters keep the house warm on that night; null where their output is not given.</summary>
    public bool? Carries => OutputW is { } watts ? watts >= Load.Watts : null;

    /// <summary>Coldest air outdoors against which they hold the house, degrees Celsius; null where their output is not given.</summary>
    public double? HoldsToC => OutputW is { } watts ? Load.InsideC - (watts / WattsPerKelvin) : null;

    /// <summary>The heater of a house; null where the house has no size, no heater or no coldest night.</summary>
    /// <param name="house">The house.</param>
    public static HeaterNeed? Of(House house)
    {
        ArgumentNullException.ThrowIfNull(house);
        if (house is not { Load: { } load, Body: { } body, Heat: { } heat })
        {
            return null;
        }

        return new HeaterNeed
        {
            Load = load,
            WattsPerKelvin = body.Loss.WattsPerKelvin,
            Wanted = AirRules.HeaterOverLoss.Range.Times(load.Watts),
            OutputW = heat.OutputW,
            FreezesAfter = FreezesAfterOf(body, load),
        };
    }

    private static AirRange? FreezesAfterOf(HouseBody body, DesignLoad load)
    {
        var contents = AirRules.FloorWattHours.Range.Times(body.Shell.FloorM2);
        return Hours(contents.Low) is { } soonest && Hours(contents.High) is { } latest ? new AirRange(soonest, latest) : null;

        double? Hours(double wattHours) =>
            CoolDown.Of(body.Loss, body.Shell.VolumeM3, wattHours).HoursTo(load.InsideC, load.OutdoorC, FreezingC);
    }
}
