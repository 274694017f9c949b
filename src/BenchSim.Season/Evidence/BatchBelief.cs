using BenchSim.Engine.Randomness;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Evidence;

/// <summary>
/// The luck of a batch by what was seen of it: the weights of its factor of emergence at each germination of the packet, the factor of
/// growth at each factor of emergence, and the share lost at both.
/// </summary>
internal sealed class BatchBelief
{
    private readonly double[][] _weights;
    private readonly double[] _emergence;
    private readonly GrowthBelief?[] _growth;

    /// <summary>Makes a belief.</summary>
    /// <param name="weights">Weights by germination, a row each, one row where no count tells of it, and by factor of emergence.</param>
    /// <param name="emergence">Factors of emergence.</param>
    /// <param name="growth">The factor of growth at each; null where nothing tells of it.</param>
    public BatchBelief(double[][] weights, double[] emergence, GrowthBelief?[] growth) =>
        (_weights, _emergence, _growth) = (weights, emergence, growth);

    /// <summary>What was counted of its cells; null where nothing was.</summary>
    public CellCount? Cells { get; init; }

    /// <summary>Whether it tells of the packet.</summary>
    public bool TellsOfPacket => _weights.Length > 1;

    /// <summary>Chance of what was seen at a germination of the packet, but for a factor that is the same for all.</summary>
    /// <param name="germination">Point of the grid.</param>
    public double OfPacket(int germination) => _weights[germination].Sum();

    /// <summary>The point of the factor of emergence.</summary>
    /// <param name="germination">Point of the packet's germination.</param>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public int Emergence(int germination, double u) => LuckGrid.Draw(_weights[TellsOfPacket ? germination : 0], u);

    /// <summary>The factor of emergence at a point.</summary>
    public double EmergenceAt(int point) => _emergence[point];

    /// <summary>The factor of growth at a point of the factor of emergence; null where nothing tells of it.</summary>
    public GrowthBelief? GrowthAt(int point) => _growth[point];
}

/// <summary>Cells that were looked at for plants.</summary>
/// <param name="Count">The chance of those with a plant.</param>
/// <param name="Chances">Chance of a plant before the losses of the batch, by germination of the packet and factor of emergence.</param>
/// <param name="Losses">The shares that a batch may lose, each as likely before anything is seen.</param>
internal sealed record CellCount(LookChance Count, double[][] Chances, double[] Losses)
{
    /// <summary>The losses of a law on the grid.</summary>
    public static double[] LossesOf(StandLoss law) =>
        law.HasSpread ? [.. Enumerable.Range(0, LuckGrid.Points).Select(point => law.Quantile(LuckGrid.Chance(point)))] : [law.Mean];

    /// <summary>Logarithm of the chance of the count, the losses summed over.</summary>
    public double LogChance(int germination, int emergence)
    {
        var logs = Logs(germination, emergence);
        return logs.Max() + Math.Log(LuckGrid.Weights(logs).Sum() / logs.Length);
    }

    /// <summary>The share lost.</summary>
    /// <param name="germination">Point of the packet's germination.</param>
    /// <param name="emergence">Point of the factor of emergence.</param>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double Loss(int germination, int emergence, double u) =>
        Losses[LuckGrid.Draw(LuckGrid.Weights(Logs(germination, emergence)), u)];

    private double[] Logs(int germination, int emergence) =>
        [.. Losses.Select(loss => Count.Log([Chances[germination][emergence] * (1 - loss)]))];
}
