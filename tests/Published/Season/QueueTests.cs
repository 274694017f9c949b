using BenchSim.Season.Inputs;
using Published.Engine;

namespace BenchSim.Published.Season;

/// <summary>
/// Loss and waiting: the season's sowings, mats, benches and tables against exact queueing results, every row of these kinds in
/// queueing_checks.csv (sources beside each row there). The trays wait in turn unsown, on mats and on benches. Each test may fail by chance
/// once in a thousand seeds (<see cref="Comparison"/>); the seed is fixed.
/// </summary>
public class QueueTests
{
    private const int Replications = 40;
    private const int NoLimit = SitePlaces.NoLimit;
    private const int Always = 1_000_000;

    // A mat of one place, and three sowings of one tray that stay 5 hours. The first comes at 0 and has the place until 5. The second comes
    // at 3 and finds none: it is lost. The third comes at 6 and finds the place free again.
    [Fact]
    public void Loss_by_hand()
    {
        var journal = new QueueSite(new SitePlaces(1, NoLimit, NoLimit), [1, 1, 1], 0, 24).Play([0, 3, 6], (_, kind) =>
            kind == SpaceKind.Mat ? 5 : 0
        );
        Assert.Equal([false, true, false], [journal.IsLost(0), journal.IsLost(1), journal.IsLost(2)]);
        Assert.Equal((0, 5), (journal.Entered(0, SpaceKind.Mat), journal.Left(0, SpaceKind.Mat)));
        Assert.Equal((6, 11), (journal.Entered(2, SpaceKind.Mat), journal.Left(2, SpaceKind.Mat)));
    }

    // The same where a sowing waits: the second gets the place when the first leaves, at 5, and the third when the second does, at 10. They
    // waited 0, 2 and 4 hours. Until hour 12 two stood in line for 2 + 4 hours in all.
    [Fact]
    public void Waiting_by_hand()
    {
        var site = new QueueSite(new SitePlaces(1, NoLimit, NoLimit), [1, 1, 1], Always, 24);
        var journal = site.Play([0, 3, 6], (_, kind) => kind == SpaceKind.Mat ? 5 : 0);
        Assert.Equal([0.0, 5, 10], [.. Enumerable.Range(0, 3).Select(tray => journal.Entered(tray, SpaceKind.Mat))]);
        Assert.Equal(2, journal.MeanWait(SpaceKind.Mat, -1, 12));
        Assert.Equal(6 / 12.0, journal.MeanInLine(SpaceKind.Mat, 0, 12));
    }

    [Fact]
    public void Loss_without_waiting()
    {
        var comparison = new Comparison();
        CompareAll(comparison, "erlang_b", (_, inputs) => Play(OnMat((int)inputs["c"], 0), inputs["a"], Exponential(1), 0));
        comparison.AssertAll(0.15, 0.005);
        Assert.Equal(22, comparison.Count);
    }

    // The table gives the load at which the share p is lost: play that load and find p again.
    [Fact]
    public void Load_that_loses_a_given_share()
    {
        var comparison = new Comparison();
        foreach (var row in Rows("erlang_b_table"))
        {
            var inputs = ReferenceFile.Inputs(row["inputs"]);
            var load = ReferenceFile.Number(row["value"]);
            comparison.Add(row["inputs"], inputs["p"], Play(OnBench((int)inputs["c"], 0), load, Exponential(1), 0)["P_block"]);
        }

        comparison.AssertAll(0.15, 0.005);
        Assert.Equal(17, comparison.Count);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void One_place_on_the_mat()
    {
        var comparison = new Comparison();
        CompareAll(comparison, "mm1", (_, inputs) => Play(OnMat(1, Always), inputs["lambda"], Exponential(inputs["mu"]), Load(inputs)));
        comparison.AssertAll(0.15, 0);
        Assert.Equal(12, comparison.Count);
    }

    // The trays wait on the mats, which have no limit, for the one place on the bench.
    [Fact]
    [Trait("Category", "Slow")]
    public void One_place_on_the_bench_and_stays_that_are_always_the_same()
    {
        var comparison = new Comparison();
        var bench = new Station(new SitePlaces(NoLimit, 1, NoLimit), SpaceKind.Bench, Always);
        CompareAll(comparison, "md1", (_, inputs) => Play(bench, inputs["lambda"], _ => 1 / inputs["mu"], Load(inputs)));
        comparison.AssertAll(0.1, 0);
        Assert.Equal(8, comparison.Count);
    }

    // The trays wait on the benches, which have no limit, for the one place on the table.
    [Fact]
    [Trait("Category", "Slow")]
    public void One_place_on_the_table_and_stays_of_other_laws()
    {
        var comparison = new Comparison();
        var table = new Station(new SitePlaces(null, NoLimit, 1), SpaceKind.Table, Always);
        CompareAll(comparison, "mg1", (name, inputs) =>
            Play(table, inputs["lambda"], LawOf(name, inputs["cv2"]), inputs["lambda"] * inputs["ES"])
        );
        comparison.AssertAll(0.2, 0);
        Assert.Equal(7, comparison.Count);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Several_places_on_the_bench()
    {
        var comparison = new Comparison();
        CompareAll(comparison, "mmc", (_, inputs) =>
            Play(OnBench((int)inputs["c"], Always), inputs["lambda"], Exponential(inputs["mu"]), Load(inputs) / inputs["c"])
        );
        comparison.AssertAll(0.25, 0);
        Assert.Equal(27, comparison.Count);
    }

    // K trays in all: the mat is the waiting room of a bench of c places, and holds K - c. What finds the mat full is lost.
    [Fact]
    public void A_bench_behind_a_small_mat()
    {
        var comparison = new Comparison();
        CompareAll(comparison, "mm1k", (_, inputs) => Play(Room(1, (int)inputs["K"]), inputs["lambda"], Exponential(inputs["mu"]), 0));
        CompareAll(comparison, "mmck", (_, inputs) =>
            Play(Room((int)inputs["c"], (int)inputs["K"]), inputs["lambda"], Exponential(inputs["mu"]), 0)
        );
        comparison.AssertAll(0.1, 0.004);
        Assert.Equal(24 + 6, comparison.Count);
    }

    private static IEnumerable<Dictionary<string, string>> Rows(string category) =>
        ReferenceFile.Rows("queueing_checks.csv").Where(row => row["category"] == category && row["flag"] != "memory");

    private static void CompareAll(
        Comparison comparison,
        string category,
        Func<string, Dictionary<string, double>, Dictionary<string, List<double>>> play
    )
    {
        foreach (var system in Rows(category).GroupBy(row => (Name: row["name"], Inputs: row["inputs"])))
        {
            var found = play(system.Key.Name, ReferenceFile.Inputs(system.Key.Inputs));
            foreach (var row in system)
            {
                comparison.Add($"{system.Key} {row["quantity"]}", ReferenceFile.Number(row["value"]), found[row["quantity"]]);
            }
        }
    }

    // Without a limit to the line the noise grows with 1 / (1 - load)^2, and so does the time to forget the empty start.
    private static Dictionary<string, List<double>> Play(Station station, double rate, Func<Draws, double> stay, double load)
    {
        var places = station.Server == SpaceKind.Mat ? station.Places.Mats : station.Places.Benches;
        var customers = load == 0 ? 80_000 + (2600.0 * places!.Value) : Math.Max(50_000, 8_000 / ((1 - load) * (1 - load)));
        var warmUp = (load == 0 ? 0 : 40 / ((1 - load) * (1 - load)) / rate) + 15;
        var end = warmUp + (customers / Replications / rate);
        var site = new QueueSite(station.Places, Enumerable.Repeat(1, Comings.Most(rate * end)), station.GiveUpDays, end);
        var found = new Dictionary<string, List<double>>(StringComparer.Ordinal);
        for (var replication = 0; replication < Replications; replication++)
        {
            var draws = new Draws($"queue {rate} {station}", replication);
            var journal = site.Play(Comings.Steady(draws, rate, end), (_, kind) => kind == station.Server ? stay(draws) : 0);
            foreach (var (quantity, value) in Figures(journal, station.Server, warmUp, end))
            {
                found.TryAdd(quantity, []);
                found[quantity].Add(value);
            }
        }

        return found;
    }

    private static Dictionary<string, double> Figures(Journal journal, SpaceKind server, double from, double to) =>
        new(StringComparer.Ordinal)
        {
            ["L"] = journal.MeanInSystem(server, from, to),
            ["Lq"] = journal.MeanInLine(server, from, to),
            ["carried_load"] = journal.MeanHeld(server, from, to),
            ["Wq"] = journal.MeanWait(server, from, to),
            ["W"] = journal.MeanSojourn(server, from, to),
            ["P_block"] = journal.ShareLost(from, to),
            ["throughput"] = journal.Leavings(server, from, to) / (to - from),
        };

    private static double Load(Dictionary<string, double> inputs) => inputs["lambda"] / inputs["mu"];

    private static Station OnMat(int places, int giveUpDays) => new(new SitePlaces(places, NoLimit, NoLimit), SpaceKind.Mat, giveUpDays);

    private static Station OnBench(int places, int giveUpDays) => new(new SitePlaces(null, places, NoLimit), SpaceKind.Bench, giveUpDays);

    private static Station Room(int places, int most) =>
        new(new SitePlaces(most == places ? null : most - places, places, NoLimit), SpaceKind.Bench, 0);

    private static Func<Draws, double> Exponential(double rate) => draws => draws.Exponential(1 / rate);

    private static Func<Draws, double> LawOf(string name, double squaredVariation) =>
        name switch
        {
            "M/G/1 Erlang-4" => draws => draws.Erlang(4, 1),
            "M/G/1 Erlang-2" => draws => draws.Erlang(2, 1),
            "M/G/1 uniform(0,2)" => draws => 2 * draws.Uniform(),
            _ => draws => draws.HyperExponential(squaredVariation),
        };

    /// <summary>A site, which of its spaces is the server, and how long a sowing waits.</summary>
    private sealed record Station(SitePlaces Places, SpaceKind Server, int GiveUpDays);
}
