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
    private const string Chart = "charts/weather.png";
    private const string Fitted = "tables/weather-fitted.csv";
    private const string CarryOver = "tables/weather-carry-over.csv";
    private const string Compared = "tables/weather-months.csv";
    private const string Repairs = "tables/weather-repairs.csv";

    /// <summary>Refuses a place where something stands that is not such a folder; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there.</exception>
    public static void Check(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        Files(directory).Check();
    }

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
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        Files(directory)
            .Write(
                [],
                folder =>
                {
                    folder.Save(Fitted, WeatherTables.Fitted(fitted.Model));
                    folder.Save(CarryOver, WeatherTables.CarryOver(fitted.Model.Residuals));
                    folder.Save(Compared, WeatherTables.Compared(fitted.Report));
                    folder.Save(Repairs, WeatherTables.Repairs(repairs));
                    folder.Save(
                        Chart,
                        PngPainter.Draw(
                            (WeatherFitChart.Temperatures(fitted.Report, units), PictureLayout.Plot with { Height = 440 }),
                            (WeatherFitChart.WetDays(fitted.Report), PictureLayout.Plot with { Height = 320 })
                        )
                    );
                },
                cancel
            );
    }

    private static OwnFolder Files(string directory) => new(directory, Chart, CarryOver, Fitted, Compared, Repairs);
}
