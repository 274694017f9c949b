using BenchSim.Season.Inputs;
using Published.Engine;

namespace BenchSim.Published.Season;

/// <summary>
/// Sowings of many trays on given days, on a bench without limit: every batch_inf row of queueing_checks.csv. The count is that of the
/// season's own books at the end of a day's round. May fail by chance once in a thousand seeds (<see cref="Comparison"/>); the seed is
/// fixed.
/// </summary>
public class ScheduledBatchTests
{
    private const int Plays = 1000;

    // Rounds are at any time; a day ends at the hour at which other sites have theirs.
    private const double DayEndsAt = 8;

    // A sowing of three trays on day 0 that stay 1, 2 and 4 days and one of two trays on day 2 that stay a day. At the end of day 0 three
    // are there; on day 1 two, for one has just left; on day 2 one, and the two that came; on day 3 the last of the three alone.
    [Fact]
    public void Scheduled_batches_by_hand()
    {
        var held = HeldByDay([(0, 3), (2, 2)], tray => new double[] { 1, 2, 4, 1, 1 }[tray], 5);
        Assert.Equal([3, 2, 3, 1, 0], held[..5]);
    }

    [Fact]
    public void Mean_and_variance_of_trays_on_the_bench()
    {
        var rows = ReferenceFile.Rows("queueing_checks.csv").Where(row => row["category"] == "batch_inf").ToList();
        var comparison = new Comparison();
        foreach (var system in rows.GroupBy(row => row["name"], StringComparer.Ordinal))
        {
            var batches = BatchesOf(system.First()["inputs"]);
            var site = Site(batches, system.Max(DayOf));
            int[][] held =
            [
                .. Enumerable
                    .Range(0, Plays)
                    .Select(play =>
                    {
                        var draws = new Draws(system.Key, play);
                        return HeldByDay(site, batches, _ => StayOf(system.Key, draws));
                    }),
            ];
            foreach (var row in system)
            {
                Compare(comparison, row, system, held);
            }
        }

        comparison.AssertAll(0.3, 0);
        Assert.Equal(36, comparison.Count);
    }

    private static void Compare(
        Comparison comparison,
        Dictionary<string, string> row,
        IEnumerable<Dictionary<string, string>> system,
        int[][] held
    )
    {
        var day = DayOf(row);
        var values = held.Select(days => (double)days[day]);
        if (row["quantity"] == "Var_trays")
        {
            var mean = ReferenceFile.Number(system.Single(other => other["quantity"] == "E_trays" && DayOf(other) == day)["value"]);
            values = values.Select(value => (value - mean) * (value - mean));
        }

        comparison.Add($"{row["name"]} day {day} {row["quantity"]}", ReferenceFile.Number(row["value"]), values);
    }

    private static int[] HeldByDay((int Day, int Trays)[] batches, Func<int, double> stayDays, int days) =>
        HeldByDay(Site(batches, days), batches, stayDays);

    private static int[] HeldByDay(QueueSite site, (int Day, int Trays)[] batches, Func<int, double> stayDays)
    {
        double[] comings = [.. batches.Select(batch => (batch.Day * 24) + DayEndsAt)];
        var journal = site.Play(comings, (tray, kind) => kind == SpaceKind.Bench ? 24 * stayDays(tray) : 0);
        int[] held = [.. journal.HeldByDay.Select(spaces => spaces[(int)SpaceKind.Bench])];

        // The books and what the witness was told agree.
        Assert.Equal(journal.Counts(SpaceKind.Bench, held.Index().Select(day => (day.Index * 24) + DayEndsAt)), held);
        return held;
    }

    private static QueueSite Site((int Day, int Trays)[] batches, int days) =>
        new(new SitePlaces(null, SitePlaces.NoLimit, SitePlaces.NoLimit), batches.Select(batch => batch.Trays), 0, days * 24);

    private static int DayOf(Dictionary<string, string> row) => (int)ReferenceFile.Number(row["inputs"].Split(";t=")[1].Split(' ')[0]);

    private static (int Day, int Trays)[] BatchesOf(string inputs) =>
        [
            .. inputs
                .Split(';')[0]
                .Split('=')[1]
                .Split(',')
                .Select(batch => batch.Split(':'))
                .Select(parts => ((int)ReferenceFile.Number(parts[0]), (int)ReferenceFile.Number(parts[1]))),
        ];

    private static double StayOf(string name, Draws draws) =>
        name.Split("stay ")[1] switch
        {
            "deterministic 21 d" => 21,
            "Erlang-9 mean 21 d" => draws.Erlang(9, 21),
            "uniform 18..28 d" => 18 + (10 * draws.Uniform()),
            var other => throw new InvalidOperationException($"No such stay: {other}"),
        };
}
