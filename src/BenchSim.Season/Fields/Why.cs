namespace BenchSim.Season.Fields;

/// <summary>Where a default comes from.</summary>
public static class Why
{
    /// <summary>From nowhere outside.</summary>
    public const string Ours = "choice of this program";

    /// <summary>From nobody's measurement.</summary>
    public const string Assumed = "assumption";

    /// <summary>From how most growers work.</summary>
    public const string Practice = "common practice";
}
