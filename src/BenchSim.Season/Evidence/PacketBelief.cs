namespace BenchSim.Season.Evidence;

/// <summary>The germination of a packet by what was seen of its batches.</summary>
internal sealed class PacketBelief
{
    private readonly double[] _weights;

    /// <summary>Puts together what batches of one packet tell.</summary>
    public PacketBelief(IEnumerable<BatchBelief> batches)
    {
        var logs = new double[LuckGrid.Points];
        foreach (var batch in batches)
        {
            for (var point = 0; point < logs.Length; point++)
            {
                logs[point] += Math.Log(batch.OfPacket(point));
            }
        }

        _weights = LuckGrid.Weights(logs);
    }

    /// <summary>The point of its germination.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public int Germination(double u) => LuckGrid.Draw(_weights, u);

    /// <summary>The weight of a point, the largest 1.</summary>
    public double WeightOf(int point) => _weights[point];
}
