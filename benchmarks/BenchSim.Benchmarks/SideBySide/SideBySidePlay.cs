using System.Globalization;
using BenchSim.Benchmarks.Engine;
using BenchSim.Benchmarks.Examples;
using BenchSim.Published.OtherEngines;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Benchmarks.SideBySide;

/// <summary>
/// BenchSim's part of benchmarks/side-by-side, one model a call: writes the numbers that the other programs are fed, times the engine, the
/// hand-written loops or the season, and prints a line each: model, program, seconds, result, events, bytes. A call is a program of its own,
/// because the runtime compiles the engine for the habits of what it has played so far.
/// </summary>
internal static class SideBySidePlay
{
    /// <summary>Plays and prints.</summary>
    /// <param name="model">tandem, single-server, rounds or spring.</param>
    /// <param name="folder">Where the numbers go.</param>
    /// <exception cref="ArgumentException">Another model.</exception>
    public static void Run(string model, string folder)
    {
        switch (model)
        {
            case "tandem":
                Tandem(folder);
                break;
            case "single-server":
                SingleServer(folder);
                break;
            case "rounds":
                Rounds();
                break;
            case "spring":
                Spring();
                break;
            default:
                throw new ArgumentException($"There is no model {model}.", nameof(model));
        }
    }

    private static void Tandem(string folder)
    {
        var tandem = new TandemBenchmark();
        var (units, days) = tandem.Numbers;
        File.WriteAllLines(
            Path.Combine(folder, "tandem.txt"),
            units.Select((count, row) => $"{count} {string.Join(' ', days.Select(stage => Exactly(stage[row])))}")
        );
        tandem.Agree();
        var best = Stopwatches.Best(() => tandem.Loop(), () => tandem.Processes());
        var events = tandem.Events * (units.Length / 150);
        Print("tandem", "hand-written loop in C#", best[0], tandem.Loop(), 0, 0);
        Print("tandem", "BenchSim.Engine", best[1], tandem.Processes(), events, Stopwatches.Bytes(() => tandem.Processes()));
    }

    private static void SingleServer(string folder)
    {
        var server = new SingleServerBenchmark();
        var gaps = new ExponentialStream(1, 1.25);
        var services = new ExponentialStream(2, 1);
        File.WriteAllLines(
            Path.Combine(folder, "single-server.txt"),
            Enumerable.Range(0, SingleServerBenchmark.CustomersEach).Select(_ => $"{Exactly(gaps.Next())} {Exactly(services.Next())}")
        );
        server.Agree();
        var best = Stopwatches.Best(() => server.Loop(), () => server.Processes(), () => server.InSteps(), () => server.Swept());
        Print("M/M/1", "hand-written loop in C#", best[0], server.Loop(), 0, 0);
        Print("M/M/1", "BenchSim.Engine", best[1], server.Processes(), server.Events, Stopwatches.Bytes(() => server.Processes()));
        Print("M/M/1", "BenchSim.Engine in steps", best[2], server.InSteps(), server.Events, Stopwatches.Bytes(() => server.InSteps()));
        Print("M/M/1", "BenchSim.Engine swept", best[3], server.Swept(), server.Events, Stopwatches.Bytes(() => server.Swept()));
    }

    private static void Rounds()
    {
        var rows = File.ReadAllLines(Checkout.PathTo("tests", "Published", "other-engines", "rounds-batches.csv"))
            .Skip(1)
            .Select(line => line.Split(','));
        Season("rounds", RoundsSite.Plan([.. rows]));
    }

    private static void Spring() => Season("spring", SpringExample.Read().Plan);

    private static void Season(string model, SeasonPlan plan)
    {
        var result = new SeasonResult();
        var player = new SeasonPlayer(plan, 1);
        var season = 0;
        void Play() => player.Play(season++, PlaceLimits.AsGiven, result);
        var best = Stopwatches.Best(() =>
        {
            for (var i = 0; i < 10; i++)
            {
                Play();
            }
        });
        Print(model, "BenchSim.Season", best[0] / 10, result.Batches.Sum(batch => batch.TraysOut), 0, Stopwatches.Bytes(Play));
    }

    private static string Exactly(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static void Print(string model, string program, double seconds, double answer, long events, long bytes) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{model},{program},{seconds:R},{answer:R},{events},{bytes}"));
}
