namespace BenchSim.Study.Mending;

/// <summary>How changes are sought and tried.</summary>
public sealed record MendOptions
{
    /// <summary>Seasons in which what was found is tried, 1 or more: those that other commands play.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Threads to play on, 1 or more; 0 for one a core. The answer does not depend on it.</summary>
    public int Threads { get; init; }

    /// <summary>Share of seasons in which the plan must fit, between 0 and 1.</summary>
    public double Goal { get; init; } = 0.9;

    /// <summary>Whether days on which only the weather kept trays count as late too. The rules of the site leave them out.</summary>
    public bool CountsWeather { get; init; }

    /// <summary>Seasons in which every change is looked at first. They come after those of the trial, as do the further ones.</summary>
    public int FirstSeasons { get; init; } = 30;

    /// <summary>Seasons in which the promising ones are looked at, the first ones among them.</summary>
    public int SearchSeasons { get; init; } = 200;

    /// <summary>Changes that are looked at in thrice the first seasons, in each step.</summary>
    public int Hopeful { get; init; } = 30;

    /// <summary>Changes, free ones and bought ones each, that are looked at in all those seasons, in each step.</summary>
    public int Promising { get; init; } = 6;

    /// <summary>Of the seasons of the trial, those in which changes are tried that are shown beside the chosen ones, at most.</summary>
    public int SeasonsAlone { get; init; } = 400;

    /// <summary>Changes joined at most.</summary>
    public int MostJoined { get; init; } = 8;
}
