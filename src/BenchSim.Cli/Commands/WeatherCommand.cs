using System.CommandLine;
using BenchSim.Answers.Weather;
using BenchSim.Cli.Terminal;

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
        var output = new OutputOptions("what was fitted, or the faults,");
        var command = new Command(
            "weather",
            "Fits the weather generator to a daily record, "
                + "prints what it fitted and how well generated years resemble the record, and warns when the record is short."
        )
        {
            file,
            temperature,
            rain,
            place,
        };
        output.AddTo(command);
        command.SetAction(parsed =>
            desk.Give(
                new WeatherQuestion
                {
                    File = parsed.GetRequiredValue(file),
                    Temperature = parsed.GetValue(temperature),
                    Rain = parsed.GetValue(rain),
                    Out = parsed.GetValue(place),
                }.Ask(desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }
}
