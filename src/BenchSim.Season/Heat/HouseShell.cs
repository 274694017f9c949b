namespace BenchSim.Season.Heat;

/// <summary>The outside of a house and the air in it, from its dimensions. All faces lose heat; the floor does not.</summary>
/// <param name="RoofM2">Roof, square metres.</param>
/// <param name="SidesM2">Both side walls together, square metres.</param>
/// <param name="EndsM2">Both end walls together, square metres.</param>
/// <param name="FloorM2">Floor, square metres.</param>
/// <param name="VolumeM3">Air in it, cubic metres.</param>
/// <param name="LengthM">Length, metres.</param>
public sealed record HouseShell(double RoofM2, double SidesM2, double EndsM2, double FloorM2, double VolumeM3, double LengthM)
{
    /// <summary>Width, metres.</summary>
    public double WidthM => FloorM2 / LengthM;

    /// <summary>Roof, sides and ends together, square metres.</summary>
    public double CoverM2 => RoofM2 + SidesM2 + EndsM2;

    /// <summary>
    /// A hoop house: half a circle over its width, on upright side walls if it has any. Roof pi r L; ends pi r^2 + 2 h W together; volume
    /// (pi r^2 / 2 + h W) L, with r = W / 2 (tests/Published/data/heat_examples.csv, C5).
    /// </summary>
    /// <param name="widthM">Width W, metres, above 0.</param>
    /// <param name="lengthM">Length L, metres, above 0.</param>
    /// <param name="sideWallM">Height h of the upright part of the sides, metres, 0 or more.</param>
    public static HouseShell Hoop(double widthM, double lengthM, double sideWallM = 0)
    {
        RequirePositive(widthM, nameof(widthM));
        RequirePositive(lengthM, nameof(lengthM));
        RequireNotNegative(sideWallM, nameof(sideWallM));
        var radius = widthM / 2;
        var end = (Math.PI * radius * radius / 2) + (sideWallM * widthM);
        return new HouseShell(Math.PI * radius * lengthM, 2 * sideWallM * lengthM, 2 * end, widthM * lengthM, end * lengthM, lengthM);
    }

    /// <summary>
    /// A gable house: two equal roof slopes. Slope s = sqrt((W/2)^2 + (ridge - eave)^2); roof 2 s L; an end is the wall below the eave
    /// and the triangle above it, W (eave + ridge) / 2.
    /// </summary>
    /// <param name="widthM">Width W, metres, above 0.</param>
    /// <param name="lengthM">Length L, metres, above 0.</param>
    /// <param name="eaveM">Height of the side walls, metres, 0 or more.</param>
    /// <param name="ridgeM">Height of the ridge, metres, above the eave.</param>
    public static HouseShell Gable(double widthM, double lengthM, double eaveM, double ridgeM)
    {
        RequirePositive(widthM, nameof(widthM));
        RequirePositive(lengthM, nameof(lengthM));
        RequireNotNegative(eaveM, nameof(eaveM));
        if (!(ridgeM > eaveM && double.IsFinite(ridgeM)))
        {
            throw new ArgumentOutOfRangeException(nameof(ridgeM), ridgeM, "The ridge must lie above the eave.");
        }

        var slope = Math.Sqrt((widthM * widthM / 4) + ((ridgeM - eaveM) * (ridgeM - eaveM)));
        var end = widthM * (eaveM + ridgeM) / 2;
        return new HouseShell(2 * slope * lengthM, 2 * eaveM * lengthM, 2 * end, widthM * lengthM, end * lengthM, lengthM);
    }

    private static void RequirePositive(double value, string name)
    {
        if (!(value > 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "A dimension must be above 0.");
        }
    }

    private static void RequireNotNegative(double value, string name)
    {
        if (!(value >= 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "A height must be 0 or more.");
        }
    }
}
