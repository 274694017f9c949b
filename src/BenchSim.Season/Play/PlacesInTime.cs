namespace BenchSim.Season.Play;

/// <summary>Places by space and day, and the days on which they change.</summary>
internal sealed class PlacesInTime
{
    public PlacesInTime(int[][] byDay)
    {
        ByDay = byDay;
        var days = byDay.Length == 0 ? 0 : byDay[0].Length;
        ChangeDays = [.. Enumerable.Range(1, Math.Max(0, days - 1)).Where(day => byDay.Any(places => places[day] != places[day - 1]))];
    }

    /// <summary>Places: [space][day].</summary>
    public int[][] ByDay { get; }

    /// <summary>Days on which a space has other places than on the day before, in order.</summary>
    public int[] ChangeDays { get; }

    /// <summary>Position of the first change after a day.</summary>
    public int FirstChangeAfter(int day)
    {
        var at = Array.BinarySearch(ChangeDays, day + 1);
        return at < 0 ? ~at : at;
    }
}
