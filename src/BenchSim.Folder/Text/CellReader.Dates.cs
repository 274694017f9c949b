using System.Globalization;
using BenchSim.Folder.Faults;

namespace BenchSim.Folder.Text;

/// <content>Dates and times.</content>
internal sealed partial class CellReader
{
    private const string DateForm = "write year-month-day such as 2027-03-15";

    /// <summary>An ISO date from 1900 to 2199.</summary>
    public DateOnly? Date(Cell cell)
    {
        if (cell.IsBlank)
        {
            return null;
        }

        if (DateOnly.TryParseExact(cell.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            if (date.Year is >= 1900 and < 2200)
            {
                return date;
            }

            Refuse(cell, $"is {cell.Text}", "write a date from the year 1900 to 2199");
            return null;
        }

        RefuseDate(cell);
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

    private void RefuseDate(Cell cell)
    {
        var parts = cell.Text.Split('-', '/', '.');
        if (parts.Length != 3 || parts[0].Length != 4 || !parts.All(part => part.Length is 1 or 2 or 4 && part.All(char.IsAsciiDigit)))
        {
            Refuse(cell, $"is {Words.Quote(cell.Text)}, which is not a date", DateForm);
            return;
        }

        var (year, month, day) = (Number(parts[0]), Number(parts[1]), Number(parts[2]));
        if (month is < 1 or > 12)
        {
            Refuse(cell, $"is {cell.Text}, and there is no month {month}", DateForm);
        }
        else if (year < 1 || day < 1 || day > DateTime.DaysInMonth(year, month))
        {
            var days = year < 1 ? 31 : DateTime.DaysInMonth(year, month);
            Refuse(cell, $"is {cell.Text}, which is not in the calendar", $"{MonthName(month)} {parts[0]} has {days} days");
        }
        else
        {
            Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, which is not a date in full",
                $"write {Words.Date(new DateOnly(year, month, day))}"
            );
        }
    }

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    private static string MonthName(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);
}
