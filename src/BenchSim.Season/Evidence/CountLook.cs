using BenchSim.Season.Inputs;

namespace BenchSim.Season.Evidence;

/// <summary>What was counted of a batch on a day, all its rows of that day together.</summary>
/// <param name="Day">The day.</param>
/// <param name="Count">Seedlings up, or cells with a plant: between which numbers.</param>
/// <param name="Among">Seeds or cells looked at.</param>
/// <param name="Trays">The trays of which they may have been, with the share that each path has of all looked at.</param>
internal sealed record CountLook(int Day, CountRange Count, int Among, (PathHeats Path, double Share)[] Trays)
{
    /// <summary>Share of seeds and cells that is counted wrong: any answer is then as likely.</summary>
    public const double Wrong = 0.002;

    /// <summary>Looks of one kind, in order of the day; those at which nothing stood that could be counted are left out.</summary>
    public static List<CountLook> Of(IEnumerable<Sighting> rows, Func<Sighting, (PathHeats Path, int Count)[]> trays) =>
        [
            .. rows.Where(each => each.Of > 0)
                .Select(each => (Row: each, Trays: trays(each)))
                .Where(each => each.Trays.Length > 0)
                .GroupBy(each => each.Row.Day)
                .OrderBy(day => day.Key)
                .Select(day => Together(day.Key, [.. day])),
        ];

    /// <summary>
    /// The looks at the same cells, with the last of all: as far back as there were as many of them, and no fewer seedlings later than
    /// before. What is told in words is taken by itself.
    /// </summary>
    public static List<CountLook> OfTheSameCells(List<CountLook> looks)
    {
        var first = looks.Count - 1;
        while (first > 0 && AreOfTheSameCells(looks[first - 1], looks[first]))
        {
            first--;
        }

        return first > 0 ? looks[first..] : looks;
    }

    private static bool AreOfTheSameCells(CountLook one, CountLook next) =>
        one.Among == next.Among && one.Count.IsExact && next.Count.IsExact && one.Count.Least <= next.Count.Least;

    private static CountLook Together(int day, (Sighting Row, (PathHeats Path, int Count)[] Trays)[] rows)
    {
        var of = rows.Sum(each => each.Row.Of);
        return new(
            day,
            new CountRange(
                rows.Sum(each => each.Row.Range.Least),
                rows.Sum(each => each.Row.Range.Most),
                rows.All(each => each.Row.Range.IsExact)
            ),
            of,
            [
                .. from row in rows
                let standing = (double)row.Trays.Sum(each => each.Count)
                from each in row.Trays
                select (each.Path, row.Row.Of / (double)of * (each.Count / standing)),
            ]
        );
    }
}
