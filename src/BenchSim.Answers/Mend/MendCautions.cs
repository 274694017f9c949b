using BenchSim.Answers.Words;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Mend;

/// <summary>What must be said beside changes that could hurt someone.</summary>
internal static class MendCautions
{
    private const string Bench = "Trays of wet mix are heavy: build benches and tables to carry them, and keep walkways and exits clear.";

    private const string Cover = "Fasten a row cover against wind, and take it off by day: it gets hot under it in the sun.";

    /// <summary>The cautions of some changes.</summary>
    public static IEnumerable<string> Of(IEnumerable<MendChange> changes)
    {
        MendChange[] all = [.. changes];
        if (all.Any(change => change is PlacesChange { Space.Kind: SpaceKind.Mat }))
        {
            yield return "Heat mats: " + HeatCautions.Mats;
        }

        if (all.Any(change => change is PlacesChange { Space.Kind: not SpaceKind.Mat }))
        {
            yield return Bench;
        }

        if (all.Any(change => change is SetPointChange or OpeningChange))
        {
            yield return "Fuel: " + HeatCautions.Fuel;
        }

        if (all.Any(change => change is CoverChange))
        {
            yield return Cover;
        }

        if (all.Any(change => change is ReliefChange { Relief: Relief.Aisle }))
        {
            yield return Rooms.Aisle;
        }
    }
}
