using BenchSim.Season.Inputs;

namespace BenchSim.Season.Evidence;

/// <summary>Lows of the night by own thermometers in the houses, beside those by set-point and weather.</summary>
internal sealed class OwnNights
{
    private const int Week = 7;

    private readonly PastSite _site;

    // By house, how much warmer than by set-point and weather the night before a day was.
    private readonly Dictionary<int, double>[] _gaps;

    public OwnNights(PastSite site)
    {
        _site = site;
        _gaps = [.. site.Scenario.Houses.Select(_ => new Dictionary<int, double>())];
        foreach (var row in site.Scenario.Log.Where(row => row is { What: LogKind.Low, Count: not null, Space: not null }))
        {
            var (house, day) = (HouseOf(row.Space!), row.Date.DayNumber - site.Plan.FirstDay.DayNumber);
            if (house >= 0 && day > 0 && day <= site.Past.Today)
            {
                // The night after the round of a day is that before the next.
                _gaps[house][day] = row.Count!.Value - site.Climate.NightC(house + 1)[day - 1];
            }
        }
    }

    /// <summary>The weeks that a batch spent in houses from one day to another, house by house.</summary>
    /// <param name="path">Its way.</param>
    /// <param name="from">First day.</param>
    /// <param name="to">Last day.</param>
    public IEnumerable<HouseWeeks> Of(TrayPast path, int from, int to) =>
        Stays(path, from, to).GroupBy(stay => stay.House).Select(group => Of(group.Key, [.. group.Select(stay => (stay.From, stay.To))]));

    private HouseWeeks Of(int house, (int From, int To)[] stays)
    {
        var (weeks, unwritten, known) = (0, 0, new List<double>());
        foreach (var (from, to) in stays)
        {
            // What is left over of less than a week goes with the last.
            var whole = Math.Max(1, (to - from) / Week);
            for (var week = 0; week < whole; week++)
            {
                var (start, end) = (from + (week * Week), week == whole - 1 ? to : from + ((week + 1) * Week));
                double[] nights =
                [
                    .. Enumerable.Range(start + 1, end - start).Where(_gaps[house].ContainsKey).Select(day => _gaps[house][day]),
                ];
                weeks++;
                unwritten += nights.Length == 0 ? 1 : 0;
                known.AddRange(nights);
            }
        }

        var mean = known.Count == 0 ? 0 : known.Average();
        return new HouseWeeks(_site.Scenario.Houses[house].Name, weeks, unwritten, known.Count, mean);
    }

    // Spaces of one house that follow one another are one stay. Outdoors the weather was written down, or it was not: that is told of the
    // season as a whole.
    private IEnumerable<(int House, int From, int To)> Stays(TrayPast path, int from, int to)
    {
        var (house, since) = (-1, from);
        foreach (var (space, day) in path.Path.Where(stay => stay.Day < to))
        {
            var next = _site.Scenario.Spaces[space].HouseId is { } id ? HouseOf(id) : -1;
            if (next != house)
            {
                if (house >= 0 && day > since)
                {
                    yield return (house, since, day);
                }

                (house, since) = (next, Math.Max(from, day));
            }
        }

        if (house >= 0 && to > since)
        {
            yield return (house, since, to);
        }
    }

    // A house itself, or that of a space.
    private int HouseOf(string id)
    {
        var space = _site.Scenario.Spaces.FirstOrDefault(each => string.Equals(each.Id, id, StringComparison.Ordinal));
        var house = space is null ? id : space.HouseId;
        return _site.Scenario.Houses.ToList().FindIndex(each => string.Equals(each.Id, house, StringComparison.Ordinal));
    }
}
