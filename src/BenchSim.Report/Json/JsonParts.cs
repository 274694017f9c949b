using System.Collections.Immutable;
using System.Text.Json;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>The shapes that <c>result.json</c> is made of.</summary>
internal static class JsonParts
{
    /// <summary>A list of objects.</summary>
    public static void Array<T>(Utf8JsonWriter writer, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        writer.WriteStartArray(name);
        foreach (var item in items)
        {
            writer.WriteStartObject();
            write(writer, item);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    public static void Text(Utf8JsonWriter writer, string name, string text) => writer.WriteString(name, PlainText.Valid(text));

    public static void TextOrNull(Utf8JsonWriter writer, string name, string? text)
    {
        if (text is null)
        {
            writer.WriteNull(name);
        }
        else
        {
            Text(writer, name, text);
        }
    }

    public static void Date(Utf8JsonWriter writer, string name, DateOnly? date)
    {
        if (date is { } day)
        {
            writer.WriteString(name, Dates.Iso(day));
        }
        else
        {
            writer.WriteNull(name);
        }
    }

    /// <summary>A number rounded to six decimals, so that the last bits of a sum do not show; null when it is none (NaN).</summary>
    public static void Number(Utf8JsonWriter writer, string name, double value)
    {
        writer.WritePropertyName(name);
        NumberValue(writer, value);
    }

    public static void Strings(Utf8JsonWriter writer, string name, ImmutableArray<string> texts)
    {
        writer.WriteStartArray(name);
        foreach (var text in texts)
        {
            writer.WriteStringValue(text);
        }

        writer.WriteEndArray();
    }

    public static void Numbers(Utf8JsonWriter writer, string name, ImmutableArray<int> values) =>
        Line(writer, name, values.Select(value => value.ToString(null, null)));

    public static void Numbers(Utf8JsonWriter writer, string name, ImmutableArray<double> values) =>
        Line(writer, name, values.Select(Literal));

    public static void Chance(Utf8JsonWriter writer, string name, Chance chance)
    {
        writer.WriteStartObject(name);
        writer.WriteNumber("hits", chance.Hits);
        writer.WriteNumber("seasons", chance.Seasons);
        Number(writer, "share", chance.Share);
        Number(writer, "low", chance.Low);
        Number(writer, "high", chance.High);
        writer.WriteEndObject();
    }

    public static void Spread(Utf8JsonWriter writer, string name, DateSpread spread)
    {
        writer.WriteStartObject(name);
        Date(writer, "p10", spread.P10);
        Date(writer, "p50", spread.P50);
        Date(writer, "p90", spread.P90);
        writer.WriteNumber("happened", spread.Happened);
        writer.WriteNumber("seasons", spread.Seasons);
        writer.WriteEndObject();
    }

    public static void Estimate(Utf8JsonWriter writer, string name, Estimate estimate)
    {
        writer.WriteStartObject(name);
        EstimateFields(writer, estimate);
        writer.WriteEndObject();
    }

    public static void EstimateFields(Utf8JsonWriter writer, Estimate estimate)
    {
        Number(writer, "mean", estimate.Mean);
        Number(writer, "half_width", estimate.HalfWidth);
        Number(writer, "p10", estimate.P10);
        Number(writer, "p50", estimate.P50);
        Number(writer, "p90", estimate.P90);
        Number(writer, "p95", estimate.P95);
        Number(writer, "least", estimate.Least);
        Number(writer, "most", estimate.Most);
        writer.WriteNumber("seasons", estimate.Seasons);
    }

    /// <summary>Spreads by day, a list a figure: shorter than an object a day, and ready for plotting.</summary>
    public static void Days(Utf8JsonWriter writer, string name, ImmutableArray<DaySpread> days)
    {
        writer.WriteStartObject(name);
        Line(writer, "mean", days.Select(day => Literal(day.Mean)));
        Line(writer, "p10", days.Select(day => day.P10.ToString(null, null)));
        Line(writer, "p50", days.Select(day => day.P50.ToString(null, null)));
        Line(writer, "p90", days.Select(day => day.P90.ToString(null, null)));
        Line(writer, "p95", days.Select(day => day.P95.ToString(null, null)));
        Line(writer, "most", days.Select(day => day.Most.ToString(null, null)));
        writer.WriteEndObject();
    }

    private static void NumberValue(Utf8JsonWriter writer, double value) => writer.WriteRawValue(Literal(value));

    private static string Literal(double value) => double.IsFinite(value) ? Tables.CsvTable.Rounded(value) : "null";

    // One line a list: the indented form would put each of thousands of numbers on a line of its own.
    private static void Line(Utf8JsonWriter writer, string name, IEnumerable<string> literals)
    {
        writer.WritePropertyName(name);
        writer.WriteRawValue("[" + string.Join(", ", literals) + "]");
    }
}
