namespace BenchSim.Study.Invest;

/// <summary>What a variant saves or costs in a season.</summary>
public enum MoneyKind
{
    /// <summary>Wanted plants in time, days of weather hold excepted.</summary>
    Plants,

    /// <summary>Hours of work.</summary>
    Labour,

    /// <summary>Fuel of the houses.</summary>
    Fuel,

    /// <summary>Electricity of the heat mats.</summary>
    MatPower,

    /// <summary>Potting mix.</summary>
    Mix,

    /// <summary>Seed.</summary>
    Seed,
}
