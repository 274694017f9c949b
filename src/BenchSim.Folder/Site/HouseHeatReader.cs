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
    private const double LeastSideM = 0.1;
    private const double MostSideM = 1000;
    private const double MostHeightM = 30;
    private const double HighestPrice = 1_000_000;

    // From foam of a hand's width to a single film in the wind, and the best heat pump.
    private const double LeastUValue = 0.1;
    private const double MostUValue = 15;
    private const double MostAirChanges = 20;
    private const double BestHeatPump = 8;

    private static readonly string[] Keys =
    [
        "shape",
        "length",
        "width",
        "side_wall",
        "eave",
        "ridge",
        "covering",
        "u_value",
        "air_changes",
        "fuel",
        "efficiency",
        "fuel_price",
        "design_low",
    ];

    private static readonly string[] NeededKeys = ["shape", "length", "width"];
    private static readonly string[] HoopKeys = ["side_wall"];
    private static readonly string[] GableKeys = ["eave", "ridge"];
    private static readonly (string Word, bool IsGable)[] Shapes = [("hoop", false), ("gable", true)];
    private static readonly (string Word, int Index)[] CoveringWords = [.. Coverings.All.Select((covering, index) => (covering.Id, index))];
    private static readonly (string Word, int Index)[] FuelWords = [.. Fuels.All.Select((fuel, index) => (fuel.Id, index))];

    private readonly SortedDictionary<string, Provenance> _sources = new(StringComparer.Ordinal);

    /// <summary>The heat; null where it is not given or had a fault.</summary>
    /// <param name="nightC">Night set-point, degrees Celsius; null in an unheated house or when it had a fault.</param>
    public HouseHeat? Read(double? nightC)
    {
        var given = Keys.Where(section.Has).ToList();
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
        var shell = ReadShell();
        var (covering, uValue, airChanges) = ReadCover();
        var (fuel, efficiency) = ReadFuel();
        var price = cells.Number(section.Scalar("fuel_price"), 0, HighestPrice);

        // A metric farm buys by the metric unit; the season counts in the other.
        if (price is { } each && fuel is not null && section.Scalar("fuel_price").Units == UnitSystem.Metric)
        {
            price = each * fuel.MetricPerUnit;
        }

        var designLow = ReadDesignLow(nightC);
        return cells.Faults.Count > before || shell is null || covering is null || uValue is null || fuel is null
            ? null
            : new HouseHeat
            {
                Shell = shell,
                Covering = covering,
                UValue = uValue.Value,
                AirChanges = airChanges,
                Fuel = fuel,
                Efficiency = efficiency,
                Price = price,
                DesignOutdoorC = designLow,
                Sources = _sources.ToImmutableSortedDictionary(StringComparer.Ordinal),
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
            cells.Faults.Add(
                section.PlaceOf(key),
                $"{key} is given but the house is not heated: it has no night",
                $"add a line such as night = \"{(section.Scalar(key).Units == UnitSystem.Metric ? "16 C" : "60 F")}\", or leave out {Words.List(given)}"
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

    private HouseShell? ReadShell()
    {
        var isGable = cells.Choice(section.Scalar("shape"), Shapes);
        var length = cells.Length(section.Scalar("length"), LeastSideM, MostSideM);
        var width = cells.Length(section.Scalar("width"), LeastSideM, MostSideM);
        var sideWall = cells.Length(section.Scalar("side_wall"), 0, MostHeightM);
        var eave = cells.Length(section.Scalar("eave"), 0, MostHeightM);
        var ridgeCell = section.Scalar("ridge");
        var ridge = cells.Length(ridgeCell, 0, MostHeightM);
        if (isGable is { } gable)
        {
            var (others, word) = gable ? (HoopKeys, "hoop") : (GableKeys, "gable");
            foreach (var key in others.Where(section.Has))
            {
                cells.Refuse(section.Scalar(key), $"is only for a {word} house", $"take it out, or write shape = \"{word}\"");
            }
        }

        if (ridge <= eave)
        {
            cells.Refuse(
                ridgeCell,
                $"is {Words.Quote(ridgeCell.Text)}, not above the eave",
                "write the height of the ridge above the ground, higher than eave"
            );
            return null;
        }

        return (isGable, length, width, eave, ridge) switch
        {
            (false, { } along, { } wide, _, _) => HouseShell.Hoop(wide, along, sideWall ?? 0),
            (true, { } along, { } wide, { } low, { } high) => HouseShell.Gable(wide, along, low, high),
            _ => null,
        };
    }

    private (string? Covering, double? UValue, double AirChanges) ReadCover()
    {
        var covering = cells.Choice(section.Scalar("covering"), CoveringWords) is { } index ? Coverings.All[index] : null;
        var uCell = section.Scalar("u_value");
        var own = cells.UValue(uCell, LeastUValue, MostUValue);
        if (section.Has("covering") && section.Has("u_value"))
        {
            cells.Refuse(uCell, "is given together with covering", "write covering, or u_value, not both");
        }

        if (covering is not null)
        {
            _sources["u_value"] = covering.Source;
        }

        if (cells.Number(section.Scalar("air_changes"), 0, MostAirChanges) is not { } changes)
        {
            var (tightness, source) = AirLeak.Of(covering);
            _sources["air_changes"] = source;
            changes = tightness.AirChanges;
        }

        return (covering?.Name ?? (own is null ? null : "covering of a given heat loss"), covering?.UValue ?? own, changes);
    }

    private (Fuel? Fuel, double Efficiency) ReadFuel()
    {
        var fuel = cells.Choice(section.Scalar("fuel"), FuelWords) is { } index ? Fuels.All[index] : null;
        var cell = section.Scalar("efficiency");

        // More heat than current comes only from a heat pump.
        double? heatPump =
            ReferenceEquals(fuel, Fuels.Electricity) && HeatPump(cell.Text) is > 1 and <= BestHeatPump and var share ? share : null;
        var efficiency = heatPump ?? cells.Fraction(cell, aboveNone: true);
        if (efficiency is null && fuel is not null)
        {
            _sources["efficiency"] = fuel.EfficiencySource;
        }

        return (fuel, efficiency ?? fuel?.Efficiency ?? 1);
    }

    // "3" or "300 %".
    private static double? HeatPump(string text)
    {
        var isPercent = text.EndsWith('%');
        return QuantityText.TryNumber(isPercent ? text[..^1].TrimEnd() : text, out var number) ? number / (isPercent ? 100 : 1) : null;
    }

    private double? ReadDesignLow(double? nightC)
    {
        var cell = section.Scalar("design_low");
        var low = cells.Temperature(cell);
        if (low >= nightC)
        {
            cells.Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, not below the night set-point of {Words.Temperature(nightC.Value, cell.Units)}",
                "write the outdoor temperature of the coldest night the heater must stand up to"
            );
        }

        return low;
    }
}
