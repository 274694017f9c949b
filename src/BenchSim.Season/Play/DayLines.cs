using System.Collections.Immutable;

namespace BenchSim.Season.Play;

/// <summary>What befell one batch in a day, until it is told: trays to which the same happened share a line.</summary>
internal sealed class DayLines
{
    private readonly List<Line> _lines = [];

    /// <summary>Keeps a line that stands alone.</summary>
    public void Add(string text) => _lines.Add(new Line("", flat: false, (_, _) => text));

    /// <summary>Keeps what happened to some trays.</summary>
    /// <param name="key">The same for what may share a line.</param>
    /// <param name="flat">Whether they are flats.</param>
    /// <param name="first">Lowest index, from 0.</param>
    /// <param name="count">How many.</param>
    /// <param name="plants">Plants in them, where that is told.</param>
    /// <param name="tell">The line, from the names of all its trays and all their plants.</param>
    public void Add(string key, bool flat, int first, int count, int plants, Func<TrayRuns, int, string> tell)
    {
        var line = _lines.Find(other => other.Flat == flat && string.Equals(other.Key, key, StringComparison.Ordinal));
        if (line is null)
        {
            line = new Line(key, flat, tell);
            _lines.Add(line);
        }

        line.Trays.Add(first, count);
        line.Plants += plants;
    }

    /// <summary>Tells the lines of the day in the order in which each began, and forgets them.</summary>
    public void TellInto(ImmutableArray<string>.Builder story)
    {
        story.AddRange(_lines.Select(line => line.Tell(line.Trays, line.Plants)));
        _lines.Clear();
    }

    private sealed class Line(string key, bool flat, Func<TrayRuns, int, string> tell)
    {
        public string Key => key;

        public bool Flat => flat;

        public Func<TrayRuns, int, string> Tell => tell;

        public TrayRuns Trays { get; } = new(flat);

        public int Plants { get; set; }
    }
}
