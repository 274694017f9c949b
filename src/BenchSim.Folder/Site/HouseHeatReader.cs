using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>Reads the size and the heater of one [[house]]: a size is whole or not given, a heater stands in a house of a size.</summary>
internal sealed class HouseHeatReader(CellReader cells, Section section)
{
    // Light that a sheet lets through of which only the heat loss is known.
    private const double UnknownLight = 0.8;

    private static readonly string[] s_neededKeys = ["shape", "length", "width"];
    private static readonly string[] s_heaterKeys = ["fuel", "efficiency", "fuel_price", "design_low", "heater_output"];
    private static readonly string[] s_hoopKeys = ["side_wall"];
    private static readonly string[] s_gableKeys = ["eave", "ridge"];

    private readonly SortedDictionary<string, Provenance> _sources = new(StringComparer.Ordinal);

    /// <summary>The size and the heater; each null where it is not given or had a fault.</summary>
    /// <param name="house">The house as far as it has been read.</param>
    /// <param name="saysLatitude">Whether the site says where it lies, if only with a fault.</param>
    public (HouseBody? Body, HouseHeat? Heat) Read(House house, bool saysLatitude)
    {
        var given = HeatFields.Table.Names.Where(section.Has).ToList();
        if (given.Count == 0)
        {
            return default;
        }

        foreach (var key in given)
        {
            _sources[key] = Provenance.User;
        }

        var before = cells.Faults.Count;
        CheckWhole(given);
        var keys = section.Read(HeatFields.Table, new HeatKeys(), cells);
        CheckShell(keys);
        CheckHeater(keys, house.NightC);
        CheckLatitude(house, saysLatitude, given);
        if (section.Has("covering") && section.Has("u_value"))
        {
            cells.Refuse(section.Scalar("u_value"), "is given together with covering", "write covering, or u_value, not both");
        }

        var body = BodyOf(keys);
        return cells.Faults.Count > before || body is null ? default : (body, HeatOf(keys));
    }

    private HouseBody? BodyOf(HeatKeys keys)
    {
        if (ShellOf(keys) is not { } shell || (keys.Covering?.UValue ?? keys.UValue) is not { } uValue)
        {
            return null;
        }

        var airChanges = keys.AirChanges ?? AirChangesOf(keys.Covering);
        var transmission = keys.Transmission ?? TransmissionOf(keys.Covering);
        if (keys.Covering is { } covering)
        {
            _sources["u_value"] = covering.Source;
        }

        if (keys.SunShare is null)
        {
            _sources["sun_share"] = new Provenance(Trust.Memory, "between the 50 % of a full crop and the 80 % of benches of seedlings");
        }

        if (keys is { Efficiency: null, Fuel: { } heater })
        {
            _sources["efficiency"] = heater.EfficiencySource;
        }

        return new HouseBody
        {
            Shell = shell,
            Covering = keys.Covering?.Name ?? "covering of a given heat loss",
            UValue = uValue,
            AirChanges = airChanges,
            Transmission = transmission,
            SunShare = keys.SunShare ?? HouseSun.UsualShare,
            Sources = _sources.ToImmutableSortedDictionary(StringComparer.Ordinal),
            Written = keys,
        };
    }

    private HouseHeat? HeatOf(HeatKeys keys) =>
        keys.Fuel is not { } fuel
            ? null
            : new HouseHeat
            {
                Fuel = fuel,
                Efficiency = keys.Efficiency ?? fuel.Efficiency,

                // A metric farm buys by the metric unit; the season counts in the other.
                Price = section.Scalar("fuel_price").Units == UnitSystem.Metric ? keys.Price * fuel.MetricPerUnit : keys.Price,
                DesignOutdoorC = keys.DesignLowC,
                OutputW = keys.HeaterOutputW,
                OutputPlace = section.Has("heater_output") ? section.PlaceOf("heater_output") : default,
            };

    private void CheckWhole(List<string> given)
    {
        if (!section.IsWhole)
        {
            return;
        }

        List<string> heater = [.. s_heaterKeys.Where(section.Has)];
        if (heater.Count > 0 && !section.Has("night"))
        {
            var key = section.Has("fuel") ? "fuel" : heater[0];
            var example = section.Scalar(key).Units == UnitSystem.Metric ? "16 C" : "60 F";
            cells.Faults.Add(
                section.PlaceOf(key),
                $"{key} is given but the house is not heated: it has no night",
                $"add a line such as night = \"{example}\", or leave out {Words.List(heater)}"
            );
            return;
        }

        List<string> missing = [.. s_neededKeys.Where(key => !section.Has(key))];
        if (string.Equals(section.Scalar("shape").Text, "gable", StringComparison.OrdinalIgnoreCase))
        {
            missing.AddRange(s_gableKeys.Where(key => !section.Has(key)));
        }

        if (!section.Has("covering") && !section.Has("u_value"))
        {
            missing.Add("covering (or u_value)");
        }

        if (heater.Count > 0 && !section.Has("fuel"))
        {
            missing.Add("fuel");
        }

        if (missing.Count > 0)
        {
            cells.Faults.Add(
                section.PlaceOf(given[0]),
                $"the size of this house is given in part: {Words.List(missing)} {(missing.Count == 1 ? "is" : "are")} missing",
                $"add {(missing.Count == 1 ? "it" : "them")}, or leave out {Words.List(given)}"
            );
        }
    }

    private void CheckLatitude(House house, bool saysLatitude, List<string> given)
    {
        if (section.IsWhole && !saysLatitude && house.DayLiftK is null)
        {
            cells.Faults.Add(
                section.PlaceOf(given[0]),
                "the size of this house is given, but not where the site lies, so the sun in it cannot be worked out",
                "add a line such as latitude = 42 to [site], or the day_lift you have measured to this house"
            );
        }
    }

    private void CheckShell(HeatKeys keys)
    {
        if (keys.IsGable is { } isGable)
        {
            var (others, word) = isGable ? (s_hoopKeys, "hoop") : (s_gableKeys, "gable");
            foreach (var key in others.Where(section.Has))
            {
                cells.Refuse(section.Scalar(key), $"is only for a {word} house", $"take it out, or write shape = \"{word}\"");
            }
        }

        if (keys.RidgeM <= keys.EaveM)
        {
            var ridge = section.Scalar("ridge");
            cells.Refuse(
                ridge,
                $"is {Words.Quote(ridge.Text)}, not above the eave",
                "write the height of the ridge above the ground, higher than eave"
            );
        }
    }

    private void CheckHeater(HeatKeys keys, double? nightC)
    {
        // More heat than current comes only from a heat pump: for another heater it is no share.
        if (keys.Efficiency > 1 && !ReferenceEquals(keys.Fuel, Fuels.Electricity))
        {
            cells.Fraction(section.Scalar("efficiency"), aboveNone: true);
        }

        if (keys.DesignLowC >= nightC)
        {
            var low = section.Scalar("design_low");
            cells.Refuse(
                low,
                $"is {Words.Quote(low.Text)}, not below the night set-point of {Words.Temperature(nightC.Value, low.Units)}",
                "write the outdoor temperature of the coldest night the heater must stand up to"
            );
        }
    }

    private static HouseShell? ShellOf(HeatKeys keys) =>
        keys switch
        {
            { IsGable: false, LengthM: { } length, WidthM: { } width } => HouseShell.Hoop(width, length, keys.SideWallM ?? 0),
            { IsGable: true, LengthM: { } length, WidthM: { } width, EaveM: { } eave, RidgeM: { } ridge } when ridge > eave =>
                HouseShell.Gable(width, length, eave, ridge),
            _ => null,
        };

    private double TransmissionOf(Covering? covering)
    {
        var sheet = covering?.Light ?? UnknownLight;
        var words = covering is null ? "an unknown covering taken to let 80 % through" : covering.LightSource.Source;
        _sources["transmission"] = new Provenance(Trust.Memory, $"75 % of the sheet's for frame, dust and low sun; {words}");
        return sheet * HouseSun.FrameAndDust;
    }

    private double AirChangesOf(Covering? covering)
    {
        var (tightness, source) = AirLeak.Of(covering);
        _sources["air_changes"] = source;
        return tightness.AirChanges;
    }
}
