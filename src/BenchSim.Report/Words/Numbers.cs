namespace BenchSim.Report.Words;

/// <summary>Numbers as people read them. Always the invariant culture: a comma between thousands, a point before decimals.</summary>
public static class Numbers
{
    /// <summary>Fewest seasons for which percentages and "seasons of ten" are used; below it the seasons themselves are counted.</summary>
    public const int EnoughSeasons = 30;

    /// <summary>Rounded to whole: 12,340.</summary>
    public static string Whole(double value) => Math.Round(value, MidpointRounding.AwayFromZero).ToString("#,##0", null);

    /// <summary>Whole from 10 on, one decimal below, no trailing zero: 0.4, 3, 12.</summary>
    public static string Short(double value) =>
        Math.Abs(value) >= 9.95 ? Whole(value) : Math.Round(value, 1, MidpointRounding.AwayFromZero).ToString("0.#", null);

    /// <summary>At most three decimals: 0.85, 1,234.5.</summary>
    public static string Plain(double value) => Math.Round(value, 3).ToString("#,##0.###", null);

    /// <summary>Exactly one decimal, so that figures stand under one another; without a negative zero.</summary>
    public static string Tenths(double value)
    {
        var text = value.ToString("#,##0.0", null);
        return string.Equals(text, "-0.0", StringComparison.Ordinal) ? "0.0" : text;
    }

    /// <summary>Exactly two decimals: 0.85, 1,234.50.</summary>
    public static string Hundredths(double value) => value.ToString("#,##0.00", null);

    /// <summary>As <see cref="Short"/>, but with two decimals below 1, for amounts bought by large units: 0.04, 0.6, 1.3, 12.</summary>
    public static string Fine(double value) =>
        Math.Abs(value) >= 0.995 ? Short(value) : Math.Round(value, 2, MidpointRounding.AwayFromZero).ToString("0.##", null);

    /// <summary>Rounded to three figures, for what is only rough: 23,400.</summary>
    public static string Rough(double value)
    {
        var step = value >= 1000 ? Math.Pow(10, Math.Floor(Math.Log10(value)) - 2) : 1;
        return Whole(Math.Round(value / step, MidpointRounding.AwayFromZero) * step);
    }

    /// <summary>A number with its noun: 1 tray, 12 trays, no trays.</summary>
    public static string Count(double value, string one, string many)
    {
        var text = Whole(value);
        return text switch
        {
            "0" => "no " + many,
            "1" => "1 " + one,
            _ => text + " " + many,
        };
    }
}
