using BenchSim.Season.Heat;
using BenchSim.Season.Values;

namespace BenchSim.Season.Air;

/// <summary>
/// Rules by which fans, vents and heaters are sized (docs/air.md, tests/Published/data/air_checks.csv). One that is from memory says so.
/// </summary>
public static class AirRules
{
    /// <summary>Cubic metres an hour in a cubic foot a minute.</summary>
    public const double AnHourOfCfm = 60 * CubicFoot;

    private const double Foot = 0.3048;
    private const double CubicFoot = Foot * Foot * Foot;

    // Cubic metres an hour and square metre of floor in one cubic foot a minute and square foot.
    private const double RateOfCfm = 60 * Foot;

    /// <summary>Exhaust fans for summer, cubic metres an hour for each square metre of floor.</summary>
    public static AirRule SummerFans { get; } =
        new(
            new AirRange(8, 10).Times(RateOfCfm),
            new Provenance(Trust.Seen, "Univ. of Massachusetts Extension, Natural ventilation in greenhouses: 8 to 10 cfm a square foot")
        );

    /// <summary>Exhaust fans of the winter stage, cubic metres an hour for each square metre of floor.</summary>
    public static AirRule WinterFans { get; } =
        new(new AirRange(1.5, 2).Times(RateOfCfm), new Provenance(Trust.Memory, "a fifth to a quarter of the summer rate, from memory"));

    /// <summary>Open inlet for exhaust fans, square metres for each cubic metre an hour.</summary>
    public static AirRule Inlet { get; } =
        new(
            new AirRange(1.25, 1.5).Times(Foot * Foot / (1000 * AnHourOfCfm)),
            new Provenance(Trust.Memory, "1.25 to 1.5 square feet for 1,000 cfm, from memory")
        );

    /// <summary>Openings of the sides together, and those of the roof together, as a share of the floor.</summary>
    public static AirRule Vents { get; } =
        new(
            new AirRange(0.15, 0.2),
            new Provenance(
                Trust.Seen,
                "American Society of Agricultural and Biological Engineers, as trade journals of 2014 and 2015 quote its standard"
            )
        );

    /// <summary>Circulation fans together, cubic metres an hour for each square metre of floor.</summary>
    public static AirRule Circulation { get; } =
        new(
            new AirRange(2, 2).Times(RateOfCfm),
            new Provenance(Trust.CommonPractice, "2 cfm a square foot, after trials in greenhouses and smoke bombs")
        );

    /// <summary>From one circulation fan of a row to the next, metres.</summary>
    public static AirRule CirculationSpacing { get; } =
        new(
            new AirRange(40, 50).Times(Foot),
            new Provenance(Trust.CommonPractice, "40 to 50 ft; gives the four fans that the Univ. of Connecticut puts in 30 x 100 ft")
        );

    /// <summary>Output of a heater over the heat that is lost on the coldest night.</summary>
    public static AirRule HeaterOverLoss { get; } =
        new(
            new AirRange(1.1, 1.25),
            new Provenance(Trust.CommonPractice, "10 to 25 % on top; an extension engineer's house of 30 x 96 ft had 19 %")
        );

    /// <summary>Heat that a floor gives for each kelvin, watt-hours a square metre.</summary>
    public static AirRule FloorWattHours { get; } =
        new(
            new AirRange(0, 5 * HeatUnits.UValueOfBtu),
            new Provenance(Trust.Assumption, "from nothing but the air to the top two inches of a damp floor, 30 Btu a cubic foot and F")
        );
}
