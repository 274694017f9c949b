using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using BenchSim.Report.Tables;
using BenchSim.Report.Words;

namespace BenchSim.Report.Json;

/// <summary>
/// How all JSON of the program is written: names in snake_case, dates as yyyy-mm-dd, numbers with at most six decimals and never -0, what
/// there is no
/// number for as null, no property left out.
/// </summary>
public static class JsonDialect
{
    /// <summary>Version of the documents; it is raised when a property goes away or changes its meaning, not when one is added.</summary>
    public const int Version = 2;

    /// <summary>The settings, to make a context with: a context takes them for its own.</summary>
    public static JsonSerializerOptions Options() =>
        new()
        {
            PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
            WriteIndented = true,
            IndentSize = 1,
            NewLine = "\n",
            Converters = { new ValidText(), new RoundedNumber(), new WholeNumberLine(), new NumberLine() },
        };

    /// <summary>A document as UTF-8, plain ASCII, line feeds only, a line feed at the end.</summary>
    /// <param name="document">The document.</param>
    /// <param name="type">Its type, from a context made with <see cref="Options"/>.</param>
    public static byte[] Write<T>(T document, JsonTypeInfo<T> type) => [.. JsonSerializer.SerializeToUtf8Bytes(document, type), (byte)'\n'];

    // The last bits of a sum do not show, and tables round alike.
    private static string Literal(double number) => double.IsFinite(number) ? CsvTable.Rounded(number) : "null";

    private abstract class Written<T> : JsonConverter<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException("These documents are written, not read.");
    }

    private sealed class ValidText : Written<string>
    {
        public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) =>
            writer.WriteStringValue(PlainText.Valid(value));
    }

    private sealed class RoundedNumber : Written<double>
    {
        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) =>
            writer.WriteRawValue(Literal(value));
    }

    // One line a list: the indented form would put each of thousands of numbers on a line of its own.
    private abstract class Line<T> : Written<ImmutableArray<T>>
    {
        public override void Write(Utf8JsonWriter writer, ImmutableArray<T> value, JsonSerializerOptions options) =>
            writer.WriteRawValue("[" + string.Join(", ", value.Select(Text)) + "]");

        protected abstract string Text(T number);
    }

    private sealed class WholeNumberLine : Line<int>
    {
        protected override string Text(int number) => number.ToString(null, null);
    }

    private sealed class NumberLine : Line<double>
    {
        protected override string Text(double number) => Literal(number);
    }
}
