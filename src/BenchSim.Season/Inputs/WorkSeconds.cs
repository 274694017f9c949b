using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>Work seconds a seed, cell or plant, beside the minutes a tray; 0 where they are not counted.</summary>
public sealed record WorkSeconds
{
    /// <summary>Sowing one seed, seconds.</summary>
    public double SowSeed { get; init; }

    /// <summary>Sowing one cell, seconds.</summary>
    public double SowCell { get; init; }

    /// <summary>Potting up one plant, seconds.</summary>
    public double PotUpPlant { get; init; }

    /// <summary>Thinning one cell, seconds.</summary>
    public double ThinCell { get; init; }

    /// <summary>Seconds to sow one tray or flat.</summary>
    /// <param name="tray">Its type.</param>
    /// <param name="seeds">Seeds in each cell, or in the whole of an open flat.</param>
    public double Sowing(TrayType tray, int seeds)
    {
        ArgumentNullException.ThrowIfNull(tray);
        return tray.IsFlat ? seeds * SowSeed : tray.Cells * ((seeds * SowSeed) + SowCell);
    }

    /// <summary>Seconds to fill one tray with plants that are potted up.</summary>
    /// <param name="tray">Its type.</param>
    public double PottingUp(TrayType tray)
    {
        ArgumentNullException.ThrowIfNull(tray);
        return tray.Cells * PotUpPlant;
    }

    /// <summary>Seconds to thin one tray; 0 where no more is sown in a cell than is kept.</summary>
    /// <param name="tray">Its type.</param>
    /// <param name="seeds">Seeds in each cell.</param>
    /// <param name="kept">Seedlings kept in each.</param>
    public double Thinning(TrayType tray, int seeds, int kept)
    {
        ArgumentNullException.ThrowIfNull(tray);
        return seeds > kept ? tray.Cells * ThinCell : 0;
    }
}

/// <summary>The keys of [work_seconds].</summary>
public static class WorkSecondFields
{
    /// <summary>What is shown for work that has no time.</summary>
    internal const string NotCounted = "not counted";

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<WorkSeconds> Table { get; } =
        FieldTable
            .Of("work_seconds", "[work_seconds]", new WorkSeconds())
            .Seconds("sow_seed", "a seed", each => each.SowSeed, (each, seconds) => each with { SowSeed = seconds })
            .Means("Sowing one seed.", Why.Ours, NotCounted)
            .Seconds("sow_cell", "a cell", each => each.SowCell, (each, seconds) => each with { SowCell = seconds })
            .Means("Sowing one cell, however many seeds go into it; an open flat has none.", Why.Ours, NotCounted)
            .Seconds("pot_up_plant", "a plant", each => each.PotUpPlant, (each, seconds) => each with { PotUpPlant = seconds })
            .Means("Potting up one plant.", Why.Ours, NotCounted)
            .Seconds("thin_cell", "a cell", each => each.ThinCell, (each, seconds) => each with { ThinCell = seconds })
            .Means("Thinning one cell, of trays sown with more seeds a cell than are kept.", Why.Ours, NotCounted)
            .Table();

    private static FieldTableMaker<WorkSeconds> Seconds(
        this FieldTableMaker<WorkSeconds> table,
        string name,
        string of,
        Func<WorkSeconds, double> get,
        Func<WorkSeconds, double, WorkSeconds> set
    )
    {
        var kind = new NumberKind(0, 1000, "seconds " + of, "second");
        return table.Key(name, kind, get, set, (each, units) => get(each) > 0 ? kind.Show(get(each), units) : NotCounted);
    }
}
