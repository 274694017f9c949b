using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>What crops.csv and plan.csv say alike of trays that finish on other benches.</summary>
public static class FinishFields
{
    /// <summary>Share of growth from which trays go to finish where neither a share nor days are given: an assumption.</summary>
    public const double UsualShare = 0.5;

    /// <summary>The same in words.</summary>
    internal const string UsualWords = "50 %, where finish is given without finish_after_days (assumption)";

    internal static readonly OptionalKind<double> Share = new ShareKind(aboveNone: true, belowAll: true).OrNone("none", takesNone: true);

    internal static readonly OptionalKind<int> Days = new WholeKind(0, 365, "day", isBare: true).OrNone("none", takesNone: true);
}
