using System.Globalization;
using BenchSim.Season.Inputs;
using Published.Engine;

namespace BenchSim.Published.Season;

/// <summary>
/// Mat, bench and table as stations in series with blocking after service, against their exact solutions in tandem_blocking.csv (Hunt 1956,
/// Hillier and Boling 1967 and exact Markov chains; the source stands beside each row there). Each test may fail by chance once in a
/// thousand seeds (<see cref="Comparison"/>); the seed is fixed.
/// </summary>
public class BlockingLineTests
{
    private const int Replications = 40;
    private const int NoLimit = SitePlaces.NoLimit;
    private const int Always = 1_000_000;

    // Two places on the mat, where trays stay 5 hours, and one on the bench, where they stay 10. Trays 0 and 1 come at 0 and 1, trays 2 and
    // 3 at 7 and 8. Tray 0 goes to the bench at 5. Tray 1 is ready at 6, finds the bench taken, and keeps its place on the mat: it is
    // blocked. Tray 2 has the other place from 7 on; tray 3 finds the mat full though only one tray grows on it, and waits. At 15 the bench
    // is free: in that moment tray 1 has it, and tray 3 the place on the mat. Tray 2, ready at 12, goes on when tray 1 goes out, at 25.
    [Fact]
    public void Blocking_by_hand()
    {
        var site = new QueueSite(new SitePlaces(2, 1, NoLimit), [1, 1, 1, 1], Always, 48);
        var journal = site.Play([0, 1, 7, 8], (_, kind) => kind switch
            {
                SpaceKind.Mat => 5,
                SpaceKind.Bench => 10,
                _ => 0,
            });
        Assert.Equal([0.0, 1, 7, 15], [.. Enumerable.Range(0, 4).Select(tray => journal.Entered(tray, SpaceKind.Mat))]);
        Assert.Equal([5.0, 15, 25, 35], [.. Enumerable.Range(0, 4).Select(tray => journal.Entered(tray, SpaceKind.Bench))]);
        Assert.Equal([15.0, 25, 35, 45], [.. Enumerable.Range(0, 4).Select(tray => journal.Left(tray, SpaceKind.Table))]);

        // Until 25, tray 1 was blocked from 6 to 15, tray 2 from 12 to 25 and tray 3 from 20 to 25.
        Assert.Equal((9 + 13 + 5) / 25.0, journal.MeanBlocked(SpaceKind.Mat, 0, 25), 12);

        // Two were on the mat from 1 to 5 and from 7 to 25.
        Assert.Equal(22 / 25.0, journal.ShareOfTime(SpaceKind.Mat, 2, 0, 25), 12);
    }

    [Fact]
    public void One_place_a_station()
    {
        // A buffer between two stations is a space of its own in which trays stay no time, so that three spaces make two stations with a
        // buffer between or before them, or three without. Longer lines, and those with more buffers, a season cannot be.
        var comparison = new Comparison();
        var played = 0;
        foreach (var row in Rows("single-server"))
        {
            if (LineOf(row) is { } line)
            {
                var figures = Play(row, line);
                AddEach(comparison, row, "throughput", figures, one => [one.Throughput]);
                AddEach(comparison, row, "mean_in_system", figures, one => [one.InSystem]);
                AddEach(comparison, row, "blocked", figures, one => one.Blocked);
                AddEach(comparison, row, "idle_or_occupied", figures, one => Array.ConvertAll(one.Held, held => 1 - held));
                if (IsOpen(row))
                {
                    AddEach(comparison, row, "P_input_full_or_P_station_full", figures, one => [one.Lost]);
                }

                played++;
            }
        }

        Assert.Equal(18, played);
        comparison.AssertAll(0.1, 0.03);
    }

    [Fact]
    public void Several_places_a_station()
    {
        var comparison = new Comparison();
        var rows = Rows("multi-slot");
        Assert.Equal(8, rows.Count);
        foreach (var row in rows)
        {
            var figures = Play(row, new Line([.. Given(row)], [.. Stations.Take(Given(row).Length)]));
            AddEach(comparison, row, "throughput", figures, one => [one.Throughput]);
            AddEach(comparison, row, "mean_in_system", figures, one => [one.InSystem]);
            AddEach(comparison, row, "blocked", figures, one => one.Blocked);
            AddEach(comparison, row, "idle_or_occupied", figures, one => one.Held);
            AddEach(comparison, row, "P_input_full_or_P_station_full", figures, one => one.Full);
        }

        comparison.AssertAll(0.1, 0.04);
    }

    private static SpaceKind[] Stations => [SpaceKind.Mat, SpaceKind.Bench, SpaceKind.Table];

    private static List<Dictionary<string, string>> Rows(string model) =>
        [.. ReferenceFile.Rows("tandem_blocking.csv").Where(row => row["model"].StartsWith(model, StringComparison.Ordinal))];

    // Which spaces of a site are the stations of a row, and the places of each space; null where a season cannot be that line.
    private static Line? LineOf(Dictionary<string, string> row)
    {
        var buffers = Given(row);
        var input = IsOpen(row) ? int.Parse(row["input"].Split("; ")[1].Split(' ')[0], CultureInfo.InvariantCulture) : 0;
        return (buffers, input) switch
        {
            ([0], 0) => new Line([1, 1], [SpaceKind.Mat, SpaceKind.Bench]),
            ([var between], 0) => new Line([1, between, 1], [SpaceKind.Mat, SpaceKind.Table]),
            ([0], _) => new Line([input, 1, 1], [SpaceKind.Bench, SpaceKind.Table]),
            ([0, 0], 0) => new Line([1, 1, 1], Stations),
            _ => null,
        };
    }

    private static LineFigures[] Play(Dictionary<string, string> row, Line line)
    {
        // 150 units, and ten stays at the slowest station, are far more than these small systems need to forget the empty start.
        const int Units = 2500;
        var rates = ReferenceFile.Numbers(row["service_rates"]);
        var perUnit = 1 / ReferenceFile.Number(row["throughput"]);
        var warmUp = Math.Max(150 * perUnit, 10 / rates.Min());
        var end = warmUp + (Units * perUnit);

        // Trays that come at random are sowings of their own. A line that never runs dry is two sowings of more trays than it can take, due
        // from the start.
        var comings = IsOpen(row) ? Comings.Most(RateOf(row) * end) : 2;
        var trays = IsOpen(row) ? 1 : Comings.Most(end / perUnit);
        var places = line.Places.Append(NoLimit).Take(3).ToArray();
        var site = new QueueSite(
            new SitePlaces(places[0], places[1], places[2]),
            Enumerable.Repeat(trays, comings),
            IsOpen(row) ? 0 : Always,
            end
        );
        return
        [
            .. Enumerable
                .Range(0, Replications)
                .Select(replication =>
                {
                    var draws = new Draws($"{row["service_rates"]} {row["buffers_between_or_slots"]} {row["input"]}", replication);
                    var instants = IsOpen(row) ? Comings.Steady(draws, RateOf(row), end) : [0, 0];
                    var journal = site.Play(instants, (_, kind) => Stay(draws, rates, Array.IndexOf(line.Stations, kind)));
                    return Figures(journal, line, warmUp, end);
                }),
        ];
    }

    private static double Stay(Draws draws, double[] rates, int station) => station < 0 ? 0 : draws.Exponential(1 / rates[station]);

    private static LineFigures Figures(Journal journal, Line line, double from, double to) =>
        new(
            journal.Leavings(line.Stations[^1], from, to) / (to - from),
            Stations.Sum(space => journal.MeanHeld(space, from, to)),
            Array.ConvertAll(line.Stations, station => journal.MeanBlocked(station, from, to)),
            Array.ConvertAll(line.Stations, station => journal.MeanHeld(station, from, to)),
            Array.ConvertAll(line.Stations, station => journal.ShareOfTime(station, line.Places[(int)station], from, to)),
            journal.ShareLost(from, to)
        );

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
        for (var station = 0; station < exact.Length; station++)
        {
            var what = $"{row["service_rates"]}, {row["buffers_between_or_slots"]}, {row["input"]}: {column} {station + 1}";
            comparison.Add(what, exact[station], found.Select(one => figure(one)[station]));
        }
    }

    private static int[] Given(Dictionary<string, string> row) =>
        [.. row["buffers_between_or_slots"].Split(' ')[1].Split('|').Select(text => int.Parse(text, CultureInfo.InvariantCulture))];

    private static bool IsOpen(Dictionary<string, string> row) => row["input"].StartsWith("Poisson", StringComparison.Ordinal);

    private static double RateOf(Dictionary<string, string> row) => ReferenceFile.Number(row["input"].Split(' ', ';')[1]);

    /// <summary>A line as a site: places by kind of space, and which kinds of space are its stations.</summary>
    private sealed record Line(int[] Places, SpaceKind[] Stations);

    /// <summary>What one play of a line gave: means over time, by station.</summary>
    private sealed record LineFigures(double Throughput, double InSystem, double[] Blocked, double[] Held, double[] Full, double Lost);
}
