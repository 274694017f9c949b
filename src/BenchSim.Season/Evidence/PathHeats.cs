using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Evidence;

/// <summary>The heat that trays have had where they stood, in the units of the heat sums (docs/model.md sections 4 and 5).</summary>
internal sealed class PathHeats
{
    private readonly PastSite _site;
    private readonly (int Space, double From, double To)[] _stays;
    private readonly int _emergence;
    private readonly int _growth;

    public PathHeats(PastSite site, TrayPast trays, int crop)
    {
        (_site, Trays) = (site, trays);
        var layout = site.Climate.Layout;
        (_emergence, _growth) = (layout.EmergenceOf(crop), layout.GrowthOf(crop));
        SownAt = site.RoundOf(trays.SowDay);
        _stays = new (int, double, double)[trays.Path.Length];
        for (var stay = 0; stay < _stays.Length; stay++)
        {
            var to = stay + 1 < _stays.Length ? site.RoundOf(trays.Path[stay + 1].Day) : double.PositiveInfinity;
            _stays[stay] = (trays.Path[stay].Space, site.RoundOf(trays.Path[stay].Day), to);
        }
    }

    public TrayPast Trays { get; }

    /// <summary>Instant of sowing, hours.</summary>
    public double SownAt { get; }

    /// <summary>Heat of emergence up to an instant.</summary>
    public long Emergence(double until)
    {
        var heat = 0L;
        foreach (var (space, from, to) in _stays)
        {
            heat += Sum(EmergenceIn(space), from, Math.Min(to, until));
        }

        return heat;
    }

    /// <summary>Instant at which a heat of emergence is reached, hours; infinite where it is not by an instant.</summary>
    public double ReachedAt(long need, double until)
    {
        var before = 0L;
        foreach (var (space, from, to) in _stays)
        {
            var (table, end) = (EmergenceIn(space), Math.Min(to, until));
            var heat = Sum(table, from, end);
            if (end >= from && before + heat >= need)
            {
                return table.FirstAtOrAbove(table.At(from) - before + need, from);
            }

            before += heat;
        }

        return double.PositiveInfinity;
    }

    /// <summary>Mean temperature of the medium from sowing to an instant after it, degrees Celsius.</summary>
    public double MeanMediumC(double until)
    {
        var sum = 0L;
        foreach (var (space, from, to) in _stays)
        {
            sum += Sum(_site.Climate.TemperatureSum(_site.Climate.Layout.MediumOf(space)), from, Math.Min(to, until));
        }

        return (sum / HeatTable.UnitsADegreeDay * 24 / (until - SownAt)) - HeatLaw.WarmthShift;
    }

    /// <summary>Heat of growth from the instant at which they were up to another.</summary>
    public long Growth(double upAt, double until)
    {
        var heat = 0L;
        foreach (var (space, from, to) in _stays)
        {
            if (!_site.Scenario.Spaces[space].IsChamber)
            {
                var table = _site.Climate.GrowthSum(_growth, _site.Climate.Layout.AirOf(space));
                heat += Sum(table, Math.Max(from, upAt), Math.Min(to, until));
            }
        }

        return heat;
    }

    private HeatTable EmergenceIn(int space) => _site.Climate.EmergenceSum(_emergence, _site.Climate.Layout.MediumOf(space));

    private static long Sum(HeatTable table, double from, double to) => to > from ? table.At(to) - table.At(from) : 0;
}
