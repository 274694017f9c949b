using BenchSim.Season.Heat;

namespace BenchSim.Season.Inputs;

/// <summary>When a house is open.</summary>
public enum HouseOpening
{
    /// <summary>From the first day to the last, heated from two days before its first planned tray.</summary>
    AllSeason,

    /// <summary>From <see cref="House.OpensOn"/> on.</summary>
    FromDate,

    /// <summary>Usable at any round, but last in every crop's preference; heated only on days it holds trays and the day before.</summary>
    WhenNeeded,
}

/// <summary>What a house was on the first days of a season.</summary>
/// <param name="House">The house as it was.</param>
/// <param name="Until">First day of the season, 0 its first, on which it is so no more.</param>
public sealed record HouseWas(House House, int Until);

/// <summary>A structure with a climate of its own.</summary>
public sealed record House
{
    /// <summary>Lift of the sun where neither it nor the size of the house is known, kelvin: an assumption.</summary>
    public const double UsualLiftK = 8;

    /// <summary>Id, unique among houses and spaces.</summary>
    public required string Id { get; init; }

    /// <summary>Name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>Heating set-point from 18:00 to 06:00, degrees Celsius; null in an unheated house.</summary>
    public double? NightC { get; init; }

    /// <summary>
    /// Heating set-point from 06:00 to 18:00, degrees Celsius; null in an unheated house. Defaults to <see cref="NightC"/> on reading.
    /// </summary>
    public double? DayC { get; init; }

    /// <summary>Vent set-point, degrees Celsius: the air is not let rise above it unless it is hotter outdoors.</summary>
    public double VentC { get; init; } = 24;

    /// <summary>
    /// Greatest lift of the sun, kelvin, at noon, where it has been measured; null to have it worked out from the size of the house, and
    /// <see cref="UsualLiftK"/> where that cannot be.
    /// </summary>
    public double? DayLiftK { get; init; }

    /// <summary>Rise over outdoors that open vents leave in full sun, kelvin.</summary>
    public double VentedRiseK { get; init; } = 4;

    /// <summary>When it is open.</summary>
    public HouseOpening Opening { get; init; }

    /// <summary>First open day, where <see cref="Opening"/> is <see cref="HouseOpening.FromDate"/>.</summary>
    public DateOnly? OpensOn { get; init; }

    /// <summary>Its size and covering; null where they are not given.</summary>
    public HouseBody? Body { get; init; }

    /// <summary>Its heater; null where none is given, or no size, and then no fuel is worked out.</summary>
    public HouseHeat? Heat { get; init; }

    /// <summary>What it was on the days of a season that are over, where it has been changed since; null for as it is.</summary>
    public HouseWas? Was { get; init; }

    /// <summary>True when it has a heating set-point.</summary>
    public bool IsHeated => NightC.HasValue;

    /// <summary>Whether the sun in it is worked out from its size at a latitude.</summary>
    /// <param name="latitude">Latitude of the site, degrees; null where it is not given.</param>
    public bool HasSunAt(double? latitude) => DayLiftK is null && Body is not null && latitude is not null;

    /// <summary>What makes its air out of the air outdoors.</summary>
    /// <param name="latitude">Latitude of the site, degrees; null where it is not given.</param>
    public HouseAir AirAt(double? latitude)
    {
        var air = HasSunAt(latitude)
            ? new HouseAir(NightC, DayC, VentC, 0, Body!.SunWith(VentedRiseK))
            : new HouseAir(NightC, DayC, VentC, DayLiftK ?? UsualLiftK);
        return Was is { } was ? air with { Was = new AirWas(was.House.AirAt(latitude), was.Until) } : air;
    }

    /// <summary>Watts it loses for each kelvin on a day; 0 where its heater or its shell is not given.</summary>
    /// <param name="day">Day of the season, 0 the first.</param>
    public double WattsPerKelvinOn(int day) =>
        day < Was?.Until ? Was.House.WattsPerKelvinOn(day)
        : Heat is not null && Body is { } body ? body.Loss.WattsPerKelvin
        : 0;

    /// <summary>
    /// Heat it loses on the coldest night it is given: from the warmer of its set-points, because the coldest hour can fall after the
    /// day's has come into force; null where it is unheated or its shell or that night is not given.
    /// </summary>
    public DesignLoad? Load =>
        NightC is { } night && Body is { } body && Heat is { DesignOutdoorC: { } outdoors }
            ? DesignLoad.Of(body.Loss, Math.Max(night, DayC ?? night), outdoors)
            : null;
}
