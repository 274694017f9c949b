using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>How much colder the nights are by one's own thermometer than by the weather that was observed.</summary>
/// <param name="Nights">Nights of which both are known.</param>
/// <param name="MeanK">Mean of one's own low less the observed one, kelvin; 0 without a night.</param>
public readonly record struct OwnThermometer(int Nights, double MeanK)
{
    /// <summary>Fewest nights from which on it corrects a forecast.</summary>
    public const int EnoughNights = 3;

    /// <summary>
    /// What it adds to a forecast low, kelvin, 0 or less: it may make the advice more careful, never less, as a thermometer near a wall
    /// reads warm.
    /// </summary>
    public double CorrectionK => Nights >= EnoughNights ? Math.Min(0, MeanK) : 0;

    /// <summary>The rows <c>low</c> outdoors of a log against the days observed.</summary>
    /// <param name="scenario">Scenario with its log and its observed weather.</param>
    public static OwnThermometer Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var observed = scenario.Seen.Observed.ToDictionary(day => day.Date, day => day.TminC);
        double[] gaps =
        [
            .. scenario
                .Log.Where(row => row is { What: LogKind.Low, Count: not null } && IsOutdoors(row.Space) && observed.ContainsKey(row.Date))
                .Select(row => row.Count!.Value - observed[row.Date]),
        ];
        return new OwnThermometer(gaps.Length, gaps.Length == 0 ? 0 : gaps.Average());
    }

    private static bool IsOutdoors(string? space) =>
        space is null || string.Equals(space, LogFields.Outdoors, StringComparison.OrdinalIgnoreCase);
}
