using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
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

    /// <summary>What the looks mean on the charts of a plan.</summary>
    public static ImmutableArray<KeyEntry> KeyOf(SeasonPlan plan) => plan.Today is null ? Key : Key.Add(TodayMark.Key(plan));

    /// <summary>The chart of a space. Of a season under way, what was is a line, and what may come a band.</summary>
    /// <param name="space">The space.</param>
    /// <param name="result">The result it belongs to.</param>
    public static Chart Of(SpaceResult space, StudyResult result)
    {
        var dates = new Dates(result.Plan);
        var (all, come) = (..dates.Days, (result.Plan.Past?.Today ?? 0)..dates.Days);
        return new Chart
        {
            Title =
                $"{PlainText.Short(space.Space.Name, 60)}: places by day, {Numbers.Count(result.Seasons, "season", "seasons")}"
                + TodayMark.Title(result.Plan),
            Label = $"Places by day: {PlainText.Short(space.Space.Name, 60)}",
            Table = Table,
            Across = ChartAxis.OfDates(dates),
            Up = Up(dates, space),
            Key = KeyOf(result.Plan),

            // What is held lies over the places there are, so that it is seen where the space is full.
            Marks =
            [
                BandMark.OfDays(Looks.HeldBand, come, day => space.Held[day].P10, day => space.Held[day].P90),
                LineMark.OfDays(Looks.Places, all, day => space.Places[day]),
                LineMark.OfDays(Looks.Wanted, come, day => space.Wanted[day].P50),
                LineMark.OfDays(Looks.Held, all, day => space.Held[day].P50),
                .. TodayMark.Of(result.Plan),
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
