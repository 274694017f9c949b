using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// What is waited for, in words: which space is full and who stands in it, and why a place that looks free is not to be had.
/// </summary>
internal sealed class RoomWords(SeasonView season, SeasonPlan plan, int[] group)
{
    // The holders of a full space are named up to this many; the rest are counted.
    private const int MostHolders = 5;

    /// <summary>Room for a tray or a flat.</summary>
    /// <param name="space">The space it asked for first.</param>
    /// <param name="placesEach">Places it takes.</param>
    public string Of(int space, int placesEach)
    {
        var words = RoomOn(space);
        return group.Any(other => Free(other) >= placesEach) ? $"{words}; {Keeper()}" : words;
    }

    /// <summary>
    /// Room for all the trays of a flat, which is potted up whole or not at all. Its own place is among them, so that a refused flat needs
    /// two or more.
    /// </summary>
    /// <param name="flat">The flat that was refused.</param>
    /// <param name="space">The bench it asked for first.</param>
    public string ForTheTraysOf(Lot flat, int space)
    {
        var free = group.Sum(Free);
        return $"{RoomOn(space)}; one flat needs {flat.PlacesRefused} places for its trays at once, its own among them"
            + (free > 0 ? $", and keeps the {(free == 1 ? "free place" : $"{free} free places")} of its benches until then" : "");
    }

    // Nobody overtakes: who was refused before keeps what is free.
    private string Keeper()
    {
        foreach (var state in season.State.Batches)
        {
            var flat = state.OnBench.Find(lot => lot.IsFlat && lot.Hindrance == Hindrance.Place);
            if (flat is not null && state.Benches.Intersect(group).Any())
            {
                return $"what is free is kept for a flat of {state.Plan.Order.Id}, "
                    + $"which needs {flat.PlacesRefused} places for its trays at once";
            }
        }

        return "what is free is kept for trays before these in the order of work";
    }

    // A shut house is not full: what is full is the space that is asked for next, if any is open.
    private string RoomOn(int space)
    {
        if (season.PlacesOf(space) > 0)
        {
            return $"room on {Holders(space)}";
        }

        var open = group.Where(other => season.PlacesOf(other) > 0).DefaultIfEmpty(-1).First();
        var shut = $"{plan.Scenario.Spaces[space].Name} has no place open";
        return open >= 0 ? $"room on {Holders(open)}; {shut}" : $"room; {shut}";
    }

    // The space that was full, and who stands in it.
    private string Holders(int space)
    {
        var holders = PlaceHolder.Of(season, space);
        var named = string.Join(", ", holders.Take(MostHolders).Select(holder => $"{holder.Batch} {holder.Places}"));
        var rest = holders.Skip(MostHolders).Sum(holder => holder.Places);
        return $"{plan.Scenario.Spaces[space].Name} ({season.HeldIn(space)} of {season.PlacesOf(space)} places held"
            + (named.Length > 0 ? $" by {named}" + (rest > 0 ? $", others {rest}" : "") : "")
            + ")";
    }

    private int Free(int space) => Math.Max(0, season.PlacesOf(space) - season.HeldIn(space));
}
