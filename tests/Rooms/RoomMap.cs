using Support;

namespace Rooms;

/// <summary>Which room of a project under src uses which.</summary>
internal sealed class RoomMap
{
    private readonly SortedDictionary<string, SortedDictionary<string, string>> _arrows = new(StringComparer.Ordinal);

    /// <summary>The rooms of some files.</summary>
    public RoomMap(IReadOnlyCollection<SourceFile> files)
    {
        var declared = files
            .GroupBy(file => file.Room, StringComparer.Ordinal)
            .ToDictionary(
                room => room.Key,
                room => room.SelectMany(file => file.Declared).ToHashSet(StringComparer.Ordinal),
                StringComparer.Ordinal
            );
        foreach (var room in declared.Keys)
        {
            _arrows[room] = new SortedDictionary<string, string>(StringComparer.Ordinal);
        }

        foreach (var file in files.OrderBy(file => file.Path, StringComparer.Ordinal))
        {
            foreach ((var room, var types) in declared)
            {
                if (file.Uses(room, types).Order(StringComparer.Ordinal).FirstOrDefault() is { } type)
                {
                    _arrows[file.Room].TryAdd(room, $"{type} in {file.Path}");
                }
            }
        }
    }

    /// <summary>The rooms of one project.</summary>
    public static RoomMap Of(string project) => new([.. Sources.Of("src/" + project).Select(Sources.Read).OfType<SourceFile>()]);

    /// <summary>Rooms that use each other in a circle, each group in order of name.</summary>
    public IReadOnlyList<string[]> Circles()
    {
        var reached = _arrows.Keys.ToDictionary(room => room, Reached, StringComparer.Ordinal);
        return
        [
            .. _arrows
                .Keys.Where(room => reached[room].Contains(room))
                .Select(room => reached[room].Where(other => reached[other].Contains(room)).Order(StringComparer.Ordinal).ToArray())
                .DistinctBy(circle => circle[0], StringComparer.Ordinal),
        ];
    }

    /// <summary>The arrows between some rooms, each with one place that makes it.</summary>
    public IEnumerable<string> Arrows(IReadOnlyCollection<string> rooms) =>
        from room in rooms
        from arrow in _arrows[room]
        where rooms.Contains(arrow.Key, StringComparer.Ordinal)
        select $"{room} -> {arrow.Key}: {arrow.Value}";

    private HashSet<string> Reached(string room)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var next = new Stack<string>(_arrows[room].Keys);
        while (next.TryPop(out var at))
        {
            if (reached.Add(at))
            {
                foreach (var other in _arrows[at].Keys)
                {
                    next.Push(other);
                }
            }
        }

        return reached;
    }
}
