using BenchSim.Report.Words;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Report.Tables;

/// <summary>The tables of a fitted weather generator. Degrees Celsius and millimetres; shares from 0 to 1.</summary>
internal static class WeatherTables
{
    /// <summary>What was fitted, month by month.</summary>
    public static byte[] Fitted(WeatherModel model)
    {
        var table = new CsvTable(
            "month",
            "low_wet_c",
            "low_dry_c",
            "high_wet_c",
            "high_dry_c",
            "low_sd_c",
            "high_sd_c",
            "wet_share",
            "wet_after_dry",
            "wet_after_wet",
            "rain_shape",
            "rain_scale_mm"
        );
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
                .Number(fitted.WetShare)
                .Number(fitted.WetAfterDry)
                .Number(fitted.WetAfterWet)
                .Number(fitted.RainShape)
                .Number(fitted.RainScaleMm);
        }

        return table.ToBytes();
    }

    /// <summary>How departures from the season carry over from one day to the next.</summary>
    public static byte[] CarryOver(ResidualModel carry)
    {
        var table = new CsvTable("today", "of_yesterdays_high", "of_yesterdays_low", "luck_high", "luck_low");
        table.Text("high").Number(carry.A11).Number(carry.A12).Number(carry.B11).Number(0.0);
        table.Text("low").Number(carry.A21).Number(carry.A22).Number(carry.B21).Number(carry.B22);
        return table.ToBytes();
    }

    /// <summary>The record beside generated years, month by month.</summary>
    public static byte[] Compared(WeatherFitReport report)
    {
        var table = new CsvTable(
            "month",
            "record_days",
            "record_low_c",
            "generated_low_c",
            "record_high_c",
            "generated_high_c",
            "record_wet_share",
            "generated_wet_share",
            "record_wet_after_dry",
            "generated_wet_after_dry",
            "record_wet_after_wet",
            "generated_wet_after_wet",
            "record_rain_mm",
            "generated_rain_mm",
            "record_nights_below_4_4_c",
            "generated_nights_below_4_4_c"
        );
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

        return table.ToBytes();
    }

    /// <summary>What was put right in the record.</summary>
    public static byte[] Repairs(IEnumerable<Fault> repairs)
    {
        var table = new CsvTable("line", "column", "found", "put_right");
        foreach (var repair in repairs)
        {
            table
                .Number(repair.Place.Line)
                .Number(repair.Place.Column)
                .Text(PlainText.OneLine(repair.What))
                .Text(PlainText.OneLine(repair.Instead));
        }

        return table.ToBytes();
    }
}
