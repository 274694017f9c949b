namespace BenchSim.Study.Invest;

/// <summary>Inputs of a money case that can be varied one at a time.</summary>
public enum InvestInput
{
    /// <summary>Capital, money.</summary>
    Capital,

    /// <summary>Life, whole years.</summary>
    Life,

    /// <summary>Discount rate, fraction a year.</summary>
    DiscountRate,

    /// <summary>What is lost with a plant not in time that is not replaced, money.</summary>
    PlantOnTime,

    /// <summary>Share of the plants not in time that are bought in.</summary>
    BoughtInShare,

    /// <summary>Price of a plant bought in, money.</summary>
    BoughtInPrice,

    /// <summary>Upkeep, money a year.</summary>
    Upkeep,

    /// <summary>Worth at the end, money.</summary>
    Residual,

    /// <summary>Price of an hour of work, money.</summary>
    LabourPrice,

    /// <summary>Prices of fuel, as a multiple of those given.</summary>
    FuelPrice,

    /// <summary>Prices of the mats' electricity, as a multiple of those given.</summary>
    PowerPrice,

    /// <summary>Price of a litre of potting mix, money.</summary>
    MixPrice,

    /// <summary>Prices of seed, as a multiple of those given.</summary>
    SeedPrice,
}
