using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Sheets;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Plan;

/// <summary>
/// A plan that was read without faults as a CSV text that stands by itself: dates of which only the rest of the column, or site.toml, says
/// which number is the day, are written with the year first. Everything else stays to the byte.
/// </summary>
public static class PlanAsCsv
{
    private static readonly SearchValues<char> s_quoted = SearchValues.Create(",;\t\"\r\n");

    /// <summary>The plan as CSV.</summary>
    /// <param name="plan">The file of the plan.</param>
    /// <param name="order">The order of dates that the site gives.</param>
    public static ImmutableArray<byte> Of(InputFile plan, DateOrder? order)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var bytes = WorkbookFile.Is(plan.Name) ? FromWorkbook(plan) : plan.Bytes;
        var sheet = new CsvSheet(new UTF8Encoding(false, true).GetString(bytes.AsSpan()));
        (SheetField Field, string Text)[] dates =
        [
            .. PlanFields
                .Table.Fields.Where(DateColumn.Is)
                .Select(field => sheet.Names.IndexOf(field.Name))
                .Where(column => column >= 0)
                .SelectMany(column => YearFirst(sheet, column, order)),
        ];
        if (dates.Length == 0)
        {
            return bytes;
        }

        var text = new StringBuilder(sheet.Body);
        foreach (var (field, date) in dates.OrderByDescending(each => each.Field.Start))
        {
            text.Remove(field.Start, field.End - field.Start).Insert(field.Start, date);
        }

        return [.. Encoding.UTF8.GetBytes(sheet.Front + text)];
    }

    private static ImmutableArray<byte> FromWorkbook(InputFile plan) =>
        [
            .. Encoding.UTF8.GetBytes(
                string.Concat(
                    (WorkbookFile.Read(plan.Name, [.. plan.Bytes], new FaultList()) ?? []).Select(row =>
                        string.Join(',', row.Fields.Select(field => Written(field.Text))) + "\n"
                    )
                )
            ),
        ];

    private static string Written(string text) =>
        text.AsSpan().IndexOfAny(s_quoted) < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private static IEnumerable<(SheetField Field, string Text)> YearFirst(CsvSheet sheet, int column, DateOrder? order)
    {
        SheetField[] fields = [.. sheet.Records.Skip(1).Where(record => column < record.Count).Select(record => record[column])];
        var known = DateColumn.OrderOf(fields.Select(field => field.Text), order);
        foreach (var field in fields)
        {
            if (known is { } settled && WrittenDate.Of(Curly.Unwrapped(field.Text), order) is { IsPair: true } date)
            {
                yield return (field, date.Iso(settled));
            }
        }
    }
}
