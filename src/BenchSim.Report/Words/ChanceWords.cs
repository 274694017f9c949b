using BenchSim.Season.Fields;
using BenchSim.Season.Values;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>
/// Chances and shares as people read them. A chance of a season stands in tenths wherever it stands, as do differences of chances, so that
/// the same chance is the same text everywhere; a share of something else stands in whole percent. Neither is 0 or 100 % unless it is
/// (docs/decisions/017-writing-chances.md).
/// </summary>
public static class ChanceWords
{
    /// <summary>A share of something, no chance of a season: 34 %; with a tenth below 1 % and above 99 %.</summary>
    /// <param name="share">Share, 0 to 1.</param>
    public static string Percent(double share) => Number(share) + " %";

    /// <summary>As <see cref="Percent"/> without the sign, for a table that names it in its head.</summary>
    /// <param name="share">Share, 0 to 1.</param>
    public static string Number(double share) => Ends(share) ?? Rounded(share, share is < 0.01 or > 0.99 ? 1 : 0);

    /// <summary>A chance of a season, or a share that is set against a goal: 33.8 %.</summary>
    /// <param name="share">Share, 0 to 1.</param>
    public static string Fine(double share) => FineNumber(share) + " %";

    /// <summary>As <see cref="Fine"/> without the sign.</summary>
    /// <param name="share">Share, 0 to 1.</param>
    public static string FineNumber(double share) => Ends(share) ?? Rounded(share, 1);

    /// <summary>A share that somebody set, as exact as it was written: 92.25 %.</summary>
    /// <param name="share">Share, 0 to 1.</param>
    public static string Setting(double share) => Kinds.Share.Show(share, UnitSystem.Metric);

    /// <summary>
    /// The chance of a stand, worked out from laws that are partly recalled: never all or nearly all, for nobody is so sure of a stand.
    /// "93.4 %", "better than 99 in 100", "under 1 in 100", "none".
    /// </summary>
    /// <param name="chance">Chance, 0 to 1.</param>
    public static string Stand(double chance) =>
        chance switch
        {
            <= 0 => "none",
            < 0.01 => "under 1 in 100",
            > 0.99 => "better than 99 in 100",
            _ => Fine(chance),
        };

    /// <summary>The interval of a chance: 30.9 to 36.8 %.</summary>
    /// <param name="chance">The chance.</param>
    public static string FineInterval(Chance chance) => Range(chance) + " %";

    /// <summary>A chance for a table cell: "33.8 % (30.9 to 36.8)"; seasons counted where they are few.</summary>
    /// <param name="chance">The chance.</param>
    public static string Cell(Chance chance) =>
        chance.Seasons < Numbers.EnoughSeasons ? $"{chance.Hits} of {chance.Seasons}" : $"{Fine(chance.Share)} ({Range(chance)})";

    /// <summary>
    /// A chance, to follow "in", where the seasons played are named elsewhere: "33.8 % of seasons (95 % interval 30.9 to 36.8 %)".
    /// </summary>
    /// <param name="chance">The chance; not 0.</param>
    public static string OfSeasons(Chance chance)
    {
        if (chance.Seasons == 1)
        {
            return "the one season played";
        }

        if (chance.Hits == chance.Seasons)
        {
            return "all seasons";
        }

        return chance.Seasons < Numbers.EnoughSeasons
            ? $"{chance.Hits} of {chance.Seasons} seasons"
            : $"{Fine(chance.Share)} of seasons (95 % interval {FineInterval(chance)})";
    }

    /// <summary>
    /// A chance by itself without its interval, where the seasons played are named elsewhere: "59.1 %", "12 of 20", "all", "none".
    /// </summary>
    /// <param name="chance">The chance.</param>
    public static string Brief(Chance chance)
    {
        if (chance.Hits == 0 || chance.Hits == chance.Seasons)
        {
            return chance.Hits == 0 ? "none" : "all";
        }

        return chance.Seasons < Numbers.EnoughSeasons ? $"{chance.Hits} of {chance.Seasons}" : Fine(chance.Share);
    }

    /// <summary>
    /// A chance by itself with the number of seasons, to follow "in": "33.8 % of 1,000 seasons (95 % interval 30.9 to 36.8 %)".
    /// </summary>
    /// <param name="chance">The chance.</param>
    public static string OfAllSeasons(Chance chance)
    {
        if (chance.Seasons == 1)
        {
            return chance.Hits == 1 ? "the one season played" : "none of the one season played";
        }

        var seasons = $"{Numbers.Whole(chance.Seasons)} seasons (95 % interval {FineInterval(chance)})";
        if (chance.Hits == 0)
        {
            return "none of " + seasons;
        }

        if (chance.Hits == chance.Seasons)
        {
            return "all " + seasons;
        }

        return chance.Seasons < Numbers.EnoughSeasons ? $"{chance.Hits} of {seasons}" : $"{Fine(chance.Share)} of {seasons}";
    }

    /// <summary>Percentage points, in tenths: 4.2, -4.2, 0.</summary>
    /// <param name="share">A difference of shares; 1 is a hundred points.</param>
    public static string Points(double share) => Rounded(share, 1);

    /// <summary>Percentage points as exact as a goal for them may be set: 0.25.</summary>
    /// <param name="share">A difference of shares; 1 is a hundred points.</param>
    public static string FinePoints(double share) => Rounded(share, 2);

    /// <summary>Percentage points with a sign: +4.2, -4.2, 0.</summary>
    /// <param name="share">A difference of shares; 1 is a hundred points.</param>
    public static string SignedPoints(double share)
    {
        var text = Points(share);
        return share > 0 && text is not "0" ? "+" + text : text;
    }

    /// <summary>The interval of a difference in percentage points: +1.2 to +7.2.</summary>
    /// <param name="fits">What becomes of the chance that the plan fits.</param>
    /// <exception cref="ArgumentNullException"><paramref name="fits"/> is null.</exception>
    public static string SignedPoints(FitChange fits)
    {
        ArgumentNullException.ThrowIfNull(fits);
        return $"{SignedPoints(fits.Low)} to {SignedPoints(fits.High)}";
    }

    private static string Range(Chance chance) => $"{Rounded(chance.Low, 1)} to {Rounded(chance.High, 1)}";

    private static string? Ends(double share) =>
        share switch
        {
            <= 0 => "0",
            >= 1 => "100",
            < 0.001 => "under 0.1",
            > 0.999 => "over 99.9",
            _ => null,
        };

    // A share such as 0.285 times 100 lies a hair below 28.5.
    private static string Rounded(double share, int decimals)
    {
        var percent = Math.Round(Math.Round(share * 100, 9), decimals, MidpointRounding.AwayFromZero);
        return percent == 0 ? "0" : percent.ToString("0.##", null);
    }
}
