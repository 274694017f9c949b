using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>
/// How fast seedlings come up at a temperature: the thermal-time rate with cardinal temperatures.
/// </summary>
public static class EmergenceRate
{
    /// <summary>
    /// Degree-days gained in one day at a constant temperature of the medium. The rate rises in a straight line from the base
    /// to the optimum, is level from there to the plateau's end, falls in a straight line from it to the ceiling, and is 0 outside the
    /// base and the ceiling.
    /// </summary>
    /// <param name="temperatureC">Temperature of the medium, degrees Celsius; any finite number.</param>
    /// <param name="baseC">Temperature at and below which nothing comes up, degrees Celsius.</param>
    /// <param name="optimumC">Coolest temperature of the fastest emergence, degrees Celsius; above <paramref name="baseC"/>.</param>
    /// <param name="plateauC">Warmest of these, degrees Celsius; <paramref name="optimumC"/> or above.</param>
    /// <param name="ceilingC">Temperature at and above which nothing comes up, degrees Celsius; above <paramref name="plateauC"/>.</param>
    /// <returns>Degree-days a day, from 0 to <paramref name="optimumC"/> - <paramref name="baseC"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The optimum is not above the base, the plateau ends below the optimum, the ceiling is not above the plateau, or a temperature is
    /// not a number.
    /// </exception>
    public static double At(double temperatureC, double baseC, double optimumC, double plateauC, double ceilingC)
    {
        // Written as "not above" rather than "at or below" so that a NaN is refused too.
        if (!(optimumC > baseC))
        {
            throw new ArgumentOutOfRangeException(nameof(optimumC), optimumC, "The optimum must lie above the base.");
        }

        if (!(plateauC >= optimumC))
        {
            throw new ArgumentOutOfRangeException(nameof(plateauC), plateauC, "The plateau must not end below the optimum.");
        }

        if (!(ceilingC > plateauC))
        {
            throw new ArgumentOutOfRangeException(nameof(ceilingC), ceilingC, "The ceiling must lie above the plateau.");
        }

        if (double.IsNaN(temperatureC))
        {
            throw new ArgumentOutOfRangeException(nameof(temperatureC), temperatureC, "The temperature must be a number.");
        }

        if (temperatureC <= baseC || temperatureC >= ceilingC)
        {
            return 0;
        }

        return temperatureC <= plateauC
            ? Math.Min(temperatureC, optimumC) - baseC
            : (optimumC - baseC) * (ceilingC - temperatureC) / (ceilingC - plateauC);
    }

    /// <summary>Degree-days that a crop gains in one day at a constant temperature of the medium.</summary>
    /// <param name="crop">The crop; its temperatures are in their order.</param>
    /// <param name="temperatureC">Temperature of the medium, degrees Celsius; any finite number.</param>
    /// <returns>Degree-days a day, 0 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">As for temperatures out of their order.</exception>
    public static double Of(Crop crop, double temperatureC) =>
        At(temperatureC, crop.EmergeBaseC, crop.EmergeOptimumC, crop.EmergePlateauC, crop.EmergeCeilingC);
}
