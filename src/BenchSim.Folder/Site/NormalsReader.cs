using System.Collections.Immutable;
using BenchSim.Folder.Faults;
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
    private const int Months = 12;

    // A month's days spread by a few kelvin; 0 would be no weather.
    private const double LeastSpreadK = 0.1;
    private const double MostSpreadK = 20;

    // No place with a plan for the field has a warmest month this cold; Celsius read as Fahrenheit stays below it up to 50 C.
    private const double ColdestSummerC = 10;

    // 29 February is left out, as in the normals themselves.
    private static readonly int[] MonthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    /// <summary>The weather; null when there was a fault.</summary>
    public WeatherDraft? Read(UnitSystem temperatureUnits, UnitSystem rainUnits)
    {
        var before = cells.Faults.Count;
        var low = Temperatures("low", temperatureUnits);
        var high = Temperatures("high", temperatureUnits);
        var rainDays = Of("rain_days", isNeeded: true, (cell, month) => cells.Number(cell, 0, MonthDays[month]));
        var rain = Of("rain", isNeeded: true, (cell, _) => cells.Rain(cell with { Units = rainUnits }));
        var lowSpread = Spreads("low_sd", temperatureUnits);
        var highSpread = Spreads("high_sd", temperatureUnits);
        if (low is not null && high is not null)
        {
            CheckOrder(low, high);
            CheckUnit(high, temperatureUnits);
        }

        if (rainDays is not null && rain is not null)
        {
            CheckRain(rainDays, rain, rainUnits);
        }

        if (cells.Faults.Count > before || low is null || high is null || rainDays is null || rain is null)
        {
            return null;
        }

        var normals = new WeatherNormals
        {
            Months =
            [
                .. Enumerable
                    .Range(0, Months)
                    .Select(month => new MonthNormals(low[month], high[month], rainDays[month], rain[month])
                    {
                        TminSdC = lowSpread?[month],
                        TmaxSdC = highSpread?[month],
                    }),
            ],
            Source = $"the monthly normals in {FolderReference.SiteFile}",
        };
        foreach (var problem in normals.Problems())
        {
            cells.Faults.Add(section.PlaceOf("kind"), $"the normals cannot be: {problem}", "check the twelve numbers of each key");
        }

        return cells.Faults.Count > before ? null : WeatherDraft.Of(new GeneratedWeather(normals.ToModel(), null));
    }

    private double[]? Temperatures(string key, UnitSystem units) =>
        Of(key, isNeeded: true, (cell, _) => cells.Temperature(cell with { Units = units }));

    private double[]? Spreads(string key, UnitSystem units) =>
        Of(key, isNeeded: false, (cell, _) => cells.Difference(cell with { Units = units }, LeastSpreadK, MostSpreadK));

    // Twelve values; null when they are not written or had a fault.
    private double[]? Of(string key, bool isNeeded, Func<Cell, int, double?> read)
    {
        if (!section.Has(key))
        {
            if (isNeeded && section.IsWhole)
            {
                cells.Faults.Add(
                    section.Place,
                    $"[weather] has no {key}",
                    $"add a line {key} = [...] with 12 numbers, one for each month, January first"
                );
            }

            return null;
        }

        var before = cells.Faults.Count;
        var listed = section.List(
            key,
            "12 numbers between square brackets, one for each month, January first",
            "write 12, one for each month, January first"
        );
        if (cells.Faults.Count > before)
        {
            return null;
        }

        if (listed.Count != Months)
        {
            cells.Faults.Add(section.PlaceOf(key), $"{key} has {listed.Count} numbers", "write 12, one for each month, January first");
            return null;
        }

        double[] values = [.. listed.Select(read).OfType<double>()];
        return values.Length == Months ? values : null;
    }

    private void CheckOrder(double[] low, double[] high)
    {
        var written = section.List("high");
        for (var month = 0; month < Months; month++)
        {
            if (high[month] < low[month])
            {
                cells.Refuse(
                    written[month],
                    $"is {Words.Temperature(high[month], written[month].Units)} in {MonthNames.Of(month)}, below low, which is {Words.Temperature(low[month], written[month].Units)}",
                    "write the mean lowest temperature of a day in low and the mean highest in high"
                );
            }
        }
    }

    private void CheckUnit(double[] high, UnitSystem units)
    {
        if (units == UnitSystem.Imperial && high.Max() < ColdestSummerC)
        {
            cells.Faults.Add(
                section.PlaceOf("high"),
                $"read as Fahrenheit, the warmest month has {Words.Temperature(high.Max(), UnitSystem.Imperial)}; the normals look like Celsius",
                "write temperature_unit = \"C\""
            );
        }
    }

    private void CheckRain(double[] rainDays, double[] rain, UnitSystem units)
    {
        var (writtenDays, writtenRain) = (section.List("rain_days"), section.List("rain"));
        for (var month = 0; month < Months; month++)
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
