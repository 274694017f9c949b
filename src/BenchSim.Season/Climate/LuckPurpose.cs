namespace BenchSim.Season.Climate;

/// <summary>What a draw is for: the third word of every counter, so that no two purposes share luck.</summary>
public enum LuckPurpose
{
    /// <summary>The year of a weather record.</summary>
    WeatherYear = 1,

    /// <summary>Days of generated weather.</summary>
    WeatherDay = 2,

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
}
