using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Stands;

namespace BenchSim.Study.Dense;

/// <summary>
/// What the density of sowing does to mats and work, by the planned dates and numbers of a crop's batches. Formulas: docs/dense.md.
/// </summary>
internal sealed class DensityCurve
{
    private static readonly int[] s_densities = [50, 72, 100, 150, 200, 250, 300, 400, 500, 600, 800, 1000, 1500, 2000];

    private readonly WorkMinutes _minutes;
    private readonly double _assurance;
    private readonly (BatchPlan Plan, PacketGermination Packet, double MatDays, double Yield)[] _dense;
    private readonly Dictionary<int, long[]> _flats = [];
    private readonly double _directMat;
    private readonly double _directMinutes;
    private readonly double _pottedMinutes;

    /// <summary>Prepares it.</summary>
    /// <param name="rules">Rules of the site.</param>
    /// <param name="direct">The batches sown directly.</param>
    /// <param name="dense">The same batches potted up.</param>
    public DensityCurve(SiteRules rules, ImmutableArray<BatchPlan> direct, ImmutableArray<BatchPlan> dense)
    {
        (_minutes, _assurance) = (rules.Minutes, rules.StandAssurance);
        _dense =
        [
            .. dense.Select(batch =>
                (
                    batch,
                    PacketGermination.Of(batch.Germination, rules.GerminationSample),
                    MatDays(batch),
                    batch.Germination * batch.RelativeGermination * (1 - batch.Crop.PotUpLoss) * (1 - batch.Crop.StandLoss)
                )
            ),
        ];
        _directMat = direct.Sum(batch => batch.Trays * batch.Tray.PlacesEach * MatDays(batch));
        _directMinutes = direct.Sum(batch => batch.Trays * (_minutes.Sow + (2 * _minutes.Move) + _minutes.SetOut));
        _pottedMinutes = dense.Sum(batch => batch.Trays * (_minutes.PotUp + _minutes.Move + _minutes.SetOut));
    }

    /// <summary>The break-even densities.</summary>
    public DenseBreakEven BreakEven()
    {
        var seedsTimesDays = _dense.Sum(batch => batch.Plan.Order.Plants / batch.Yield * batch.Plan.Flat!.PlacesEach * batch.MatDays);
        var seeds = _dense.Sum(batch => batch.Plan.Order.Plants / batch.Yield);
        var left = _directMinutes - _pottedMinutes;
        return new DenseBreakEven
        {
            MatSeeds = _directMat > 0 ? seedsTimesDays / _directMat : double.NaN,
            MatSeedsWhole = Fewest(density => Mat(density) < _directMat),
            LabourSeeds = left > 0 ? seeds * (_minutes.Sow + _minutes.Move) / left : null,
            LabourSeedsWhole = left > 0 ? Fewest(density => Minutes(density) <= _directMinutes) : null,
            DirectMinutes = _directMinutes,
            PottedMinutes = _pottedMinutes,
        };
    }

    /// <summary>The trade-off at several densities.</summary>
    public ImmutableArray<DensityPoint> Points() =>
        [
            .. s_densities.Select(density => new DensityPoint(
                density,
                Flats(density).Sum(),
                Flats(density).Sum() * density,
                Mat(density),
                _directMat,
                Minutes(density),
                _directMinutes
            )),
        ];

    // Days between two work rounds are whole, so are planned stays.
    private static double MatDays(BatchPlan batch) => batch.OffMatOn is { } off ? off.DayNumber - batch.SowOn.DayNumber : 0;

    private double Mat(int density) => _dense.Select((batch, at) => Flats(density)[at] * batch.Plan.Flat!.PlacesEach * batch.MatDays).Sum();

    private double Minutes(int density) => (Flats(density).Sum() * (_minutes.Sow + _minutes.Move)) + _pottedMinutes;

    // Whole flats with the assurance of the plan; beyond reach where no number of flats would do.
    private long[] Flats(int density)
    {
        if (!_flats.TryGetValue(density, out var flats))
        {
            flats =
            [
                .. _dense.Select(batch =>
                {
                    double PerSeed(double germination) =>
                        germination * batch.Plan.RelativeGermination * (1 - batch.Plan.Crop.PotUpLoss) * (1 - batch.Plan.Crop.StandLoss);
                    (var found, _) = Stand.TraysFor(batch.Packet, density, PerSeed, batch.Plan.Order.Plants, _assurance);
                    return found < 0 ? int.MaxValue : (long)found;
                }),
            ];
            _flats.Add(density, flats);
        }

        return flats;
    }

    // Denser sowing never needs more flats, so halving finds the first density that will do.
    private static int? Fewest(Func<int, bool> isEnough)
    {
        (var low, var high) = (0, DenseBreakEven.MostSeeds);
        if (!isEnough(high))
        {
            return null;
        }

        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = isEnough(middle) ? (low, middle) : (middle, high);
        }

        return high;
    }
}
