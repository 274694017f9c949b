using System.Collections.Immutable;
using System.Text.Json;
using BenchSim.Report.Json;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Answers.Json;

/// <summary>A weather generator fitted to a record: degrees Celsius, millimetres, shares from 0 to 1.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="File">The record.</param>
/// <param name="First">Its first day.</param>
/// <param name="Last">Its last day.</param>
/// <param name="Years">Years of it.</param>
/// <param name="Short">Whether that is less than it takes to be sure of.</param>
/// <param name="GeneratedYears">Years drawn to compare.</param>
/// <param name="Fitted">What was fitted, by month.</param>
/// <param name="CarryOver">What one day carries over to the next.</param>
/// <param name="Months">The record beside what is generated, by month.</param>
/// <param name="Springs">The springs of the record beside generated ones; empty where no spring of the record is whole.</param>
/// <param name="Sentences">How well it does, in words.</param>
/// <param name="Cautions">What one should know of it, in words.</param>
/// <param name="Repairs">What had to be put right in the record.</param>
/// <param name="Faults">What is wrong with it: nothing.</param>
/// <param name="Folder">Folder of the chart and tables; null where none was written.</param>
internal sealed record WeatherDocument(
    int Version,
    string File,
    DateOnly First,
    DateOnly Last,
    double Years,
    bool Short,
    int GeneratedYears,
    ImmutableArray<JsonFittedMonth> Fitted,
    JsonCarryOver CarryOver,
    ImmutableArray<JsonWeatherMonth> Months,
    ImmutableArray<JsonSpringFigure> Springs,
    ImmutableArray<string> Sentences,
    ImmutableArray<string> Cautions,
    ImmutableArray<JsonFault> Repairs,
    ImmutableArray<JsonFault> Faults,
    string? Folder
)
{
    public static WeatherDocument Of(string file, FittedWeather fitted, ImmutableArray<Fault> repairs, string? folder)
    {
        var report = fitted.Report;
        return new(
            Version: JsonDialect.Version,
            File: file,
            First: report.First,
            Last: report.Last,
            Years: report.Years,
            Short: report.Years < WeatherFitReport.ShortRecordYears,
            GeneratedYears: report.GeneratedYears,
            Fitted: [.. fitted.Model.Months.Select((month, at) => JsonFittedMonth.Of(at + 1, month))],
            CarryOver: JsonCarryOver.Of(fitted.Model),
            Months: [.. report.Months.Select(JsonWeatherMonth.Of)],
            Springs: [.. report.Springs.Select(JsonSpringFigure.Of)],
            Sentences: [.. WeatherFitWords.Sentences(report, UnitSystem.Metric, UnitSystem.Metric)],
            Cautions: [.. WeatherFitWords.Warnings(report, UnitSystem.Metric)],
            Repairs: JsonFault.Of(repairs),
            Faults: [],
            Folder: folder
        );
    }
}

/// <summary>What was fitted to a month.</summary>
/// <param name="Month">Month, 1 to 12.</param>
/// <param name="LowWetC">Mean low of a wet day.</param>
/// <param name="LowDryC">Mean low of a dry day.</param>
/// <param name="HighWetC">Mean high of a wet day.</param>
/// <param name="HighDryC">Mean high of a dry day.</param>
/// <param name="LowSdC">Standard deviation of the low.</param>
/// <param name="HighSdC">Standard deviation of the high.</param>
/// <param name="LowQuantiles">Residual of the low, in standard deviations, at the normal scores -2.5 to 2.5 by halves.</param>
/// <param name="HighQuantiles">Residual of the high at the same scores.</param>
/// <param name="LowYearShare">Share of the variance of the low's scores that the days of a calendar year have in common.</param>
/// <param name="HighYearShare">Share of the variance of the high's scores that the days of a calendar year have in common.</param>
/// <param name="WetShare">Share of wet days.</param>
/// <param name="WetAfterDry">Chance of rain after a dry day.</param>
/// <param name="WetAfterWet">Chance of rain after a wet day.</param>
/// <param name="RainShape">Shape of the gamma distribution of rain on a wet day.</param>
/// <param name="RainScaleMm">Its scale.</param>
internal sealed record JsonFittedMonth(
    int Month,
    double LowWetC,
    double LowDryC,
    double HighWetC,
    double HighDryC,
    double LowSdC,
    double HighSdC,
    ImmutableArray<double> LowQuantiles,
    ImmutableArray<double> HighQuantiles,
    double LowYearShare,
    double HighYearShare,
    double WetShare,
    double WetAfterDry,
    double WetAfterWet,
    double RainShape,
    double RainScaleMm
)
{
    public static JsonFittedMonth Of(int number, MonthWeather month) =>
        new(
            Month: number,
            LowWetC: month.TminWetC,
            LowDryC: month.TminDryC,
            HighWetC: month.TmaxWetC,
            HighDryC: month.TmaxDryC,
            LowSdC: month.TminSdC,
            HighSdC: month.TmaxSdC,
            LowQuantiles: month.TminShape.Quantiles(),
            HighQuantiles: month.TmaxShape.Quantiles(),
            LowYearShare: month.TminYearShare,
            HighYearShare: month.TmaxYearShare,
            WetShare: month.WetShare,
            WetAfterDry: month.WetAfterDry,
            WetAfterWet: month.WetAfterWet,
            RainShape: month.RainShape,
            RainScaleMm: month.RainScaleMm
        );
}

/// <summary>What today keeps of yesterday's departures from the season, counted in normal scores.</summary>
/// <param name="HighOfHigh">Today's high of yesterday's high.</param>
/// <param name="HighOfLow">Today's high of yesterday's low.</param>
/// <param name="LowOfHigh">Today's low of yesterday's high.</param>
/// <param name="LowOfLow">Today's low of yesterday's low.</param>
/// <param name="YearCorrelation">Correlation of high and low in what the days of a calendar year have in common.</param>
internal sealed record JsonCarryOver(double HighOfHigh, double HighOfLow, double LowOfHigh, double LowOfLow, double YearCorrelation)
{
    public static JsonCarryOver Of(WeatherModel model) =>
        new(model.Residuals.A11, model.Residuals.A12, model.Residuals.A21, model.Residuals.A22, model.YearCorrelation);
}

/// <summary>A figure of the springs, January to June, of the record beside generated ones.</summary>
/// <param name="Figure">last_frost: day of the year of the last night at or below 0 degrees Celsius; last_hard_frost: of the last at or
/// below -2.2; cold_nights_of_april and cold_nights_of_may: nights below 4.4; mean_temperature: of March to May, degrees Celsius.</param>
/// <param name="Record">The record.</param>
/// <param name="Generated">What is generated.</param>
/// <param name="Outside">Whether they lie further apart than the luck of the record's springs explains.</param>
internal sealed record JsonSpringFigure(string Figure, JsonSprings Record, JsonSprings Generated, bool Outside)
{
    public static JsonSpringFigure Of(SpringFigure figure) =>
        new(
            JsonNamingPolicy.SnakeCaseLower.ConvertName($"{figure.Kind}"),
            JsonSprings.Of(figure.Record),
            JsonSprings.Of(figure.Generated),
            figure.IsOutside
        );
}

/// <summary>A figure over springs.</summary>
/// <param name="Springs">Springs that are whole.</param>
/// <param name="Without">Springs of these without such a night, which count in neither mean nor spread.</param>
/// <param name="Mean">Mean over the others; null where there is none.</param>
/// <param name="Sd">Standard deviation between the others; null where there are fewer than two.</param>
internal sealed record JsonSprings(int Springs, int Without, double? Mean, double? Sd)
{
    public static JsonSprings Of(SpringSide side) => new(side.Springs, side.Without, side.Mean, side.StandardDeviation);
}

/// <summary>A month of the record beside what is generated.</summary>
/// <param name="Month">Month, 1 to 12.</param>
/// <param name="Record">The record.</param>
/// <param name="Generated">What is generated.</param>
internal sealed record JsonWeatherMonth(int Month, JsonMonthOfDays Record, JsonMonthOfDays Generated)
{
    public static JsonWeatherMonth Of(MonthFit month) =>
        new(
            month.Month,
            JsonMonthOfDays.Of(month.Record, month.RecordRainMm, month.RecordColdNights),
            JsonMonthOfDays.Of(month.Generated, month.GeneratedRainMm, month.GeneratedColdNights)
        );
}

/// <summary>The days of a month, means over the years.</summary>
/// <param name="LowC">Mean low.</param>
/// <param name="HighC">Mean high.</param>
/// <param name="WetShare">Share of wet days.</param>
/// <param name="WetAfterDry">Share of wet days among those after a dry one; null where there is none.</param>
/// <param name="WetAfterWet">Share of wet days among those after a wet one; null where there is none.</param>
/// <param name="RainMm">Rain.</param>
/// <param name="ColdNights">Nights below 4.4 degrees Celsius.</param>
internal sealed record JsonMonthOfDays(
    double LowC,
    double HighC,
    double WetShare,
    double? WetAfterDry,
    double? WetAfterWet,
    double RainMm,
    double ColdNights
)
{
    public static JsonMonthOfDays Of(MonthStatistics month, double rainMm, double coldNights) =>
        new(month.TminMeanC, month.TmaxMeanC, month.WetShare, month.ChanceAfterDry, month.ChanceAfterWet, rainMm, coldNights);
}
