using BenchSim.Engine;

namespace Published.Engine;

/// <summary>
/// Lines with blocking after service against their exact solutions: every row of tandem_blocking.csv (Hunt 1956, Hillier and Boling 1967 and
/// exact Markov chains; the source stands beside each row there). Each test may fail by chance once in a thousand seeds
/// (<see cref="Comparison"/>); the seed is fixed.
/// </summary>
public class BlockingLineTests
{
    private const int Replications = 40;
    private const int UnitsEach = 2500;

    [Fact]
    public void Single_servers_with_buffers_between()
    {
        var rows = Rows().Where(row => row["model"].StartsWith("single-server", StringComparison.Ordinal)).ToList();
        Assert.Equal(47, rows.Count);
        var comparison = new Comparison();
        foreach (var row in rows)
        {
            var found = Play(row, buffersGiven: true);
            CompareCommon(comparison, row, found);
            AddEach(comparison, row, "blocked", found, one => one.Blocked);
            AddEach(comparison, row, "idle_or_occupied", found, one => Array.ConvertAll(one.Held, held => 1 - held));
            if (IsOpen(row))
            {
                AddEach(comparison, row, "P_input_full_or_P_station_full", found, one => [one.Lost]);
            }
        }

        comparison.AssertAll(0.1, 0.03);
    }

    [Fact]
    public void Stations_of_several_slots_without_buffers()
    {
        var rows = Rows().Where(row => row["model"].StartsWith("multi-slot", StringComparison.Ordinal)).ToList();
        Assert.Equal(8, rows.Count);
        var comparison = new Comparison();
        foreach (var row in rows)
        {
            var found = Play(row, buffersGiven: false);
            CompareCommon(comparison, row, found);
            AddEach(comparison, row, "blocked", found, one => one.Blocked);
            AddEach(comparison, row, "idle_or_occupied", found, one => one.Held);
            AddEach(comparison, row, "P_input_full_or_P_station_full", found, one => one.Full);
        }

        comparison.AssertAll(0.1, 0.04);
    }

    private static List<Dictionary<string, string>> Rows() => ReferenceFile.Rows("tandem_blocking.csv");

    private static LineFigures[] Play(Dictionary<string, string> row, bool buffersGiven)
    {
        var rates = ReferenceFile.Numbers(row["service_rates"]);
        var given = row["buffers_between_or_slots"].Split(' ')[1].Split('|').Select(int.Parse).ToArray();
        var slots = buffersGiven ? Array.ConvertAll(rates, _ => 1) : given;
        var buffers = buffersGiven ? [InputPlaces(row), .. given] : new int[rates.Length];
        var model = new BlockingLineModel(rates, slots, buffers, ArrivalRate(row));
        var perUnit = 1 / ReferenceFile.Number(row["throughput"]);
        var name = $"{row["service_rates"]} {row["buffers_between_or_slots"]} {row["input"]}";

        // 250 units, and ten stays at the slowest station, are far more than these small systems need to forget the empty start.
        var warmUp = Math.Max(250 * perUnit, 10 / rates.Min());
        return Enumerable
            .Range(0, Replications)
            .Select(replication => model.Play(new Draws(name, replication), warmUp, UnitsEach * perUnit))
            .ToArray();
    }

    private static void CompareCommon(Comparison comparison, Dictionary<string, string> row, LineFigures[] found)
    {
        AddEach(comparison, row, "throughput", found, one => [one.Throughput]);
        AddEach(comparison, row, "mean_in_system", found, one => [one.InSystem]);
    }

    private static void AddEach(
        Comparison comparison,
        Dictionary<string, string> row,
        string column,
        LineFigures[] found,
        Func<LineFigures, double[]> figure
    )
    {
        // "P(blocked) 0.33|0.00": words, then a number a station.
        var exact = ReferenceFile.Numbers(row[column].Split(' ')[^1]);
        for (var i = 0; i < exact.Length; i++)
        {
            var values = new Tally();
            foreach (var one in found)
            {
                values.Add(figure(one)[i]);
            }

            var what = $"{row["service_rates"]}, {row["buffers_between_or_slots"]}, {row["input"]}: {column} {i + 1}";
            comparison.Add(what, exact[i], values);
        }
    }

    private static bool IsOpen(Dictionary<string, string> row) => row["input"].StartsWith("Poisson", StringComparison.Ordinal);

    private static double ArrivalRate(Dictionary<string, string> row) =>
        IsOpen(row) ? ReferenceFile.Number(row["input"].Split(' ', ';')[1]) : 0;

    // "Poisson 0.5; 3 input waiting places; lost if full".
    private static int InputPlaces(Dictionary<string, string> row) =>
        IsOpen(row) ? int.Parse(row["input"].Split("; ")[1].Split(' ')[0]) : 0;
}
