using System.Globalization;
using BenchSim.Benchmarks.Examples;
using BenchSim.Published.OtherEngines;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Benchmarks.SideBySide;

/// <summary>
/// BenchSim's part of benchmarks/side-by-side, one model a call: times the season and prints model, program, seconds, result, bytes. A call
/// is a
/// program of its own, because the runtime compiles for the habits of what it has played so far.
/// </summary>
internal static class SideBySidePlay
{
    /// <summary>Plays and prints.</summary>
    /// <param name="model">rounds or spring.</param>
    /// <exception cref="ArgumentException">Another model.</exception>
    public static void Run(string model)
    {
        switch (model)
        {
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
        Print(model, "BenchSim.Season", best[0] / 10, result.Batches.Sum(batch => batch.TraysOut), Stopwatches.Bytes(Play));
    }

    private static void Print(string model, string program, double seconds, double answer, long bytes) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{model},{program},{seconds:R},{answer:R},{bytes}"));
}
