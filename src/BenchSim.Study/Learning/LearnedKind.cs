namespace BenchSim.Study.Learning;

/// <summary>A value of a crop that a log teaches.</summary>
public enum LearnedKind
{
    /// <summary>Heat to emergence of half the seedlings, degree-days C.</summary>
    EmergeHeat,

    /// <summary>Germination where the plan gives no packet value, a share.</summary>
    Germination,

    /// <summary>Share of seedlings lost in potting up.</summary>
    PotUpLoss,

    /// <summary>Share of plants lost between emergence and the field.</summary>
    StandLoss,

    /// <summary>Days of growth at the reference temperature, from emergence to field size.</summary>
    GrowthDays,
}
