using BenchSim.Season.Values;

namespace BenchSim.Cli.Commands;

/// <summary>What was asked of <c>weather</c>.</summary>
/// <param name="File">The record, as the user wrote it.</param>
/// <param name="Temperature">Units of temperatures that say none, and of those printed.</param>
/// <param name="Rain">Units of rain that says none, and of that printed.</param>
/// <param name="Out">Folder for the chart and the tables; null for none.</param>
/// <param name="Json">True for output that machines read.</param>
internal sealed record WeatherSettings(string File, UnitSystem Temperature, UnitSystem Rain, string? Out, bool Json)
{
    /// <summary>C or F.</summary>
    public string TemperatureUnit => Temperature == UnitSystem.Imperial ? "F" : "C";

    /// <summary>mm or in.</summary>
    public string RainUnit => Rain == UnitSystem.Imperial ? "in" : "mm";
}
