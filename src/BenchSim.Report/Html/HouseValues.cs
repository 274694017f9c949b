using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Report.Html;

/// <summary>Values of a house's shell and heater as text, under the keys of [[house]] in site.toml, and the heat content of its fuel.</summary>
public static class HouseValues
{
    /// <summary>The value of a key in the user's units; nothing for a key that holds no single value, such as a dimension.</summary>
    /// <param name="heat">Shell and heater.</param>
    /// <param name="key">Key of site.toml; "shape" for the whole shell, "heat_content" for that of the fuel.</param>
    /// <param name="units">Units of the site.</param>
    public static string Of(HouseHeat heat, string key, UnitSystem units) =>
        key switch
        {
            "shape" => Shell(heat.Shell, units),
            "covering" => heat.Covering,
            "u_value" => Loss(heat.UValue, units),
            "air_changes" => $"{Plain(heat.AirChanges)} an hour",
            "fuel" => heat.Fuel.Name,
            "heat_content" => $"{Plain(heat.Fuel.MegajoulesPerUnit)} MJ per {heat.Fuel.Unit} of {heat.Fuel.Name}",
            "efficiency" => $"{Plain(heat.Efficiency * 100)} %",
            "fuel_price" => heat.Price is { } price
                ? $"{Plain(new FuelMeasure(heat.Fuel, units).Price(price))} per {new FuelMeasure(heat.Fuel, units).Unit}"
                : "not given",
            "design_low" => heat.DesignOutdoorC is { } low ? Temperatures.Words(low, units) : "not given",
            _ => "",
        };

    private static string Shell(HouseShell shell, UnitSystem units)
    {
        const double foot = 0.3048;
        return units == UnitSystem.Imperial
            ? $"{Numbers.Whole(shell.CoverM2 / (foot * foot))} ft² of covering, {Numbers.Whole(shell.FloorM2 / (foot * foot))} ft² of floor, "
                + $"{Numbers.Whole(shell.VolumeM3 / (foot * foot * foot))} ft³ of air"
            : $"{Numbers.Whole(shell.CoverM2)} m² of covering, {Numbers.Whole(shell.FloorM2)} m² of floor, {Numbers.Whole(shell.VolumeM3)} m³ of air";
    }

    private static string Loss(double value, UnitSystem units) =>
        units == UnitSystem.Imperial ? $"{Plain(value / HeatUnits.UValueOfBtu)} Btu/h ft² °F" : $"{Plain(value)} W/m² K";

    private static string Plain(double value) => Math.Round(value, 3).ToString("#,##0.###", null);
}
