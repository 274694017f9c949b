namespace BenchSim.Season.Weather;

/// <summary>One row of a daily weather file, as read and not yet checked.</summary>
/// <param name="Line">Line of the file, from 1.</param>
/// <param name="Date">Date.</param>
/// <param name="TminC">Lowest temperature, degrees Celsius as the file claims.</param>
/// <param name="TmaxC">Highest temperature, degrees Celsius as the file claims.</param>
/// <param name="RainMm">Rain, millimetres as the file claims.</param>
public readonly record struct WeatherRow(int Line, DateOnly Date, double TminC, double TmaxC, double RainMm)
{
    /// <summary>Column of the date in its line, from 1; 0 when not known.</summary>
    public int DateColumn { get; init; }

    /// <summary>Column of the lowest temperature in its line, from 1; 0 when not known.</summary>
    public int TminColumn { get; init; }

    /// <summary>Column of the highest temperature in its line, from 1; 0 when not known.</summary>
    public int TmaxColumn { get; init; }

    /// <summary>Column of the rain in its line, from 1; 0 when not known.</summary>
    public int RainColumn { get; init; }
}
