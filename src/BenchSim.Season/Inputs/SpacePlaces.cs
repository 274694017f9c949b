using System.Collections.Immutable;

namespace BenchSim.Season.Inputs;

/// <summary>Places of spaces on a date, as the site has them.</summary>
public static class SpacePlaces
{
    /// <summary>Places of a space on a date: none before its house opens, where that is on a date.</summary>
    /// <param name="scenario">Scenario.</param>
    /// <param name="space">Index of the space.</param>
    /// <param name="on">Date.</param>
    public static int On(Scenario scenario, int space, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var of = scenario.Spaces[space];
        var house = scenario.Houses.FirstOrDefault(each => string.Equals(each.Id, of.HouseId, StringComparison.Ordinal));
        return house is { Opening: HouseOpening.FromDate } && house.OpensOn > on
            ? 0
            : of.Changes.Where(change => change.From <= on).Select(change => change.Places).LastOrDefault(of.Places);
    }

    /// <summary>The first of a group that has places on a date; the first of all where none has.</summary>
    /// <param name="scenario">Scenario.</param>
    /// <param name="group">Indices of spaces in order of preference, one or more.</param>
    /// <param name="on">Date.</param>
    public static int FirstOpen(Scenario scenario, ImmutableArray<int> group, DateOnly on)
    {
        foreach (var space in group)
        {
            if (On(scenario, space, on) > 0)
            {
                return space;
            }
        }

        return group[0];
    }

    /// <summary>Those of a group that have places on a date, in order of preference; the whole group where none has.</summary>
    /// <param name="scenario">Scenario.</param>
    /// <param name="group">Indices of spaces in order of preference.</param>
    /// <param name="on">Date.</param>
    public static ImmutableArray<int> Open(Scenario scenario, ImmutableArray<int> group, DateOnly on)
    {
        ImmutableArray<int> open = [.. group.Where(space => On(scenario, space, on) > 0)];
        return open.IsEmpty ? group : open;
    }
}
