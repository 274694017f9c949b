using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Labour, weather holds and reliefs.</summary>
internal sealed partial class SeasonCore
{
    private int sownToday;
    private int pottedToday;
    private int flatsToday;
    private int setOutToday;
    private int labourDay = -1;
    private bool earlyOffMat;
    private bool earlyTable;

    private void BeginLabour()
    {
        if (labourDay == day)
        {
            return;
        }

        labourDay = day;
        sownToday = 0;
        pottedToday = 0;
        flatsToday = 0;
        setOutToday = 0;
    }

    private int CanSowToday(int count) => Limited(rules.SowTraysADay, sownToday, count);

    private int CanSetOutToday(int count) => Limited(rules.SetOutTraysADay, setOutToday, count);

    // The first flat of a day is always allowed, or one that fills more trays than a day's work would never be emptied.
    private bool CanPotToday(int trays) =>
        mode == PlayMode.Planning || flatsToday == 0 || rules.PotUpTraysADay is not { } limit || pottedToday + trays <= limit;

    private int Limited(int? limit, int done, int count) =>
        mode == PlayMode.Planning || limit is not { } most ? count : Math.Min(count, Math.Max(0, most - done));

    private bool FieldHolds(BatchState batch) =>
        mode != PlayMode.Planning && WeatherHold.FromField(climate.Weather, day, rules, batch.Crop.FieldAboveC);

    // The tables whose every forecast night, under cover where it is cold, is warm enough.
    private int[] TablesWithoutHold(BatchState batch)
    {
        if (mode == PlayMode.Planning)
        {
            return batch.Tables;
        }

        var open = 0;
        foreach (var table in batch.Tables)
        {
            open += TableHolds(batch, table) ? 0 : 1;
        }

        return open == batch.Tables.Length ? batch.Tables
            : open == 0 ? []
            : SomeTablesWithoutHold(batch);
    }

    private int[] SomeTablesWithoutHold(BatchState batch) => [.. batch.Tables.Where(table => !TableHolds(batch, table))];

    private bool TableHolds(BatchState batch, int table) =>
        WeatherHold.FromTable(climate.NightC(layout.AirOf(table)), day, rules, batch.Crop.HardenAboveC);

    // Each relief in the site's order, as long as something waits: the sweep again, with that much more allowed.
    private void ReliefPasses()
    {
        foreach (var relief in rules.Reliefs)
        {
            if (mode == PlayMode.Planning || !AnythingWaits())
            {
                return;
            }

            if (Opens(relief))
            {
                RunPass();
            }
        }
    }

    // The aisle helps whatever waits; leaving early only what waits for the space that is left.
    private bool Opens(Relief relief) =>
        relief switch
        {
            Relief.Aisle => aisleOpen = true,
            Relief.OffMatEarly => earlyOffMat = Waits(SpaceKind.Mat),
            _ => earlyTable = Waits(SpaceKind.Bench),
        };

    private bool AnythingWaits() => Waits(SpaceKind.Mat) || Waits(SpaceKind.Bench) || Waits(SpaceKind.Table);

    private bool Waits(SpaceKind kind)
    {
        foreach (var batch in Each(asked))
        {
            if (kind == SpaceKind.Mat && batch.SowWaiting > 0 && scenario.Spaces[batch.SowWaitingAt].Kind == SpaceKind.Mat)
            {
                return true;
            }

            var waits = kind switch
            {
                SpaceKind.Mat => false,
                SpaceKind.Bench => AnyRefused(batch.OnMat)
                    || batch.OnBench.Exists(lot => lot.IsFlat && lot.Hindrance == Hindrance.Place)
                    || (batch.SowWaiting > 0 && scenario.Spaces[batch.SowWaitingAt].Kind == SpaceKind.Bench),
                _ => batch.OnBench.Exists(lot => !lot.IsFlat && lot.Hindrance == Hindrance.Place),
            };
            if (waits)
            {
                return true;
            }
        }

        return false;
    }

    private static bool AnyRefused(List<Lot> lots) => lots.Exists(lot => lot.Hindrance == Hindrance.Place);

    private void CountRelief(Relief? relief, int trays)
    {
        if (relief is { } kind && trays > 0)
        {
            result.ReliefUses[rules.Reliefs.IndexOf(kind)] += trays;
        }
    }
}
