using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Air;

/// <summary>Fans, vents and heater that a house of a given size takes, by the rules of the trade.</summary>
public sealed record HouseAirNeed
{
    // Down one side of the house and back on the other.
    private const int Rows = 2;
    private const double MinutesAnHour = 60;

    /// <summary>The house; its <see cref="House.Body"/> is given.</summary>
    public required House House { get; init; }

    /// <summary>Exhaust fans for summer, together, cubic metres an hour.</summary>
    public required AirRange SummerFans { get; init; }

    /// <summary>How often these change the air of the house, times a minute.</summary>
    public required AirRange ChangesAMinute { get; init; }

    /// <summary>Inlets for these, open, square metres.</summary>
    public required AirRange Inlets { get; init; }

    /// <summary>Exhaust fans of the winter stage, together, cubic metres an hour.</summary>
    public required AirRange WinterFans { get; init; }

    /// <summary>Instead of fans: openings of both sides together, and as much again along the ridge, square metres.</summary>
    public required AirRange Vents { get; init; }

    /// <summary>Height to which the sides open for that, rolled up along the whole of both, metres.</summary>
    public required AirRange RollUp { get; init; }

    /// <summary>Circulation fans together, cubic metres an hour.</summary>
    public required double Circulation { get; init; }

    /// <summary>Circulation fans, half of them along each side.</summary>
    public required int CirculationFans { get; init; }

    /// <summary>The heater on the coldest night; null where one of them is not given.</summary>
    public required HeaterNeed? Heater { get; init; }

    /// <summary>What the houses of a site take, those whose size is given, in the order of the file.</summary>
    /// <param name="scenario">The site.</param>
    public static ImmutableArray<HouseAirNeed> Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return [.. scenario.Houses.Where(house => house.Body is not null).Select(Of)];
    }

    /// <summary>What a house takes.</summary>
    /// <param name="house">A house whose size is given.</param>
    public static HouseAirNeed Of(House house)
    {
        ArgumentNullException.ThrowIfNull(house);
        var shell = house.Body?.Shell ?? throw new ArgumentException("The size of the house is not given.", nameof(house));
        var summer = AirRules.SummerFans.Range.Times(shell.FloorM2);
        var vents = AirRules.Vents.Range.Times(shell.FloorM2);
        return new HouseAirNeed
        {
            House = house,
            SummerFans = summer,
            ChangesAMinute = summer.Times(1 / (MinutesAnHour * shell.VolumeM3)),
            Inlets = new AirRange(AirRules.Inlet.Range.Low * summer.Low, AirRules.Inlet.Range.High * summer.High),
            WinterFans = AirRules.WinterFans.Range.Times(shell.FloorM2),
            Vents = vents,
            RollUp = vents.Times(1 / (2 * shell.LengthM)),
            Circulation = AirRules.Circulation.Range.Low * shell.FloorM2,
            CirculationFans = Rows * FansInRow(shell.LengthM),
            Heater = HeaterNeed.Of(house),
        };
    }

    // A hundredth of a millimetre over is not another fan: 100 ft are two spacings of 50 ft.
    private static int FansInRow(double lengthM) =>
        Math.Max(1, (int)Math.Ceiling((lengthM / AirRules.CirculationSpacing.Range.High) - 1e-5));
}
