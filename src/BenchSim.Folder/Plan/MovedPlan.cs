using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Plan;

/// <summary>
/// Writes a plan.csv again with other sow dates. All else stays to the byte: lines that do not move, other columns, separators, line ends,
/// blank rows and a byte order mark. A line of successions of which one moves becomes a line for each, with the ids and dates that reading
/// it gives.
/// </summary>
public static class MovedPlan
{
    // What levelling writes, and what says how far it may go.
    private static readonly string[] s_ownColumns = ["sow", "earlier", "later", "every_days", "times"];

    private static readonly UTF8Encoding s_strict = new(false, true);

    /// <summary>The plan with other sow dates.</summary>
    /// <param name="plan">Bytes of a plan that was read without faults, as <see cref="PlanAsCsv"/> gives them.</param>
    /// <param name="sowDates">New sow dates by batch id; batches without one stay as they are.</param>
    /// <returns>Bytes of the new file.</returns>
    public static ImmutableArray<byte> Write(ImmutableArray<byte> plan, IReadOnlyDictionary<string, DateOnly> sowDates)
    {
        ArgumentNullException.ThrowIfNull(sowDates);
        var text = s_strict.GetString(plan.AsSpan());
        var sheet = new CsvSheet(text);

        // From the last row up: the numbers of those above stay what they are.
        for (var row = sheet.Rows - 1; row >= 0; row--)
        {
            var lines = Lines(sheet, row, sowDates);
            if (lines.Exists(line => sowDates.ContainsKey(line.Id)))
            {
                text = Written(text, row, lines);
            }
        }

        return [.. s_strict.GetBytes(text)];
    }

    /// <summary>Whether a file is a plan with nothing changed but sow dates and tolerances, as <see cref="Write"/> makes it.</summary>
    /// <param name="plan">Bytes of a plan.csv that was read without faults.</param>
    /// <param name="file">Bytes of any file.</param>
    public static bool IsFormOf(ImmutableArray<byte> plan, ImmutableArray<byte> file) =>
        TryRead(file) is { Fault: null, Records.Count: > 0 } other
        && Batches(new CsvSheet(s_strict.GetString(plan.AsSpan()))).SequenceEqual(Batches(other), StringComparer.Ordinal);

    private static CsvSheet? TryRead(ImmutableArray<byte> bytes)
    {
        try
        {
            return new CsvSheet(s_strict.GetString(bytes.AsSpan()));
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    private static string Written(string text, int row, List<Line> lines)
    {
        for (var copies = 1; copies < lines.Count; copies++)
        {
            text = CsvEdit.Copy(FileNames.Plan, text, row).Text;
        }

        for (var line = 0; line < lines.Count; line++)
        {
            foreach ((var column, var value) in lines[line].Cells)
            {
                text = CsvEdit.Set(FileNames.Plan, text, row + line, column, value).Text;
            }
        }

        return text;
    }

    private static List<Line> Lines(CsvSheet sheet, int row, IReadOnlyDictionary<string, DateOnly> sowDates)
    {
        var id = Cell(sheet, row, "id");
        var times = Times(sheet, row);
        if (times > 1)
        {
            return [.. Enumerable.Range(0, times).Select(index => Succession(sheet, row, index, sowDates))];
        }

        return [new Line(id, sowDates.TryGetValue(id, out var date) ? [new("sow", Iso(date))] : [])];
    }

    private static Line Succession(CsvSheet sheet, int row, int index, IReadOnlyDictionary<string, DateOnly> sowDates)
    {
        var id = $"{Cell(sheet, row, "id")}-{(index + 1).ToString(CultureInfo.InvariantCulture)}";
        var days = index * (Number(sheet, row, "every_days", PlanFields.MostEveryDays) ?? 0);
        return new(
            id,
            [
                new("id", id),
                new("sow", sowDates.TryGetValue(id, out var date) ? Iso(date) : Shifted(Cell(sheet, row, "sow"), days)),
                new("set_out", Shifted(Cell(sheet, row, "set_out"), days)),
                new("every_days", ""),
                new("times", ""),
            ]
        );
    }

    // Each batch as text, without what is levelling's own.
    private static IEnumerable<string> Batches(CsvSheet sheet)
    {
        var shown = sheet
            .Names.Where(name => name.Length > 0 && !s_ownColumns.Contains(name, StringComparer.Ordinal))
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .ToArray();
        yield return string.Join('\n', shown);
        for (var row = 0; row < sheet.Rows; row++)
        {
            foreach (var line in Lines(sheet, row, ImmutableDictionary<string, DateOnly>.Empty))
            {
                var cells = line.Cells.ToDictionary(cell => cell.Column, cell => cell.Text, StringComparer.Ordinal);
                yield return string.Join('\n', shown.Select(name => cells.GetValueOrDefault(name) ?? Cell(sheet, row, name)));
            }
        }
    }

    private static int Times(CsvSheet sheet, int row) =>
        Number(sheet, row, "times", PlanFields.MostTimes) is > 1 and { } times
        && Number(sheet, row, "every_days", PlanFields.MostEveryDays) is not null
            ? times
            : 1;

    // As the plan is read: what it would refuse is no number here, in a file of anybody's that merely stands where the plan is to go.
    private static int? Number(CsvSheet sheet, int row, string name, int most) =>
        WrittenNumber.TryPlain(Cell(sheet, row, name), isWhole: true, out var plain, out _)
        && QuantityText.TryNumber(plain, out var number)
        && number >= 0
        && number <= most
            ? (int)number
            : null;

    private static string Cell(CsvSheet sheet, int row, string name) => Curly.Unwrapped(sheet.Cell(row, name) ?? "");

    private static string Shifted(string date, int days) =>
        WrittenDate.Of(date) is { IsPair: false } written && written.In(DateOrder.YearFirst) is { } first ? Iso(first.AddDays(days)) : date;

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // One sowing of a row, and what its own line says otherwise than the row.
    private sealed record Line(string Id, ImmutableArray<(string Column, string Text)> Cells);
}
