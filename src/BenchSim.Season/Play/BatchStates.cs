using BenchSim.Season.Evidence;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Play;

/// <summary>Makes the states of a plan's batches.</summary>
internal static class BatchStates
{
    public static BatchState[] Of(Scenario scenario, IReadOnlyList<BatchPlan> plans, ulong seed) =>
        Of(scenario, plans, Lucks(scenario, plans, seed));

    public static BatchState[] Of(Scenario scenario, IReadOnlyList<BatchPlan> plans, IReadOnlyList<BatchLuck> lucks)
    {
        var growers = new Dictionary<string, int>(StringComparer.Ordinal);
        var states = new BatchState[plans.Count];
        for (var index = 0; index < states.Length; index++)
        {
            var plan = plans[index];
            if (!growers.TryGetValue(plan.Order.Grower, out var grower))
            {
                grower = growers.Count;
                growers.Add(plan.Order.Grower, grower);
            }

            states[index] = new BatchState(
                plan,
                index,
                CropIndex(scenario, plan.Crop),
                grower,
                lucks[index],
                scenario.Rules,
                scenario.Window.Opens
            );
        }

        return states;
    }

    public static BatchLuck[] Lucks(Scenario scenario, IReadOnlyList<BatchPlan> plans, ulong seed, Beliefs? beliefs = null) =>
        [
            .. plans.Select(
                (plan, index) =>
                    new BatchLuck(plan.Order, plan.Crop, BetaLaw.Of(plan.Germination, scenario.Rules.GerminationSample), seed)
                    {
                        Seen = beliefs?.OfBatch(index),
                        PacketSeen = beliefs?.OfPacket(index),
                    }
            ),
        ];

    private static int CropIndex(Scenario scenario, Crop crop)
    {
        for (var index = 0; index < scenario.Crops.Length; index++)
        {
            if (string.Equals(scenario.Crops[index].Id, crop.Id, StringComparison.Ordinal))
            {
                return index;
            }
        }

        throw new ArgumentException($"The scenario has no crop {crop.Id}.", nameof(crop));
    }
}
