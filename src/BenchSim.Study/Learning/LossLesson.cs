using BenchSim.Season.Evidence;
using BenchSim.Season.Inputs;
using MathNet.Numerics;

namespace BenchSim.Study.Learning;

/// <summary>
/// What plants that were counted teach of the share that a crop loses between emergence and the field. Losses come in lumps: a batch has a
/// share of its own, Beta(l m, (1 - l) m) about the crop's l, so that a batch of a thousand plants says little more than one of fifty.
/// </summary>
public sealed class LossLesson
{
    private const int Cells = 150;
    private const double LeastCorrelation = 1e-5;

    // As in the counts of model.md section 10: one in 500 is written down wrong.
    private const double Wrong = 0.002;

    private readonly ShareLesson _lesson;
    private readonly double _sample;
    private readonly Dictionary<double, double[]> _cells = [];

    /// <summary>Begins with the value in force.</summary>
    /// <param name="value">Mean share lost, 0 to below 1.</param>
    /// <param name="deviation">Standard deviation of its log odds, above 0.</param>
    /// <param name="correlation">Correlation of the loss of two plants of a batch, 0 to 0.5.</param>
    public LossLesson(double value, double deviation, double correlation)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(correlation);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(correlation, Crop.MostStandLossCorrelation);
        _lesson = new ShareLesson(value, deviation);
        _sample = correlation < LeastCorrelation ? double.PositiveInfinity : (1 - correlation) / correlation;
    }

    /// <summary>Takes a batch in.</summary>
    /// <param name="plants">Plants counted.</param>
    /// <param name="cells">Cells in which they may have been, as many or more.</param>
    /// <param name="filled">Chances of a cell that had a plant before the losses, each with its weight.</param>
    public void See(int plants, int cells, IReadOnlyCollection<(double Weight, double Chance)> filled)
    {
        ArgumentNullException.ThrowIfNull(filled);
        See(cells, filled, LogChance);

        double LogChance(double chance)
        {
            var plant = ((1 - Wrong) * chance) + (Wrong / 2);
            return (plants * Math.Log(plant)) + ((cells - plants) * Math.Log(1 - plant));
        }
    }

    /// <summary>Takes a batch in whose count has a chance of its own, as that of words.</summary>
    /// <param name="cells">Cells in which the plants may have been.</param>
    /// <param name="filled">Chances of a cell that had a plant before the losses, each with its weight.</param>
    /// <param name="logChance">Logarithm of the chance of the count by that of a cell to have a plant after the losses.</param>
    public void See(int cells, IReadOnlyCollection<(double Weight, double Chance)> filled, Func<double, double> logChance)
    {
        ArgumentNullException.ThrowIfNull(filled);
        ArgumentNullException.ThrowIfNull(logChance);
        if (double.IsPositiveInfinity(_sample))
        {
            _lesson.See(loss => LogChance(filled, loss, logChance), cells);
            return;
        }

        double[] logs = [.. Enumerable.Range(0, Cells).Select(cell => LogChance(filled, Middle(cell), logChance))];
        var most = logs.Max();
        var chances = Array.ConvertAll(logs, log => Math.Exp(log - most));
        _lesson.See(loss => Math.Log(Math.Max(LossesOf(loss).Zip(chances, (mass, chance) => mass * chance).Sum(), double.Epsilon)), cells);
    }

    /// <summary>What the counts teach.</summary>
    public Learned Lesson() => _lesson.Lesson();

    /// <inheritdoc cref="ShareLesson.Quantile"/>
    public double Quantile(double u) => _lesson.Quantile(u);

    // Finer near 0, where most batches are.
    private static double Edge(double cell) => cell / Cells * (cell / Cells);

    private static double Middle(int cell) => Edge(cell + 0.5);

    private static double LogChance(IReadOnlyCollection<(double Weight, double Chance)> filled, double loss, Func<double, double> logChance)
    {
        var most = double.NegativeInfinity;
        Span<double> logs = stackalloc double[filled.Count];
        foreach (var (index, (weight, chance)) in filled.Index())
        {
            logs[index] = Math.Log(weight) + logChance(chance * (1 - loss));
            most = Math.Max(most, logs[index]);
        }

        var sum = 0.0;
        foreach (var log in logs)
        {
            sum += Math.Exp(log - most);
        }

        return most + Math.Log(sum);
    }

    private double[] LossesOf(double loss)
    {
        if (!_cells.TryGetValue(loss, out var masses))
        {
            var (a, b) = (loss * _sample, (1 - loss) * _sample);
            double[] below = [.. Enumerable.Range(0, Cells + 1).Select(edge => SpecialFunctions.BetaRegularized(a, b, Edge(edge)))];
            _cells.Add(loss, masses = [.. Enumerable.Range(0, Cells).Select(cell => below[cell + 1] - below[cell])]);
        }

        return masses;
    }
}
