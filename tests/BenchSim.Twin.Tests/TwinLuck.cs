using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Stands;

namespace BenchSim.Twin.Tests;

/// <summary>The luck of a batch in a season, by its draws and by what was seen of it.</summary>
/// <param name="Emergence">Factor of emergence.</param>
/// <param name="Growth">Factor of growth.</param>
/// <param name="Packet">Germination of the packet.</param>
/// <param name="Loss">Share of the plants that is lost.</param>
internal sealed record TwinLuck(double Emergence, double Growth, double Packet, double Loss)
{
    /// <summary>The luck of all batches.</summary>
    public static TwinLuck[] Of(SeasonPlan plan, TwinClimate climate, ulong seed, int season)
    {
        var draws = plan
            .Batches.Select(batch => new BatchLuck(
                batch.Order,
                batch.Crop,
                new BetaLaw(batch.Germination, plan.Scenario.Rules.GerminationSample),
                seed
            ))
            .Select(luck => new TwinLuck(luck.Emergence(season), luck.Growth(season), luck.Packet(season), luck.StandLoss(season)))
            .ToArray();
        if (plan.Past is not { TellsOfLuck: true } past)
        {
            return draws;
        }

        var evidence = plan.Batches.Select((batch, index) => new TwinEvidence(plan, batch, past.Batches[index], climate)).ToArray();
        var weights = evidence.Select(each => each.Tells ? Weights(each) : []).ToArray();
        return [.. draws.Select((draw, index) => Seen(index, draw))];

        TwinLuck Seen(int index, TwinLuck draw)
        {
            var (one, id) = (evidence[index], plan.Batches[index].Order.Id);
            var packetId = plan.Batches[index].Order.PacketId ?? id;
            var point = -1;
            List<int> tellers =
            [
                .. Enumerable
                    .Range(0, evidence.Length)
                    .Where(other =>
                        evidence[other].TellsOfPacket && (plan.Batches[other].Order.PacketId ?? plan.Batches[other].Order.Id) == packetId
                    ),
            ];
            if (tellers.Count > 0)
            {
                point = Draw(
                    [.. one.Packet.Select((_, row) => tellers.Sum(other => Math.Log(weights[other][row].Sum())))],
                    Uniform(packetId, LuckPurpose.Packet)
                );
                draw = draw with { Packet = one.Packet[point] };
            }

            if (!one.Tells)
            {
                return draw;
            }

            var row = weights[index][one.TellsOfPacket ? point : 0];
            var factor = one.Factors[Draw([.. row.Select(weight => Math.Log(weight))], Uniform(id, LuckPurpose.Emergence))];
            draw = draw with { Emergence = factor };
            if (one.TellsOfGrowth)
            {
                draw = draw with { Growth = one.Growth(factor, Uniform(id, LuckPurpose.Growth)) };
            }

            if (one.TellsOfLoss)
            {
                List<double> logs = [.. one.Losses.Select(loss => one.LogGood(draw.Packet, factor, loss))];
                draw = draw with { Loss = one.Losses[Draw(logs, Uniform(id, LuckPurpose.StandLoss))] };
            }

            return draw;
        }

        double Uniform(string id, LuckPurpose purpose) =>
            Philox.Block(new PhiloxBlock(0, (uint)season, (uint)purpose, 0), PhiloxKey.Of(seed, id)).Uniform0;
    }

    // By germination, one row where no count tells of it, and by factor of emergence.
    private static double[][] Weights(TwinEvidence one)
    {
        double[][] logs =
        [
            .. (one.TellsOfPacket ? one.Packet : one.Packet[..1]).Select(chance =>
                one.Factors.Select(factor => one.LogWeight(chance, factor)).ToArray()
            ),
        ];
        var most = logs.Max(row => row.Max());
        return [.. logs.Select(row => row.Select(log => Math.Exp(log - most)).ToArray())];
    }

    // The first point at which the running sum reaches that share of the whole.
    private static int Draw(List<double> logs, double u)
    {
        List<double> weights = [.. logs.Select(log => Math.Exp(log - logs.Max()))];
        var (sum, point) = (0.0, 0);
        while (point < weights.Count)
        {
            sum += weights[point];
            if (weights[point] > 0 && sum >= u * weights.Sum())
            {
                return point;
            }

            point++;
        }

        return weights.FindLastIndex(weight => weight > 0);
    }
}
