namespace BenchSim.Season.Heat;

/// <summary>Heat a house loses for each kelvin that it is warmer than outdoors: the sum of U A of its faces, and leaking air.</summary>
/// <param name="CoverWattsPerKelvin">Through the faces, watts a kelvin.</param>
/// <param name="AirWattsPerKelvin">By leaking air, watts a kelvin.</param>
public readonly record struct HeatLoss(double CoverWattsPerKelvin, double AirWattsPerKelvin)
{
    /// <summary>
    /// Heat that a cubic metre of air takes for each kelvin, watt-hours: 1.2 kg/m3 x 1006 J/kg K / 3600 = 0.335, in practice 0.33
    /// (tests/Published/data/heat_examples.csv, C6). The customary 0.018 Btu a cubic foot and degree Fahrenheit is 0.3353: 1.6 % more
    /// heat by leaking air, about 0.2 % of a house.
    /// </summary>
    public const double AirWattHours = 0.33;

    /// <summary>Both together, watts a kelvin.</summary>
    public double WattsPerKelvin => CoverWattsPerKelvin + AirWattsPerKelvin;

    /// <summary>Works out the loss of a house: sum of U A + 0.33 N V.</summary>
    /// <param name="parts">Faces.</param>
    /// <param name="airChanges">Changes of the air an hour N, 0 or more.</param>
    /// <param name="volumeM3">Air in the house V, cubic metres, 0 or more.</param>
    public static HeatLoss Of(ReadOnlySpan<HeatLossPart> parts, double airChanges, double volumeM3)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(airChanges);
        ArgumentOutOfRangeException.ThrowIfNegative(volumeM3);
        var cover = 0.0;
        foreach (var part in parts)
        {
            if (!(part is { Amount: >= 0, UValue: >= 0 }))
            {
                throw new ArgumentOutOfRangeException(nameof(parts), part, "Areas and U values must be 0 or more.");
            }

            cover += part.WattsPerKelvin;
        }

        return new HeatLoss(cover, AirWattHours * airChanges * volumeM3);
    }

    /// <summary>Works out the loss of a house with one covering all over.</summary>
    /// <param name="shell">Shell.</param>
    /// <param name="uValue">U value of the covering, watts a square metre and kelvin.</param>
    /// <param name="airChanges">Changes of the air an hour, 0 or more.</param>
    public static HeatLoss Of(HouseShell shell, double uValue, double airChanges)
    {
        ArgumentNullException.ThrowIfNull(shell);
        return Of([new HeatLossPart(shell.CoverM2, uValue)], airChanges, shell.VolumeM3);
    }
}
