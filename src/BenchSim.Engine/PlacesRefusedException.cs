namespace BenchSim.Engine;

/// <summary>A request for more places than there can ever be. It is refused: waiting for them would be waiting for ever.</summary>
public sealed class PlacesRefusedException : InvalidOperationException
{
    internal PlacesRefusedException(string process, string places, int wanted, int most)
        : base($"{process} asks for {wanted} places of {places}, which never has more than {most}. Ask for fewer, or in parts.")
    {
        Places = places;
        Wanted = wanted;
        Most = most;
    }

    /// <summary>Name of the places.</summary>
    public string Places { get; }

    /// <summary>Places asked for.</summary>
    public int Wanted { get; }

    /// <summary>The most places there can be.</summary>
    public int Most { get; }
}
