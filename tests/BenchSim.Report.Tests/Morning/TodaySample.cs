using System.Collections.Immutable;
using BenchSim.Report.Morning;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;
using BenchSim.Season.Weather;
using BenchSim.Study.Coming;

namespace BenchSim.Report.Tests.Morning;

/// <summary>
/// A sheet made by hand: 6 trays of Ada's "early" on the table, 3 flats of Ben's "late" on the mat, on Thursday 18 March 2027.
/// </summary>
internal static class TodaySample
{
    public static readonly DateOnly Today = new(2027, 3, 18);

    public static readonly Scenario Site = SmallSite.Scenario(
        [SmallSite.Mat(20), SmallSite.Bench(60), SmallSite.Table(60)],
        [
            SmallSite.Batch("early", 300, SmallSite.Monday, grower: "Ada"),
            SmallSite.PotUpBatch("late", 600, SmallSite.Monday.AddDays(14), grower: "Ben"),
        ],
        new SiteRules { CoverGainK = 2 }
    ) with
    {
        Log =
        [
            Row(SmallSite.Monday, "early", LogKind.Sown, 6, null, "mat"),
            Row(SmallSite.Monday.AddDays(14), "late", LogKind.Sown, null, 3, "mat"),
            Row(SmallSite.Monday.AddDays(16), "early", LogKind.Moved, 6, null, "table"),
        ],
    };

    /// <summary>The sheet.</summary>
    public static TodaySheet Of(
        Scenario? site = null,
        ImmutableArray<ComingJob>? jobs = null,
        ImmutableArray<DueJob>? due = null,
        ImmutableArray<ComingDelay>? late = null
    )
    {
        var plan = SmallSite.Plan(site ?? Site);
        return TodaySheet.Of(
            plan,
            Today,
            BenchLedger.Of(plan.Scenario, plan.Scenario.Log, Today),
            due ?? [],
            new ComingDays
            {
                Today = Today,
                Seasons = 400,
                Jobs = jobs ?? [],
                Free =
                [
                    .. plan.Scenario.Spaces.Select((_, space) => Enumerable.Range(0, 10).Select(day => space - day).ToImmutableArray()),
                ],
                Late = late ?? [],
            }
        );
    }

    public static ComingJob Job(WorkKind kind, int batch, int pieces, Likelihood likelihood, int first = 0, int last = 0) =>
        new()
        {
            Kind = kind,
            Batch = batch,
            AreFlats = false,
            Pieces = pieces,
            IsToday = last == 0,
            Likelihood = likelihood,
            First = Today.AddDays(first),
            Last = Today.AddDays(last),
        };

    /// <summary>Days of a forecast from today on: lowest and highest temperature, degrees Celsius, and rain, millimetres.</summary>
    public static Scenario WithForecast(params (double Low, double High, double Rain)[] days) =>
        Site with
        {
            Seen = new SeenWeather([], [.. days.Select((day, at) => new DailyWeather(Today.AddDays(at), day.Low, day.High, day.Rain))])
            {
                ForecastFile = "next.csv",
            },
        };

    private static LogEntry Row(DateOnly on, string batch, LogKind what, int? trays, int? flats, string space) =>
        new()
        {
            Date = on,
            BatchId = batch,
            What = what,
            Trays = trays,
            Flats = flats,
            Space = space,
        };
}
