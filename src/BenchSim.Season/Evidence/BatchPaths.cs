using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Evidence;

/// <summary>
/// What the trays of a batch had had by a day, where they stood (docs/model.md section 10), at a heat with which half of it is up: that of
/// its crop times its own factor.
/// </summary>
/// <param name="site">The site in the days that are over.</param>
/// <param name="plan">The batch.</param>
/// <param name="past">Its past.</param>
internal sealed class BatchPaths(PastSite site, BatchPlan plan, BatchPast past)
{
    private readonly Dictionary<TrayPast, PathHeats> _paths = new(ReferenceEqualityComparer.Instance);
    private readonly int _crop = site
        .Scenario.Crops.ToList()
        .FindIndex(crop => string.Equals(crop.Id, plan.Crop.Id, StringComparison.Ordinal));

    private Crop Crop => plan.Crop;

    /// <summary>The heats of trays.</summary>
    public PathHeats Of(TrayPast trays)
    {
        if (!_paths.TryGetValue(trays, out var path))
        {
            _paths.Add(trays, path = new PathHeats(site, trays, _crop));
        }

        return path;
    }

    /// <summary>The days on which seedlings or cells were counted, in order.</summary>
    /// <param name="what"><see cref="LogKind.Up"/> or <see cref="LogKind.Good"/>.</param>
    /// <param name="which">Which rows count; null for all.</param>
    public List<CountLook> Looks(LogKind what, Func<Sighting, bool>? which = null) =>
        CountLook.Of(past.Sightings.Where(each => each.What == what && which?.Invoke(each) != false), row =>
            Standing(row, trays => what == LogKind.Up ? trays.PottedDay is null : !trays.AreFlats)
        );

    /// <summary>The rows that judge trays, in order of the day.</summary>
    public Judgement[] Judged() =>
        [
            .. past
                .Sightings.Where(row => row.What is LogKind.Ready or LogKind.NotReady)
                .OrderBy(row => row.Day)
                .Select(row => new Judgement(row.What == LogKind.Ready, row.Day, Standing(row, trays => !trays.AreFlats)))
                .Where(each => each.Trays.Length > 0),
        ];

    /// <summary>Of each path of a look the share of what was looked at, and of its seeds that ever germinate those that are up.</summary>
    public (double Share, double Up)[] LookAt(CountLook look, double middle) =>
        Array.ConvertAll(look.Trays, each => (each.Share, UpBy(each.Path, middle, site.SeenAt(look.Day))));

    /// <summary>Share of the seeds of a look that is up where all germinate that ever do.</summary>
    public static double Seeds((double Share, double Up)[] look) => look.Sum(each => each.Share * each.Up);

    /// <summary>Share of the cells of a look that has a plant, before the losses of the batch.</summary>
    public double CellsOf((double Share, double Up)[] look, double germination) =>
        plan.Flat is not null ? 1 : look.Sum(each => each.Share * Stand.CellChance(germination * each.Up, plan.Order.SeedsPerCell));

    /// <summary>How far trays that were judged had grown by the day: their heat over that of some days; each tray alike.</summary>
    public double Reached(Judgement row, double days, double middle)
    {
        var all = (double)row.Trays.Sum(each => each.Count);
        return row.Trays.Sum(each => each.Count / all * Ready(each.Path, row.Day, days, middle));
    }

    /// <summary>
    /// The greatest factor of growth with which trays have reached a stage by a day: their heat over that of the usual. A stage of no days
    /// is reached by all that are up.
    /// </summary>
    public double Ready(PathHeats path, int day, double days, double middle)
    {
        var until = site.SeenAt(day);
        var upAt = path.ReachedAt(HeatTable.Units(middle), until);
        var isChecked = path.Trays.PottedDay is not null && days.Equals(Crop.GrowthDays);
        var scale = Crop.ReferenceC - Crop.GrowthBaseC;
        var check = isChecked ? HeatTable.Units(Crop.PotUpCheckDays * scale) : 0;
        var heat = double.IsPositiveInfinity(upAt) ? -1 : path.Growth(upAt, until) - check;
        return heat < 0 ? 0
            : days > 0 ? heat / HeatTable.UnitsADegreeDay / (days * scale)
            : double.PositiveInfinity;
    }

    private double UpBy(PathHeats path, double middle, double until)
    {
        var up = ShareUp(path.Emergence(until), middle);
        if (up == 0 || !(until > path.SownAt))
        {
            return 0;
        }

        // The mean as far as it is known, where half of them are not up yet.
        var to = Math.Min(until, path.ReachedAt(HeatTable.Units(middle), until));
        return up * (to > path.SownAt ? Stand.RelativeGermination(Crop, path.MeanMediumC(to)) : 1);
    }

    private double ShareUp(long heat, double middle) =>
        Crop.EmergeSigma == 0 || middle <= 0 ? (heat >= HeatTable.Units(middle) ? 1 : 0)
        : heat <= 0 ? 0
        : Normal.Cumulative(Math.Log(heat / HeatTable.UnitsADegreeDay / middle) / Crop.EmergeSigma);

    private (PathHeats Path, int Count)[] Standing(Sighting row, Func<TrayPast, bool> which)
    {
        var all = past.Trays.Where(trays => which(trays) && StandsOn(trays, row.Day)).ToArray();
        var there = row.Space is { } space ? Array.FindAll(all, trays => StandsIn(trays, row.Day, space)) : all;
        return Array.ConvertAll(there.Length > 0 ? there : all, trays => (Of(trays), trays.Count));
    }

    private static bool StandsOn(TrayPast trays, int day) =>
        trays.Path[trays.Borrowed].Day <= day && (trays.End == TrayEnd.Stands || trays.EndDay >= day);

    // In the morning or in the evening of the day.
    private static bool StandsIn(TrayPast trays, int day, int space)
    {
        for (var stay = trays.Borrowed; stay < trays.Path.Length && trays.Path[stay].Day <= day; stay++)
        {
            if (trays.Path[stay].Space == space && (stay + 1 == trays.Path.Length || trays.Path[stay + 1].Day >= day))
            {
                return true;
            }
        }

        return false;
    }
}
