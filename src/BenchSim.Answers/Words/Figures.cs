using System.Collections.Immutable;
using BenchSim.Season.Values;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Words;

/// <summary>Numbers, dates and measures as people read them. Always the invariant culture.</summary>
public static class Figures
{
    private const double MillimetresAnInch = 25.4;

    /// <summary>2027-04-05.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", null);

    /// <summary>2027-04-05, or a dash when there is none.</summary>
    public static string Date(DateOnly? date) => date is { } day ? Date(day) : "-";

    /// <summary>12,340.</summary>
    public static string Whole(long number) => number.ToString("#,##0", null);

    /// <summary>1 tray, 12 trays.</summary>
    public static string Count(long number, string one, string many) => $"{Whole(number)} {(number == 1 ? one : many)}";

    /// <summary>At most three decimals.</summary>
    public static string Plain(double number) => Math.Round(number, 3).ToString("#,##0.###", null);

    /// <summary>Exactly one decimal, without a negative zero.</summary>
    public static string Tenths(double number)
    {
        var text = number.ToString("#,##0.0", null);
        return string.Equals(text, "-0.0", StringComparison.Ordinal) ? "0.0" : text;
    }

    /// <summary>Exactly two decimals: 0.85, 1,234.50.</summary>
    public static string Hundredths(double number) => number.ToString("#,##0.00", null);

    /// <summary>Whole from 10 on, one decimal below.</summary>
    public static string Short(double number) =>
        Math.Abs(number) >= 9.95 ? Whole((long)Math.Round(number, MidpointRounding.AwayFromZero)) : Tenths(number);

    /// <summary>
    /// An amount of the user's money: "$12.50", "EUR 12.50", or "12.50" without a sign. A code is set apart from its number, a sign is not.
    /// </summary>
    public static string Money(double amount, string currency)
    {
        var front = SafeText.Short(currency, 10);
        return front.Length > 0 && char.IsLetter(front[^1]) ? $"{front} {Hundredths(amount)}" : front + Hundredths(amount);
    }

    /// <summary>A price as it was given: two decimals, up to eight where it has them.</summary>
    public static string Price(double amount, string currency)
    {
        var front = SafeText.Short(currency, 10);
        return front + (front.Length > 0 && char.IsLetter(front[^1]) ? " " : "") + amount.ToString("#,##0.00######", null);
    }

    /// <summary>A share in percent: 91.5 %. Never 0 or 100 unless it is.</summary>
    public static string Percent(double share) =>
        share switch
        {
            > 0 and < 0.001 => "under 0.1 %",
            > 0.999 and < 1 => "over 99.9 %",
            _ => Math.Round(share * 100, 1).ToString("0.#", null) + " %",
        };

    /// <summary>A share that somebody set, in percent, as exact as it was written: 92.25 %.</summary>
    public static string Setting(double share) => (share * 100).ToString("0.####", null) + " %";

    /// <summary>The 95 % interval of a chance: 88.2 to 93.1 %.</summary>
    public static string Interval(Chance chance) =>
        $"{Math.Round(chance.Low * 100, 1).ToString("0.#", null)} to {Math.Round(chance.High * 100, 1).ToString("0.#", null)} %";

    /// <summary>A temperature in the user's units.</summary>
    public static string Temperature(double celsius, UnitSystem units) =>
        units == UnitSystem.Imperial ? UnitWords.Temperature(celsius, units) : $"{Plain(celsius)} C";

    /// <summary>A difference of temperatures in the user's units.</summary>
    public static string Difference(double kelvin, UnitSystem units) =>
        units == UnitSystem.Imperial ? $"{Plain(kelvin * 1.8)} F" : $"{Plain(kelvin)} C";

    /// <summary>Rain in the user's units.</summary>
    public static string Rain(double millimetres, UnitSystem units) =>
        units == UnitSystem.Imperial ? $"{Plain(millimetres / MillimetresAnInch)} in" : $"{Plain(millimetres)} mm";

    /// <summary>a, b and c; "none" for nothing.</summary>
    public static string List(ImmutableArray<string> words) =>
        words.Length switch
        {
            0 => "none",
            1 => words[0],
            _ => $"{string.Join(", ", words[..^1])} and {words[^1]}",
        };
}
