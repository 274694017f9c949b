using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Plan;

/// <summary>
/// Writes a plan.csv again with other sow dates. All else stays to the byte: lines that do not move, other columns, separators, line ends,
/// blank rows and a byte order mark. A line of successions of which one moves becomes a line for each, with the ids and dates that reading
/// it gives.
/// </summary>
public static class MovedPlan
{
    private static readonly byte[] Mark = [0xEF, 0xBB, 0xBF];

    // What levelling writes, and what says how far it may go.
    private static readonly string[] OwnColumns = ["sow", "earlier", "later", "every_days", "times"];

    /// <summary>The plan with other sow dates.</summary>
    /// <param name="plan">Bytes of a plan.csv that was read without faults.</param>
    /// <param name="sowDates">New sow dates by batch id; batches without one stay as they are.</param>
    /// <returns>Bytes of the new file.</returns>
    public static ImmutableArray<byte> Write(ImmutableArray<byte> plan, IReadOnlyDictionary<string, DateOnly> sowDates)
    {
        ArgumentNullException.ThrowIfNull(sowDates);
        var table = new Table(plan);
        var written = new StringBuilder();
        var at = 0;
        for (var index = 0; index < table.Records.Count; index++)
        {
            var record = table.Records[index];
            var lines = index == 0 ? table.Header() : table.Moved(record, sowDates);
            if (lines is not null)
            {
                written.Append(table.Text, at, record[0].Start - at).AppendJoin(table.LineEnd, lines);
                at = record[^1].End;
            }
        }

        written.Append(table.Text, at, table.Text.Length - at);
        var bytes = Encoding.UTF8.GetBytes(written.ToString());
        return plan.AsSpan().StartsWith(Mark) ? [.. Mark, .. bytes] : [.. bytes];
    }

    /// <summary>Whether a file is a plan with nothing changed but sow dates and tolerances, as <see cref="Write"/> makes it.</summary>
    /// <param name="plan">Bytes of a plan.csv that was read without faults.</param>
    /// <param name="file">Bytes of any file.</param>
    public static bool IsFormOf(ImmutableArray<byte> plan, ImmutableArray<byte> file) =>
        Table.TryRead(file) is { } other && new Table(plan).Batches().SequenceEqual(other.Batches(), StringComparer.Ordinal);

    private sealed class Table
    {
        private readonly List<string> names;
        private readonly bool hasSow;

        public Table(ImmutableArray<byte> bytes)
            : this(bytes, new FaultList()) { }

        private Table(ImmutableArray<byte> bytes, FaultList faults)
        {
            var start = bytes.AsSpan().StartsWith(Mark) ? Mark.Length : 0;
            Text = new UTF8Encoding(false, true).GetString(bytes.AsSpan()[start..]);
            Records = CsvText.Split(new FileText(FileNames.Plan, Text), faults);
            Records.RemoveAll(record => record.TrueForAll(field => field.Text.Length == 0));
            names = Records.Count == 0 ? [] : [.. Records[0].Select(field => CsvTable.NameOf(field.Text))];
            hasSow = names.Contains("sow", StringComparer.Ordinal);
            if (!hasSow)
            {
                names.Add("sow");
            }
        }

        public string Text { get; }

        public List<List<CsvField>> Records { get; }

        /// <summary>What ends the first line that is not blank.</summary>
        public string LineEnd =>
            Text.AsSpan(Records[0][^1].End) switch
            {
                ['\r', '\n', ..] => "\r\n",
                ['\r', ..] => "\r",
                _ => "\n",
            };

        private char Separator => Text[Records[0][0].End];

        public static Table? TryRead(ImmutableArray<byte> bytes)
        {
            try
            {
                var faults = new FaultList();
                var table = new Table(bytes, faults);
                return faults.Count == 0 && table.Records.Count > 0 ? table : null;
            }
            catch (DecoderFallbackException)
            {
                return null;
            }
        }

        /// <summary>The header with a column for the sow dates; null when it has one.</summary>
        public string[]? Header() => hasSow ? null : [Text[Records[0][0].Start..Records[0][^1].End] + Separator + "sow"];

        /// <summary>The lines that take the place of a record; null when nothing in it moves.</summary>
        public string[]? Moved(List<CsvField> record, IReadOnlyDictionary<string, DateOnly> sowDates)
        {
            var id = Cell(record, "id");
            var times = Times(record);
            if (times == 1)
            {
                return sowDates.TryGetValue(id, out var date) ? [Line(record, new(StringComparer.Ordinal) { ["sow"] = Iso(date) })] : null;
            }

            string[] ids = [.. Enumerable.Range(1, times).Select(number => $"{id}-{number.ToString(CultureInfo.InvariantCulture)}")];
            return ids.Any(sowDates.ContainsKey)
                ? [.. ids.Select((each, index) => Line(record, Succession(record, each, index, sowDates)))]
                : null;
        }

        /// <summary>Each batch as text, without what is levelling's own.</summary>
        public IEnumerable<string> Batches()
        {
            var shown = names
                .Where(name => name.Length > 0 && !OwnColumns.Contains(name, StringComparer.Ordinal))
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
                .ToArray();
            yield return string.Join('\n', shown);
            foreach (var record in Records.Skip(1))
            {
                var times = Times(record);
                for (var index = 0; index < times; index++)
                {
                    var own =
                        times == 1
                            ? []
                            : Succession(
                                record,
                                $"{Cell(record, "id")}-{(index + 1).ToString(CultureInfo.InvariantCulture)}",
                                index,
                                ImmutableDictionary<string, DateOnly>.Empty
                            );
                    yield return string.Join('\n', shown.Select(name => own.GetValueOrDefault(name) ?? Cell(record, name)));
                }
            }
        }

        private Dictionary<string, string> Succession(
            List<CsvField> record,
            string id,
            int index,
            IReadOnlyDictionary<string, DateOnly> sowDates
        )
        {
            var days = index * (Number(record, "every_days", PlanFields.MostEveryDays) ?? 0);
            return new(StringComparer.Ordinal)
            {
                ["id"] = id,
                ["sow"] = sowDates.TryGetValue(id, out var date) ? Iso(date) : Shifted(Cell(record, "sow"), days),
                ["set_out"] = Shifted(Cell(record, "set_out"), days),
                ["every_days"] = "",
                ["times"] = "",
            };
        }

        private int Times(List<CsvField> record) =>
            Number(record, "times", PlanFields.MostTimes) is > 1 and { } times
            && Number(record, "every_days", PlanFields.MostEveryDays) is not null
                ? times
                : 1;

        // As the plan is read: what it would refuse is no number here, in a file of anybody's that merely stands where the plan is to go.
        private int? Number(List<CsvField> record, string name, int most) =>
            QuantityText.TryNumber(Cell(record, name), out var number) && number >= 0 && number <= most ? (int)number : null;

        private string Cell(List<CsvField> record, string name) =>
            names.IndexOf(name) is >= 0 and var at && at < record.Count ? record[at].Text : "";

        // The record with some cells replaced; a row that stops early is filled up with empty cells.
        private string Line(List<CsvField> record, Dictionary<string, string> cells)
        {
            var line = new StringBuilder();
            for (var column = 0; column < record.Count; column++)
            {
                var raw = Text[record[column].Start..record[column].End];
                var isReplaced = column < names.Count && cells.ContainsKey(names[column]);
                line.Append(column == 0 ? "" : Text[record[column - 1].End..record[column].Start])
                    .Append(isReplaced ? Quoted(raw, cells[names[column]]) : raw);
            }

            var last = cells.Where(cell => cell.Value.Length > 0).Max(cell => names.IndexOf(cell.Key));
            for (var column = record.Count; column <= last; column++)
            {
                line.Append(Separator).Append(cells.GetValueOrDefault(names[column]));
            }

            return line.ToString();
        }

        private static string Quoted(string raw, string text) =>
            raw.StartsWith('"') ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;

        private static string Shifted(string date, int days) =>
            DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var first)
                ? Iso(first.AddDays(days))
                : date;

        private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
    }
}
