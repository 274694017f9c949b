namespace BenchSim.Season.Play;

/// <summary>Trays or flats of a batch by index, in words: "tray 3", "trays 1 to 4", "flats 1, 3 and 5 to 7".</summary>
internal sealed class TrayRuns(bool flat)
{
    private readonly SortedList<int, int> _countByFirst = [];

    public int Count => _countByFirst.Values.Sum();

    public void Add(int first, int count) => _countByFirst[first] = count;

    public override string ToString()
    {
        var runs = new List<(int First, int Last)>();
        foreach (var (first, count) in _countByFirst)
        {
            if (runs.Count > 0 && runs[^1].Last + 1 == first)
            {
                runs[^1] = (runs[^1].First, first + count - 1);
            }
            else
            {
                runs.Add((first, first + count - 1));
            }
        }

        // People count from 1.
        string[] words = [.. runs.Select(run => run.First == run.Last ? $"{run.First + 1}" : $"{run.First + 1} to {run.Last + 1}")];
        var named = words.Length == 1 ? words[0] : string.Join(", ", words[..^1]) + " and " + words[^1];
        return $"{Noun(flat, Count)} {named}";
    }

    /// <summary>"tray" or "trays", "flat" or "flats".</summary>
    public static string Noun(bool flat, int count) => (flat ? "flat" : "tray") + (count == 1 ? "" : "s");
}
