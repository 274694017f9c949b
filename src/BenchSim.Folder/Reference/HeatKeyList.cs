using System.Collections.Immutable;

namespace BenchSim.Folder;

/// <summary>Keys of site.toml that describe what a house loses, what heats it, and the electricity of mats.</summary>
internal static class HeatKeyList
{
    private const string None = "";
    private const string NoFuel = "no fuel is worked out";
    private const string NoPower = "no electricity is worked out";
    private const string NoCost = "its cost is not worked out";
    private const string Table = "docs/heat.md";
    private const string Temperature = "C or F; a bare number is in the units of [site]";
    private const string Length = "m, cm, mm, ft or in; a bare number is in metres or feet";

    public static readonly ImmutableArray<FieldDescription> Heat =
    [
        new(
            "house",
            "shape",
            "hoop or gable",
            None,
            NoFuel,
            None,
            "Form of the house: half a circle on side walls, or two roof slopes. With shape, length, width, covering and fuel its fuel is worked out; all or none of them."
        ),
        new("house", "length", "length", Length, NoFuel, None, "Outside length of the house."),
        new("house", "width", "length", Length, NoFuel, None, "Outside width of the house."),
        new("house", "side_wall", "length", Length, "none", None, "Height of the upright part of the sides; only for a hoop house."),
        new("house", "eave", "length", Length, "required for gable", None, "Height of the side walls; only for a gable house."),
        new("house", "ridge", "length", Length, "required for gable", None, "Height of the ridge, above the eave; only for a gable house."),
        new(
            "house",
            "covering",
            "id of a covering",
            None,
            "from u_value",
            None,
            "What it is covered with: single-poly, double-poly, double-poly-ir, double-poly-curtain, double-poly-over-glass, polycarbonate, glass, double-glass, foam-board, concrete-block or concrete-poured."
        ),
        new(
            "house",
            "u_value",
            "heat loss",
            "W/m2K or Btu/h ft2 F; a bare number is in the units of [site]",
            "that of the covering",
            Table,
            "Heat let through by the covering, instead of covering; 0.1 to 15 W/m2K."
        ),
        new(
            "house",
            "air_changes",
            "number",
            "an hour",
            "0.75 for double film, 1.125 for others",
            Table,
            "How often an hour leaks change the air of the closed house, 0 to 20."
        ),
        new("house", "fuel", "electricity, gas, oil, propane or wood", None, NoFuel, None, "What heats it."),
        new(
            "house",
            "efficiency",
            "share",
            "% or 0 to 1; a heat pump up to 8",
            "that of the fuel",
            Table,
            "Useful heat over heat content of the fuel, above 0."
        ),
        new(
            "house",
            "fuel_price",
            "number",
            "money a gallon (oil, propane), therm (gas), kWh or cord (wood); in a metric site a litre, kWh (gas too) or stacked m³",
            NoCost,
            None,
            "Price of the fuel, by the unit in which `check` prints how much is needed."
        ),
        new(
            "house",
            "design_low",
            "temperature",
            Temperature,
            "no load is worked out",
            None,
            "Outdoor temperature of the coldest night the heater must stand up to, below the night set-point."
        ),
        new("space", "watts", "number", "W", NoPower, None, "Watts of all mats of the space together; only for a mat."),
        new(
            "space",
            "watts_each_place",
            "number",
            "W",
            NoPower,
            None,
            "Watts of the mat under one place, instead of watts; times the most places the space ever has. A rule from memory is 16.7, from 12 W a square foot."
        ),
        new(
            "space",
            "duty",
            "share",
            "% or 0 to 1",
            "100 %",
            "an upper bound",
            "Share of the time the thermostat keeps the mats on; only for a mat."
        ),
        new(
            "space",
            "circuit_volts",
            "number",
            "V",
            "the circuit is not checked",
            None,
            "Volts of the circuit the mats are on; together with circuit_amps."
        ),
        new(
            "space",
            "circuit_amps",
            "number",
            "A",
            "the circuit is not checked",
            None,
            "Amperes of its breaker. A load above 80 % of what it may carry is a warning (NEC 210.20(A))."
        ),
        new("space", "power_price", "number", "money a kWh", NoCost, None, "Price of a kilowatt-hour; only for a mat."),
    ];
}
