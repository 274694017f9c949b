using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Csv;

/// <summary>
/// A column of dates of which some are three numbers with the year last. Their order is that of the site, or is told apart by a day above
/// 12; it is never guessed. The dates of the column are then written anew with the year first.
/// </summary>
internal sealed class DateColumn(FieldTable fields, string column, string letter, CellReader cells)
{
    private static readonly Dictionary<DateOrder, string> s_words = new() { [DateOrder.DayFirst] = "dmy", [DateOrder.MonthFirst] = "mdy" };

    /// <summary>Whether a column is one of dates.</summary>
    public static bool Is(Field field) => field.Kind is DateKind or OptionalKind<DateOnly>;

    /// <summary>The order of three numbers in a column; null where it cannot be told.</summary>
    /// <param name="texts">What is written in its cells.</param>
    /// <param name="given">Order that the site gives.</param>
    public static DateOrder? OrderOf(IEnumerable<string> texts, DateOrder? given)
    {
        if (given is DateOrder.DayFirst or DateOrder.MonthFirst)
        {
            return given;
        }

        DateOrder[] orders = [.. texts.Select(text => WrittenDate.Of(text, given)?.OnlyOrder).OfType<DateOrder>().Distinct()];
        return orders.Length == 1 ? orders[0] : null;
    }

    /// <summary>Settles the dates of a column.</summary>
    public void Settle(IReadOnlyList<CsvRow> rows)
    {
        (CsvRow Row, WrittenDate Date)[] pairs =
        [
            .. rows.Where(row => !row[column].IsBlank)
                .Select(row => (Row: row, Date: WrittenDate.Of(row[column].Text, cells.DateOrder)))
                .Where(each => each.Date is { IsPair: true })
                .Select(each => (each.Row, each.Date!.Value)),
        ];
        if (pairs.Length == 0)
        {
            return;
        }

        if (OrderOf(pairs.Select(pair => pair.Row[column].Text), cells.DateOrder) is not { } order)
        {
            Refuse(pairs);
        }
        else
        {
            if (cells.DateOrder is null)
            {
                Warn(pairs.First(pair => pair.Date.OnlyOrder == order).Row, order);
            }

            var wrong = Array.FindAll(pairs, pair => pair.Date.OnlyOrder is { } only && only != order);
            RefuseAgainst(wrong, order);
            foreach (var pair in pairs.Except(wrong))
            {
                pair.Row.Put(pair.Row[column] with { Text = pair.Date.Iso(order) });
            }
        }
    }

    private void Warn(CsvRow row, DateOrder order) =>
        cells.Faults.Warn(
            row[column].Place,
            $"the dates of {column} are read {Spoken(order)}, because of {Words.Quote(row[column].Text)} in {Where(row)}",
            cells.TakesDateOrder ? $"write date_order = \"{s_words[order]}\" under [site] to say so" : "write them year-month-day to say so"
        );

    // Told once for the column: the rest of it has the same fault.
    private void Refuse((CsvRow Row, WrittenDate Date)[] pairs)
    {
        var (row, date) = pairs[0];
        var dayFirst = Array.Find(pairs, pair => pair.Date.OnlyOrder == DateOrder.DayFirst).Row;
        var monthFirst = Array.Find(pairs, pair => pair.Date.OnlyOrder == DateOrder.MonthFirst).Row;
        if (dayFirst is not null && monthFirst is not null)
        {
            cells.Faults.Add(
                monthFirst[column].Place,
                $"{column} is {Words.Quote(monthFirst[column].Text)} in {Where(monthFirst)}, with the month first, and "
                    + $"{Words.Quote(dayFirst[column].Text)} in {Where(dayFirst)}, with the day first",
                "write all dates of the column year-month-day such as 2027-03-15"
            );
        }
        else
        {
            var more = pairs.Length == 1 ? "" : $", and {pairs.Length - 1} more of the column likewise";
            cells.Faults.Add(
                row[column].Place,
                $"{column} is {Words.Quote(row[column].Text)} in {Where(row)}, which may be "
                    + $"{CellReader.Spoken(date.In(DateOrder.DayFirst))} or {CellReader.Spoken(date.In(DateOrder.MonthFirst))}{more}",
                cells.TakesDateOrder
                    ? "write date_order = \"dmy\" or date_order = \"mdy\" under [site] of site.toml"
                    : "write the dates year-month-day such as 2027-03-15"
            );
        }

        Tell(pairs);
    }

    private void RefuseAgainst((CsvRow Row, WrittenDate Date)[] wrong, DateOrder order)
    {
        if (wrong.Length == 0)
        {
            return;
        }

        var (row, date) = wrong[0];
        var more = wrong.Length == 1 ? "" : $", and {wrong.Length - 1} more of the column likewise";
        cells.Faults.Add(
            row[column].Place,
            $"{column} is {Words.Quote(row[column].Text)} in {Where(row)}, and there is no month {date.Month(order)}{more}",
            $"site.toml says date_order = \"{s_words[order]}\": write {date.Iso(date.OnlyOrder!.Value)}, or another date_order"
        );
        Tell(wrong);
    }

    private void Tell((CsvRow Row, WrittenDate Date)[] pairs)
    {
        foreach (var (row, _) in pairs)
        {
            row.Put(row[column] with { IsTold = true });
        }
    }

    private string Where(CsvRow row)
    {
        var batch =
            fields.Names.Contains("id", StringComparer.Ordinal) && !row["id"].IsBlank ? $", batch {Words.Quote(row["id"].Text)}" : "";
        return $"row {row.Number}, column {letter}{batch}";
    }

    private static string Spoken(DateOrder order) => order == DateOrder.DayFirst ? "day first" : "month first";
}
