using System.Globalization;
using BenchSim.Published.Library;
using BenchSim.Season.Play;
using BenchSim.Study.Statistics;

namespace BenchSim.Published.Season;

/// <summary>
/// The season's own steps under "any time" rounds against exact queueing results (tests/Published/data: queueing_checks.csv,
/// tandem_blocking.csv). Each figure is the mean of independent runs with a Student interval at 1 - 0.001; with the nine figures of this
/// class the chance of a false alarm is under 1 %. Seeds are fixed.
/// </summary>
public class AnyTimeTests
{
    private const double Confidence = 0.999;
    private const int NoLimit = 1_000_000;

    [Theory]
    [InlineData("c=1;a=0.5", 1, 0.5)]
    [InlineData("c=3;a=2", 3, 2.0)]
    [InlineData("c=5;a=4", 5, 4.0)]
    public void Trays_that_find_no_mat_are_lost_as_Erlang_says(string inputs, int places, double load)
    {
        var expected = Value("erlang_b", inputs, "P_block");
        var runs = Runs(14, seed => LossOf(new QueueSite(load, [1, 0, 0], [places, NoLimit, NoLimit], 700, 0, seed).Play(), 60));
        Near(expected, runs);
    }

    [Theory]
    [InlineData("c=2;lambda=1;mu=1", 2, 1.0)]
    [InlineData("c=3;lambda=2;mu=1", 3, 2.0)]
    public void Sowings_wait_for_a_mat_as_Erlang_says(string inputs, int places, double rate)
    {
        var expected = Value("mmc", inputs, "Wq");
        var runs = Runs(60, seed => MeanWait(new QueueSite(rate, [1, 0, 0], [places, NoLimit, NoLimit], 700, NoLimit, seed), 100));
        Near(expected, runs);
    }

    [Theory]
    [InlineData("slots 4|12|8")]
    [InlineData("slots 8|6")]
    public void Full_benches_hold_the_mats_as_the_exact_chain_says(string slots)
    {
        var row = PublishedTable
            .Read("tandem_blocking.csv")
            .Single(row =>
                string.Equals(row["buffers_between_or_slots"], slots, StringComparison.Ordinal)
                && row["input"].StartsWith("Poisson", StringComparison.Ordinal)
            );
        var rate = Number(row["input"].Split(' ', ';')[1]);
        var places = slots["slots ".Length..].Split('|').Select(int.Parse).Append(NoLimit).Take(3).ToArray();
        var rates = row["service_rates"].Split('|').Select(Number).Append(0).Take(3).ToArray();
        var lost = Runs(16, seed => LossOf(new QueueSite(rate, rates, places, 700, 0, seed).Play(), 120));
        Near(Number(row["P_input_full_or_P_station_full"]["P(station full) ".Length..].Split('|')[0]), lost);
    }

    private static double[] Runs(int count, Func<int, double> run) => [.. Enumerable.Range(1, count).Select(run)];

    private static void Near(double expected, double[] runs)
    {
        var interval = MeanInterval.Of(runs, Confidence);
        Assert.InRange(expected, interval.Mean - interval.HalfWidth, interval.Mean + interval.HalfWidth);

        // A test that could not fail would be no test: the interval must be narrow against the figure.
        Assert.True(interval.HalfWidth < 0.35 * expected, $"half width {interval.HalfWidth} of {expected}");
    }

    private static double LossOf(SeasonResult result, int warmUp) =>
        result.Batches.Skip(warmUp).Average(batch => batch.GivenUp > 0 ? 1.0 : 0.0);

    private static double MeanWait(QueueSite site, int warmUp)
    {
        var sown = new SowingInstants();
        site.Play(sown);
        return Enumerable.Range(warmUp, site.SowHours.Count - warmUp).Average(index => (sown.Hours[index] - site.SowHours[index]) / 24);
    }

    private static double Value(string category, string inputs, string quantity) =>
        Number(
            PublishedTable
                .Read("queueing_checks.csv")
                .Single(row =>
                    string.Equals(row["category"], category, StringComparison.Ordinal)
                    && string.Equals(row["inputs"], inputs, StringComparison.Ordinal)
                    && string.Equals(row["quantity"], quantity, StringComparison.Ordinal)
                )["value"]
        );

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private sealed class SowingInstants : ISeasonWitness
    {
        public Dictionary<int, double> Hours { get; } = [];

        public void Moved(TrayMove move)
        {
            if (move.From < 0)
            {
                Hours[move.Batch] = move.Hour;
            }
        }
    }
}
