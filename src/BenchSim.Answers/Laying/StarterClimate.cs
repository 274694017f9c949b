using System.Collections.Immutable;
using System.Globalization;

namespace BenchSim.Answers.Laying;

/// <summary>A climate that a starter can be laid down in. All of them are invented.</summary>
/// <param name="Id">Word that asks for it.</param>
/// <param name="Latitude">Latitude, degrees north.</param>
/// <param name="LastFrost">Last frost of a usual year: month and day; what the normals give, to a few days.</param>
/// <param name="LateFrost">Last frost of a late year, one in ten: month and day; to a few days.</param>
/// <param name="WarmNights">Day from which nights are mostly warm enough for tender crops: month and day.</param>
/// <param name="ColdestC">Coldest night of a usual winter, degrees Celsius; to a degree or two.</param>
/// <param name="Normals">Its normals.</param>
public sealed record StarterClimate(
    string Id,
    int Latitude,
    (int Month, int Day) LastFrost,
    (int Month, int Day) LateFrost,
    (int Month, int Day) WarmNights,
    double ColdestC,
    FarmClimate Normals
)
{
    /// <summary>The climates, the coldest first.</summary>
    public static ImmutableArray<StarterClimate> All { get; } =
    [
        new(
            "cold",
            45,
            (5, 2),
            (5, 17),
            (6, 18),
            -26,
            new FarmClimate(
                [-14, -12, -6, 0, 6, 12, 15, 14, 8.5, 2.5, -3, -10],
                [-4, -2, 4, 12, 19, 24, 27, 26, 21, 13, 5, -2],
                [6, 6, 5, 3.5, 3.5, 3, 2.5, 2.5, 3.5, 3.5, 4.5, 6],
                [10, 9, 10, 10, 11, 11, 11, 10, 10, 10, 11, 11],
                [60, 50, 60, 75, 90, 95, 100, 95, 90, 85, 80, 70]
            )
        ),
        new(
            "mild",
            41,
            (4, 5),
            (4, 18),
            (5, 25),
            -15,
            new FarmClimate(
                [-5, -4, 0, 5.5, 11, 16, 18.5, 18, 13.5, 7.5, 2.5, -2.5],
                [4, 5.5, 10.5, 17, 22.5, 27, 30, 29, 25, 18.5, 12, 6],
                [5, 5, 4.5, 3.5, 3.5, 3, 2.5, 2.5, 3.5, 3.5, 4.5, 5],
                [10, 9, 10, 11, 11, 10, 9, 9, 8, 8, 9, 10],
                [80, 70, 95, 95, 95, 100, 105, 100, 95, 90, 90, 90]
            )
        ),
        new(
            "warm",
            35,
            (3, 10),
            (3, 26),
            (5, 1),
            -9,
            new FarmClimate(
                [0.5, 2, 5.5, 10, 14.5, 19, 21.5, 21, 17.5, 11, 5.5, 2],
                [11, 13, 17.5, 22.5, 26.5, 30, 32, 31.5, 28.5, 23, 17.5, 12.5],
                [4.5, 4.5, 4, 3.5, 3, 2, 1.5, 1.5, 3, 4, 4.5, 4.5],
                [10, 9, 10, 8, 9, 10, 11, 10, 8, 7, 8, 9],
                [95, 90, 105, 80, 90, 100, 120, 115, 100, 80, 80, 85]
            )
        ),
    ];

    /// <summary>The climate of a starter that is asked for without one.</summary>
    public static StarterClimate Usual => All[1];

    /// <summary>The climate of a word, whatever its case; null where there is none.</summary>
    /// <param name="id">The word.</param>
    public static StarterClimate? Find(string id) =>
        All.FirstOrDefault(climate => string.Equals(climate.Id, id, StringComparison.OrdinalIgnoreCase));

    /// <summary>The last frost of a usual year.</summary>
    /// <param name="year">The year.</param>
    public DateOnly UsualFrostIn(int year) => new(year, LastFrost.Month, LastFrost.Day);

    /// <summary>The last frost of a late year, by which the hardy crops of a starter are dated.</summary>
    /// <param name="year">The year.</param>
    public DateOnly LateFrostIn(int year) => new(year, LateFrost.Month, LateFrost.Day);

    /// <summary>The first warm nights, by which the tender crops of a starter are dated.</summary>
    /// <param name="year">The year.</param>
    public DateOnly WarmNightsIn(int year) => new(year, WarmNights.Month, WarmNights.Day);

    /// <summary>What it is like, to go behind its word.</summary>
    /// <param name="isImperial">Whether in Fahrenheit.</param>
    public string About(bool isImperial) =>
        $"last frost of a usual year {Day(UsualFrostIn(2027))}, of one year in ten after {Day(LateFrostIn(2027))}; "
        + $"coldest night of a usual winter {Coldest(isImperial)}";

    /// <summary>The coldest night of a usual winter, as it is typed.</summary>
    /// <param name="isImperial">Whether in Fahrenheit.</param>
    public string Coldest(bool isImperial) =>
        isImperial ? FormattableString.Invariant($"{(ColdestC * 9 / 5) + 32:0} F") : FormattableString.Invariant($"{ColdestC:0} C");

    private static string Day(DateOnly date) => date.ToString("d MMMM", CultureInfo.InvariantCulture);
}
