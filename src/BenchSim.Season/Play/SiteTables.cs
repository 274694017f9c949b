using System.Collections.Concurrent;
using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>What the calendar fixes before any season is played: work days, places and openings by day. Shared by all threads.</summary>
internal sealed class SiteTables
{
    /// <summary>Places of a space without a limit: more than any plan can fill, small enough to add up.</summary>
    public const int NoLimit = 1_000_000_000;

    private readonly ConcurrentDictionary<PlaceLimits, PlacesInTime> _byLimits = new();

    public SiteTables(Scenario scenario, int days)
    {
        Days = days;
        RoundHour = scenario.Rules.RoundAt.Hour + (scenario.Rules.RoundAt.Minute / 60.0);
        IsWorkDay = [.. Enumerable.Range(0, days + 1).Select(day => scenario.Rules.IsWorkDay(scenario.Window.Opens.AddDays(day)))];
        NextWorkDay = new int[days + 1];
        for (var day = days; day >= 0; day--)
        {
            NextWorkDay[day] = IsWorkDay[day] || day == days ? day : NextWorkDay[day + 1];
        }

        Places = [.. scenario.Spaces.Select(space => PlacesByDay(scenario, space, days, limited: true))];
        Open = [.. scenario.Spaces.Select(space => PlacesByDay(scenario, space, days, limited: false))];
        Aisle = [.. scenario.Spaces.Select(space => space.AislePlaces)];
        IsDark = [.. scenario.Spaces.Select(space => space.IsChamber)];
    }

    public int Days { get; }

    /// <summary>Hour of the day of the round.</summary>
    public double RoundHour { get; }

    public bool[] IsWorkDay { get; }

    /// <summary>The work day at or after a day; the day past the end when there is none.</summary>
    public int[] NextWorkDay { get; }

    /// <summary>Places by space and day, 0 while its house is shut.</summary>
    public int[][] Places { get; }

    /// <summary><see cref="NoLimit"/> by space and day, 0 while its house is shut.</summary>
    public int[][] Open { get; }

    public int[] Aisle { get; }

    /// <summary>Whether nothing grows in a space, as in a chamber without light.</summary>
    public bool[] IsDark { get; }

    /// <summary>Places under some limits; worked out once for each.</summary>
    public PlacesInTime Under(PlaceLimits limits) =>
        _byLimits.GetOrAdd(limits, static (asked, tables) => new PlacesInTime(tables.ByDay(asked)), this);

    /// <summary>Places of a space on a day as the file gives them, the house's opening date kept.</summary>
    public static int[] PlacesByDay(Scenario scenario, Space space, int days, bool limited)
    {
        var opens = 0;
        var house = scenario.Houses.FirstOrDefault(house => string.Equals(house.Id, space.HouseId, StringComparison.Ordinal));
        if (house is { Opening: HouseOpening.FromDate, OpensOn: { } date })
        {
            opens = date.DayNumber - scenario.Window.Opens.DayNumber;
        }

        var places = new int[days];
        for (var day = Math.Max(0, opens); day < days; day++)
        {
            places[day] = limited ? PlacesOn(space, scenario.Window.Opens.AddDays(day)) : NoLimit;
        }

        return places;
    }

    /// <summary>The first work day whose round is at or after an instant; the day past the end when there is none.</summary>
    public int RoundAtOrAfter(double hour) => NextWorkDay[Math.Min(DayAtOrAfter(hour, RoundHour), Days)];

    /// <summary>The first day, worked or not, whose round would be at or after an instant.</summary>
    public static int DayAtOrAfter(double hour, double roundHour)
    {
        // A round is not missed for the last bit of a number: a ten-thousandth of a second, in days.
        const double LastBit = 1e-9;
        return (int)Math.Max(0, Math.Ceiling(((hour - roundHour) / 24) - LastBit));
    }

    private int[][] ByDay(PlaceLimits limits) =>
        [
            .. Places.Select(
                (places, space) =>
                    !limits.IsLimited(space) ? Open[space]
                    : limits.Added(space) == 0 ? places
                    : Added(places, Open[space], limits.Added(space))
            ),
        ];

    // Nothing is added while the house is shut.
    private static int[] Added(int[] places, int[] open, int more) =>
        [.. places.Select((each, day) => open[day] == 0 ? 0 : (int)Math.Clamp((long)each + more, 0, NoLimit))];

    private static int PlacesOn(Space space, DateOnly date)
    {
        var places = space.Places;
        foreach (var change in space.Changes)
        {
            if (change.From <= date)
            {
                places = change.Places;
            }
        }

        return places;
    }
}
