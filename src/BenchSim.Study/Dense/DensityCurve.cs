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
    private const double SecondsAMinute = 60;

    private static readonly int[] s_densities = [50, 72, 100, 150, 200, 250, 300, 400, 500, 600, 800, 1000, 1500, 2000];

    private readonly double _assurance;
    private readonly double _minutesAFlat;
    private readonly double _minutesASeed;
    private readonly (BatchPlan Plan, BetaLaw Packet, double MatDays, double Yield, double Water)[] _dense;
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
        _assurance = rules.StandAssurance;
        _minutesAFlat = rules.Minutes.Sow + rules.Minutes.Move;
        _minutesASeed = rules.Seconds.SowSeed / SecondsAMinute;
        _dense =
        [
            .. dense.Select(batch =>
                (
                    batch,
                    BetaLaw.Of(batch.Germination, rules.GerminationSample),
                    MatDays(batch),
                    batch.Germination * batch.RelativeGermination * (1 - batch.Crop.PotUpLoss) * (1 - batch.Crop.StandLoss),
                    Water(rules, batch.Flat!, batch.SowOn, batch.PotUpOn!.Value)
                )
            ),
        ];
        _directMat = direct.Sum(batch => batch.Trays * batch.Tray.PlacesEach * MatDays(batch));
        _directMinutes = direct.Sum(batch => batch.Trays * OfDirect(rules, batch));
        _pottedMinutes = dense.Sum(batch => batch.Trays * OfPotted(rules, batch));
    }

    /// <summary>The break-even densities.</summary>
    public DenseBreakEven BreakEven()
    {
        var seedsTimesDays = _dense.Sum(batch => batch.Plan.Order.Plants / batch.Yield * batch.Plan.Flat!.PlacesEach * batch.MatDays);
        var seeds = _dense.Sum(batch => batch.Plan.Order.Plants / batch.Yield);
        var left = _directMinutes - _pottedMinutes - (seeds * _minutesASeed);
        var ofOneSeed = (seeds * _minutesAFlat) + _dense.Sum(batch => batch.Plan.Order.Plants / batch.Yield * batch.Water);
        double? labourSeeds = left > 0 ? ofOneSeed / left : null;
        return new DenseBreakEven
        {
            MatSeeds = _directMat > 0 ? seedsTimesDays / _directMat : double.NaN,
            MatSeedsWhole = Fewest(density => Mat(density) < _directMat),
            LabourSeeds = labourSeeds,
            LabourSeedsWhole = labourSeeds is { } least ? FewestByWork(least) : null,
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

    private double Minutes(int density) =>
        (Flats(density).Sum() * _minutesAFlat)
        + _dense.Select((batch, at) => Flats(density)[at] * (batch.Water + (density * _minutesASeed))).Sum()
        + _pottedMinutes;

    private static double OfDirect(SiteRules rules, BatchPlan batch)
    {
        var (minutes, seconds, seeds) = (rules.Minutes, rules.Seconds, batch.Order.SeedsPerCell);
        var byCell = seconds.Sowing(batch.Tray, seeds) + seconds.Thinning(batch.Tray, seeds, batch.Crop.KeepPerCell);
        return minutes.Sow
            + (2 * minutes.Move)
            + minutes.SetOut
            + (byCell / SecondsAMinute)
            + Water(rules, batch.Tray, batch.SowOn, batch.SetOutOn);
    }

    private static double OfPotted(SiteRules rules, BatchPlan batch) =>
        rules.Minutes.PotUp
        + rules.Minutes.Move
        + rules.Minutes.SetOut
        + (rules.Seconds.PottingUp(batch.Tray) / SecondsAMinute)
        + Water(rules, batch.Tray, batch.PotUpOn!.Value, batch.SetOutOn);

    private static double Water(SiteRules rules, TrayType tray, DateOnly from, DateOnly until) =>
        rules.Minutes.WaterAPlace * tray.PlacesEach * (until.DayNumber - from.DayNumber);

    // Whole flats with the assurance of the plan; beyond reach where no number of flats would do.
    private long[] Flats(int density)
    {
        if (!_flats.TryGetValue(density, out var flats))
        {
            flats =
            [
                .. _dense.Select(batch =>
                {
                    double PerSeed(double germination) => germination * batch.Plan.RelativeGermination * (1 - batch.Plan.Crop.PotUpLoss);
                    (var found, _) = Stand.TraysFor(
                        batch.Packet,
                        density,
                        PerSeed,
                        StandLoss.Of(batch.Plan.Crop),
                        batch.Plan.Order.Plants,
                        _assurance
                    );
                    return found < 0 ? int.MaxValue : (long)found;
                }),
            ];
            _flats.Add(density, flats);
        }

        return flats;
    }

    // A denser flat takes longer to sow where seeds are counted, so that halving would miss what is looked for. Whole flats take no less
    // work than flats in fractions where the stand is at all sure, and past one flat a batch denser sowing only takes more.
    private int? FewestByWork(double least)
    {
        if (_minutesASeed == 0)
        {
            return Fewest(density => Minutes(density) <= _directMinutes);
        }

        var first = _assurance < 0.5 ? 1 : (int)Math.Clamp(least, 1, DenseBreakEven.MostSeeds);
        for (var density = first; density <= DenseBreakEven.MostSeeds; density++)
        {
            if (Minutes(density) <= _directMinutes)
            {
                return density;
            }

            if (Flats(density).All(flats => flats <= 1))
            {
                return null;
            }
        }

        return null;
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
