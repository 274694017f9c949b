namespace BenchSim.Season.Heat;

/// <summary>
/// What the sun does in a house, worked out from its size (docs/heat.md): by day the air rises over outdoors until shell, leaks and the
/// ground take what the sun brings; at night the ground gives some back; open vents leave a rise in proportion to the sun.
/// </summary>
/// <param name="RiseKPerWatt">Rise of the air of the closed house for a watt a square metre of sun outdoors, kelvin.</param>
/// <param name="BackKPerWatt">Rise of the air at night for a watt a square metre from the floor, kelvin.</param>
/// <param name="VentedKPerWatt">Rise over outdoors that open vents leave for a watt a square metre of sun, kelvin.</param>
public readonly record struct HouseSun(double RiseKPerWatt, double BackKPerWatt, double VentedKPerWatt)
{
    /// <summary>Sun outdoors at which a vented rise is told, watts a square metre: full sun of a spring noon.</summary>
    public const double FullSun = 800;

    /// <summary>
    /// Share of the sun under the covering that warms the air or the ground, and is not spent on drying wet leaves: between the 0.5 of a
    /// full crop and the 0.8 of benches of seedlings, both from memory.
    /// </summary>
    public const double UsualShare = 0.7;

    /// <summary>
    /// Share of what the sheet lets through that frame, dust and low sun leave: from memory, 0.7 to 0.75.
    /// </summary>
    public const double FrameAndDust = 0.75;

    /// <summary>
    /// Heat that ground and benches take by day, watts a square metre of floor for each kelvin the air is above outdoors. Chosen so that a
    /// closed double film house rises by the 40 to 58 F that are reported (SUN-R2 and SUN-R4).
    /// </summary>
    public const double IntoGround = 5;

    /// <summary>
    /// Share of what the ground took by day that comes back in the night; the rest warms deeper ground and dries the floor.
    /// </summary>
    public const double GivenBack = 1.0 / 3;

    /// <summary>
    /// The most that comes back, watts a square metre: between the 20 of a bare floor and the 5 of one that plants shade (SUN-N12 and
    /// SUN-N13).
    /// </summary>
    public const double MostGivenBack = 12;

    /// <summary>Works it out.</summary>
    /// <param name="loss">Heat the house loses.</param>
    /// <param name="floorM2">Floor, square metres, above 0.</param>
    /// <param name="transmission">Share of the sun that comes through the covering and its frame, 0 to 1.</param>
    /// <param name="share">Share of that which does not go into drying, 0 to 1.</param>
    /// <param name="ventedK">Rise over outdoors that open vents leave in full sun, kelvin, 0 or more.</param>
    public static HouseSun Of(HeatLoss loss, double floorM2, double transmission, double share, double ventedK)
    {
        var each = loss.WattsPerKelvin / floorM2;
        return new HouseSun(transmission * share / (each + IntoGround), 1 / each, ventedK / FullSun);
    }

    /// <summary>Heat from the floor in each hour of the night after a day, watts a square metre.</summary>
    /// <param name="sun">Radiation of the day, megajoules a square metre.</param>
    /// <param name="aNightHour">Watts a square metre that spread a megajoule over the hours of the night.</param>
    public double FromGround(double sun, double aNightHour) =>
        Math.Min(MostGivenBack, GivenBack * IntoGround * RiseKPerWatt * sun * aNightHour);
}
