using BenchSim.Report.Words;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;
using ScottPlot;
using ScottPlot.Plottables;
using SkiaSharp;

namespace BenchSim.Report.Charts;

/// <summary>A weather record beside the generator fitted to it, month by month: mean temperatures above, share of wet days below.</summary>
internal static class WeatherFitChart
{
    /// <summary>Width of the picture in layout pixels.</summary>
    public const int Width = 960;

    /// <summary>Height of the picture in layout pixels.</summary>
    public const int Height = 760;

    private const int TemperatureHeight = 440;

    private static readonly double[] s_months = [.. Enumerable.Range(1, 12).Select(month => (double)month)];

    /// <summary>Draws it as PNG.</summary>
    /// <param name="report">How well the generator does.</param>
    /// <param name="units">Units of the temperatures.</param>
    public static byte[] Draw(WeatherFitReport report, UnitSystem units)
    {
        using var temperatures = Temperatures(report, units);
        using var wet = Wet(report);
        var size = new SKImageInfo(Width * Picture.Scale, Height * Picture.Scale, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(size) ?? throw new InvalidOperationException("The picture of the weather cannot be drawn.");
        surface.Canvas.Clear(SKColors.White);
        Render(temperatures, surface, 0, TemperatureHeight);
        Render(wet, surface, TemperatureHeight, Height);
        using var pixels = surface.PeekPixels();
        using var png = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.Up, 6))
            ?? throw new InvalidOperationException("A picture cannot be encoded.");
        return png.ToArray();
    }

    private static void Render(Plot plot, SKSurface surface, int top, int bottom)
    {
        plot.RenderManager.ClearCanvasBeforeEachRender = false;
        surface.Canvas.Save();
        surface.Canvas.Translate(0, top * Picture.Scale);
        plot.Render(surface.Canvas, Width * Picture.Scale, (bottom - top) * Picture.Scale);
        surface.Canvas.Restore();
    }

    private static Plot Temperatures(WeatherFitReport report, UnitSystem units)
    {
        var unit = units == UnitSystem.Imperial ? "F" : "C";
        var plot = Picture.Blank(
            $"Mean temperatures by month, {unit}: {Numbers.Short(report.Years)} years of record and {Numbers.Whole(report.GeneratedYears)} generated"
        );
        double Shown(double celsius) => units == UnitSystem.Imperial ? (celsius * 1.8) + 32 : celsius;
        var recordHigh = Of(report, month => Shown(month.Record.TmaxMeanC));
        var recordLow = Of(report, month => Shown(month.Record.TminMeanC));
        var madeHigh = Of(report, month => Shown(month.Generated.TmaxMeanC));
        var madeLow = Of(report, month => Shown(month.Generated.TminMeanC));
        Line(plot, madeHigh, Palette.Wanted, "highest, generated");
        Marks(plot, recordHigh, Palette.Wanted, "highest, record");
        Line(plot, madeLow, Palette.Held, "lowest, generated");
        Marks(plot, recordLow, Palette.Held, "lowest, record");
        var low = recordLow.Concat(madeLow).Min();
        var high = recordHigh.Concat(madeHigh).Max();
        var air = Math.Max(1, (high - low) * 0.08);
        plot.Axes.SetLimits(0.5, 12.5, low - air, high + air);
        Finish(plot);
        return plot;
    }

    private static Plot Wet(WeatherFitReport report)
    {
        var plot = Picture.Blank("Share of wet days by month, percent");
        var made = Of(report, month => 100 * month.Generated.WetShare);
        var record = Of(report, month => 100 * month.Record.WetShare);
        Line(plot, made, Palette.Bench, "wet days, generated");
        Marks(plot, record, Palette.Bench, "wet days, record");
        plot.Axes.SetLimits(0.5, 12.5, 0, Math.Max(10, made.Concat(record).Max() * 1.1));
        Finish(plot);
        return plot;
    }

    private static double[] Of(WeatherFitReport report, Func<MonthFit, double> value) => [.. report.Months.Select(value)];

    private static void Line(Plot plot, double[] values, Color color, string legend)
    {
        var line = plot.Add.ScatterLine(s_months, values, color);
        line.LineWidth = 2;
        line.LegendText = legend;
    }

    // The record stands as hollow rings, so that a line that meets it is seen through them.
    private static void Marks(Plot plot, double[] values, Color color, string legend)
    {
        var marks = plot.Add.ScatterPoints(s_months, values, color);
        marks.MarkerStyle = new MarkerStyle(MarkerShape.OpenCircle, 11, color) { LineColor = color, LineWidth = 2.5f };
        marks.LegendText = legend;
    }

    private static void Finish(Plot plot)
    {
        plot.Axes.Bottom.SetTicks(s_months, [.. Enumerable.Range(1, 12).Select(month => Dates.ShortMonth(new DateOnly(2001, month, 1)))]);
        plot.Axes.Bottom.TickLabelStyle.FontSize = 12;
        plot.Axes.Bottom.TickLabelStyle.ForeColor = Palette.Ink;
        plot.Axes.Left.TickLabelStyle.FontSize = 12;
        plot.Axes.Left.TickLabelStyle.OffsetY = Picture.LabelDrop;
        Picture.Legend(plot);
    }
}
