namespace BenchSim.Season.Play;

/// <summary>Places held on each day by the batches that met no limit in a season: they would hold the same without any.</summary>
internal sealed class UnhinderedPlaces
{
    private int[][] _held = [];

    /// <summary>Takes them from a season that has been played: what all held, less what those held that met a limit.</summary>
    /// <param name="held">Places held: [space][day].</param>
    /// <param name="batches">Batches as the season left them.</param>
    public void Take(int[][] held, BatchState[] batches)
    {
        if (_held.Length != held.Length)
        {
            _held = [.. held.Select(days => new int[days.Length])];
        }

        for (var space = 0; space < held.Length; space++)
        {
            held[space].CopyTo(_held[space], 0);
        }

        foreach (var batch in batches)
        {
            if (batch.HasMetLimit)
            {
                foreach (var holding in batch.Holdings)
                {
                    Add(_held[holding.Space].AsSpan(holding.Evening), -holding.Places);
                }
            }
        }
    }

    /// <summary>Adds them to the places held by others.</summary>
    /// <param name="held">Places held: [space][day].</param>
    public void AddTo(int[][] held)
    {
        for (var space = 0; space < held.Length; space++)
        {
            for (var day = 0; day < held[space].Length; day++)
            {
                held[space][day] += _held[space][day];
            }
        }
    }

    private static void Add(Span<int> days, int places)
    {
        foreach (ref var day in days)
        {
            day += places;
        }
    }
}
