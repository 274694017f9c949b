namespace BenchSim.Season.Doubt;

/// <summary>What a doubtful value is about: values that one would look into together.</summary>
public enum DoubtGroup
{
    /// <summary>When seed comes up.</summary>
    ComingUp,

    /// <summary>How much of the seed comes up.</summary>
    Germination,

    /// <summary>How fast plants grow.</summary>
    Growth,

    /// <summary>Potting up.</summary>
    PottingUp,

    /// <summary>Plants lost before the field.</summary>
    Losses,

    /// <summary>How warm a house is.</summary>
    Houses,

    /// <summary>How warm mix and covered nights are.</summary>
    Covers,
}
