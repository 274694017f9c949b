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
    private readonly BetaLaw _packet;
    private readonly StageMark[] _marks;
    private readonly List<CountLook> _up;
    private readonly CountLook? _good;
    private readonly Judgement[] _judged;
    private readonly BatchPaths _paths;

    public BatchReading(PastSite site, BatchPlan plan, BatchPast past, BetaLaw packet)
    {
        (_site, _plan, _packet, _paths) = (site, plan, packet, new BatchPaths(site, plan, past));
        _marks = StageMark.Of(site, past);
        _up = CountLook.OfTheSameCells(_paths.Looks(LogKind.Up));
        _good = _paths.Looks(LogKind.Good).LastOrDefault();
        _judged = _paths.Judged();
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
        var up = _up.ConvertAll(look => Array.ConvertAll(factors, factor => _paths.LookAt(look, Crop.EmergeHeat * factor)));
        var counted = _up.Count == 0 ? null : new LookChance(_up);
        var cells = _good is { } good ? Cells(good, germination, factors) : null;
        var logs = germination
            .Select(
                (chance, point) =>
                    factors
                        .Select(
                            (_, factor) =>
                                stages[factor]
                                + (counted?.Log([.. up.Select(look => chance * BatchPaths.Seeds(look[factor]))]) ?? 0)
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

    private CellCount Cells(CountLook good, double[] germination, double[] factors)
    {
        var looks = Array.ConvertAll(factors, factor => _paths.LookAt(good, Crop.EmergeHeat * factor));
        var chances = Array.ConvertAll(germination, chance => Array.ConvertAll(looks, look => _paths.CellsOf(look, chance)));
        return new CellCount(new LookChance([good]), chances, CellCount.LossesOf(StandLoss.Of(Crop)));
    }

    private double LeavesMat(double factor)
    {
        var weight = 1.0;
        foreach (var mark in _marks.Where(mark => mark.Stage == Stage.LeavesMat))
        {
            var path = _paths.Of(mark.Trays);
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

    private StepWeights Judged(double factor)
    {
        if (_judged.Length == 0)
        {
            return StepWeights.Even;
        }

        var (low, high) = Judgement.Bounds(_judged, row => _paths.Reached(row, Crop.GrowthDays, Crop.EmergeHeat * factor));
        return StepWeights.At(low, Misjudged, 1).Times(StepWeights.At(high, 1, Misjudged));
    }

    private double Ready(StageMark mark, double days, double factor) =>
        _paths.Ready(_paths.Of(mark.Trays), mark.Day, days, Crop.EmergeHeat * factor);
}
