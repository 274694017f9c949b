using BenchSim.Report.Words;

namespace BenchSim.Answers.Sweep;

/// <summary>The tasks that have no result that can be merged: how many, and the first of them in ranges.</summary>
internal sealed class TasksLacking
{
    private const int MostRanges = 20;

    private readonly List<(int First, int Last)> _ranges = [];
    private readonly int[] _states = new int[Enum.GetValues<TaskState>().Length];
    private int _ranged;

    /// <summary>How many.</summary>
    public int Count { get; private set; }

    /// <summary>The first of them, in ranges.</summary>
    public IReadOnlyList<(int First, int Last)> Ranges => _ranges;

    /// <summary>Those beyond these ranges.</summary>
    public int More => Count - _ranged;

    /// <summary>How many are so.</summary>
    public int Of(TaskState state) => _states[(int)state];

    /// <summary>Adds a task; their numbers rise.</summary>
    public void Add(int number, TaskState state)
    {
        Count++;
        _states[(int)state]++;
        if (More > 1)
        {
            return;
        }

        if (_ranges.Count > 0 && _ranges[^1].Last == number - 1)
        {
            _ranges[^1] = (_ranges[^1].First, number);
            _ranged++;
        }
        else if (_ranges.Count < MostRanges)
        {
            _ranges.Add((number, number));
            _ranged++;
        }
    }

    /// <summary>"3, 17 to 20 and 5 more".</summary>
    /// <param name="most">Ranges that are named.</param>
    public string Named(int most)
    {
        var shown = _ranges.Take(most).ToArray();
        var rest = Count - shown.Sum(range => range.Last - range.First + 1);
        string[] words = [.. shown.Select(range => Words(range)), .. rest > 0 ? [$"{Numbers.Whole(rest)} more"] : Array.Empty<string>()];
        return PlainText.List(words);
    }

    private static string Words((int First, int Last) range) =>
        range.First == range.Last ? Numbers.Whole(range.First) : $"{Numbers.Whole(range.First)} to {Numbers.Whole(range.Last)}";
}
