using System.Collections.Immutable;
using System.CommandLine;
using BenchSim.Cli.Printing;
using BenchSim.Folder;
using BenchSim.Report;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Cli.Commands;

/// <summary><c>weather FILE</c>: fits the weather generator to a daily record and says how well it does.</summary>
internal static class WeatherCommand
{
    public static readonly string[] Examples =
    [
        "benchsim weather spring/weather.csv",
        "benchsim weather station.csv --temperature-unit F --rain-unit in --out station-weather",
    ];

    public static Command Make(Desk desk)
    {
        var file = CommonOptions.File("Daily record: a CSV file with the columns date, tmin, tmax and rain.");
        var temperature = CommonOptions.Units(
            "--temperature-unit",
            "C",
            "F",
            "Unit of temperatures that are written without one. Default: C."
        );
        var rain = CommonOptions.Units("--rain-unit", "mm", "in", "Unit of rain that is written without one. Default: mm.");
        var place = CommonOptions.Text("--out", "DIR", "Folder for a chart and tables. Default: none is written.");
        var json = CommonOptions.ForMachines("what was fitted, or the faults,");
        var command = new Command(
            "weather",
            "Fits the weather generator to a daily record, prints what it fitted and how well generated years resemble the record, and warns when the record is short."
        )
        {
            file,
            temperature,
            rain,
            place,
            json,
        };
        command.SetAction(parsed =>
            Fit(
                new WeatherSettings(
                    parsed.GetRequiredValue(file),
                    parsed.GetValue(temperature),
                    parsed.GetValue(rain),
                    parsed.GetValue(place),
                    parsed.GetValue(json)
                ),
                desk
            )
        );
        return command;
    }

    private static int Fit(WeatherSettings settings, Desk desk)
    {
        if (settings.Out is not null)
        {
            WeatherFolder.Check(settings.Out);
        }

        var found = WeatherFile.Read(settings.File, settings.Temperature, settings.Rain);
        var faults =
            found.IsUsable && WeatherFit.WhyNot(found.Days) is { } reason
                ?
                [
                    new Fault(
                        new SourcePlace(settings.File, 0, 0),
                        $"the record cannot be fitted: {reason}",
                        "give a longer record, several years if you can"
                    ),
                ]
                : found.Faults;
        if (!faults.IsEmpty)
        {
            return PrintFaults(settings, faults, desk);
        }

        desk.Cancel.ThrowIfCancellationRequested();
        var fitted = WeatherFit.Fit(found.Days);
        if (settings.Out is not null)
        {
            WeatherFolder.Write(settings.Out, fitted, found.Repairs, settings.Temperature, desk.Cancel);
        }

        if (settings.Json)
        {
            WeatherJson.Print(desk, settings, fitted, found.Repairs);
        }
        else
        {
            WeatherPrinter.Print(desk, settings, fitted, found.Repairs);
        }

        return ExitCode.Done;
    }

    private static int PrintFaults(WeatherSettings settings, ImmutableArray<Fault> faults, Desk desk)
    {
        var code = FaultList.Print(desk, settings.Json, faults);
        if (faults.Any(fault => fault.Place.Line > 0))
        {
            desk.Complain(
                $"Temperatures without a unit were read as {settings.TemperatureUnit} and rain as {settings.RainUnit}; "
                    + "--temperature-unit and --rain-unit say otherwise."
            );
        }

        return code;
    }
}
