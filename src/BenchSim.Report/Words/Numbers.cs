using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>Numbers as people read them. Always the invariant culture: a comma between thousands, a point before decimals.</summary>
internal static class Numbers
{
    /// <summary>Fewest seasons for which percentages and "seasons of ten" are used; below it the seasons themselves are counted.</summary>
    public const int EnoughSeasons = 30;

    /// <summary>Rounded to whole: 12,340.</summary>
    public static string Whole(double value) => Math.Round(value, MidpointRounding.AwayFromZero).ToString("#,##0", null);

    /// <summary>Whole from 10 on, one decimal below, no trailing zero: 0.4, 3, 12.</summary>
    public static string Short(double value) =>
        Math.Abs(value) >= 9.95 ? Whole(value) : Math.Round(value, 1, MidpointRounding.AwayFromZero).ToString("0.#", null);

    /// <summary>As <see cref="Short"/>, but with two decimals below 1, for amounts bought by large units: 0.04, 0.6, 1.3, 12.</summary>
    public static string Fine(double value) =>
        Math.Abs(value) >= 0.995 ? Short(value) : Math.Round(value, 2, MidpointRounding.AwayFromZero).ToString("0.##", null);

    /// <summary>Rounded to three figures, for what is reckoned roughly: 23,400.</summary>
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

    /// <summary>A share in percent without the sign; never 0 or 100 unless it is.</summary>
    public static string Percent(double share)
    {
        var percent = share * 100;
        return percent switch
        {
            <= 0 => "0",
            >= 100 => "100",
            < 0.1 => "under 0.1",
            > 99.9 => "over 99.9",
            < 1 or > 99 => percent.ToString("0.#", null),
            _ => Math.Round(Math.Round(percent, 9), MidpointRounding.AwayFromZero).ToString("0", null),
        };
    }

    /// <summary>A share that somebody set, in percent without the sign: as exact as it was written, 92.5.</summary>
    public static string Setting(double share) => (share * 100).ToString("0.####", null);

    /// <summary>The 95 % interval: "95 % interval 31 to 37 %".</summary>
    public static string Interval(Chance chance) => $"95 % interval {Range(chance)} %";

    /// <summary>The ends of the interval in percent: "31 to 37".</summary>
    public static string Range(Chance chance)
    {
        // Near nothing and near all a whole percent is too coarse, and both ends have as many decimals.
        var isFine = chance.Low < 0.01 || chance.High > 0.99;
        return $"{Bound(chance.Low, isFine)} to {Bound(chance.High, isFine)}";
    }

    /// <summary>A chance for a table cell: "34 % (31 to 37)"; seasons counted where they are few.</summary>
    public static string Cell(Chance chance) =>
        chance.Seasons < EnoughSeasons ? $"{chance.Hits} of {chance.Seasons}" : $"{Percent(chance.Share)} % ({Range(chance)})";

    /// <summary>A chance with its interval and the number of seasons, to follow "in": "34 % of 1,000 seasons
    /// (95 % interval 31 to 37 %)".</summary>
    public static string OfSeasons(Chance chance)
    {
        if (chance.Seasons == 1)
        {
            return chance.Hits == 1 ? "the one season played" : "none of the one season played";
        }

        var seasons = $"{Whole(chance.Seasons)} seasons ({Interval(chance)})";
        if (chance.Hits == 0)
        {
            return "none of " + seasons;
        }

        if (chance.Hits == chance.Seasons)
        {
            return "all " + seasons;
        }

        return chance.Seasons < EnoughSeasons ? $"{chance.Hits} of {seasons}" : $"{Percent(chance.Share)} % of {seasons}";
    }

    private static string Bound(double share, bool isFine) =>
        share switch
        {
            < 0.0005 => "0",
            > 0.9995 => "100",
            _ when isFine => Math.Round(share * 100, 1, MidpointRounding.AwayFromZero).ToString("0.#", null),
            _ => Math.Round(share * 100, MidpointRounding.AwayFromZero).ToString("0", null),
        };
}
