namespace BenchSim.Season.Fields;

/// <summary>Where a default comes from.</summary>
internal static class Why
{
    public const string Ours = "choice of this program";
    public const string Assumed = "assumption";
    public const string Practice = "common practice";
}
