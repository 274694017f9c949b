namespace BenchSim.Study.Levelling;

/// <summary>What came of levelling.</summary>
public enum LevelVerdict
{
    /// <summary>No sowing has another day it may be sown on.</summary>
    NothingMayMove,

    /// <summary>The expected trays have room as planned.</summary>
    NothingIsOver,

    /// <summary>No move within the tolerances leaves fewer trays without a place.</summary>
    NothingHelps,

    /// <summary>The levelled plan is better beyond its interval, and nothing that counts is worse: adopt it.</summary>
    Adopt,

    /// <summary>The play does not show that the levelled plan is better: keep the plan as it is.</summary>
    Keep,
}
