using System.Diagnostics;
using System.Globalization;
using BenchSim.Folder;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Study;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;

namespace BenchSim.Benchmarks.Season;

/// <summary>
/// Where the time of a season of the spring example goes, warm and on one thread, and what 1,000 seasons take on one and on two. Each
/// figure is the best of many repeats, season by season: the one least disturbed by whatever else the machine does.
/// </summary>
internal static class WhereTimeGoes
{
    private const int Seasons = 200;
    private const int Repeats = 40;
    private const int StudySeasons = 1000;
    private const int StudyRepeats = 20;
    private const ulong Seed = 1;

    /// <summary>Measures and prints a table.</summary>
    /// <param name="scenario">Scenario folder.</param>
    /// <param name="output">Where the table goes.</param>
    public static void Print(string scenario, TextWriter output)
    {
        var plan = SeasonPlanner.Make(ScenarioFolder.Read(scenario).Scenario!).Plan!;
        var source = WeatherSource.Of(plan.Scenario, plan.Days + plan.Scenario.Rules.ForecastNights + 1);
        var weather = new SeasonWeather(plan.Days + plan.Scenario.Rules.ForecastNights + 1);
        var player = new SeasonPlayer(plan, Seed);
        var (given, unlimited) = (new SeasonResult(), new SeasonResult());
        var tally = new SeasonTally(plan);
        Parts[] of = [.. Enumerable.Repeat(Parts.Endless, Seasons)];
        var (alone, together) = (double.PositiveInfinity, double.PositiveInfinity);
        for (var repeat = 0; repeat < Repeats; repeat++)
        {
            Once(source, weather, player, given, unlimited, tally, of);
        }

        for (var repeat = 0; repeat < StudyRepeats; repeat++)
        {
            alone = Math.Min(alone, Study(plan, 1));
            together = Math.Min(together, Study(plan, 2));
        }

        var best = of.Aggregate((sum, season) => sum + season);

        string[] lines =
        [
            $"processor: {Processor()}, {Environment.ProcessorCount} threads",
            $"{Path.GetFileName(Path.GetFullPath(scenario))}: {plan.Batches.Length} sowings, {plan.Days} days; "
                + $"microseconds a season, one thread, best of {Repeats}",
            Row("drawing the weather", best.Weather),
            Row("heat sums of that weather", best.FirstPlay - best.Weather - best.SecondPlay),
            Row("the rounds, places as given", best.SecondPlay),
            Row("the rounds, without limits", best.Unlimited),
            Row("counting", best.Counting),
            Row("all", best.FirstPlay + best.Unlimited + best.Counting),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{StudySeasons} seasons, one thread: {alone * 1e3:0.0} ms; two threads: {together * 1e3:0.0} ms, "
                    + $"{alone / together:0.00} times as fast"
            ),
        ];
        foreach (var line in lines)
        {
            output.WriteLine(line);
        }
    }

    private static double Study(SeasonPlan plan, int threads) =>
        Time(() =>
            StudyRunner.Play(
                plan,
                new StudyOptions
                {
                    Seasons = StudySeasons,
                    Seed = Seed,
                    Threads = threads,
                },
                null,
                CancellationToken.None
            )
        );

    // The second play of a season finds its weather and heat sums made.
    private static void Once(
        WeatherSource source,
        SeasonWeather weather,
        SeasonPlayer player,
        SeasonResult given,
        SeasonResult unlimited,
        SeasonTally tally,
        Parts[] best
    )
    {
        for (var season = 0; season < Seasons; season++)
        {
            var parts = new Parts(
                Time(() => source.Fill(Seed, season, weather)),
                Time(() => player.Play(season, PlaceLimits.AsGiven, given)),
                Time(() => player.Play(season, PlaceLimits.AsGiven, given)),
                Time(() => player.Play(season, PlaceLimits.None, unlimited)),
                Time(() => tally.Add(given, unlimited))
            );
            best[season] = best[season].Least(parts);
        }
    }

    private static string Processor() =>
        File.Exists("/proc/cpuinfo")
            ? File.ReadLines("/proc/cpuinfo")
                .Where(line => line.StartsWith("model name", StringComparison.Ordinal))
                .Select(line => line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim())
                .FirstOrDefault("unknown")
            : "unknown";

    private static double Time(Action work)
    {
        var start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }

    private static string Row(string what, double seconds) =>
        "  " + what.PadRight(30) + (seconds / Seasons * 1e6).ToString("0", CultureInfo.InvariantCulture).PadLeft(8);

    /// <summary>Seconds of the parts of a repeat.</summary>
    private readonly record struct Parts(double Weather, double FirstPlay, double SecondPlay, double Unlimited, double Counting)
    {
        public static Parts Endless { get; } = new(double.MaxValue, double.MaxValue, double.MaxValue, double.MaxValue, double.MaxValue);

        public static Parts operator +(Parts left, Parts right) =>
            new(
                left.Weather + right.Weather,
                left.FirstPlay + right.FirstPlay,
                left.SecondPlay + right.SecondPlay,
                left.Unlimited + right.Unlimited,
                left.Counting + right.Counting
            );

        public Parts Least(Parts other) =>
            new(
                Math.Min(Weather, other.Weather),
                Math.Min(FirstPlay, other.FirstPlay),
                Math.Min(SecondPlay, other.SecondPlay),
                Math.Min(Unlimited, other.Unlimited),
                Math.Min(Counting, other.Counting)
            );
    }
}
