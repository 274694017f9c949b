using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Folder.Site;

/// <summary>Reads the monthly normals of [weather], kind normals.</summary>
internal sealed class NormalsReader(CellReader cells, Section section)
{
    // No place with a plan for the field has a warmest month this cold; Celsius read as Fahrenheit stays below it up to 50 C.
    private const double ColdestSummerC = 10;

    // 29 February is left out, as in the normals themselves.
    private static readonly int[] s_monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    /// <summary>The weather; null when there was a fault.</summary>
    /// <param name="draft">What was read so far, with the units of bare numbers.</param>
    public WeatherDraft? Read(WeatherDraft draft)
    {
        var (degrees, depths) = (draft.TemperatureUnits, draft.RainUnits);
        var before = cells.Faults.Count;
        var keys = draft.Keys with
        {
            LowC = Of("low", WeatherFields.Temperatures, degrees),
            HighC = Of("high", WeatherFields.Temperatures, degrees),
            RainDays = Of("rain_days", WeatherFields.RainDays, degrees),
            RainMm = Of("rain", WeatherFields.Rain, depths),
            LowSdK = Of("low_sd", WeatherFields.Spreads, degrees, isNeeded: false),
            HighSdK = Of("high_sd", WeatherFields.Spreads, degrees, isNeeded: false),
        };
        CheckRainDays(keys.RainDays);
        if (!keys.LowC.IsEmpty && !keys.HighC.IsEmpty)
        {
            CheckOrder(keys.LowC, keys.HighC, degrees);
            CheckUnit(keys.HighC, degrees);
        }

        if (!keys.RainDays.IsEmpty && !keys.RainMm.IsEmpty)
        {
            CheckRain(keys.RainDays, keys.RainMm, depths);
        }

        ImmutableArray<double>[] needed = [keys.LowC, keys.HighC, keys.RainDays, keys.RainMm];
        if (cells.Faults.Count > before || Array.Exists(needed, list => list.IsEmpty))
        {
            return null;
        }

        var normals = new WeatherNormals { Months = Months(keys), Source = $"the monthly normals in {FileNames.Site}" };
        foreach (var problem in normals.Problems())
        {
            cells.Faults.Add(section.PlaceOf("kind"), $"the normals cannot be: {problem}", "check the twelve numbers of each key");
        }

        return cells.Faults.Count > before ? null : WeatherDraft.Of(new GeneratedWeather(normals.ToModel(), null) { Written = keys });
    }

    private static ImmutableArray<MonthNormals> Months(WeatherKeys keys) =>
        [
            .. Enumerable
                .Range(0, MonthsKind.Months)
                .Select(month => new MonthNormals(keys.LowC[month], keys.HighC[month], keys.RainDays[month], keys.RainMm[month])
                {
                    TminSdC = keys.LowSdK.IsEmpty ? null : keys.LowSdK[month],
                    TmaxSdC = keys.HighSdK.IsEmpty ? null : keys.HighSdK[month],
                }),
        ];

    // Twelve values; none when they are not written or had a fault.
    private ImmutableArray<double> Of(string key, MonthsKind kind, UnitSystem units, bool isNeeded = true)
    {
        if (!section.Has(key) && isNeeded && section.IsWhole)
        {
            cells.Faults.Add(
                section.Place,
                $"[weather] has no {key}",
                $"add a line {key} = [...] with 12 numbers, one for each month, January first"
            );
        }

        var written = new WrittenKey(section.With(units), WeatherFields.Table.Find(key)!, cells);
        return kind.TryRead(written, out var values) ? values : [];
    }

    private void CheckRainDays(ImmutableArray<double> rainDays)
    {
        for (var month = 0; month < rainDays.Length; month++)
        {
            if (rainDays[month] > s_monthDays[month])
            {
                cells.Number(section.List("rain_days")[month], 0, s_monthDays[month]);
            }
        }
    }

    private void CheckOrder(ImmutableArray<double> low, ImmutableArray<double> high, UnitSystem units)
    {
        for (var month = 0; month < high.Length; month++)
        {
            if (high[month] < low[month])
            {
                cells.Refuse(
                    section.With(units).List("high")[month],
                    $"is {Words.Temperature(high[month], units)} in {MonthNames.Of(month)}, "
                        + $"below low, which is {Words.Temperature(low[month], units)}",
                    "write the mean lowest temperature of a day in low and the mean highest in high"
                );
            }
        }
    }

    private void CheckUnit(ImmutableArray<double> high, UnitSystem units)
    {
        if (units == UnitSystem.Imperial && high.Max() < ColdestSummerC)
        {
            cells.Faults.Add(
                section.PlaceOf("high"),
                $"read as Fahrenheit, the warmest month has {Words.Temperature(high.Max(), UnitSystem.Imperial)}; "
                    + "the normals look like Celsius",
                "write temperature_unit = \"C\""
            );
        }
    }

    private void CheckRain(ImmutableArray<double> rainDays, ImmutableArray<double> rain, UnitSystem units)
    {
        var (writtenDays, writtenRain) = (section.List("rain_days"), section.List("rain"));
        for (var month = 0; month < rain.Length; month++)
        {
            if (rain[month] > 0 && rainDays[month] == 0)
            {
                cells.Refuse(
                    writtenDays[month],
                    $"is 0 in {MonthNames.Of(month)}, which has {Quantity.Rain.Write(rain[month], units)} of rain",
                    "write the days on which it falls, or no rain"
                );
            }
            else if (rain[month] == 0 && rainDays[month] > 0)
            {
                cells.Refuse(
                    writtenRain[month],
                    $"is 0 in {MonthNames.Of(month)}, which has {Words.Number(rainDays[month])} rain days",
                    "write the rain of the whole month, or no rain days"
                );
            }
        }
    }
}
