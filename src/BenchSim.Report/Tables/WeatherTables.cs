using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Report.Tables;

/// <summary>The tables of a fitted weather generator. Degrees Celsius and millimetres; shares from 0 to 1.</summary>
internal static class WeatherTables
{
    private static readonly ImmutableArray<Column> s_fitted =
    [
        new("month", "1 to 12", "month"),
        new("low_wet_c", "C", "mean lowest temperature of a wet day"),
        new("low_dry_c", "C", "mean lowest temperature of a dry day"),
        new("high_wet_c", "C", "mean highest temperature of a wet day"),
        new("high_dry_c", "C", "mean highest temperature of a dry day"),
        new("low_sd_c", "C", "standard deviation of the lowest temperature about that mean"),
        new("high_sd_c", "C", "standard deviation of the highest temperature about that mean"),
        new("low_year_share", "0 to 1", "share of that variance that is from year to year"),
        new("high_year_share", "0 to 1", "the same of the highest temperature"),
        new("wet_share", "0 to 1", "share of days that are wet"),
        new("wet_after_dry", "0 to 1", "chance of a wet day after a dry one"),
        new("wet_after_wet", "0 to 1", "chance of a wet day after a wet one"),
        new("rain_shape", "number", "shape of the gamma law of rain on a wet day"),
        new("rain_scale_mm", "mm", "its scale"),
    ];

    /// <summary>What was fitted, month by month.</summary>
    public static CsvTable Fitted(WeatherModel model)
    {
        var table = new CsvTable(s_fitted);
        for (var month = 1; month <= 12; month++)
        {
            var fitted = model.Months[month - 1];
            table
                .Number(month)
                .Number(fitted.TminWetC)
                .Number(fitted.TminDryC)
                .Number(fitted.TmaxWetC)
                .Number(fitted.TmaxDryC)
                .Number(fitted.TminSdC)
                .Number(fitted.TmaxSdC)
                .Number(fitted.TminYearShare)
                .Number(fitted.TmaxYearShare)
                .Number(fitted.WetShare)
                .Number(fitted.WetAfterDry)
                .Number(fitted.WetAfterWet)
                .Number(fitted.RainShape)
                .Number(fitted.RainScaleMm);
        }

        return table;
    }

    private static readonly ImmutableArray<Column> s_quantiles =
    [
        new("month", "1 to 12", "month"),
        new("score", "standard deviations", "normal score"),
        new("low", "standard deviations", "residual of the lowest temperature at that score"),
        new("high", "standard deviations", "residual of the highest temperature at that score"),
    ];

    /// <summary>The residuals, in standard deviations, at normal scores from -2.5 to 2.5, month by month.</summary>
    public static CsvTable Quantiles(WeatherModel model)
    {
        var table = new CsvTable(s_quantiles);
        for (var month = 1; month <= 12; month++)
        {
            var fitted = model.Months[month - 1];
            for (var score = -2.5; score <= 2.5; score += 0.5)
            {
                table.Number(month).Number(score).Number(fitted.TminShape.At(score)).Number(fitted.TmaxShape.At(score));
            }
        }

        return table;
    }

    private static readonly ImmutableArray<Column> s_springs =
    [
        new("figure", "text", "what is compared"),
        new("record_springs", "springs", "springs of the record"),
        new("record_without", "springs", "those that have no such figure"),
        new("record_mean", "days or C", "mean over the springs of the record: day of the year, nights or degrees"),
        new("record_sd", "days or C", "standard deviation from spring to spring"),
        new("generated_springs", "springs", "springs of generated years"),
        new("generated_without", "springs", "those that have no such figure"),
        new("generated_mean", "days or C", "mean over the springs of generated years: day of the year, nights or degrees"),
        new("generated_sd", "days or C", "standard deviation from spring to spring"),
        new("outside", "yes or no", "the record lies outside of what generated springs show"),
    ];

    /// <summary>The springs of the record beside generated ones: days of the year, nights, or degrees Celsius.</summary>
    public static CsvTable Springs(WeatherFitReport report)
    {
        var table = new CsvTable(s_springs);
        foreach (var figure in report.Springs)
        {
            table.Text(NameOf(figure.Kind));
            foreach (var side in new[] { figure.Record, figure.Generated })
            {
                table
                    .Number(side.Springs)
                    .Number(side.Without)
                    .Number(side.Mean ?? double.NaN)
                    .Number(side.StandardDeviation ?? double.NaN);
            }

            table.Text(figure.IsOutside ? "yes" : "no");
        }

        return table;
    }

    private static string NameOf(SpringKind kind) =>
        kind switch
        {
            SpringKind.LastFrost => "last_frost_day",
            SpringKind.LastHardFrost => "last_hard_frost_day",
            SpringKind.ColdNightsOfApril => "cold_nights_of_april",
            SpringKind.ColdNightsOfMay => "cold_nights_of_may",
            _ => "mean_temperature_c",
        };

    private static readonly ImmutableArray<Column> s_carryOver =
    [
        new("today", "text", "which departure from the season of the day"),
        new("of_yesterdays_high", "number", "how much of yesterday's departure of the high carries over"),
        new("of_yesterdays_low", "number", "how much of yesterday's departure of the low carries over"),
        new("luck_high", "number", "weight of the day's own draw for the high"),
        new("luck_low", "number", "weight of the day's own draw for the low"),
    ];

    /// <summary>How departures from the season carry over from one day to the next.</summary>
    public static CsvTable CarryOver(ResidualModel carry)
    {
        var table = new CsvTable(s_carryOver);
        table.Text("high").Number(carry.A11).Number(carry.A12).Number(carry.B11).Number(0.0);
        table.Text("low").Number(carry.A21).Number(carry.A22).Number(carry.B21).Number(carry.B22);
        return table;
    }

    private static readonly ImmutableArray<Column> s_compared =
    [
        new("month", "1 to 12", "month"),
        new("record_days", "days", "days of the record"),
        new("record_low_c", "C", "mean lowest temperature, in the record"),
        new("generated_low_c", "C", "mean lowest temperature, in generated years"),
        new("record_high_c", "C", "mean highest temperature, in the record"),
        new("generated_high_c", "C", "mean highest temperature, in generated years"),
        new("record_wet_share", "0 to 1", "share of days that are wet, in the record"),
        new("generated_wet_share", "0 to 1", "share of days that are wet, in generated years"),
        new("record_wet_after_dry", "0 to 1", "chance of a wet day after a dry one, in the record"),
        new("generated_wet_after_dry", "0 to 1", "chance of a wet day after a dry one, in generated years"),
        new("record_wet_after_wet", "0 to 1", "chance of a wet day after a wet one, in the record"),
        new("generated_wet_after_wet", "0 to 1", "chance of a wet day after a wet one, in generated years"),
        new("record_rain_mm", "mm", "rain of the month, in the record"),
        new("generated_rain_mm", "mm", "rain of the month, in generated years"),
        new("record_nights_below_4_4_c", "nights", "nights of the month below 4.4 C (40 F), in the record"),
        new("generated_nights_below_4_4_c", "nights", "nights of the month below 4.4 C (40 F), in generated years"),
    ];

    /// <summary>The record beside generated years, month by month.</summary>
    public static CsvTable Compared(WeatherFitReport report)
    {
        var table = new CsvTable(s_compared);
        foreach (var month in report.Months)
        {
            table
                .Number(month.Month)
                .Number(month.Record.Days)
                .Number(month.Record.TminMeanC)
                .Number(month.Generated.TminMeanC)
                .Number(month.Record.TmaxMeanC)
                .Number(month.Generated.TmaxMeanC)
                .Number(month.Record.WetShare)
                .Number(month.Generated.WetShare)
                .Number(month.Record.ChanceAfterDry)
                .Number(month.Generated.ChanceAfterDry)
                .Number(month.Record.ChanceAfterWet)
                .Number(month.Generated.ChanceAfterWet)
                .Number(month.RecordRainMm)
                .Number(month.GeneratedRainMm)
                .Number(month.RecordColdNights)
                .Number(month.GeneratedColdNights);
        }

        return table;
    }

    private static readonly ImmutableArray<Column> s_repairs =
    [
        new("line", "number", "line of the record"),
        new("column", "number", "its column, in characters"),
        new("found", "text", "what was found"),
        new("put_right", "text", "what was done"),
    ];

    /// <summary>What was put right in the record.</summary>
    public static CsvTable Repairs(IEnumerable<Fault> repairs)
    {
        var table = new CsvTable(s_repairs);
        foreach (var repair in repairs)
        {
            table
                .Number(repair.Place.Line)
                .Number(repair.Place.Column)
                .Text(PlainText.OneLine(repair.What))
                .Text(PlainText.OneLine(repair.Instead));
        }

        return table;
    }
}
