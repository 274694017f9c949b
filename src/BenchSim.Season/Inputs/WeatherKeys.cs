using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>Where the weather comes from.</summary>
public enum WeatherKind
{
    /// <summary>The same every day.</summary>
    Constant,

    /// <summary>The years of a daily record.</summary>
    Record,

    /// <summary>Years made anew after a daily record.</summary>
    Generated,

    /// <summary>Years made from monthly normals.</summary>
    Normals,
}

/// <summary>
/// The keys of [weather]; null or empty for one that is not written. A number for every day is a list of one, monthly normals are lists of
/// twelve.
/// </summary>
public sealed record WeatherKeys
{
    /// <summary>Where the weather comes from.</summary>
    public WeatherKind? Kind { get; init; }

    /// <summary>Lowest temperatures, degrees Celsius.</summary>
    public ImmutableArray<double> LowC { get; init; } = [];

    /// <summary>Highest temperatures, degrees Celsius.</summary>
    public ImmutableArray<double> HighC { get; init; } = [];

    /// <summary>Rain, millimetres.</summary>
    public ImmutableArray<double> RainMm { get; init; } = [];

    /// <summary>Days with rain in each month.</summary>
    public ImmutableArray<double> RainDays { get; init; } = [];

    /// <summary>Standard deviations of the lowest temperatures of each month's days, kelvin.</summary>
    public ImmutableArray<double> LowSdK { get; init; } = [];

    /// <summary>Standard deviations of the highest temperatures of each month's days, kelvin.</summary>
    public ImmutableArray<double> HighSdK { get; init; } = [];

    /// <summary>File of the record.</summary>
    public string? File { get; init; }

    /// <summary>File of what was observed this season.</summary>
    public string? Observed { get; init; }

    /// <summary>File of the forecast.</summary>
    public string? Forecast { get; init; }

    /// <summary>Year of the record to play.</summary>
    public int? Year { get; init; }

    /// <summary>Unit of bare temperatures.</summary>
    public UnitSystem? TemperatureUnit { get; init; }

    /// <summary>Unit of bare rain.</summary>
    public UnitSystem? RainUnit { get; init; }

    /// <summary>Whether the same is written. Lists compare by what they hold.</summary>
    public bool Equals(WeatherKeys? other) => other is not null && WeatherFields.Table.Values.All(field => field.IsSame(this, other));

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Kind, File, Year);
}

/// <summary>The keys of [weather].</summary>
public static class WeatherFields
{
    private const string AsUnitSays = "C or F; a bare number is in the units of [site], or as temperature_unit says";
    private const string ForNormals = "required for normals";
    private const string TwoCities = "an average of two cities' record: docs/weather.md";

    private static readonly WeatherKind[] s_all = [WeatherKind.Constant, WeatherKind.Record, WeatherKind.Generated, WeatherKind.Normals];

    /// <summary>The kinds of weather as they are written.</summary>
    public static ChoiceKind<WeatherKind> Kind { get; } =
        new([
            ("constant", WeatherKind.Constant),
            ("record", WeatherKind.Record),
            ("generated", WeatherKind.Generated),
            ("normals", WeatherKind.Normals),
        ]);

    /// <summary>A mean temperature of each month.</summary>
    public static MonthsKind Temperatures { get; } = new(Kinds.Temperature, "temperature, or list of 12", AsUnitSays);

    /// <summary>A spread of temperatures of each month: a month's days spread by a few kelvin, and 0 would be no weather.</summary>
    public static MonthsKind Spreads { get; } = new(Kinds.Difference(0.1, 20), "list of 12 differences", "C or F, January first");

    /// <summary>Rain of each month.</summary>
    public static MonthsKind Rain { get; } =
        new(Kinds.Rain, "depth, or list of 12", "mm or in; a bare number is in mm or in, or as rain_unit says");

    /// <summary>Days with rain in each month.</summary>
    public static MonthsKind RainDays { get; } = new(new NumberKind(0, 31), "list of 12 numbers", "days, January first");

    private static OptionalKind<UnitSystem> TemperatureUnit { get; } =
        new ChoiceKind<UnitSystem>([("C", UnitSystem.Metric), ("F", UnitSystem.Imperial)]).OrNone("units of [site]");

    private static OptionalKind<UnitSystem> RainUnit { get; } =
        new ChoiceKind<UnitSystem>([("mm", UnitSystem.Metric), ("in", UnitSystem.Imperial)]).OrNone("units of [site]");

    /// <summary>
    /// The keys, in the order of the reference. What else they hold depends on the kind, so the lists of numbers are read by that.
    /// </summary>
    public static FieldTable<WeatherKeys> Table { get; } =
        FieldTable
            .Of("weather", "[weather]", new WeatherKeys())
            .Key("kind", Kind.OrNone("not given"), keys => keys.Kind, (keys, kind) => keys with { Kind = kind })
            .Means(
                "The same weather every day; the years of a daily record; years made anew after a daily record; or years made from monthly "
                    + "normals."
            )
            .Required("\"constant\"")
            .Key("low", Temperatures, keys => keys.LowC)
            .Means(
                "Lowest temperature of every day (constant), or the mean lowest of each month, January first (normals).",
                leftOut: "required for constant and normals"
            )
            .Key("high", Temperatures, keys => keys.HighC)
            .Means(
                "Highest temperature of every day (constant), or the mean highest of each month, January first (normals).",
                leftOut: "required for constant and normals"
            )
            .Key("rain", Rain, keys => keys.RainMm)
            .Means(
                "Rain of every day (constant), or of each whole month, January first (normals).",
                Why.Ours,
                "0 for constant, required for normals"
            )
            .Key("rain_days", RainDays, keys => keys.RainDays)
            .Means("Days with rain in each month; kind normals only.", leftOut: ForNormals)
            .Key("low_sd", Spreads, keys => keys.LowSdK)
            .Means("Standard deviation of the lowest temperatures of a month's days; kind normals only.", TwoCities, "3.15 C in each month")
            .Key("high_sd", Spreads, keys => keys.HighSdK)
            .Means("Standard deviation of the highest temperatures of a month's days; kind normals only.", TwoCities, "3.9 C in each month")
            .Key("file", new TextKind("file name"), keys => keys.File ?? "none", (keys, file) => keys with { File = file })
            .Means(
                "CSV file inside the folder with the columns of a weather record; kinds record and generated.",
                leftOut: "required for record and generated"
            )
            .Key("year", new YearKind().OrNone("a year drawn each season"), keys => keys.Year, (keys, year) => keys with { Year = year })
            .Means("The year of the record to play every season; kind record only.", Why.Ours)
            .Key("observed", new TextKind("file name"), keys => keys.Observed ?? "none", (keys, file) => keys with { Observed = file })
            .Means("CSV file inside the folder with this season's days as observed; used with --today alone.", leftOut: "none")
            .Fixed("what was observed is the same in every variant")
            .Key("forecast", new TextKind("file name"), keys => keys.Forecast ?? "none", (keys, file) => keys with { Forecast = file })
            .Means("CSV file inside the folder with the days that are forecast; used with --today alone.", leftOut: "none")
            .Fixed("what is forecast is the same in every variant")
            .Key("temperature_unit", TemperatureUnit, keys => keys.TemperatureUnit, (keys, unit) => keys with { TemperatureUnit = unit })
            .Means("Unit of bare temperatures of the record or the normals; not for kind constant.", Why.Ours)
            .Key("rain_unit", RainUnit, keys => keys.RainUnit, (keys, unit) => keys with { RainUnit = unit })
            .Means("Unit of bare rain of the record or the normals; not for kind constant.", Why.Ours)
            .Table();

    /// <summary>The kinds of weather that a key is for, the first of them first.</summary>
    public static WeatherKind[] KindsOf(string key) =>
        key switch
        {
            "low" or "high" or "rain" => [WeatherKind.Constant, WeatherKind.Normals],
            "rain_days" or "low_sd" or "high_sd" => [WeatherKind.Normals],
            "file" => [WeatherKind.Record, WeatherKind.Generated],
            "year" => [WeatherKind.Record],
            "temperature_unit" or "rain_unit" => [WeatherKind.Record, WeatherKind.Generated, WeatherKind.Normals],
            _ => s_all,
        };

    /// <summary>A calendar year.</summary>
    private sealed class YearKind() : Kind<int>("whole number", "year")
    {
        public override bool TryRead(IWritten written, out int value) => Found(written.Whole(1900, 2199), out value);

        public override string Show(int value, UnitSystem units) => FormattableString.Invariant($"{value}");
    }
}
