using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What is told of a season played with places without limit.</summary>
/// <param name="wanted">Plants wanted by batch.</param>
internal sealed class RoomySeason(int[] wanted)
{
    private const long BytesAnArray = 64;

    /// <summary>Stands for one that was not played, where no figure asks for it.</summary>
    public static RoomySeason NotPlayed { get; } = new([]);

    /// <summary>Places held: [space][day].</summary>
    public int[][] Held { get; private set; } = [];

    /// <summary>Whether it fits, days of weather hold excepted.</summary>
    public bool Fits { get; private set; }

    /// <summary>Wanted plants that reached the field.</summary>
    public long PlantsOut { get; private set; }

    /// <summary>
    /// Whether at least half of the plants missing are of batches of which something was thrown out after standing too long.
    /// </summary>
    public bool IsThrownOut { get; private set; }

    /// <summary>Bytes that a copy takes, about.</summary>
    public long Bytes => Held.Sum(row => (sizeof(int) * (long)row.Length) + BytesAnArray) + BytesAnArray;

    /// <summary>A copy that stays as it is when another season is taken.</summary>
    public RoomySeason Copy() =>
        new(wanted)
        {
            Held = [.. Held.Select(row => (int[])row.Clone())],
            Fits = Fits,
            PlantsOut = PlantsOut,
            IsThrownOut = IsThrownOut,
        };

    /// <summary>Takes it from a season.</summary>
    /// <param name="season">The season; its arrays are read, not copied.</param>
    public void Read(SeasonResult season)
    {
        Held = season.Held;
        Fits = season.Fits;
        PlantsOut = season.PlantsOut;
        IsThrownOut = IsMostlyThrownOut(season.Batches);
    }

    // Batches, not trays: a tray thrown out does not tell how many of its plants would have been wanted.
    private bool IsMostlyThrownOut(BatchOutcome[] batches)
    {
        long missing = 0;
        long missingOfThrownOut = 0;
        for (var batch = 0; batch < batches.Length; batch++)
        {
            var ofBatch = Math.Max(0, wanted[batch] - batches[batch].PlantsOut);
            var discarded = batches[batch].Discarded;
            missing += ofBatch;
            if (discarded[(int)DiscardReason.OverHeld] + discarded[(int)DiscardReason.FlatOverHeld] > 0)
            {
                missingOfThrownOut += ofBatch;
            }
        }

        return 2 * missingOfThrownOut >= missing;
    }
}
