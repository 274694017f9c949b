using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Words;
using BenchSim.Folder;
using BenchSim.Report;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Answers.Weather;

/// <summary>Asks how well the weather generator fits a daily record.</summary>
public sealed record WeatherQuestion
{
    /// <summary>The record: a file with the columns date, tmin, tmax and rain.</summary>
    public required string File { get; init; }

    /// <summary>Units of temperatures that say none, and of those told.</summary>
    public UnitSystem Temperature { get; init; }

    /// <summary>Units of rain that says none, and of that told.</summary>
    public UnitSystem Rain { get; init; }

    /// <summary>Folder for a chart and tables; null for none.</summary>
    public string? Out { get; init; }

    /// <summary>C or F.</summary>
    internal string TemperatureUnit => Temperature == UnitSystem.Imperial ? "F" : "C";

    /// <summary>mm or in.</summary>
    internal string RainUnit => Rain == UnitSystem.Imperial ? "in" : "mm";

    /// <summary>Fits, and writes the folder where one is asked for.</summary>
    /// <param name="watch">Stops it.</param>
    /// <exception cref="FaultsFoundException">The record has faults, or is too short.</exception>
    public WeatherAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        if (Out is not null)
        {
            WeatherFolder.Check(Out);
        }

        var found = WeatherFile.Read(File, Temperature, Rain);
        RefuseFaults(found.IsUsable && WeatherFit.WhyNot(found.Days) is { } reason ? [TooShort(reason)] : found.Faults);
        watch.Cancel.ThrowIfCancellationRequested();
        var fitted = WeatherFit.Fit(found.Days);
        if (Out is not null)
        {
            WeatherFolder.Write(Out, fitted, found.Repairs, Temperature, watch.Cancel);
        }

        return new WeatherAnswer(this, fitted, found.Repairs);
    }

    private Fault TooShort(string reason) =>
        new(new SourcePlace(File, 0, 0), $"the record cannot be fitted: {reason}", "give a longer record, several years if you can");

    private void RefuseFaults(ImmutableArray<Fault> faults)
    {
        if (!faults.IsEmpty)
        {
            throw new FaultsFoundException(faults)
            {
                Note = faults.Any(fault => fault.Place.Line > 0)
                    ? $"Temperatures without a unit were read as {TemperatureUnit} and rain as {RainUnit}; "
                        + "--temperature-unit and --rain-unit say otherwise."
                    : null,
            };
        }
    }
}

/// <summary>How well the weather generator fits a record.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Fitted">The generator.</param>
/// <param name="Repairs">What had to be put right in the record.</param>
public sealed record WeatherAnswer(WeatherQuestion Question, FittedWeather Fitted, ImmutableArray<Fault> Repairs) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(WeatherDocument.Of(Question.File, Fitted, Repairs, Question.Out));

    /// <inheritdoc />
    public override FirstScreen? Screen => WeatherScreen.Of(this);

    private protected override void Tell(Passages passages) => WeatherTelling.Tell(passages, Question, Fitted, Repairs);
}
