using System.Globalization;

namespace BenchSim.Engine;

/// <summary>One process that stands in line.</summary>
/// <param name="Process">Who.</param>
/// <param name="Places">For which places.</param>
/// <param name="Wanted">How many it wants.</param>
/// <param name="Held">How many of them are held, by anyone.</param>
/// <param name="Capacity">How many there are.</param>
/// <param name="Since">Since when, in days.</param>
/// <param name="Holders">Who holds them, in the order in which they were started.</param>
/// <param name="Behind">The process directly before it in line; null if it is the first.</param>
public sealed record WaitLine(
    string Process,
    string Places,
    int Wanted,
    int Held,
    int Capacity,
    double Since,
    IReadOnlyList<PlacesHolder> Holders,
    string? Behind
)
{
    private const int MostNamed = 5;

    /// <summary>The line as a sentence.</summary>
    public override string ToString()
    {
        var behind = Behind is null ? "" : $", behind {Behind} in line";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Process} waits since day {Since:0.####} for {Wanted} of {Places}: {Held} of {Capacity} held{By()}{behind}"
        );
    }

    private string By()
    {
        if (Holders.Count == 0)
        {
            return "";
        }

        var named = string.Join(", ", Holders.Take(MostNamed).Select(holder => $"{holder.Process} ({holder.Count})"));
        var more = Holders.Count > MostNamed ? $" and {Holders.Count - MostNamed} more" : "";
        return $" by {named}{more}";
    }
}
