using BenchSim.Season.Heat;

namespace BenchSim.Season.Inputs;

/// <summary>When a house is open.</summary>
public enum HouseOpening
{
    /// <summary>From the first day to the last.</summary>
    AllSeason,

    /// <summary>From <see cref="House.OpensOn"/> on.</summary>
    FromDate,

    /// <summary>Usable at any round, but last in every crop's preference; heated only on days it holds trays and the day before.</summary>
    WhenNeeded,
}

/// <summary>A structure with a climate of its own.</summary>
public sealed record House
{
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

    /// <summary>Greatest lift of the sun, kelvin, at noon.</summary>
    public double DayLiftK { get; init; } = 8;

    /// <summary>When it is open.</summary>
    public HouseOpening Opening { get; init; }

    /// <summary>First open day, where <see cref="Opening"/> is <see cref="HouseOpening.FromDate"/>.</summary>
    public DateOnly? OpensOn { get; init; }

    /// <summary>Its shell and heater; null where they are not given, and then no fuel is worked out.</summary>
    public HouseHeat? Heat { get; init; }

    /// <summary>True when it has a heating set-point.</summary>
    public bool IsHeated => NightC.HasValue;

    /// <summary>What makes its air out of the air outdoors.</summary>
    public HouseAir Air => new(NightC, DayC, VentC, DayLiftK);

    /// <summary>
    /// Heat it loses on the coldest night it is given: from the warmer of its set-points, because the coldest hour can fall after the
    /// day's has come into force; null where it is unheated or its shell or that night is not given.
    /// </summary>
    public DesignLoad? Load =>
        NightC is { } night && Heat is { DesignOutdoorC: { } outdoors } heat
            ? DesignLoad.Of(heat.Loss, Math.Max(night, DayC ?? night), outdoors)
            : null;
}
