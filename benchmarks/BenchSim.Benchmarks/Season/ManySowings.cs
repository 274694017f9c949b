using System.Diagnostics;
using System.Globalization;
using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Benchmarks.Season;

/// <summary>
/// How the time of a season grows with its sowings: a plan copied many times over, its places in proportion, played as given on one thread,
/// warm, the best of several rounds of the same seasons.
/// </summary>
internal static class ManySowings
{
    private const int Seasons = 20;
    private const int Rounds = 8;
    private const ulong Seed = 1;

    /// <summary>Measures and prints a table.</summary>
    /// <param name="scenario">Scenario folder.</param>
    /// <param name="output">Where the table goes.</param>
    public static void Print(string scenario, TextWriter output)
    {
        var plan = SeasonPlanner.Make(ScenarioFolder.Read(scenario).Scenario!).Plan!;
        var few = Copies(plan, Math.Max(1, 1_000 / plan.Batches.Length));
        var many = Copies(plan, Math.Max(1, 10_000 / plan.Batches.Length));
        var (short1, long1) = (BestOf(few), BestOf(many));
        Row(few, short1);
        Row(many, long1);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{long1 / short1:0.0} times as long"));

        void Row(SeasonPlan of, double seconds) =>
            output.WriteLine(
                of.Batches.Length.ToString("#,##0", CultureInfo.InvariantCulture).PadLeft(7)
                    + " sowings "
                    + (seconds * 1e3).ToString("0.00", CultureInfo.InvariantCulture).PadLeft(9)
                    + " ms a season"
            );
    }

    private static SeasonPlan Copies(SeasonPlan plan, int copies)
    {
        BatchPlan[] batches =
        [
            .. Enumerable
                .Range(0, copies)
                .SelectMany(copy =>
                    plan.Batches.Select(batch =>
                        batch with
                        {
                            Order = batch.Order with { Id = $"{batch.Order.Id}-{copy}", PacketId = null },
                        }
                    )
                ),
        ];
        var spaces = plan.Scenario.Spaces.Select(space =>
            space with
            {
                Places = space.Places * copies,
                Changes = [.. space.Changes.Select(change => change with { Places = change.Places * copies })],
            }
        );
        return plan with
        {
            Scenario = plan.Scenario with { Spaces = [.. spaces], Batches = [.. batches.Select(batch => batch.Order)] },
            Batches = [.. batches],
        };
    }

    private static double BestOf(SeasonPlan plan)
    {
        var (player, result) = (new SeasonPlayer(plan, Seed), new SeasonResult());
        var best = double.PositiveInfinity;
        for (var round = 0; round < Rounds; round++)
        {
            var start = Stopwatch.GetTimestamp();
            for (var season = 0; season < Seasons; season++)
            {
                player.Play(season, PlaceLimits.AsGiven, result);
            }

            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalSeconds / Seasons);
        }

        return best;
    }
}
