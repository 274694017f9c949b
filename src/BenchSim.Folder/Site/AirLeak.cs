using BenchSim.Season.Heat;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>How much a house leaks when the user does not say.</summary>
internal static class AirLeak
{
    private static readonly string[] s_filmIds = ["double-poly", "double-poly-ir", "double-poly-curtain"];
    private static readonly string[] s_rigidIds = ["glass", "double-glass", "polycarbonate"];

    /// <summary>The row of the table that fits a covering, and where that comes from; for a covering without a row of its own the leakier
    /// of the two new houses is assumed.</summary>
    /// <param name="covering">Covering; null where only its heat loss is known.</param>
    public static (AirTightness Tightness, Provenance Source) Of(Covering? covering)
    {
        var isFilm = covering is not null && s_filmIds.Contains(covering.Id, StringComparer.Ordinal);
        var isRigid = covering is not null && s_rigidIds.Contains(covering.Id, StringComparer.Ordinal);
        var tightness = Row(isFilm ? "new-film" : "new-rigid");
        var words =
            $"middle of {tightness.Low} to {tightness.High} an hour for a house that is {tightness.Name}: {tightness.Source.Source}";
        return isFilm || isRigid
            ? (tightness, new Provenance(tightness.Source.Trust, words))
            : (tightness, new Provenance(Trust.Assumption, $"no row for this covering; taken as the {words}"));
    }

    private static AirTightness Row(string id) =>
        AirTightnesses.Find(id) ?? throw new InvalidOperationException($"the table of air changes has no row {id}");
}
