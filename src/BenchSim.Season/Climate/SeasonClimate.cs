using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>
/// The climate of one season as a plan sees it: weather, heat sums, nights and heating, by the plan's own airs, media and laws.
/// </summary>
/// <param name="layout">What the plan needs.</param>
/// <param name="heat">Heat of the season.</param>
internal sealed class SeasonClimate(ClimateLayout layout, SeasonHeat heat)
{
    /// <summary>Weather of the season.</summary>
    public SeasonWeather Weather => heat.Weather;

    /// <summary>What the plan needs.</summary>
    public ClimateLayout Layout => layout;

    /// <summary>Heat of the season.</summary>
    public SeasonHeat Heat => heat;

    /// <summary>Running sum of the medium's temperature above -100 C, for means along a path.</summary>
    public HeatTable TemperatureSum(int medium) => heat.Table(layout.WarmthSlot(medium));

    /// <summary>Running heat sum of a law of emergence in a medium.</summary>
    public HeatTable EmergenceSum(int emergence, int medium) => heat.Table(layout.EmergenceSlot(emergence, medium));

    /// <summary>Running heat sum of a law of growth in an air, the month's light included.</summary>
    public HeatTable GrowthSum(int growth, int air) => heat.Table(layout.GrowthSlot(growth, air));

    /// <summary>
    /// Temperature of the night after the round of a day, by day, in an air, degrees Celsius: outdoors the next day's lowest; in a house
    /// the lowest from 18:00 to 06:00.
    /// </summary>
    public double[] NightC(int air) => heat.NightC(layout.NumberOf(air));

    /// <summary>A day in a house in a few figures.</summary>
    public DayInHouse Look(int house, int day) => heat.Look(layout.NumberOf(house + 1), day);

    /// <summary>Kelvin-hours the heater of a house must make up, by day; 0 in an unheated house.</summary>
    public double[] HeatingKelvinHours(int house) => heat.HeatingKelvinHours(layout.NumberOf(house + 1));
}
