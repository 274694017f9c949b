using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>Reads the shell and the heater of one [[house]]: all of it or none.</summary>
internal sealed class HouseHeatReader(CellReader cells, Section section)
{
    private static readonly string[] NeededKeys = ["shape", "length", "width"];
    private static readonly string[] HoopKeys = ["side_wall"];
    private static readonly string[] GableKeys = ["eave", "ridge"];

    private readonly SortedDictionary<string, Provenance> _sources = new(StringComparer.Ordinal);

    /// <summary>The heat; null where it is not given or had a fault.</summary>
    /// <param name="nightC">Night set-point, degrees Celsius; null in an unheated house or when it had a fault.</param>
    public HouseHeat? Read(double? nightC)
    {
        var given = HeatFields.Table.Names.Where(section.Has).ToList();
        if (given.Count == 0)
        {
            return null;
        }

        foreach (var key in given)
        {
            _sources[key] = Provenance.User;
        }

        var before = cells.Faults.Count;
        CheckWhole(given);
        var keys = section.Read(HeatFields.Table, new HeatKeys(), cells);
        CheckShell(keys);
        CheckHeater(keys, nightC);
        if (section.Has("covering") && section.Has("u_value"))
        {
            cells.Refuse(section.Scalar("u_value"), "is given together with covering", "write covering, or u_value, not both");
        }

        var airChanges = keys.AirChanges ?? AirChangesOf(keys.Covering);
        if (keys.Covering is { } covering)
        {
            _sources["u_value"] = covering.Source;
        }

        if (keys.Efficiency is null && keys.Fuel is { } heater)
        {
            _sources["efficiency"] = heater.EfficiencySource;
        }

        return
            cells.Faults.Count > before
            || ShellOf(keys) is not { } shell
            || (keys.Covering?.UValue ?? keys.UValue) is not { } uValue
            || keys.Fuel is not { } fuel
            ? null
            : new HouseHeat
            {
                Shell = shell,
                Covering = keys.Covering?.Name ?? "covering of a given heat loss",
                UValue = uValue,
                AirChanges = airChanges,
                Fuel = fuel,
                Efficiency = keys.Efficiency ?? fuel.Efficiency,

                // A metric farm buys by the metric unit; the season counts in the other.
                Price = section.Scalar("fuel_price").Units == UnitSystem.Metric ? keys.Price * fuel.MetricPerUnit : keys.Price,
                DesignOutdoorC = keys.DesignLowC,
                Sources = _sources.ToImmutableSortedDictionary(StringComparer.Ordinal),
                Written = keys,
            };
    }

    private void CheckWhole(List<string> given)
    {
        if (!section.IsWhole)
        {
            return;
        }

        if (!section.Has("night"))
        {
            var key = section.Has("fuel") ? "fuel" : given[0];
            var example = section.Scalar(key).Units == UnitSystem.Metric ? "16 C" : "60 F";
            cells.Faults.Add(
                section.PlaceOf(key),
                $"{key} is given but the house is not heated: it has no night",
                $"add a line such as night = \"{example}\", or leave out {Words.List(given)}"
            );
            return;
        }

        List<string> missing = [.. NeededKeys.Where(key => !section.Has(key))];
        if (string.Equals(section.Scalar("shape").Text, "gable", StringComparison.OrdinalIgnoreCase))
        {
            missing.AddRange(GableKeys.Where(key => !section.Has(key)));
        }

        if (!section.Has("covering") && !section.Has("u_value"))
        {
            missing.Add("covering (or u_value)");
        }

        if (!section.Has("fuel"))
        {
            missing.Add("fuel");
        }

        if (missing.Count > 0)
        {
            cells.Faults.Add(
                section.PlaceOf(given[0]),
                $"the heat of this house is given in part: {Words.List(missing)} {(missing.Count == 1 ? "is" : "are")} missing",
                $"add {(missing.Count == 1 ? "it" : "them")}, or leave out {Words.List(given)}"
            );
        }
    }

    private void CheckShell(HeatKeys keys)
    {
        if (keys.IsGable is { } isGable)
        {
            var (others, word) = isGable ? (HoopKeys, "hoop") : (GableKeys, "gable");
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

    private double AirChangesOf(Covering? covering)
    {
        var (tightness, source) = AirLeak.Of(covering);
        _sources["air_changes"] = source;
        return tightness.AirChanges;
    }
}
