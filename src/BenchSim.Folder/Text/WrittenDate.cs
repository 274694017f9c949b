using System.Globalization;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Text;

/// <summary>
/// A date as people and spreadsheets write it. The month is a name, or the year stands first: then it has one meaning. Or it is three
/// numbers with the year last, of which only their order says which is the day.
/// </summary>
/// <param name="Year">Year; null where none is written.</param>
/// <param name="First">The first of the other two numbers as written; the month where <see cref="IsPair"/> is false.</param>
/// <param name="Second">The second; the day where <see cref="IsPair"/> is false.</param>
/// <param name="IsPair">Whether day and month may be exchanged.</param>
internal readonly record struct WrittenDate(int? Year, int First, int Second, bool IsPair)
{
    private const int Century = 2000;

    private static readonly string[] s_midnights = ["T00:00:00", "T00:00", " 00:00:00", " 00:00", " 12:00:00 AM", " 0:00"];
    private static readonly string[] s_endings = ["st", "nd", "rd", "th"];

    /// <summary>Reads a text; null where it is no date.</summary>
    /// <param name="text">The text, without spaces around it.</param>
    /// <param name="order">Order of three numbers, where it is known.</param>
    public static WrittenDate? Of(string text, DateOrder? order = null)
    {
        if (text.Length is < 4 or > 40)
        {
            return null;
        }

        var midnight = s_midnights.FirstOrDefault(each => text.EndsWith(each, StringComparison.OrdinalIgnoreCase));
        var parts = (midnight is null ? text : text[..^midnight.Length])
            .Split(['-', '/', '.', ',', ' ', '\u00A0', '\u202F'], StringSplitOptions.RemoveEmptyEntries)
            .Select(WithoutEnding)
            .ToList();
        if (parts.Count > 2 && IsWeekOf(parts[0], parts[1]))
        {
            parts.RemoveRange(0, 2);
        }

        if (parts.Count > 2 && IsDayOfWeek(parts[0]))
        {
            parts.RemoveAt(0);
        }

        var named = parts.FindIndex(part => MonthOf(part) > 0);
        return named < 0 ? OfNumbers(parts, order) : OfName(parts, named);
    }

    /// <summary>The number of the day of a date whose order is known.</summary>
    public int Day(DateOrder order) => !IsPair || order == DateOrder.MonthFirst ? Second : First;

    /// <summary>The number of the month of a date whose order is known; it may be none.</summary>
    public int Month(DateOrder order) => !IsPair || order == DateOrder.MonthFirst ? First : Second;

    /// <summary>Year, month and day as a date is written in a file, even where there is no such day.</summary>
    public string Iso(DateOrder order) => FormattableString.Invariant($"{Year:0000}-{Month(order):00}-{Day(order):00}");

    /// <summary>The one order in which it is a date by its numbers; null where both are possible, or none.</summary>
    public DateOrder? OnlyOrder =>
        !IsPair ? null
        : First > 12 && Second is >= 1 and <= 12 ? DateOrder.DayFirst
        : Second > 12 && First is >= 1 and <= 12 ? DateOrder.MonthFirst
        : null;

    /// <summary>The date in an order; null where there is no such day.</summary>
    public DateOnly? In(DateOrder order) =>
        Year is { } year
        && year is >= 1 and <= 9999
        && Month(order) is >= 1 and <= 12
        && Day(order) >= 1
        && Day(order) <= DateTime.DaysInMonth(year, Month(order))
            ? new DateOnly(year, Month(order), Day(order))
            : null;

    private static WrittenDate? OfNumbers(List<string> parts, DateOrder? order)
    {
        if (parts.Count != 3 || !parts.TrueForAll(part => part.Length is 1 or 2 or 4 && part.All(char.IsAsciiDigit)))
        {
            return null;
        }

        var (one, two, three) = (Number(parts[0]), Number(parts[1]), Number(parts[2]));
        if (parts[0].Length == 4 || (order == DateOrder.YearFirst && parts[2].Length < 4))
        {
            return parts[1].Length < 4 && parts[2].Length < 4 ? new WrittenDate(Full(parts[0]), two, three, IsPair: false) : null;
        }

        return parts[1].Length < 4 && parts[2].Length > 1 ? new WrittenDate(Full(parts[2]), one, two, IsPair: true) : null;
    }

    private static WrittenDate? OfName(List<string> parts, int named)
    {
        var month = MonthOf(parts[named]);
        var numbers = parts.Where((_, at) => at != named).ToArray();
        if (numbers.Length is not (1 or 2) || !numbers.All(part => part.Length is 1 or 2 or 4 && part.All(char.IsAsciiDigit)))
        {
            return null;
        }

        if (numbers.Length == 1)
        {
            return numbers[0].Length < 4 ? new WrittenDate(null, month, Number(numbers[0]), IsPair: false) : null;
        }

        var (year, day) = numbers[0].Length == 4 ? (numbers[0], numbers[1]) : (numbers[1], numbers[0]);
        return day.Length < 4 && year.Length > 1 ? new WrittenDate(Full(year), month, Number(day), IsPair: false) : null;
    }

    private static int Full(string year) => year.Length == 4 ? Number(year) : Century + Number(year);

    private static int MonthOf(string part) =>
        part.Length >= 3 && char.IsLetter(part[0])
            ? 1
                + Array.FindIndex(CultureInfo.InvariantCulture.DateTimeFormat.MonthNames, name =>
                    name.Length > 0 && name.StartsWith(part, StringComparison.OrdinalIgnoreCase)
                )
            : 0;

    // "week of", "wk of", "w/o".
    private static bool IsWeekOf(string one, string other) =>
        other.Equals("of", StringComparison.OrdinalIgnoreCase)
            ? one.Equals("week", StringComparison.OrdinalIgnoreCase) || one.Equals("wk", StringComparison.OrdinalIgnoreCase)
            : one.Equals("w", StringComparison.OrdinalIgnoreCase) && other.Equals("o", StringComparison.OrdinalIgnoreCase);

    private static bool IsDayOfWeek(string part) =>
        part.Length >= 3
        && Array.Exists(CultureInfo.InvariantCulture.DateTimeFormat.DayNames, name =>
            name.StartsWith(part, StringComparison.OrdinalIgnoreCase)
        );

    private static string WithoutEnding(string part) =>
        part.Length is 3 or 4 && char.IsAsciiDigit(part[^3]) && s_endings.Contains(part[^2..], StringComparer.OrdinalIgnoreCase)
            ? part[..^2]
            : part;

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
