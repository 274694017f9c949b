using BenchSim.Engine;

namespace Published.Engine;

/// <summary>
/// The engine against exact queueing results: every row of these kinds in queueing_checks.csv (sources beside each row there). Each test
/// may fail by chance once in a thousand seeds (<see cref="Comparison"/>); the seed is fixed.
/// </summary>
public class QueueTests
{
    private const int Replications = 40;

    [Fact]
    public void Loss_without_waiting()
    {
        var comparison = new Comparison();
        CompareAll(comparison, "erlang_b", inputs => Play(inputs["a"], Exponential(1), (int)inputs["c"], (int)inputs["c"], 0));
        comparison.AssertAll(0.12, 0.004);
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
            var servers = (int)inputs["c"];
            comparison.Add(row["inputs"], inputs["p"], Play(load, Exponential(1), servers, servers, 0)["P_block"]);
        }

        comparison.AssertAll(0.12, 0.004);
        Assert.Equal(17, comparison.Count);
    }

    [Fact]
    public void One_server()
    {
        var comparison = new Comparison();
        CompareAll(comparison, "mm1", inputs => Play(inputs["lambda"], Exponential(inputs["mu"]), 1, Places.Unlimited, Load(inputs)));
        comparison.AssertAll(0.1, 0);
        Assert.Equal(12, comparison.Count);
    }

    [Fact]
    public void One_server_and_service_that_is_always_the_same()
    {
        var comparison = new Comparison();
        CompareAll(comparison, "md1", inputs => Play(inputs["lambda"], _ => 1 / inputs["mu"], 1, Places.Unlimited, Load(inputs)));
        comparison.AssertAll(0.1, 0);
        Assert.Equal(8, comparison.Count);
    }

    [Fact]
    public void One_server_and_service_of_other_laws()
    {
        var comparison = new Comparison();
        foreach (var row in Rows("mg1"))
        {
            var inputs = ReferenceFile.Inputs(row["inputs"]);
            var found = Play(inputs["lambda"], LawOf(row["name"], inputs["cv2"]), 1, Places.Unlimited, inputs["lambda"] * inputs["ES"]);
            comparison.Add($"{row["name"]} {row["quantity"]}", ReferenceFile.Number(row["value"]), found[row["quantity"]]);
        }

        comparison.AssertAll(0.12, 0);
        Assert.Equal(7, comparison.Count);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Several_servers(bool inOne)
    {
        var comparison = new Comparison();
        CompareAll(comparison, "mmc", inputs =>
            Play(inputs["lambda"], Exponential(inputs["mu"]), (int)inputs["c"], Places.Unlimited, Load(inputs) / inputs["c"], inOne)
        );
        comparison.AssertAll(0.2, 0);
        Assert.Equal(27, comparison.Count);
    }

    [Fact]
    public void One_server_and_little_room()
    {
        var comparison = new Comparison();
        CompareAll(comparison, "mm1k", inputs => Play(inputs["lambda"], Exponential(inputs["mu"]), 1, (int)inputs["K"], 0));
        comparison.AssertAll(0.05, 0.004);
        Assert.Equal(24, comparison.Count);
    }

    [Fact]
    public void Several_servers_and_little_room()
    {
        var comparison = new Comparison();
        CompareAll(comparison, "mmck", inputs => Play(inputs["lambda"], Exponential(inputs["mu"]), (int)inputs["c"], (int)inputs["K"], 0));
        comparison.AssertAll(0.05, 0.004);
        Assert.Equal(6, comparison.Count);
    }

    private static IEnumerable<Dictionary<string, string>> Rows(string category) =>
        ReferenceFile.Rows("queueing_checks.csv").Where(row => row["category"] == category && row["flag"] != "memory");

    private static void CompareAll(Comparison comparison, string category, Func<Dictionary<string, double>, Dictionary<string, Tally>> play)
    {
        foreach (var system in Rows(category).GroupBy(row => row["inputs"], StringComparer.Ordinal))
        {
            var found = play(ReferenceFile.Inputs(system.Key));
            foreach (var row in system)
            {
                comparison.Add($"{system.Key} {row["quantity"]}", ReferenceFile.Number(row["value"]), found[row["quantity"]]);
            }
        }
    }

    // Without a limit to the line the noise grows with 1 / (1 - load)^2, and so does the time to forget the empty start.
    private static Dictionary<string, Tally> Play(
        double arrivalRate,
        Func<Draws, double> service,
        int servers,
        int most,
        double load,
        bool inOne = false
    )
    {
        var customers = Math.Max(load == 0 ? 500_000 : 100_000, 25_000 / ((1 - load) * (1 - load)));
        var warmUp = (200 / ((1 - load) * (1 - load)) / arrivalRate) + 20;
        var length = customers / Replications / arrivalRate;
        var model = new QueueModel(servers, most, inOne);
        var tallies = new Dictionary<string, Tally>(StringComparer.Ordinal);
        for (var replication = 0; replication < Replications; replication++)
        {
            var draws = new Draws($"queue {arrivalRate} {servers} {most}", replication);
            foreach (var (quantity, value) in model.Play(arrivalRate, service, draws, warmUp, length))
            {
                if (!tallies.TryGetValue(quantity, out var tally))
                {
                    tallies.Add(quantity, tally = new Tally());
                }

                tally.Add(value);
            }
        }

        return tallies;
    }

    private static double Load(Dictionary<string, double> inputs) => inputs["lambda"] / inputs["mu"];

    private static Func<Draws, double> Exponential(double rate) => draws => draws.Exponential(1 / rate);

    private static Func<Draws, double> LawOf(string name, double squaredVariation) =>
        name switch
        {
            "M/G/1 Erlang-4" => draws => draws.Erlang(4, 1),
            "M/G/1 Erlang-2" => draws => draws.Erlang(2, 1),
            "M/G/1 uniform(0,2)" => draws => 2 * draws.Uniform(),
            _ => draws => draws.HyperExponential(squaredVariation),
        };
}
