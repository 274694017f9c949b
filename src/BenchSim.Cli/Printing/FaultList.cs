using System.Collections.Immutable;
using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Season.Values;

namespace BenchSim.Cli.Printing;

/// <summary>Faults and warnings, in order of file, line and column.</summary>
internal static class FaultList
{
    public static ImmutableArray<Fault> Sorted(IEnumerable<Fault> faults) =>
        [
            .. faults
                .OrderBy(fault => fault.Place.File, StringComparer.Ordinal)
                .ThenBy(fault => fault.Place.Line)
                .ThenBy(fault => fault.Place.Column),
        ];

    /// <summary>Prints every fault on standard error, one a line, with their number at the end.</summary>
    /// <returns>The exit code.</returns>
    public static int Print(Desk desk, bool json, ImmutableArray<Fault> faults)
    {
        foreach (var fault in faults)
        {
            desk.Complain(fault.ToString());
        }

        desk.Complain(
            $"{Figures.Count(faults.Length, "fault", "faults")} found. Mend {(faults.Length == 1 ? "it" : "them")} and try again."
        );
        if (json)
        {
            desk.SayJson(writer => Write(writer, "faults", faults));
        }

        return ExitCode.BadInput;
    }

    public static void Write(Utf8JsonWriter json, string name, ImmutableArray<Fault> faults)
    {
        json.WriteStartArray(name);
        foreach (var fault in faults)
        {
            json.WriteStartObject();
            json.WriteString("file", fault.Place.File);
            json.WriteNumber("line", fault.Place.Line);
            json.WriteNumber("column", fault.Place.Column);
            json.WriteString("what", fault.What);
            json.WriteString("instead", fault.Instead);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
