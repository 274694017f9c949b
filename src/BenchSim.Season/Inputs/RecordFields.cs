using BenchSim.Season.Fields;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Inputs;

/// <summary>The columns of a daily weather record.</summary>
public static class RecordFields
{
    /// <summary>Name under which the columns are listed; the file itself may have any name.</summary>
    public const string File = "weather record";

    private const string Unit = "C or F; a bare number as temperature_unit says";
    private const string EveryDay = "fill in every day of the record";

    private static readonly MeasuredKind s_temperature = Recorded(Quantity.Temperature, "temperature", Unit);
    private static readonly MeasuredKind s_depth = Recorded(Quantity.Rain, "depth", "mm or in; a bare number as rain_unit says");

    /// <summary>
    /// The columns, in the order of the reference. A record has a hundred thousand days, so they are read row by row elsewhere.
    /// </summary>
    public static FieldTable<DailyWeather> Table { get; } =
        FieldTable
            .Of(File, File, default(DailyWeather))
            .Key("date", Kinds.Date, day => day.Date)
            .Means(
                "The day. At least one calendar year must be whole (kind record), or each month have 20 days (kind generated). Up "
                    + "to 3 days in "
                    + "a row may be missing: they are filled, and said."
            )
            .Required(EveryDay)
            .Key("tmin", s_temperature, day => day.TminC)
            .Means("Lowest temperature of the day.")
            .Required(EveryDay)
            .Key("tmax", s_temperature, day => day.TmaxC)
            .Means("Highest temperature of the day, at least the lowest.")
            .Required(EveryDay)
            .Key("rain", s_depth, day => day.RainMm)
            .Means("Rain of the day.")
            .Required(EveryDay)
            .Table();

    // Without bounds: the check of the record knows better which are possible.
    private static MeasuredKind Recorded(Quantity quantity, string what, string unit) =>
        new(quantity, double.NegativeInfinity, double.PositiveInfinity, what, unit);
}
