using System.Collections.Immutable;

namespace BenchSim.Season.Weather;

/// <summary>A weather model fitted to a record, and how well it does. Safe for use by several threads.</summary>
public sealed class FittedWeather
{
    private readonly Lazy<WeatherFitReport> _report;

    /// <summary>Makes one of a report that is there.</summary>
    /// <param name="model">The model.</param>
    /// <param name="report">How well the model reproduces the record.</param>
    public FittedWeather(WeatherModel model, WeatherFitReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        Model = model;
        Years = report.Years;
        _report = new Lazy<WeatherFitReport>(report);
    }

    /// <summary>Makes one whose report is worked out when it is first asked for: most who read a record never ask.</summary>
    /// <param name="model">The model.</param>
    /// <param name="days">The record that it was fitted to.</param>
    public FittedWeather(WeatherModel model, ImmutableArray<DailyWeather> days)
    {
        Model = model;
        Years = WeatherFitReport.YearsOf(days);
        _report = new Lazy<WeatherFitReport>(() => WeatherFitReport.Of(model, days));
    }

    /// <summary>The model.</summary>
    public WeatherModel Model { get; }

    /// <summary>Years the record's days make up (days / 365.25).</summary>
    public double Years { get; }

    /// <summary>How well the model reproduces the record: 400 generated years beside it.</summary>
    public WeatherFitReport Report => _report.Value;
}
