using System.Collections.Immutable;

namespace BenchSim.Folder;

/// <summary>Keys of [weather].</summary>
internal static class WeatherKeyList
{
    private const string None = "";
    private const string Ours = "choice of this program";
    private const string Temperature = "C or F; a bare number is in the units of [site], or as temperature_unit says";
    private const string Normals = "required for normals";
    private const string Record = "an average of two cities' record: docs/weather.md";

    public static readonly ImmutableArray<FieldDescription> Weather =
    [
        new(
            "weather",
            "kind",
            "constant, record, generated or normals",
            None,
            FieldDescription.Required,
            None,
            "The same weather every day; the years of a daily record; years made anew after a daily record; or years made from monthly normals."
        ),
        new(
            "weather",
            "low",
            "temperature, or list of 12",
            Temperature,
            "required for constant and normals",
            None,
            "Lowest temperature of every day (constant), or the mean lowest of each month, January first (normals)."
        ),
        new(
            "weather",
            "high",
            "temperature, or list of 12",
            Temperature,
            "required for constant and normals",
            None,
            "Highest temperature of every day (constant), or the mean highest of each month, January first (normals)."
        ),
        new(
            "weather",
            "rain",
            "depth, or list of 12",
            "mm or in; a bare number is in mm or in, or as rain_unit says",
            "0 for constant, required for normals",
            Ours,
            "Rain of every day (constant), or of each whole month, January first (normals)."
        ),
        new(
            "weather",
            "rain_days",
            "list of 12 numbers",
            "days, January first",
            Normals,
            None,
            "Days with rain in each month; kind normals only."
        ),
        new(
            "weather",
            "low_sd",
            "list of 12 differences",
            "C or F, January first",
            "3.15 C in each month",
            Record,
            "Standard deviation of the lowest temperatures of a month's days, 0.1 to 20 C (36 F); kind normals only."
        ),
        new(
            "weather",
            "high_sd",
            "list of 12 differences",
            "C or F, January first",
            "3.9 C in each month",
            Record,
            "Standard deviation of the highest temperatures of a month's days, 0.1 to 20 C (36 F); kind normals only."
        ),
        new(
            "weather",
            "file",
            "file name",
            None,
            "required for record and generated",
            None,
            "CSV file inside the folder with the columns of a weather record; kinds record and generated."
        ),
        new(
            "weather",
            "year",
            "whole number",
            "year",
            "a year drawn each season",
            Ours,
            "The year of the record to play every season; kind record only."
        ),
        new(
            "weather",
            "temperature_unit",
            "C or F",
            None,
            "units of [site]",
            Ours,
            "Unit of bare temperatures of the record or the normals; not for kind constant."
        ),
        new(
            "weather",
            "rain_unit",
            "mm or in",
            None,
            "units of [site]",
            Ours,
            "Unit of bare rain of the record or the normals; not for kind constant."
        ),
    ];
}
