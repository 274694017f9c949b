using System.Globalization;

namespace BenchSim.Engine;

/// <summary>Who waits for whom: everybody who stands in line at a moment, and the rings of processes of which each waits for the next.</summary>
public sealed class WaitReport
{
    private WaitReport(double time, bool isGridlock, IReadOnlyList<WaitLine> lines, IReadOnlyList<IReadOnlyList<string>> rings)
    {
        Time = time;
        IsGridlock = isGridlock;
        Lines = lines;
        Rings = rings;
    }

    /// <summary>When, in days.</summary>
    public double Time { get; }

    /// <summary>Whether some wait and nothing is due any more: nobody will ever go on.</summary>
    public bool IsGridlock { get; }

    /// <summary>Everybody who stands in line, in the order in which they were started.</summary>
    public IReadOnlyList<WaitLine> Lines { get; }

    /// <summary>
    /// Rings of processes: each waits for places that the next holds, or stands in line behind the next; the last waits for the first.
    /// One ring alone does not stop the others who hold places; together with <see cref="IsGridlock"/> it says why nothing moves.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<string>> Rings { get; }

    /// <summary>The report as text, a line each.</summary>
    public override string ToString()
    {
        if (Lines.Count == 0)
        {
            return string.Create(CultureInfo.InvariantCulture, $"Day {Time:0.####}: nobody waits.");
        }

        var head = string.Create(
            CultureInfo.InvariantCulture,
            $"Day {Time:0.####}: {Lines.Count} in line{(IsGridlock ? ", nothing is due, so nobody will ever go on" : "")}."
        );
        var rings = Rings.Select(ring => $"ring: {string.Join(" waits for ", ring)} waits for {ring[0]}");
        return string.Join('\n', Lines.Select(line => line.ToString()).Prepend(head).Concat(rings));
    }

    internal static WaitReport Of(Simulation simulation, bool nothingDue, ReadOnlySpan<Story> stories)
    {
        var living = new List<Story>();
        foreach (var story in stories)
        {
            if (story.Top is not null)
            {
                living.Add(story);
            }
        }

        living.Sort((a, b) => a.StartNumber.CompareTo(b.StartNumber));
        var holders = HoldersByPlaces(simulation, living);
        var ahead = new Dictionary<Story, Story>();
        foreach (var places in simulation.AllPlaces.Where(places => !places.MayOvertake))
        {
            places.AddLineTo(ahead);
        }

        var waiting = living.Where(story => story.WaitsFor is not null).ToList();
        var named = holders.ToDictionary(
            pair => pair.Key,
            pair => (IReadOnlyList<PlacesHolder>)pair.Value.ConvertAll(holder => new PlacesHolder(holder.Name, pair.Key.HeldBy(holder)))
        );
        var lines = waiting.ConvertAll(story => LineOf(story, named[story.WaitsFor!], ahead.GetValueOrDefault(story)));
        return new WaitReport(simulation.Now, nothingDue && lines.Count > 0, lines, new RingSearch(holders, ahead).Find(waiting));
    }

    private static Dictionary<Places, List<Story>> HoldersByPlaces(Simulation simulation, List<Story> living)
    {
        var holders = simulation.AllPlaces.ToDictionary(places => places, _ => new List<Story>());
        foreach (var story in living)
        {
            foreach (var holding in story.Holdings.All())
            {
                holders[simulation.PlacesAt(holding.PlacesIndex)].Add(story);
            }
        }

        return holders;
    }

    private static WaitLine LineOf(Story story, IReadOnlyList<PlacesHolder> holders, Story? ahead)
    {
        var places = story.WaitsFor!;
        return new WaitLine(story.Name, places.Name, story.Wanted, places.Held, places.Capacity, story.WaitsSince, holders, ahead?.Name);
    }
}
