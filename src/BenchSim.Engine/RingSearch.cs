namespace BenchSim.Engine;

/// <summary>
/// Finds rings among processes that wait: a walk in depth from each, along "waits for places that it holds" and "stands in line
/// behind it". Coming back to a process of the walk closes a ring. Each process is gone through once, so not every ring is named, but
/// where there is one, one is found.
/// </summary>
internal sealed class RingSearch
{
    private readonly Dictionary<Places, List<Story>> _waitingHolders;
    private readonly Dictionary<Story, Story> _ahead;
    private readonly HashSet<Story> _done = [];
    private readonly Dictionary<Story, int> _onPath = [];
    private readonly List<(Story Story, int Next)> _path = [];
    private readonly List<IReadOnlyList<string>> _rings = [];

    /// <summary>A search.</summary>
    /// <param name="holders">Who holds which places.</param>
    /// <param name="ahead">Who stands directly before whom in line.</param>
    public RingSearch(Dictionary<Places, List<Story>> holders, Dictionary<Story, Story> ahead)
    {
        _waitingHolders = holders.ToDictionary(pair => pair.Key, pair => pair.Value.FindAll(story => story.WaitsFor is not null));
        _ahead = ahead;
    }

    public IReadOnlyList<IReadOnlyList<string>> Find(List<Story> waiting)
    {
        foreach (var story in waiting)
        {
            if (_done.Contains(story))
            {
                continue;
            }

            Enter(story);
            while (_path.Count > 0)
            {
                Step();
            }
        }

        return _rings;
    }

    private void Enter(Story story)
    {
        _onPath.Add(story, _path.Count);
        _path.Add((story, 0));
    }

    private void Step()
    {
        var (story, next) = _path[^1];
        if (BlockerOf(story, next) is not { } blocker)
        {
            _path.RemoveAt(_path.Count - 1);
            _onPath.Remove(story);
            _done.Add(story);
            return;
        }

        _path[^1] = (story, next + 1);
        if (_onPath.TryGetValue(blocker, out var start))
        {
            _rings.Add(_path.Skip(start).Select(step => step.Story.Name).ToList());
        }
        else if (!_done.Contains(blocker))
        {
            Enter(blocker);
        }
    }

    // First those who hold the places and wait themselves, then the one ahead in line.
    private Story? BlockerOf(Story story, int number)
    {
        var holders = _waitingHolders[story.WaitsFor!];
        if (number < holders.Count)
        {
            return holders[number];
        }

        return number == holders.Count && _ahead.TryGetValue(story, out var ahead) && !holders.Contains(ahead) ? ahead : null;
    }
}
