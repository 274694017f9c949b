using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>Dates as people read them: "5 April", with the year only where the play runs into a second one.</summary>
public sealed class Dates
{
    private readonly bool _withYear;

    /// <summary>Dates of a play.</summary>
    public Dates(SeasonPlan plan)
    {
        FirstDay = plan.FirstDay;
        Days = plan.Days;
        _withYear = plan.FirstDay.Year != plan.LastDay.Year;
    }

    /// <summary>First day of the play.</summary>
    public DateOnly FirstDay { get; }

    /// <summary>Days of the play.</summary>
    public int Days { get; }

    /// <summary>2027-04-05.</summary>
    public static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", null);

    /// <summary>2027-04-05, or nothing when there is no date.</summary>
    public static string Iso(DateOnly? date) => date is { } day ? Iso(day) : "";

    /// <summary>2027-04-05, or a dash for a cell of a table when there is no date.</summary>
    public static string IsoOrDash(DateOnly? date) => date is { } day ? Iso(day) : "-";

    /// <summary>The month's name.</summary>
    public static string Month(DateOnly date) => MonthNames.Of(date.Month - 1);

    /// <summary>The month's first three letters.</summary>
    public static string ShortMonth(DateOnly date) => Month(date)[..3];

    /// <summary>5 April 2027.</summary>
    public static string Full(DateOnly date) => $"{date.Day} {Month(date)} {date.Year}";

    /// <summary>The date of a day of the play.</summary>
    public DateOnly Day(int day) => FirstDay.AddDays(day);

    /// <summary>5 April.</summary>
    public string Plain(DateOnly date) => _withYear ? Full(date) : $"{date.Day} {Month(date)}";

    /// <summary>5 Apr.</summary>
    public static string Brief(DateOnly date) => $"{date.Day} {ShortMonth(date)}";

    /// <summary>1 and 11 April; 28 March and 3 April.</summary>
    public string Between(DateOnly first, DateOnly last) =>
        (first.Year == last.Year, first.Month == last.Month) switch
        {
            (true, true) => $"{first.Day} and {Plain(last)}",
            (true, false) => $"{first.Day} {Month(first)} and {Plain(last)}",
            _ => $"{Plain(first)} and {Plain(last)}",
        };

    /// <summary>"typically on 5 April (between 1 and 11 April in eight seasons of ten)"; null when it never happened.</summary>
    public string? Typical(DateSpread spread)
    {
        if (spread is not { P10: { } early, P50: { } middle, P90: { } late })
        {
            return null;
        }

        if (spread.Happened == 1)
        {
            return spread.Seasons == 1 ? $"on {Plain(middle)}" : $"on {Plain(middle)} in the one season in which it happens";
        }

        if (early == late)
        {
            return $"on {Plain(middle)}"
                + (spread.Happened < Numbers.EnoughSeasons ? $" (over {spread.Happened} seasons)" : " in at least eight seasons of ten");
        }

        var of = spread.Happened < Numbers.EnoughSeasons ? $"in most of those {spread.Happened} seasons" : "in eight seasons of ten";
        return $"typically on {Plain(middle)} (between {Between(early, late)} {of})";
    }

    /// <summary>The middle and the spread for a table cell: "5 Apr (1 Apr to 11 Apr)", with the seasons where
    /// not all have one; a dash when it never happened.</summary>
    public string Cell(DateSpread spread)
    {
        if (spread is not { P10: { } early, P50: { } middle, P90: { } late })
        {
            return "–";
        }

        var cell = early == late ? Cell(middle) : $"{Cell(middle)} ({Cell(early)} to {Cell(late)})";
        return spread.Happened == spread.Seasons ? cell : $"{cell}, in {Spreads.OfAll(spread.Happened, spread.Seasons)}";
    }

    /// <summary>A date for a table cell: "5 Apr".</summary>
    public string Cell(DateOnly date) => _withYear ? $"{Brief(date)} {date.Year}" : Brief(date);
}
