using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Evidence;

/// <summary>
/// What the days that are over tell of the luck of the season (docs/model.md section 10). It follows from what was done and seen and from
/// the weather of those days, so it is worked out once for all seasons.
/// </summary>
internal sealed class Beliefs
{
    private readonly BatchBelief?[] _batches;
    private readonly PacketBelief?[] _packets;

    private Beliefs(BatchBelief?[] batches, PacketBelief?[] packets) => (_batches, _packets) = (batches, packets);

    /// <summary>What a past tells.</summary>
    /// <param name="plan">Plan with its past.</param>
    /// <param name="past">The past.</param>
    /// <param name="climate">A climate with the weather of the past.</param>
    public static Beliefs Of(SeasonPlan plan, SeasonPast past, SeasonClimate climate)
    {
        var site = new PastSite(plan, past, climate);
        var batches = new BatchBelief?[plan.Batches.Length];
        for (var index = 0; index < batches.Length; index++)
        {
            var packet = BetaLaw.Of(plan.Batches[index].Germination, plan.Scenario.Rules.GerminationSample);
            batches[index] = new BatchReading(site, plan.Batches[index], past.Batches[index], packet).Belief();
        }

        var packets = plan
            .Batches.Select((batch, index) => (Packet: batch.Order.PacketId ?? batch.Order.Id, Belief: batches[index]))
            .Where(each => each.Belief?.TellsOfPacket == true)
            .GroupBy(each => each.Packet, each => each.Belief!, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => new PacketBelief(group), StringComparer.Ordinal);
        return new Beliefs(batches, [.. plan.Batches.Select(batch => packets.GetValueOrDefault(batch.Order.PacketId ?? batch.Order.Id))]);
    }

    /// <summary>What was seen of a batch; null where nobody looked at it.</summary>
    public BatchBelief? OfBatch(int batch) => _batches[batch];

    /// <summary>What was seen of the packet of a batch; null where nobody counted any of it.</summary>
    public PacketBelief? OfPacket(int batch) => _packets[batch];
}
