using System.Globalization;

namespace BenchSim.Study.Shards;

/// <summary>A share of the seasons of a run: number 2 of 4 has the second quarter of them.</summary>
/// <param name="Number">Which, from 1.</param>
/// <param name="Of">Number of shares, 1 or more.</param>
public readonly record struct Share(int Number, int Of)
{
    /// <summary>Most shares a run can be split into.</summary>
    public const int Most = 10_000;

    /// <summary>Reads "2/4".</summary>
    /// <param name="text">What was written.</param>
    /// <param name="share">The share.</param>
    /// <returns>False when it is no share: not two whole numbers, or not 1 to the second, or too many.</returns>
    public static bool TryParse(string text, out Share share)
    {
        ArgumentNullException.ThrowIfNull(text);
        var numbers = text.Split('/');
        share = default;
        if (
            numbers.Length != 2
            || !int.TryParse(numbers[0], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || !int.TryParse(numbers[1], NumberStyles.None, CultureInfo.InvariantCulture, out var of)
        )
        {
            return false;
        }

        share = new Share(number, of);
        return share.IsPossible;
    }

    /// <summary>True when the number lies between 1 and the number of shares, and these are not too many.</summary>
    public bool IsPossible => Number >= 1 && Number <= Of && Of <= Most;

    /// <summary>
    /// The seasons of this share. Shares follow one another without gap or overlap, and differ by one season at most; none is empty when
    /// there are as many seasons as shares.
    /// </summary>
    /// <param name="seasons">Seasons of the whole run.</param>
    /// <returns>The first season, from 0, and how many.</returns>
    public (int First, int Count) SeasonsOf(int seasons)
    {
        var first = (int)((long)(Number - 1) * seasons / Of);
        return (first, (int)((long)Number * seasons / Of) - first);
    }

    /// <summary>2/4.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Number}/{Of}");
}
