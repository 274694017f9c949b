using BenchSim.Engine;

namespace Published.Engine;

/// <summary>
/// Batches of trays that come on given days to a bench without limit: every batch_inf row of queueing_checks.csv. May fail by chance once in
/// a thousand seeds (<see cref="Comparison"/>); the seed is fixed.
/// </summary>
public class ScheduledBatchTests
{
    private const int Replications = 1000;
    private const int AfterAllOthers = 100;

    private readonly Simulation _simulation = new();
    private readonly Places _bench;

    public ScheduledBatchTests() => _bench = new Places(_simulation, "bench", Places.Unlimited);

    [Fact]
    public void Mean_and_variance_of_trays_on_the_bench()
    {
        var rows = ReferenceFile.Rows("queueing_checks.csv").Where(row => row["category"] == "batch_inf").ToList();
        var comparison = new Comparison();
        foreach (var system in rows.GroupBy(row => row["name"], StringComparer.Ordinal))
        {
            var days = system.Select(DayOf).Distinct().ToArray();
            var batches = BatchesOf(system.First()["inputs"]);
            var counts = Enumerable
                .Range(0, Replications)
                .Select(replication => Counts(batches, days, StayOf(system.Key), new Draws(system.Key, replication)))
                .ToArray();
            foreach (var row in system)
            {
                Compare(comparison, row, system, counts, Array.IndexOf(days, DayOf(row)));
            }
        }

        comparison.AssertAll(0.3, 0);
        Assert.Equal(36, comparison.Count);
    }

    private static void Compare(
        Comparison comparison,
        Dictionary<string, string> row,
        IEnumerable<Dictionary<string, string>> system,
        int[][] counts,
        int column
    )
    {
        var what = $"{row["name"]} day {DayOf(row)} {row["quantity"]}";
        var values = counts.Select(count => (double)count[column]);
        if (row["quantity"] == "Var_trays")
        {
            var mean = ReferenceFile.Number(system.Single(other => other["quantity"] == "E_trays" && DayOf(other) == DayOf(row))["value"]);
            values = values.Select(value => (value - mean) * (value - mean));
        }

        comparison.Add(what, ReferenceFile.Number(row["value"]), values);
    }

    private int[] Counts((double Day, int Trays)[] batches, double[] days, Func<Draws, double> stay, Draws draws)
    {
        _simulation.Reset();
        var counts = new int[days.Length];
        foreach (var (day, trays) in batches)
        {
            for (var tray = 0; tray < trays; tray++)
            {
                _simulation.Start(Stand(stay(draws)), "tray", tray, day);
            }
        }

        for (var i = 0; i < days.Length; i++)
        {
            _simulation.Start(Look(counts, i), "look", i, days[i], AfterAllOthers);
        }

        _simulation.Run();
        return counts;
    }

    private async Process Stand(double days)
    {
        await _bench.Take(1);
        await _simulation.Delay(days);
        _bench.Leave(1);
    }

    private async Process Look(int[] counts, int number)
    {
        // A tray that comes now counts, a tray that leaves now does not: the look has the last turn of its moment.
        await _simulation.Delay(0, AfterAllOthers);
        counts[number] = _bench.Held;
    }

    private static double DayOf(Dictionary<string, string> row) => ReferenceFile.Number(row["inputs"].Split(";t=")[1].Split(' ')[0]);

    private static (double Day, int Trays)[] BatchesOf(string inputs) =>
        inputs
            .Split(';')[0]
            .Split('=')[1]
            .Split(',')
            .Select(batch => batch.Split(':'))
            .Select(parts => (ReferenceFile.Number(parts[0]), (int)ReferenceFile.Number(parts[1])))
            .ToArray();

    private static Func<Draws, double> StayOf(string name) =>
        name.Split("stay ")[1] switch
        {
            "deterministic 21 d" => _ => 21,
            "Erlang-9 mean 21 d" => draws => draws.Erlang(9, 21),
            "uniform 18..28 d" => draws => 18 + (10 * draws.Uniform()),
            var other => throw new InvalidOperationException($"No such stay: {other}"),
        };
}
