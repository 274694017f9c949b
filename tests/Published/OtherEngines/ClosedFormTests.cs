using System.Globalization;
using BenchSim.Published.Library;

namespace BenchSim.Published.OtherEngines;

/// <summary>
/// SimPy 3.0.11 gives the known answers too (tests/Published/other-engines/closed_form.py): the wait of a single server, load / (1 - load),
/// and the rates of saturated lines with blocking after service, 2/3 and 22/39 (Hunt 1956; tandem_blocking.csv). Chance of error at most
/// 0.001 for the three rows; the seeds are fixed. BenchSim's season is held to the same answers in tests/Published/Season.
/// </summary>
public sealed class ClosedFormTests
{
    [Fact]
    public void The_other_engine_agrees_with_the_exact_answers()
    {
        var rows = OtherEngineFolder.Rows("closed-form.csv");
        Assert.Equal([1, 2.0 / 3, Exact("buffers 0|0")], rows.Select(row => Number(row[1])), (one, other) => Math.Abs(one - other) < 1e-9);
        Assert.All(rows, row =>
        {
            Assert.InRange(Number(row[2]), Number(row[1]) - Number(row[3]), Number(row[1]) + Number(row[3]));
            Assert.True(Number(row[3]) < 0.1 * Number(row[1]), "An interval so wide would prove nothing.");
        });
    }

    private static double Exact(string buffers) =>
        Number(
            PublishedTable
                .Read("tandem_blocking.csv")
                .Single(row =>
                    string.Equals(row["service_rates"], "1|1|1", StringComparison.Ordinal)
                    && string.Equals(row["input"], "saturated", StringComparison.Ordinal)
                    && string.Equals(row["buffers_between_or_slots"], buffers, StringComparison.Ordinal)
                )["throughput"]
        );

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
