using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Evidence;

/// <summary>Reads what was done with a batch, and seen of it, as what it tells of its luck (docs/model.md section 10).</summary>
internal sealed class BatchReading
{
    private const double Misjudged = 1e-6;

    private readonly PastSite _site;
    private readonly BatchPlan _plan;
    private readonly BatchPast _past;
    private readonly BetaLaw _packet;
    private readonly StageMark[] _marks;
    private readonly List<CountLook> _up;
    private readonly CountLook? _good;
    private readonly (Sighting Row, (PathHeats Path, int Count)[] Trays)[] _judged;
    private readonly Dictionary<TrayPast, PathHeats> _paths = new(ReferenceEqualityComparer.Instance);
    private readonly int _crop;

    public BatchReading(PastSite site, BatchPlan plan, BatchPast past, BetaLaw packet)
    {
        (_site, _plan, _past, _packet) = (site, plan, past, packet);
        _crop = site.Scenario.Crops.ToList().FindIndex(crop => string.Equals(crop.Id, plan.Crop.Id, StringComparison.Ordinal));
        _marks = StageMark.Of(site, past);
        _up = CountLook.OfTheSameCells(CountLook.Of(LogKind.Up, past, row => Standing(row, trays => trays.PottedDay is null)));
        _good = CountLook.Of(LogKind.Good, past, row => Standing(row, trays => !trays.AreFlats)).LastOrDefault();
        _judged =
        [
            .. past
                .Sightings.Where(row => row.What is LogKind.Ready or LogKind.NotReady)
                .OrderBy(row => row.Day)
                .Select(row => (row, Standing(row, trays => !trays.AreFlats)))
                .Where(each => each.Item2.Length > 0),
        ];
    }

    private Crop Crop => _plan.Crop;

    private bool TellsOfGrowth => _judged.Length > 0 || Array.Exists(_marks, mark => mark.Stage != Stage.LeavesMat);

    /// <summary>What it tells; null where nobody has looked at the batch.</summary>
    public BatchBelief? Belief()
    {
        var tellsOfPacket = _up.Count > 0 || _good is not null;
        if (!tellsOfPacket && _marks.Length == 0 && _judged.Length == 0)
        {
            return null;
        }

        double[] factors =
            Crop.EmergeCv == 0
                ? [1]
                : [.. Enumerable.Range(0, LuckGrid.Points).Select(point => Lognormal.MeanOne(LuckGrid.Chance(point), Crop.EmergeCv))];
        var growth = Array.ConvertAll(factors, factor => TellsOfGrowth ? new GrowthBelief(Growth(factor), Crop.GrowthCv) : null);
        double[] stages = [.. factors.Zip(growth, (factor, grown) => Math.Log(LeavesMat(factor)) + Math.Log(grown?.Mass ?? 1))];
        if (!tellsOfPacket)
        {
            return new BatchBelief([LuckGrid.Weights(stages)], factors, growth);
        }

        double[] germination = [.. Enumerable.Range(0, LuckGrid.Points).Select(point => _packet.Quantile(LuckGrid.Chance(point)))];
        var up = _up.ConvertAll(look => Array.ConvertAll(factors, factor => LookAt(look, factor)));
        int[] counts = _up.Count == 0 ? [] : [.. Parts(_up)];
        var cells = _good is { } good ? Cells(good, germination, factors) : null;
        var logs = germination
            .Select(
                (chance, point) =>
                    factors
                        .Select(
                            (_, factor) =>
                                stages[factor]
                                + (counts.Length == 0 ? 0 : Counts.Log(counts, [.. up.Select(look => chance * Seeds(look[factor]))]))
                                + (cells?.LogChance(point, factor) ?? 0)
                        )
                        .ToArray()
            )
            .ToArray();
        var most = logs.Max(row => row.Max());
        return new BatchBelief([.. logs.Select(row => Array.ConvertAll(row, log => Math.Exp(log - most)))], factors, growth)
        {
            Cells = cells,
        };
    }

    // How many by the first look, how many more by each later one, and the rest.
    private static IEnumerable<int> Parts(List<CountLook> looks)
    {
        var before = 0;
        foreach (var look in looks)
        {
            yield return look.Count - before;
            before = look.Count;
        }

        yield return looks[^1].Among - before;
    }

    private CellCount Cells(CountLook good, double[] germination, double[] factors)
    {
        var looks = Array.ConvertAll(factors, factor => LookAt(good, factor));
        var chances = Array.ConvertAll(germination, chance => Array.ConvertAll(looks, look => CellsOf(look, chance)));
        return new CellCount(good.Count, good.Among, chances, CellCount.LossesOf(StandLoss.Of(Crop)));
    }

    private double CellsOf((double Share, double Up)[] look, double germination) =>
        _plan.Flat is not null ? 1 : look.Sum(each => each.Share * Stand.CellChance(germination * each.Up, _plan.Order.SeedsPerCell));

    private static double Seeds((double Share, double Up)[] look) => look.Sum(each => each.Share * each.Up);

    // Of each path the share of the seeds looked at, and of these the share that is up where all germinate that ever do.
    private (double Share, double Up)[] LookAt(CountLook look, double factor) =>
        Array.ConvertAll(look.Trays, each => (each.Share, UpBy(each.Path, factor, _site.SeenAt(look.Day))));

    private double UpBy(PathHeats path, double factor, double until)
    {
        var up = ShareUp(path.Emergence(until), Crop.EmergeHeat * factor);
        if (up == 0 || !(until > path.SownAt))
        {
            return 0;
        }

        // The mean as far as it is known, where half of them are not up yet.
        var to = Math.Min(until, path.ReachedAt(HeatTable.Units(Crop.EmergeHeat * factor), until));
        return up * (to > path.SownAt ? Stand.RelativeGermination(Crop, path.MeanMediumC(to)) : 1);
    }

    private double ShareUp(long heat, double middle) =>
        Crop.EmergeSigma == 0 || middle <= 0 ? (heat >= HeatTable.Units(middle) ? 1 : 0)
        : heat <= 0 ? 0
        : Normal.Cumulative(Math.Log(heat / HeatTable.UnitsADegreeDay / middle) / Crop.EmergeSigma);

    private double LeavesMat(double factor)
    {
        var weight = 1.0;
        foreach (var mark in _marks.Where(mark => mark.Stage == Stage.LeavesMat))
        {
            var path = PathOf(mark.Trays);
            var middle = Crop.EmergeHeat * factor;
            var need = HeatTable.Units(middle * Spread(Crop.LeaveMatAt));
            if (_site.Scenario.Spaces[mark.Space].IsChamber)
            {
                need = Math.Min(need, HeatTable.Units(middle));
            }

            var days = _site.WorkDaysBefore(mark.Day, mark.Trays.SowDay).TakeWhile(day => path.Emergence(_site.SeenAt(day)) >= need);
            weight *=
                path.Emergence(_site.SeenAt(mark.Day)) < need ? StageMark.Early
                : mark.WasAwaited ? StageMark.Waited(days.Count())
                : 1;
        }

        return weight;
    }

    private double Spread(double share) => Math.Exp(Crop.EmergeSigma * Normal.Quantile(Math.Clamp(share, 1e-9, 1 - 1e-9)));

    // What tells of growth, at a factor of emergence: when growth began depends on that.
    private StepWeights Growth(double factor)
    {
        var weights = Judged(factor);
        foreach (var mark in _marks)
        {
            weights = mark.Stage switch
            {
                Stage.PotsUp when mark.WasAwaited => weights.Times(PottedUp(mark, factor)),
                Stage.PotsUp => weights.Times(StepWeights.At(Ready(mark, Crop.PotUpDays, factor), 1, StageMark.Early)),
                Stage.IsGrown => weights.Times(StepWeights.At(Ready(mark, Crop.GrowthDays, factor), 1, StageMark.Early)),
                _ => weights,
            };
        }

        return weights;
    }

    private StepWeights PottedUp(StageMark mark, double factor)
    {
        List<double> breaks = [Ready(mark, Crop.PotUpDays, factor)];
        foreach (var day in _site.WorkDaysBefore(mark.Day, mark.Trays.SowDay))
        {
            if (Ready(mark with { Day = day }, Crop.PotUpDays, factor) is var earlier && earlier <= 0)
            {
                break;
            }

            breaks.Add(earlier);
        }

        breaks.Reverse();
        return new StepWeights([.. breaks], [.. Enumerable.Range(0, breaks.Count).Reverse().Select(StageMark.Waited), StageMark.Early]);
    }

    // The last word holds: a later row that speaks against an earlier one outranks it.
    private StepWeights Judged(double factor)
    {
        var (low, high) = (0.0, double.PositiveInfinity);
        foreach (var (row, trays) in _judged)
        {
            var all = (double)trays.Sum(each => each.Count);
            var reached = trays.Sum(each => each.Count / all * Ready(each.Path, row.Day, Crop.GrowthDays, factor));
            if (row.What == LogKind.Ready)
            {
                (low, high) = (low >= Math.Min(high, reached) ? 0 : low, Math.Min(high, reached));
            }
            else
            {
                (low, high) = (Math.Max(low, reached), high <= Math.Max(low, reached) ? double.PositiveInfinity : high);
            }
        }

        return _judged.Length == 0 ? StepWeights.Even : StepWeights.At(low, Misjudged, 1).Times(StepWeights.At(high, 1, Misjudged));
    }

    private double Ready(StageMark mark, double days, double factor) => Ready(PathOf(mark.Trays), mark.Day, days, factor);

    // The greatest factor of growth with which trays have reached a stage by a day: their heat over that of the usual.
    private double Ready(PathHeats path, int day, double days, double factor)
    {
        var until = _site.SeenAt(day);
        var upAt = path.ReachedAt(HeatTable.Units(Crop.EmergeHeat * factor), until);
        var isChecked = path.Trays.PottedDay is not null && days.Equals(Crop.GrowthDays);
        var scale = Crop.ReferenceC - Crop.GrowthBaseC;
        var check = isChecked ? HeatTable.Units(Crop.PotUpCheckDays * scale) : 0;
        var heat = double.IsPositiveInfinity(upAt) ? -1 : path.Growth(upAt, until) - check;
        return heat < 0 ? 0 : heat / HeatTable.UnitsADegreeDay / (days * scale);
    }

    private (PathHeats Path, int Count)[] Standing(Sighting row, Func<TrayPast, bool> which)
    {
        var all = _past.Trays.Where(trays => which(trays) && StandsOn(trays, row.Day)).ToArray();
        var there = row.Space is { } space ? Array.FindAll(all, trays => StandsIn(trays, row.Day, space)) : all;
        return Array.ConvertAll(there.Length > 0 ? there : all, trays => (PathOf(trays), trays.Count));
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

    private PathHeats PathOf(TrayPast trays)
    {
        if (!_paths.TryGetValue(trays, out var path))
        {
            _paths.Add(trays, path = new PathHeats(_site, trays, _crop));
        }

        return path;
    }
}
