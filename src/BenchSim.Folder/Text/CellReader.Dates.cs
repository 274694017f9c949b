using System.Globalization;
using BenchSim.Folder.Faults;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Text;

/// <content>Dates and times.</content>
internal sealed partial class CellReader
{
    private const string DateForm = "write year-month-day such as 2027-03-15";

    /// <summary>The order of dates of three numbers that the site gives; null where it gives none.</summary>
    public DateOrder? DateOrder { get; set; }

    /// <summary>Whether the site can give one.</summary>
    public bool TakesDateOrder { get; init; } = true;

    /// <summary>
    /// A date from 1900 to 2199. Where its day and month may be exchanged and nothing tells which is which, it is a fault.
    /// </summary>
    public DateOnly? Date(Cell cell)
    {
        if (cell.IsBlank || cell.IsTold)
        {
            return null;
        }

        if (WrittenDate.Of(cell.Text, DateOrder) is not { } written)
        {
            Refuse(cell, $"is {Words.Quote(cell.Text)}, which is not a date", DateForm);
            return null;
        }

        if (written.Year is null)
        {
            Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, which has no year",
                $"write the year too: year-month-day such as 2027-{written.First:00}-{written.Second:00}"
            );
            return null;
        }

        if (!written.IsPair)
        {
            return InCalendar(cell, written, Season.Values.DateOrder.YearFirst);
        }

        var order = DateOrder is Season.Values.DateOrder.MonthFirst or Season.Values.DateOrder.DayFirst ? DateOrder : written.OnlyOrder;
        if (order is not { } known)
        {
            var (dayFirst, monthFirst) = (written.In(Season.Values.DateOrder.DayFirst), written.In(Season.Values.DateOrder.MonthFirst));
            Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, which may be {Spoken(dayFirst)} or {Spoken(monthFirst)}",
                dayFirst is { } one && monthFirst is { } other ? $"write {Words.Date(one)} or {Words.Date(other)}" : DateForm
            );
            return null;
        }

        return InCalendar(cell, written, known);
    }

    /// <summary>Day and month in words.</summary>
    public static string Spoken(DateOnly? date) => date is { } known ? $"{known.Day} {MonthName(known.Month)}" : "no day of the calendar";

    private DateOnly? InCalendar(Cell cell, WrittenDate written, DateOrder order)
    {
        var (year, month, day) = (written.Year!.Value, written.Month(order), written.Day(order));
        if (month is < 1 or > 12)
        {
            Refuse(cell, $"is {cell.Text}, and there is no month {month}", DateForm);
        }
        else if (year is < 1900 or > 2199)
        {
            Refuse(cell, $"is {cell.Text}", "write a date from the year 1900 to 2199");
        }
        else if (written.In(order) is { } date)
        {
            return date;
        }
        else
        {
            Refuse(
                cell,
                $"is {cell.Text}, which is not in the calendar",
                $"{MonthName(month)} {year:0000} has {DateTime.DaysInMonth(year, month)} days"
            );
        }

        return null;
    }

    /// <summary>A time of the day, hours and minutes.</summary>
    public TimeOnly? Time(Cell cell)
    {
        if (cell.IsBlank)
        {
            return null;
        }

        if (
            TimeOnly.TryParseExact(
                cell.Text,
                ["HH:mm", "H:mm", "HH:mm:ss"],
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var time
            )
            && time.Second == 0
        )
        {
            return time;
        }

        Refuse(cell, $"is {Words.Quote(cell.Text)}, which is not a time of the day", "write hours and minutes such as 08:00");
        return null;
    }

    private static string MonthName(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);
}
