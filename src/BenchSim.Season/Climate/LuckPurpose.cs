namespace BenchSim.Season.Climate;

/// <summary>
/// What a draw is for: the third word of every counter, so that no two purposes share luck. Generated weather, which has a key of its own,
/// uses
/// 1, 2 and 8 (<see cref="Weather.WeatherGenerator"/>; docs/model.md section 8).
/// </summary>
public enum LuckPurpose
{
    /// <summary>The year of a weather record.</summary>
    WeatherYear = 1,

    /// <summary>The batch's factor on the heat sum of emergence.</summary>
    Emergence = 3,

    /// <summary>The batch's factor on growth.</summary>
    Growth = 4,

    /// <summary>The packet's germination.</summary>
    Packet = 5,

    /// <summary>Fill and losses of a tray.</summary>
    Tray = 6,

    /// <summary>Seedlings of a flat.</summary>
    Flat = 7,

    /// <summary>The share of its plants that a batch loses.</summary>
    StandLoss = 9,

    /// <summary>Whether a mishap strikes, and when.</summary>
    Mishap = 10,

    /// <summary>Which trays are looked at.</summary>
    Lot = 11,
}
