using BenchSim.Report.Charts;

namespace BenchSim.Report.Pdf;

/// <summary>The plot of a chart on paper, millimetres, and where a value lies.</summary>
/// <param name="Left">Left end.</param>
/// <param name="Top">Upper end.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="Axis">The axis below.</param>
/// <param name="Up">The axis at the left; null where there are rows.</param>
internal sealed record PdfFrame(double Left, double Top, double Width, double Height, ChartAxis Axis, ChartAxis? Up)
{
    /// <summary>Where a value of the axis below lies.</summary>
    public double Across(double value) => Left + ((value - Axis.Low) / Math.Max(1e-9, Axis.High - Axis.Low) * Width);

    /// <summary>Where a value of the axis at the left lies.</summary>
    public double Down(double value) => Top + Height - ((value - Up!.Low) / (Up.High - Up.Low) * Height);
}
