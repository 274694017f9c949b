using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What is told of a season played with places without limit.</summary>
internal sealed class RoomySeason
{
    private const long BytesAnArray = 64;

    /// <summary>Stands for one that was not played, where no figure asks for it.</summary>
    public static RoomySeason NotPlayed { get; } = new();

    /// <summary>Places held: [space][day].</summary>
    public int[][] Held { get; private set; } = [];

    /// <summary>Whether it fits, days of weather hold excepted.</summary>
    public bool Fits { get; private set; }

    /// <summary>Wanted plants that reached the field.</summary>
    public long PlantsOut { get; private set; }

    /// <summary>
    /// Whether at least half of the plants missing are of batches of which something was thrown out after standing too long.
    /// </summary>
    public bool IsShortForThrownOut { get; private set; }

    /// <summary>Bytes that a copy takes, about.</summary>
    public long Bytes => Held.Sum(row => (sizeof(int) * (long)row.Length) + BytesAnArray) + BytesAnArray;

    /// <summary>Takes it from a season.</summary>
    /// <param name="season">The season; its arrays are read, not copied.</param>
    public void Read(SeasonResult season) =>
        (Held, Fits, PlantsOut, IsShortForThrownOut) = (season.Held, season.Fits, season.PlantsOut, season.IsShortForThrownOut);

    /// <summary>A copy that stays as it is when another season is taken.</summary>
    public RoomySeason Copy() =>
        new()
        {
            Held = [.. Held.Select(row => (int[])row.Clone())],
            Fits = Fits,
            PlantsOut = PlantsOut,
            IsShortForThrownOut = IsShortForThrownOut,
        };
}
