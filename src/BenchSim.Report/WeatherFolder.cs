using BenchSim.Report.Charts;
using BenchSim.Report.Pictures;
using BenchSim.Report.Tables;
using BenchSim.Report.Writing;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Report;

/// <summary>
/// A fitted weather generator as a folder: <c>charts/weather.png</c> and <c>tables/weather-*.csv</c>. It keeps the rules of a
/// <see cref="ReportFolder"/>: whole or absent, and nothing that stood there is lost but an earlier folder of the same kind.
/// </summary>
public static class WeatherFolder
{
    private static readonly ResultFolder<(FittedWeather Fitted, IReadOnlyList<Fault> Repairs, UnitSystem Units)> s_folder = new(
        [
            ("charts/weather.png", weather =>
                PngPainter.Draw(
                    (WeatherFitChart.Temperatures(weather.Fitted.Report, weather.Units), PictureLayout.Plot with { Height = 440 }),
                    (WeatherFitChart.WetDays(weather.Fitted.Report), PictureLayout.Plot with { Height = 320 })
                )
            ),
        ],
        [
            ("tables/weather-carry-over.csv", weather => WeatherTables.CarryOver(weather.Fitted.Model.Residuals)),
            ("tables/weather-fitted.csv", weather => WeatherTables.Fitted(weather.Fitted.Model)),
            (WeatherFitChart.Table, weather => WeatherTables.Compared(weather.Fitted.Report)),
            ("tables/weather-quantiles.csv", weather => WeatherTables.Quantiles(weather.Fitted.Model)),
            ("tables/weather-repairs.csv", weather => WeatherTables.Repairs(weather.Repairs)),
            ("tables/weather-springs.csv", weather => WeatherTables.Springs(weather.Fitted.Report)),
        ]
    );

    /// <summary>Refuses a place where something stands that is not such a folder; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there.</exception>
    public static void Check(string directory) => s_folder.Check(directory);

    /// <summary>Writes the folder. It appears whole at the end or not at all.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="fitted">The model and how well it does.</param>
    /// <param name="repairs">What was put right in the record.</param>
    /// <param name="units">Units of the temperatures on the chart.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(
        string directory,
        FittedWeather fitted,
        IReadOnlyList<Fault> repairs,
        UnitSystem units,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(fitted);
        ArgumentNullException.ThrowIfNull(repairs);
        s_folder.Write(directory, (fitted, repairs, units), cancel);
    }
}
