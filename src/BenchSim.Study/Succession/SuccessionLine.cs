using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Succession;

/// <summary>The line of a plan whose successions are tried.</summary>
/// <param name="Id">Id of the line: that of its batch, or what comes before the numbers of its successions.</param>
/// <param name="Orders">Its batches, in order.</param>
public sealed record SuccessionLine(string Id, ImmutableArray<BatchOrder> Orders)
{
    /// <summary>Finds a line.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="id">Id as written in the plan.</param>
    /// <returns>The line; null when there is none of that name.</returns>
    public static SuccessionLine? Find(Scenario scenario, string id)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var single = scenario.Batches.FirstOrDefault(order => string.Equals(order.Id, id, StringComparison.Ordinal));
        var first = single ?? scenario.Batches.FirstOrDefault(order => string.Equals(order.Id, id + "-1", StringComparison.Ordinal));
        if (first is null)
        {
            return null;
        }

        ImmutableArray<BatchOrder> orders = [.. scenario.Batches.Where(order => order.Place == first.Place)];
        return (single is null) == (orders.Length > 1) ? new SuccessionLine(id, orders) : null;
    }

    /// <summary>
    /// The scenario with the line's batches replaced by so many successions, the first on the line's first date, each a like batch.
    /// </summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="every">Days from one to the next, 1 or more.</param>
    /// <param name="times">Successions, 2 or more: then reading the plan gives the same ids, and so the same luck.</param>
    public Scenario Of(Scenario scenario, int every, int times)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentOutOfRangeException.ThrowIfLessThan(every, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(times, 2);
        var at = scenario.Batches.IndexOf(Orders[0]);
        var others = scenario.Batches.RemoveRange(Orders);
        return scenario with { Batches = others.InsertRange(at, Enumerable.Range(0, times).Select(index => Succession(every, index))) };
    }

    /// <summary>One succession.</summary>
    /// <param name="every">Days from one to the next.</param>
    /// <param name="index">Which, from 0.</param>
    public BatchOrder Succession(int every, int index) =>
        Orders[0] with
        {
            Id = $"{Id}-{index + 1}",
            Sow = Orders[0].Sow?.AddDays(every * index),
            SetOut = Orders[0].SetOut?.AddDays(every * index),
        };
}
