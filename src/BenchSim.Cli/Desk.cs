using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Cli.Words;

namespace BenchSim.Cli;

/// <summary>Where a command writes, and how it is stopped.</summary>
/// <param name="Output">Answers.</param>
/// <param name="Error">Faults, notes and progress.</param>
/// <param name="Terminal">True when <paramref name="Error"/> is a terminal, so that progress may be drawn on it.</param>
/// <param name="Cancel">Stops the command.</param>
internal sealed record Desk(TextWriter Output, TextWriter Error, bool Terminal, CancellationToken Cancel)
{
    private const int LineWidth = 80;

    private static readonly JsonWriterOptions s_jsonLayout = new() { Indented = true, NewLine = "\n" };

    /// <summary>Writes a line to standard output as it is, made safe for a terminal.</summary>
    public void Say(string line = "") => Output.Write(SafeText.OneLine(line).TrimEnd() + "\n");

    /// <summary>Writes a sentence to standard output, broken into lines at spaces.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="indent">Spaces before each line.</param>
    public void SayWrapped(string text, int indent = 0)
    {
        foreach (var line in Paragraph.Lines(SafeText.OneLine(text), LineWidth - indent))
        {
            Output.Write(new string(' ', indent) + line + "\n");
        }
    }

    /// <summary>Writes a line to standard error, made safe for a terminal. Never broken: a fault stays on one line.</summary>
    public void Complain(string line) => Error.Write(SafeText.OneLine(line).TrimEnd() + "\n");

    /// <summary>Writes one JSON object to standard output. Everything beyond plain ASCII is escaped.</summary>
    /// <param name="write">Writes what is inside the object.</param>
    public void SayJson(Action<Utf8JsonWriter> write)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, s_jsonLayout))
        {
            json.WriteStartObject();
            json.WriteNumber("version", 1);
            write(json);
            json.WriteEndObject();
        }

        Output.Write(System.Text.Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length) + "\n");
    }
}
