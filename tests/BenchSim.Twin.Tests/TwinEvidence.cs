using BenchSim.Engine.Randomness;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Twin.Tests;

/// <summary>What a log tells of the luck of a batch (docs/model.md section 10).</summary>
internal sealed class TwinEvidence
{
    private const int Points = 41;

    private readonly SeasonPlan _plan;
    private readonly BatchPlan _batch;
    private readonly BatchPast _past;
    private readonly List<TwinPath> _paths;
    private readonly List<TwinLook> _up;
    private readonly List<TwinLook> _good;
    private readonly List<(Sighting Row, List<TwinPath> Trays)> _judged;
    private readonly List<(TwinPath Path, int Day, bool Waited, int Mat)> _offMat = [];
    private readonly List<(TwinPath Path, int Day, bool Waited)> _potted = [];
    private readonly List<(TwinPath Path, int Day)> _grown = [];
    private readonly Dictionary<double, double> _stages = [];
    private readonly Dictionary<(TwinPath Path, double Factor, int Day), double> _upBy = [];

    public TwinEvidence(SeasonPlan plan, BatchPlan batch, BatchPast past, TwinClimate climate)
    {
        (_plan, _batch, _past) = (plan, batch, past);
        _paths = [.. past.Trays.Select(trays => new TwinPath(plan, climate, batch.Crop, trays))];
        _up = Counted(LogKind.Up, trays => trays.PottedDay is null);
        while (_up.Count > 1 && Enumerable.Range(1, _up.Count - 1).Any(look => !IsSame(_up[look - 1], _up[look])))
        {
            _up.RemoveAt(0);
        }

        _good = Counted(LogKind.Good, trays => !trays.AreFlats);
        _judged =
        [
            .. past
                .Sightings.Where(row => row.What is LogKind.Ready or LogKind.NotReady)
                .OrderBy(row => row.Day)
                .Select(row => (row, LookedAt(row, trays => !trays.AreFlats)))
                .Where(each => each.Item2.Count > 0),
        ];
        Moves();
        Factors = Enumerable.Range(0, batch.Crop.EmergeCv == 0 ? 1 : Points).Select(point => Factor(point)).ToArray();
        Packet = [.. Chances().Select(chance => new BetaLaw(batch.Germination, plan.Scenario.Rules.GerminationSample).Quantile(chance))];
        var law = StandLoss.Of(batch.Crop);
        Losses = law.HasSpread ? [.. Chances().Select(law.Quantile)] : [law.Mean];
    }

    public double[] Factors { get; }

    public double[] Packet { get; }

    public double[] Losses { get; }

    public bool TellsOfPacket => _up.Count + _good.Count > 0;

    public bool TellsOfLoss => _good.Count > 0;

    public bool TellsOfGrowth => _judged.Count + _potted.Count + _grown.Count > 0;

    public bool Tells => TellsOfPacket || TellsOfGrowth || _offMat.Count > 0;

    /// <summary>Logarithm of the weight of a germination of the packet and a factor of emergence.</summary>
    public double LogWeight(double germination, double factor)
    {
        if (!_stages.TryGetValue(factor, out var log))
        {
            log = Math.Log(OffMat(factor)) + (TellsOfGrowth ? Math.Log(Growth(factor).Sum(step => step.Mass)) : 0);
            _stages.Add(factor, log);
        }

        if (_up.Count > 0)
        {
            List<double> by = [.. _up.Select(look => germination * look.Trays.Sum(each => each.Share * UpBy(each.Path, factor, look.Day)))];
            List<int> counts = [.. _up.Select((look, index) => look.Count - (index == 0 ? 0 : _up[index - 1].Count))];
            log += _up[^1].InWords ? LogInWords(_up[^1], by[^1]) : LogChance([.. counts, _up[^1].Of - _up[^1].Count], by);
        }

        if (TellsOfLoss)
        {
            List<double> each = [.. Losses.Select(loss => LogGood(germination, factor, loss))];
            log += each.Max() + Math.Log(each.Average(one => Math.Exp(one - each.Max())));
        }

        return log;
    }

    /// <summary>Logarithm of the chance of the cells counted.</summary>
    public double LogGood(double germination, double factor, double loss)
    {
        var look = _good[^1];
        var cells = _batch.Flat is not null
            ? 1
            : look.Trays.Sum(each =>
                each.Share * (1 - Math.Pow(1 - (germination * UpBy(each.Path, factor, look.Day)), _batch.Order.SeedsPerCell))
            );
        return look.InWords ? LogInWords(look, cells * (1 - loss)) : LogChance([look.Count, look.Of - look.Count], [cells * (1 - loss)]);
    }

    /// <summary>The steps of the law of growth at a factor of emergence: up to a value, with a mass.</summary>
    public List<(double Above, double UpTo, double Weight, double Mass)> Growth(double factor)
    {
        var cuts = new SortedSet<double> { 0, double.PositiveInfinity };
        var weights = new List<Func<double, double>>();
        foreach (var (path, day, waited) in _potted)
        {
            var scale = _batch.Crop.PotUpDays;
            var reached = Reached(path, day, scale, factor);
            List<double> before = waited ? [.. WorkDays(path, day).Select(each => Reached(path, each, scale, factor))] : [];
            cuts.UnionWith(before.Append(reached));
            weights.Add(growth => growth > reached ? 0.01 : Waiting(before.Count(each => each >= growth)));
        }

        foreach (var reached in _grown.Select(each => Reached(each.Path, each.Day, _batch.Crop.GrowthDays, factor)))
        {
            cuts.Add(reached);
            weights.Add(growth => growth > reached ? 0.01 : 1);
        }

        var (low, high) = Judged(factor);
        cuts.UnionWith([low, high]);
        weights.Add(growth => growth > low && growth <= high ? 1 : 1e-6);
        List<double> all = [.. cuts];
        var cv = _batch.Crop.GrowthCv;
        if (cv == 0)
        {
            var whole = weights.Aggregate(1.0, (sofar, weight) => sofar * weight(1));
            return [(1, 1, whole, whole)];
        }

        return
        [
            .. all.Zip(all.Skip(1))
                .Select(step => (step.First, step.Second, weights.Aggregate(1.0, (sofar, weight) => sofar * weight(step.Second))))
                .Select(step => (step.First, step.Second, step.Item3, step.Item3 * Between(Score(step.First), Score(step.Second)))),
        ];
    }

    /// <summary>The factor of growth below which a share of its law lies.</summary>
    public double Growth(double factor, double u)
    {
        if (_batch.Crop.GrowthCv == 0)
        {
            return 1;
        }

        var steps = Growth(factor);
        var left = u * steps.Sum(step => step.Mass);
        var at = 0;
        while (at < steps.Count - 1 && (steps[at].Mass == 0 || left > steps[at].Mass))
        {
            left -= steps[at++].Mass;
        }

        var (low, high) = (Score(steps[at].Above), Score(steps[at].UpTo));
        var z =
            low > 0
                ? -Normal.Quantile(Math.Max(1e-300, Normal.Cumulative(-low) - (left / steps[at].Weight)))
                : Normal.Quantile(Math.Min(1 - 1e-16, Normal.Cumulative(low) + (left / steps[at].Weight)));
        var sigma = Lognormal.Sigma(_batch.Crop.GrowthCv);
        return Math.Exp((sigma * Math.Clamp(z, low, high)) - (sigma * sigma / 2));
    }

    private static IEnumerable<double> Chances() => Enumerable.Range(0, Points).Select(point => (point + 0.5) / Points);

    private static double Waiting(int rounds) => Math.Pow(1 + rounds, -2);

    private static bool IsSame(TwinLook one, TwinLook next) =>
        one.Of == next.Of && one.Count <= next.Count && !one.InWords && !next.InWords;

    // Term by term, from one number of the word to the next.
    private static double LogInWords(TwinLook look, double by)
    {
        var (chance, sum, orders) = ((0.998 * by) + 0.001, 0.0, 0.0);
        for (var count = 0; count <= look.Most; count++)
        {
            sum += count < look.Count ? 0 : Math.Exp(orders + (count * Math.Log(chance)) + ((look.Of - count) * Math.Log(1 - chance)));
            orders += Math.Log((look.Of - count) / (count + 1.0));
        }

        return Math.Log((0.95 * sum) + (0.05 * (look.Most - look.Count + 1) / (look.Of + 1)));
    }

    // A quarter, three quarters and 95 of 100 are the most of the first three words.
    private static (int Least, int Most) Numbers(Sighting row)
    {
        int UpTo(double share) => (int)Math.Floor((row.Of * share) + 1e-9);
        return row.Word switch
        {
            CountWord.Few => (0, UpTo(0.25)),
            CountWord.Half => (UpTo(0.25) + 1, UpTo(0.75)),
            CountWord.Most => (UpTo(0.75) + 1, UpTo(0.95)),
            CountWord.All => (UpTo(0.95) + 1, row.Of),
            _ => (row.Count, row.Count),
        };
    }

    private static double LogChance(List<int> counts, List<double> by)
    {
        var (log, before) = (0.0, 0.0);
        foreach (var (part, count) in counts.Index())
        {
            var until = part < by.Count ? Math.Max(by[part], before) : 1;
            log += count * Math.Log((0.998 * (until - before)) + (0.002 / counts.Count));
            before = until;
        }

        return log;
    }

    private double Factor(int point) => Lognormal.MeanOne((point + 0.5) / Points, _batch.Crop.EmergeCv);

    private double Score(double growth)
    {
        var sigma = Lognormal.Sigma(_batch.Crop.GrowthCv);
        return growth <= 0 ? double.NegativeInfinity : (Math.Log(growth) + (sigma * sigma / 2)) / sigma;
    }

    private static double Between(double low, double high) =>
        low > 0 ? Normal.Cumulative(-low) - Normal.Cumulative(-high) : Normal.Cumulative(high) - Normal.Cumulative(low);

    private List<TwinPath> LookedAt(Sighting row, Func<TrayPast, bool> which)
    {
        var all = _paths.FindAll(path => which(path.Trays) && path.Stands(row.Day, null));
        var there = all.FindAll(path => path.Stands(row.Day, row.Space));
        return there.Count > 0 ? there : all;
    }

    private List<TwinLook> Counted(LogKind what, Func<TrayPast, bool> which) =>
        [
            .. from row in _past.Sightings
            where row.What == what && row.Of > 0
            let trays = LookedAt(row, which)
            where trays.Count > 0
            group (Row: row, Trays: trays) by row.Day into day
            orderby day.Key
            let of = day.Sum(each => each.Row.Of)
            select new TwinLook(
                day.Key,
                day.Sum(each => Numbers(each.Row).Least),
                day.Sum(each => Numbers(each.Row).Most),
                day.Any(each => each.Row.Word != CountWord.None),
                of,
                [
                    .. day.SelectMany(
                        each => each.Trays,
                        (each, path) => (path, each.Row.Of / (double)of * path.Trays.Count / each.Trays.Sum(one => one.Trays.Count))
                    ),
                ]
            ),
        ];

    private double UpBy(TwinPath path, double factor, int day)
    {
        if (!_upBy.TryGetValue((path, factor, day), out var up))
        {
            _upBy.Add((path, factor, day), up = WorkUp(path, factor, day));
        }

        return up;
    }

    private double WorkUp(TwinPath path, double factor, int day)
    {
        var (crop, until) = (_batch.Crop, path.Seen(day));
        var heat = path.Heat(until);
        if (heat <= 0 || until <= path.Sown)
        {
            return 0;
        }

        var middle = crop.EmergeHeat * factor;
        var up =
            crop.EmergeSigma == 0
                ? (heat >= RunningSum.Millionths(middle) ? 1 : 0)
                : Normal.Cumulative(Math.Log(heat / 1e6 / middle) / crop.EmergeSigma);
        var half = Math.Min(path.Up(factor, until), until);
        return up == 0 ? 0 : up * (half > path.Sown ? TwinBatch.RelativeGermination(crop, path.MeanMedium(half)) : 1);
    }

    private IEnumerable<int> WorkDays(TwinPath path, int before) =>
        Enumerable
            .Range(path.Trays.SowDay, Math.Max(0, before - path.Trays.SowDay))
            .Where(day => _plan.Scenario.Rules.IsWorkDay(_plan.FirstDay.AddDays(day)));

    private double OffMat(double factor)
    {
        var weight = 1.0;
        foreach (var (path, day, waited, mat) in _offMat)
        {
            var crop = _batch.Crop;
            var leave = _plan.Scenario.Spaces[mat].IsChamber ? Math.Min(0.5, crop.LeaveMatAt) : crop.LeaveMatAt;
            var need = RunningSum.Millionths(crop.EmergeHeat * Math.Exp(crop.EmergeSigma * Normal.Quantile(leave)) * factor);
            weight *=
                path.Heat(path.Seen(day)) < need ? 0.01
                : waited ? Waiting(WorkDays(path, day).Count(each => path.Heat(path.Seen(each)) >= need))
                : 1;
        }

        return weight;
    }

    // Degree-days of growth over those that the usual takes.
    private double Reached(TwinPath path, int day, double days, double factor)
    {
        var crop = _batch.Crop;
        var until = path.Seen(day);
        var up = path.Up(factor, until);
        var scale = crop.ReferenceC - crop.GrowthBaseC;
        var isGrowth = days == crop.GrowthDays && path.Trays.PottedDay is not null;
        var heat = double.IsInfinity(up) ? 0 : path.Growth(up, until) - (isGrowth ? RunningSum.Millionths(crop.PotUpCheckDays * scale) : 0);
        return heat > 0 || days > 0 ? Math.Max(0, heat) / 1e6 / (days * scale)
            : double.IsInfinity(up) ? 0
            : double.PositiveInfinity;
    }

    private (double Low, double High) Judged(double factor)
    {
        var (low, high) = (0.0, double.PositiveInfinity);
        foreach (var (row, trays) in _judged)
        {
            var reached =
                trays.Sum(path => path.Trays.Count * Reached(path, row.Day, _batch.Crop.GrowthDays, factor))
                / trays.Sum(path => path.Trays.Count);
            if (row.What == LogKind.NotReady)
            {
                low = Math.Max(low, reached);
                high = high <= low ? double.PositiveInfinity : high;
            }
            else
            {
                high = Math.Min(high, reached);
                low = low >= high ? 0 : low;
            }
        }

        return (low, high);
    }

    private void Moves()
    {
        var flatsUsed = _paths.Exists(path => path.Trays.End == TrayEnd.UsedUp);
        foreach (var path in _paths)
        {
            var trays = path.Trays;
            var kinds = trays.Path.Select(stay => _plan.Scenario.Spaces[stay.Space].Kind).ToList();
            var first = Enumerable
                .Range(0, kinds.Count)
                .FirstOrDefault(
                    stay =>
                        stay >= Math.Max(1, trays.Borrowed)
                        && kinds[stay] != SpaceKind.Mat
                        && kinds.IndexOf(SpaceKind.Mat) is >= 0 and var mat
                        && mat < stay,
                    -1
                );
            if (trays.PottedDay is null && first > 0)
            {
                var waited = first > trays.Borrowed && kinds[first - 1] == SpaceKind.Mat;
                _offMat.Add(
                    (path, trays.Path[first].Day, waited, trays.Path[kinds.FindLastIndex(first - 1, kind => kind == SpaceKind.Mat)].Space)
                );
            }

            if (trays.End == TrayEnd.UsedUp && trays.AreFlats)
            {
                _potted.Add((path, trays.EndDay, true));
            }
            else if (!flatsUsed && trays.PottedDay is not null)
            {
                _potted.Add((path, trays.Path[trays.Borrowed].Day, false));
            }

            var table = Enumerable
                .Range(trays.Borrowed, kinds.Count - trays.Borrowed)
                .FirstOrDefault(stay => kinds[stay] == SpaceKind.Table, -1);
            if (!trays.AreFlats && (table >= 0 || trays.End == TrayEnd.Out))
            {
                _grown.Add((path, table >= 0 ? trays.Path[table].Day : trays.EndDay));
            }
        }

        Keep(_offMat, each => each.Path, each => each.Day, each => each.Waited);
        Keep(_potted, each => each.Path, each => each.Day, each => each.Waited);
        Keep(_grown, each => each.Path, each => each.Day, _ => false);
    }

    // Of each sowing the first.
    private static void Keep<T>(List<T> moves, Func<T, TwinPath> path, Func<T, int> day, Func<T, bool> waited)
    {
        List<T> first =
        [
            .. moves.GroupBy(move => path(move).Trays.SowDay).Select(group => group.OrderBy(day).ThenByDescending(waited).First()),
        ];
        moves.Clear();
        moves.AddRange(first);
    }
}

/// <summary>What was counted of a batch on a day: between which numbers, and whether in words.</summary>
internal sealed record TwinLook(int Day, int Count, int Most, bool InWords, int Of, List<(TwinPath Path, double Share)> Trays);
