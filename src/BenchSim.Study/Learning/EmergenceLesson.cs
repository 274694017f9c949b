using BenchSim.Engine.Randomness;
using BenchSim.Season.Evidence;
using MathNet.Numerics;

namespace BenchSim.Study.Learning;

/// <summary>
/// What seedlings that were counted teach of the heat of emergence of a crop, and of its germination where the plan gives no packet
/// value: both at once, since few seedlings are either late ones or ones that never come. A batch has its own heat, the crop's times a
/// lognormal factor of mean 1; a packet its own germination, with the spread of a test of so many seeds about its value; a count is
/// binomial given both (docs/model.md sections 4 and 11).
/// </summary>
public sealed class EmergenceLesson
{
    private const int GerminationCells = 100;
    private const int CropGerminations = 41;
    private const double Reach = 5;
    private const double CropReach = 4;
    private const double StepsASpread = 5;

    private readonly double _heat;
    private readonly double _germination;
    private readonly double _sample;
    private readonly double _step;
    private readonly int _reach;
    private readonly double[] _kernel;
    private readonly int _kernelReach;
    private readonly double[] _germinations;
    private readonly double[][] _germinationCells;
    private readonly double[,] _logs;
    private int _batches;
    private int _untested;

    /// <summary>Begins with the values in force.</summary>
    /// <param name="heat">Heat of emergence, degree-days, above 0.</param>
    /// <param name="deviation">Standard deviation of its logarithm, above 0.</param>
    /// <param name="cv">Coefficient of variation of batches; taken as 0.02 where it is less.</param>
    /// <param name="germination">Germination of the crop, 0 to 1.</param>
    /// <param name="germinationDeviation">Standard deviation of its log odds, above 0; null where every packet has its own value.</param>
    /// <param name="sample">Seeds of a test, 1 or more.</param>
    public EmergenceLesson(double heat, double deviation, double cv, double germination, double? germinationDeviation, double sample)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(heat);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(deviation);
        (_heat, _germination, _sample) = (heat, germination, sample);
        var sigma = Lognormal.Sigma(Math.Max(cv, MeanLesson.LeastCv));
        _step = Math.Min(sigma / StepsASpread, deviation / StepsASpread);
        _reach = (int)Math.Ceiling(Reach * deviation / _step);
        _kernelReach = (int)Math.Ceiling((Reach * sigma + (sigma * sigma / 2)) / _step);
        _kernel = [.. Enumerable.Range(-_kernelReach, (2 * _kernelReach) + 1).Select(Factor)];
        var law = germinationDeviation is { } odds ? ShareLesson.LawOf(germination, odds) : null;
        double[] scores = law is null
            ? [0]
            : [.. Enumerable.Range(0, CropGerminations).Select(point => CropReach * ((2.0 * point / (CropGerminations - 1)) - 1))];
        _germinations = Array.ConvertAll(scores, score => law?.Quantile(Normal.Cumulative(score)) ?? germination);
        _germinationCells = Array.ConvertAll(_germinations, value => Cells(value, sample));
        _logs = new double[Heats, scores.Length];
        for (var point = 0; point < Heats; point++)
        {
            var score = (point - _reach) * _step / deviation;
            for (var share = 0; share < scores.Length; share++)
            {
                _logs[point, share] = (-score * score / 2) - (scores[share] * scores[share] / 2);
            }
        }

        double Factor(int step)
        {
            var middle = (step * _step) + (sigma * sigma / 2);
            return Normal.Cumulative((middle + (_step / 2)) / sigma) - Normal.Cumulative((middle - (_step / 2)) / sigma);
        }
    }

    private int Heats => (2 * _reach) + 1;

    // Heats of a batch go as far as those of its crop and its own factor together.
    private int BatchHeats => Heats + (2 * _kernelReach);

    /// <summary>Takes in the batches of a packet.</summary>
    /// <param name="counts">What was counted of each batch.</param>
    /// <param name="tested">Germination of the packet; null where the plan gives none, so that it is about the crop's.</param>
    public void See(IReadOnlyCollection<SeedCount> counts, double? tested)
    {
        ArgumentNullException.ThrowIfNull(counts);
        _batches += counts.Count;
        _untested += tested is null ? counts.Sum(count => count.Among) : 0;
        var packet = Together(counts);
        var cells = tested is { } value ? new[] { Cells(value, _sample) } : _germinationCells;
        for (var point = 0; point < Heats; point++)
        {
            for (var share = 0; share < _germinations.Length; share++)
            {
                _logs[point, share] += Math.Log(Math.Max(Dot(cells[tested is null ? share : 0], packet[point]), double.Epsilon));
            }
        }
    }

    /// <summary>What the counts teach of the heat of emergence; the new value is that of the mean logarithm.</summary>
    public Learned Heat()
    {
        var law = HeatLaw();
        double At(double step) => _heat * Math.Exp(step * _step);
        return new Learned(_heat, At(law.Mean), At(law.Quantile(0.05)), At(law.Quantile(0.95)), _batches);
    }

    /// <summary>The heat of emergence that it is below with a chance.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double HeatQuantile(double u) => _heat * Math.Exp(HeatLaw().Quantile(u) * _step);

    /// <summary>What the counts of packets without a value teach of the germination of the crop.</summary>
    public Learned Germination()
    {
        var law = GerminationLaw();
        return new Learned(
            _germination,
            _untested == 0 ? _germination : law.Mean,
            Math.Clamp(law.Quantile(0.05), 0, 1),
            Math.Clamp(law.Quantile(0.95), 0, 1),
            _untested
        );
    }

    /// <summary>The germination of the crop that it is below with a chance.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double GerminationQuantile(double u) => Math.Clamp(GerminationLaw().Quantile(u), 0, 1);

    /// <summary>The germination of a packet by what was counted of its batches.</summary>
    /// <param name="counts">What was counted of each batch; none for what is known of any such packet.</param>
    /// <param name="tested">Germination of the packet; null where the plan gives none.</param>
    internal GridLaw Packet(IReadOnlyCollection<SeedCount> counts, double? tested)
    {
        var (heats, packet) = (HeatLaw(), counts.Count == 0 ? null : Together(counts));
        var before = Cells(tested ?? Germination().New, _sample);
        var weights = new double[GerminationCells];
        for (var point = 0; point < Heats; point++)
        {
            var whole = packet is null ? 1 : Math.Max(Dot(before, packet[point]), double.Epsilon);
            for (var cell = 0; cell < GerminationCells; cell++)
            {
                weights[cell] += heats.WeightOf(point) * before[cell] * (packet?[point][cell] ?? 1) / whole;
            }
        }

        return new GridLaw([.. Enumerable.Range(0, GerminationCells).Select(Middle)], weights);
    }

    /// <summary>The heats that a batch may have had, by what is known of its crop and was counted of it, with their chances.</summary>
    /// <param name="count">What was counted of it, however chosen; null for nothing.</param>
    /// <param name="packet">The germination of its packet.</param>
    internal IReadOnlyList<(double Chance, double Heat)> BatchHeat(SeedCount? count, GridLaw packet)
    {
        var chances = count is null ? null : Chances(count);
        var seen = new double[BatchHeats];
        for (var heat = 0; heat < BatchHeats; heat++)
        {
            seen[heat] = chances is null
                ? 1
                : Math.Max(Enumerable.Range(0, GerminationCells).Sum(cell => packet.WeightOf(cell) * chances[heat][cell]), double.Epsilon);
        }

        var (crop, weights) = (HeatLaw(), new double[BatchHeats]);
        for (var point = 0; point < Heats; point++)
        {
            var whole = 0.0;
            for (var step = 0; step < _kernel.Length; step++)
            {
                whole += _kernel[step] * seen[point + step];
            }

            for (var step = 0; step < _kernel.Length; step++)
            {
                weights[point + step] += crop.WeightOf(point) * _kernel[step] * seen[point + step] / whole;
            }
        }

        const double Least = 1e-5;
        return [.. weights.Index().Where(each => each.Item > Least).Select(each => (each.Item, HeatOf(each.Index)))];
    }

    private static double Middle(int cell) => (cell + 0.5) / GerminationCells;

    // What a packet of a value may germinate, in parts of a hundredth.
    private static double[] Cells(double value, double sample)
    {
        var kept = Math.Clamp(value, 0.001, 0.999);
        var (a, b) = (kept * sample, (1 - kept) * sample);
        double[] below =
        [
            .. Enumerable
                .Range(0, GerminationCells + 1)
                .Select(edge => SpecialFunctions.BetaRegularized(a, b, edge / (double)GerminationCells)),
        ];
        return [.. Enumerable.Range(0, GerminationCells).Select(cell => below[cell + 1] - below[cell])];
    }

    private static double Dot(double[] one, double[] other)
    {
        var sum = 0.0;
        for (var index = 0; index < one.Length; index++)
        {
            sum += one[index] * other[index];
        }

        return sum;
    }

    private double HeatOf(int batchHeat) => _heat * Math.Exp((batchHeat - _reach - _kernelReach) * _step);

    // Chance of all counts of a packet by the heat of the crop and the germination of the packet, but for what is the same for all.
    private double[][] Together(IReadOnlyCollection<SeedCount> counts)
    {
        var together = new double[Heats][];
        for (var point = 0; point < Heats; point++)
        {
            together[point] = [.. Enumerable.Repeat(1.0, GerminationCells)];
        }

        foreach (var count in counts)
        {
            var (chances, most) = (Chances(count), 0.0);
            for (var point = 0; point < Heats; point++)
            {
                for (var cell = 0; cell < GerminationCells; cell++)
                {
                    var sum = 0.0;
                    for (var step = 0; step < _kernel.Length; step++)
                    {
                        sum += _kernel[step] * chances[point + step][cell];
                    }

                    together[point][cell] *= sum;
                    most = Math.Max(most, together[point][cell]);
                }
            }

            foreach (var row in together)
            {
                for (var cell = 0; cell < GerminationCells; cell++)
                {
                    row[cell] /= most;
                }
            }
        }

        return together;
    }

    // Chance of a count by the heat of the batch and the germination of the packet; the largest is 1.
    private double[][] Chances(SeedCount count)
    {
        var (logs, most) = (new double[BatchHeats][], double.NegativeInfinity);
        for (var heat = 0; heat < BatchHeats; heat++)
        {
            var up = count.UpBy(HeatOf(heat));
            logs[heat] = [.. Enumerable.Range(0, GerminationCells).Select(cell => count.LogChance(up, Middle(cell)))];
            most = Math.Max(most, logs[heat].Max());
        }

        return Array.ConvertAll(logs, row => Array.ConvertAll(row, log => Math.Exp(log - most)));
    }

    private GridLaw HeatLaw() => Law(Heats, _germinations.Length, point => point - _reach, (point, share) => _logs[point, share]);

    private GridLaw GerminationLaw() =>
        Law(_germinations.Length, Heats, share => _germinations[share], (share, point) => _logs[point, share]);

    private static GridLaw Law(int own, int others, Func<int, double> value, Func<int, int, double> log)
    {
        var most = Enumerable.Range(0, own).Max(one => Enumerable.Range(0, others).Max(other => log(one, other)));
        return new GridLaw(
            [.. Enumerable.Range(0, own).Select(value)],
            [.. Enumerable.Range(0, own).Select(one => Enumerable.Range(0, others).Sum(other => Math.Exp(log(one, other) - most)))]
        );
    }
}
