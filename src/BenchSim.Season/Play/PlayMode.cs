namespace BenchSim.Season.Play;

/// <summary>How a season is played.</summary>
internal enum PlayMode
{
    /// <summary>A season: its weather, its luck, its holds.</summary>
    Season,

    /// <summary>The planned dates: normal weather, no luck, no holds, no labour limits, no waiting for a date.</summary>
    Planning,
}
