namespace BenchSim.Season.Climate;

/// <summary>
/// How fast seedlings come up at a temperature: the thermal-time rate with cardinal temperatures.
/// </summary>
public static class EmergenceRate
{
    /// <summary>
    /// Degree-days gained in one day at a constant temperature of the medium. The rate rises in a straight line from the base
    /// to the optimum, falls in a straight line from the optimum to the ceiling, and is 0 outside the base and the ceiling.
    /// </summary>
    /// <param name="temperatureC">Temperature of the medium, degrees Celsius; any finite number.</param>
    /// <param name="baseC">Temperature at and below which nothing comes up, degrees Celsius.</param>
    /// <param name="optimumC">Temperature of the fastest emergence, degrees Celsius; above <paramref name="baseC"/>.</param>
    /// <param name="ceilingC">Temperature at and above which nothing comes up, degrees Celsius; above <paramref name="optimumC"/>.</param>
    /// <returns>Degree-days a day, from 0 to <paramref name="optimumC"/> - <paramref name="baseC"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The optimum is not above the base, the ceiling is not above the optimum, or a temperature is not a number.
    /// </exception>
    public static double At(double temperatureC, double baseC, double optimumC, double ceilingC)
    {
        // Written as "not above" rather than "at or below" so that a NaN is refused too.
        if (!(optimumC > baseC))
        {
            throw new ArgumentOutOfRangeException(nameof(optimumC), optimumC, "The optimum must lie above the base.");
        }

        if (!(ceilingC > optimumC))
        {
            throw new ArgumentOutOfRangeException(nameof(ceilingC), ceilingC, "The ceiling must lie above the optimum.");
        }

        if (double.IsNaN(temperatureC))
        {
            throw new ArgumentOutOfRangeException(nameof(temperatureC), temperatureC, "The temperature must be a number.");
        }

        if (temperatureC <= baseC || temperatureC >= ceilingC)
        {
            return 0;
        }

        return temperatureC <= optimumC ? temperatureC - baseC : (optimumC - baseC) * (ceilingC - temperatureC) / (ceilingC - optimumC);
    }
}
