using BenchSim.Season.Fields;
using BenchSim.Season.Heat;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>The keys of [[house]] that say what it loses and what heats it; null for one that is not written.</summary>
public sealed record HeatKeys
{
    /// <summary>Two roof slopes; false for half a circle on side walls.</summary>
    public bool? IsGable { get; init; }

    /// <summary>Outside length, metres.</summary>
    public double? LengthM { get; init; }

    /// <summary>Outside width, metres.</summary>
    public double? WidthM { get; init; }

    /// <summary>Height of the upright part of the sides of a hoop house, metres.</summary>
    public double? SideWallM { get; init; }

    /// <summary>Height of the side walls of a gable house, metres.</summary>
    public double? EaveM { get; init; }

    /// <summary>Height of the ridge of a gable house, metres.</summary>
    public double? RidgeM { get; init; }

    /// <summary>Covering.</summary>
    public Covering? Covering { get; init; }

    /// <summary>Heat let through by the covering, watts a square metre and kelvin.</summary>
    public double? UValue { get; init; }

    /// <summary>Changes of the air an hour.</summary>
    public double? AirChanges { get; init; }

    /// <summary>Fuel.</summary>
    public Fuel? Fuel { get; init; }

    /// <summary>Useful heat over heat content.</summary>
    public double? Efficiency { get; init; }

    /// <summary>Price of the unit the fuel is bought by; while it is read, of the unit in which the site counts it.</summary>
    public double? Price { get; init; }

    /// <summary>Outdoor temperature of the coldest night the heater must stand up to, degrees Celsius.</summary>
    public double? DesignLowC { get; init; }

    /// <summary>Heat that all heaters of the house give together, watts.</summary>
    public double? HeaterOutputW { get; init; }

    /// <summary>Share of the sun that comes through covering and frame.</summary>
    public double? Transmission { get; init; }

    /// <summary>Share of that which warms air and ground.</summary>
    public double? SunShare { get; init; }

    /// <summary>The keys of a house with what holds where one is not written.</summary>
    /// <param name="house">The house.</param>
    public static HeatKeys InUse(House house)
    {
        if (house.Body is not { } body)
        {
            return new HeatKeys();
        }

        var heat = house.Heat;
        return body.Written with
        {
            Covering = Coverings.All.FirstOrDefault(each => string.Equals(each.Name, body.Covering, StringComparison.Ordinal)),
            UValue = body.UValue,
            AirChanges = body.AirChanges,
            Transmission = body.Transmission,
            SunShare = body.SunShare,
            Fuel = heat?.Fuel,
            Efficiency = heat?.Efficiency,
            Price = heat?.Price,
            DesignLowC = heat?.DesignOutdoorC,
            HeaterOutputW = heat?.OutputW,
        };
    }
}

/// <summary>The keys of [[house]] that say what it loses and what heats it.</summary>
public static class HeatFields
{
    private const string NoFuel = "no fuel is worked out";
    private const string NoSun = "the sun is day_lift, and no fuel is worked out";
    private const string Tables = "docs/heat.md";
    private const string NotGiven = "not given";

    private static readonly ChoiceKind<bool> s_shape = new([("hoop", false), ("gable", true)]);
    private static readonly OptionalKind<double> s_side = Kinds.Length(0.1, 1000).OrNone(NotGiven);
    private static readonly OptionalKind<double> s_height = Kinds.Length(0, 30).OrNone(NotGiven);

    // From foam of a hand's width to a single film in the wind.
    private static readonly MeasuredKind s_heatLoss = new(
        Quantity.HeatLoss,
        0.1,
        15,
        "heat loss",
        "W/m2K or Btu/h ft2 F; a bare number is in the units of [site]"
    );

    // From a fan heater at half its power to the boilers of a range.
    private static readonly MeasuredKind s_output = new(
        Quantity.Power,
        100,
        10_000_000,
        "output",
        "kW, W or Btu/h; a bare number is in kW or Btu/h"
    );

    private static readonly ChoiceKind<Covering> s_coveringId = new(
        [.. Coverings.All.Select(covering => (covering.Id, covering))],
        "id of a covering",
        shown: covering => covering.Name
    );

    private static readonly ChoiceKind<Fuel> s_fuelId = new([.. Fuels.All.Select(fuel => (fuel.Id, fuel))], shown: fuel => fuel.Name);

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<HeatKeys> Table { get; } =
        FieldTable
            .Of("house", "[[house]]", new HeatKeys())
            .Key("shape", s_shape.OrNone(NotGiven), heat => heat.IsGable, (heat, gable) => heat with { IsGable = gable })
            .Means(
                "Form of the house: half a circle on side walls, or two roof slopes. With shape, length, width and covering the sun in it "
                    + "is worked out, with fuel what it burns; of the first four give all or none.",
                leftOut: NoSun
            )
            .Key("length", s_side, heat => heat.LengthM, (heat, length) => heat with { LengthM = length })
            .Means("Outside length of the house.", leftOut: NoSun)
            .Key("width", s_side, heat => heat.WidthM, (heat, width) => heat with { WidthM = width })
            .Means("Outside width of the house.", leftOut: NoSun)
            .Key("side_wall", s_height, heat => heat.SideWallM, (heat, height) => heat with { SideWallM = height })
            .Means("Height of the upright part of the sides; only for a hoop house.", leftOut: "none")
            .Key("eave", s_height, heat => heat.EaveM, (heat, height) => heat with { EaveM = height })
            .Means("Height of the side walls; only for a gable house.", leftOut: "required for gable")
            .Key("ridge", s_height, heat => heat.RidgeM, (heat, height) => heat with { RidgeM = height })
            .Means("Height of the ridge, above the eave; only for a gable house.", leftOut: "required for gable")
            .Key("covering", s_coveringId.OrNothing(NotGiven), heat => heat.Covering, (heat, covering) => heat with { Covering = covering })
            .Means($"What it is covered with: {string.Join(", ", s_coveringId.Choices)}.", leftOut: "from u_value")
            .InsteadOf("u_value")
            .Key("u_value", s_heatLoss.OrNone(NotGiven), heat => heat.UValue, (heat, value) => heat with { UValue = value })
            .Means("Heat let through by the covering, instead of covering.", Tables, "that of the covering")
            .InsteadOf("covering")
            .Key(
                "air_changes",
                new NumberKind(0, 20, "an hour", "an hour", "an hour").OrNone(NotGiven),
                heat => heat.AirChanges,
                (heat, changes) => heat with { AirChanges = changes }
            )
            .Means("How often an hour leaks change the air of the closed house.", Tables, "0.75 for double film, 1.125 for others")
            .Key(
                "transmission",
                new ShareKind(aboveNone: true).OrNone(NotGiven),
                heat => heat.Transmission,
                (heat, share) => heat with { Transmission = share }
            )
            .Means(
                "Share of the sun that comes through covering and frame, dust and low sun counted.",
                Tables,
                "75 % of what the sheet lets through"
            )
            .Key("sun_share", new ShareKind().OrNone(NotGiven), heat => heat.SunShare, (heat, share) => heat with { SunShare = share })
            .Means("Share of that sun which warms the house, the rest dries wet leaves and mix.", Tables, "taken as 70 %")
            .Key("fuel", s_fuelId.OrNothing(NotGiven), heat => heat.Fuel, (heat, fuel) => heat with { Fuel = fuel })
            .Means("What heats it.", leftOut: NoFuel)
            .Key(
                "efficiency",
                new EfficiencyKind().OrNone(NotGiven),
                heat => heat.Efficiency,
                (heat, efficiency) => heat with { Efficiency = efficiency }
            )
            .Means("Useful heat over heat content of the fuel.", Tables, "that of the fuel")
            .Key(
                "fuel_price",
                Kinds
                    .MoneyFor(
                        "money a gallon (oil, propane), therm (gas), kWh or cord (wood); in a metric site a litre, kWh (gas too) or "
                            + "stacked m³"
                    )
                    .OrNone(NotGiven),
                heat => heat.Price,
                (heat, price) => heat with { Price = price },
                ShowPrice
            )
            .Means("Price of the fuel, by the unit in which `check` prints how much is needed.", leftOut: "its cost is not worked out")
            .Key(
                "design_low",
                Kinds.Temperature.OrNone(NotGiven),
                heat => heat.DesignLowC,
                (heat, celsius) => heat with { DesignLowC = celsius }
            )
            .Means(
                "Outdoor temperature of the coldest night the heater must stand up to, below the night set-point.",
                leftOut: "no load is worked out"
            )
            .Key(
                "heater_output",
                s_output.OrNone(NotGiven),
                heat => heat.HeaterOutputW,
                (heat, watts) => heat with { HeaterOutputW = watts }
            )
            .Means(
                "Heat that all heaters of the house give together, as rated: the output on the plate, not the fuel input.",
                leftOut: "the size it takes is told"
            )
            .Table();

    /// <summary>Whether a key is a dimension of the shell.</summary>
    public static bool IsDimension(string key) =>
        Table.Find(key) is { } field && (ReferenceEquals(field.Kind, s_side) || ReferenceEquals(field.Kind, s_height));

    /// <summary>A whole shell in words, in the units of the site.</summary>
    public static string Words(HouseShell shell, UnitSystem units)
    {
        const double foot = 0.3048;
        var (side, name) = units == UnitSystem.Imperial ? (foot, "ft") : (1, "m");
        return $"{Whole(shell.CoverM2 / (side * side))} {name}² of covering, {Whole(shell.FloorM2 / (side * side))} {name}² of floor, "
            + $"{Whole(shell.VolumeM3 / (side * side * side))} {name}³ of air";
    }

    private static string Whole(double value) => FormattableString.Invariant($"{Math.Round(value, MidpointRounding.AwayFromZero):#,##0}");

    private static string ShowPrice(HeatKeys heat, UnitSystem units)
    {
        if (heat is not { Price: { } bought, Fuel: { } fuel })
        {
            return NotGiven;
        }

        var (price, unit) = units == UnitSystem.Metric ? (bought / fuel.MetricPerUnit, fuel.MetricUnit) : (bought, fuel.Unit);
        var shown = unit.Replace("m3", "m³", StringComparison.Ordinal);
        return FormattableString.Invariant($"{Math.Round(price, 3):#,##0.###} per {shown}");
    }

    /// <summary>An efficiency: a share, or, for a heat pump, up to eight times the current.</summary>
    private sealed class EfficiencyKind() : Kind<double>("share", "% or 0 to 1; a heat pump up to 8", "above 0 %")
    {
        private const double BestHeatPump = 8;

        public override bool TryRead(IWritten written, out double value)
        {
            // "3" or "300 %".
            var isPercent = written.Text.EndsWith('%');
            var number = isPercent ? written.Text[..^1].TrimEnd() : written.Text;
            if (IsNumber(number, out value) && value / (isPercent ? 100 : 1) is > 1 and <= BestHeatPump and var pump)
            {
                value = pump;
                return true;
            }

            return Found(written.Share(aboveNone: true, belowAll: false), out value);
        }

        public override string Show(double value, UnitSystem units) => $"{Plain(value * 100)} %";
    }
}
