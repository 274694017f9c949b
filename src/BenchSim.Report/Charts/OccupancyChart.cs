using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Charts;

/// <summary>One space by day: places there are, held (band and median) and wanted (median).</summary>
internal static class OccupancyChart
{
    /// <summary>The table with its figures.</summary>
    public const string Table = "tables/daily.csv";

    /// <summary>What the looks mean, the same for every space.</summary>
    public static readonly ImmutableArray<KeyEntry> Key =
    [
        new(Looks.Places, "places there are"),
        new(Looks.HeldBand, "held, eight seasons of ten")
        {
            OnPage = "places held in eight seasons of ten",
            OnPaper = "held, 8 seasons of 10",
        },
        new(Looks.Held, "held, median") { OnPage = "places held, median" },
        new(Looks.Wanted, "wanted without limit, median")
        {
            OnPage = "places wanted if there were no limit, median",
            OnPaper = "wanted, median",
        },
    ];

    /// <summary>The chart of a space.</summary>
    /// <param name="space">The space.</param>
    /// <param name="result">The result it belongs to.</param>
    public static Chart Of(SpaceResult space, StudyResult result)
    {
        var dates = new Dates(result.Plan);
        var days = dates.Days;
        return new Chart
        {
            Title = $"{PlainText.Short(space.Space.Name, 60)}: places by day, {Numbers.Count(result.Seasons, "season", "seasons")}",
            Label = $"Places by day: {PlainText.Short(space.Space.Name, 60)}",
            Table = Table,
            Across = ChartAxis.OfDates(dates),
            Up = Up(dates, space),
            Key = Key,

            // What is held lies over the places there are, so that it is seen where the space is full.
            Marks =
            [
                BandMark.OfDays(Looks.HeldBand, days, day => space.Held[day].P10, day => space.Held[day].P90),
                LineMark.OfDays(Looks.Places, days, day => space.Places[day]),
                LineMark.OfDays(Looks.Wanted, days, day => space.Wanted[day].P50),
                LineMark.OfDays(Looks.Held, days, day => space.Held[day].P50),
            ],
        };
    }

    /// <summary>An axis that has room for all of these spaces, so that charts of one space with and without a
    /// change can be compared.</summary>
    public static ChartAxis Up(Dates dates, params SpaceResult[] spaces) =>
        ChartAxis.OfPlaces(
            spaces.Max(space =>
                Enumerable
                    .Range(0, dates.Days)
                    .Max(day => Math.Max(space.Places[day], Math.Max(space.Held[day].P90, space.Wanted[day].P50)))
            )
        );
}
