using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Evidence;

/// <summary>Reads what was seen of a batch for what it teaches of its crop.</summary>
/// <param name="site">The site in the days that are over.</param>
/// <param name="nights">Lows by own thermometers.</param>
/// <param name="plan">The batch.</param>
/// <param name="past">Its past.</param>
internal sealed class BatchReader(PastSite site, OwnNights nights, BatchPlan plan, BatchPast past)
{
    private readonly BatchPaths _paths = new(site, plan, past);

    /// <summary>What was seen of it.</summary>
    public BatchEvidence Read() =>
        new()
        {
            Batch = plan,
            Picked = Seeds(row => row.IsPicked),
            Counted = Seeds(null),
            Volunteered = past.Sightings.Count(row => row is { What: LogKind.Up or LogKind.Good, Of: > 0, IsPicked: false }),
            Plants = WentOut() ?? PickedCells(),
            Potted = Potted(),
            Growth = Growth(),
        };

    private SeedCount? Seeds(Func<Sighting, bool>? which)
    {
        var looks = CountLook.OfTheSameCells(_paths.Looks(LogKind.Up, which));
        return looks.Count == 0
            ? null
            : new SeedCount(new LookChance(looks), looks[^1].Among, heat =>
                [.. looks.Select(look => BatchPaths.Seeds(_paths.LookAt(look, heat)))]
            );
    }

    // Of the trays whose plants were counted as they went, all together.
    private PlantCount? WentOut()
    {
        TrayPast[] trays = [.. past.Trays.Where(each => each is { End: TrayEnd.Out, Plants: not null })];
        var (plants, cells) = (trays.Sum(each => each.Plants!.Value), trays.Sum(each => each.Count * plan.Tray.Cells));
        return cells == 0 || plants > cells
            ? null
            : new PlantCount(CountRange.Exactly(plants), cells, (germination, heat) => CellChance(trays, germination, heat));
    }

    private double CellChance(TrayPast[] trays, double germination, double heat)
    {
        if (plan.Flat is not null)
        {
            return 1;
        }

        var all = (double)trays.Sum(each => each.Count);
        return trays.Sum(each =>
            each.Count / all * Stand.CellChance(germination * Relative(_paths.Of(each), heat, each.EndDay), plan.Order.SeedsPerCell)
        );
    }

    private PlantCount? PickedCells() =>
        _paths.Looks(LogKind.Good, row => row.IsPicked).LastOrDefault() is { } look
            ? new PlantCount(look.Count, look.Among, (germination, heat) => _paths.CellsOf(_paths.LookAt(look, heat), germination))
            : null;

    // The last tray may be part full, and what is left of the seedlings fills less than a tray; where all trays that were wanted are
    // filled, any number may have been left.
    private PottedCount? Potted()
    {
        TrayPast[] used = [.. past.Trays.Where(each => each is { AreFlats: true, End: TrayEnd.UsedUp })];
        var filled = past.Trays.Where(each => each is { AreFlats: false, PottedDay: not null }).Sum(each => (long)each.Count);
        var seeds = used.Sum(each => (long)each.Count) * plan.Order.SeedsPerFlat;
        var cells = plan.Tray.Cells;
        var most = filled >= plan.Trays ? seeds : Math.Min(seeds, (filled * cells) + cells - 1);
        var least = Math.Max(0, (filled * cells) - cells + 1);
        return seeds == 0 || least > seeds
            ? null
            : new PottedCount(seeds, least, most, heat => Relative(_paths.Of(used[0]), heat, used[0].EndDay));
    }

    private double Relative(PathHeats path, double heat, int day)
    {
        var until = site.SeenAt(day);
        var to = Math.Min(until, path.ReachedAt(HeatTable.Units(heat), until));
        return to > path.SownAt ? Stand.RelativeGermination(plan.Crop, path.MeanMediumC(to)) : 1;
    }

    private GrowthBounds? Growth()
    {
        var judged = _paths.Judged();
        if (judged.Length == 0)
        {
            return null;
        }

        var gone = Gone(judged);
        return new GrowthBounds(heat => [.. Days(judged, gone, heat)], Houses(gone ?? judged[^1]));
    }

    // One that was judged not ready, and went to the table or out before anyone judged it ready, was ready by then: what is ready soon
    // after a look is gone before the next.
    private Judgement? Gone(Judgement[] judged)
    {
        if (Array.FindLastIndex(judged, row => !row.IsReady) is not (>= 0 and var last))
        {
            return null;
        }

        var ready = last + 1 < judged.Length ? judged[last + 1].Day : int.MaxValue;
        return
            Array
                .FindAll(StageMark.Of(site, past), mark => mark.Stage == Stage.IsGrown && mark.Day > judged[last].Day && mark.Day <= ready)
                .MinBy(mark => mark.Day)
                is { } mark
            ? new Judgement(true, mark.Day, [(_paths.Of(mark.Trays), mark.Trays.Count)])
            : null;
    }

    // Where it went before anyone judged it ready, it hardly waited: a bound from above alone would take it for faster than it was.
    private IEnumerable<(double Weight, double Above, double UpTo)> Days(Judgement[] judged, Judgement? gone, double heat)
    {
        var days = plan.Crop.GrowthDays;
        double Reached(Judgement row) => _paths.Reached(row, days, heat) * days;
        var (above, upTo) = Judgement.Bounds(gone is null ? judged : [.. judged, gone], Reached);
        if (gone is null)
        {
            yield return (1, above, upTo);
            yield break;
        }

        var waited = 0;
        foreach (var day in site.WorkDaysBefore(gone.Day, judged.Last(row => !row.IsReady).Day))
        {
            var before = Math.Max(above, Reached(gone with { Day = day }));
            yield return (StageMark.Waited(waited), before, upTo);
            (waited, upTo) = (waited + 1, before);
        }

        yield return (StageMark.Waited(waited), above, upTo);
    }

    private ImmutableArray<HouseWeeks> Houses(Judgement last)
    {
        var path = last.Trays[0].Path;
        var up = path.ReachedAt(HeatTable.Units(plan.Crop.EmergeHeat), site.SeenAt(last.Day));
        return double.IsPositiveInfinity(up) ? [] : [.. nights.Of(path.Trays, (int)(up / 24), last.Day)];
    }
}
