using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Play;
using BenchSim.Season.Tests.Logbook;

namespace BenchSim.Twin.Tests;

/// <summary>
/// Random logs of a plan: of a season that was played some rows are left out, some a day or two late; counts, walks and what was seen are
/// written between them, and it ends on any day. Rows that cannot have been are taken out.
/// </summary>
internal static class RandomLogs
{
    /// <summary>The plan on a day, with what a log of it says.</summary>
    public static SeasonPlan Underway(SeasonPlan plan, int seed)
    {
        var random = new Random(seed);
        var log = new SeasonLogger(plan);
        new SeasonPlayer(plan, 5).Play(seed, PlaceLimits.AsGiven, new SeasonResult(), log);
        var today = plan.FirstDay.AddDays(random.Next(plan.Days * 3 / 4));
        var kept = random.Next(2) == 0 ? 1 : 0.7;
        List<LogEntry> rows =
        [
            .. log
                .Rows.Where(_ => random.NextDouble() < kept)
                .Select(row => random.Next(8) == 0 ? row with { Date = row.Date.AddDays(random.Next(1, 3)) } : row),
            .. Enumerable.Range(0, random.Next(30)).Select(_ => Seen(plan, random, today)),
        ];
        rows.RemoveAll(row => row.Date > today);
        while (BenchLedger.Of(plan.Scenario, rows, today).Faults is { IsEmpty: false } faults)
        {
            foreach (var row in faults.Select(fault => fault.Entry).Distinct().OrderDescending())
            {
                rows.RemoveAt(row);
            }
        }

        return plan with
        {
            Past = LedgerPast.Of(plan, BenchLedger.Of(plan.Scenario, rows, today), today),
        };
    }

    private static LogEntry Seen(SeasonPlan plan, Random random, DateOnly today)
    {
        var batch = plan.Batches[random.Next(plan.Batches.Length)];
        var of = random.Next(1, 80);
        var spaces = plan.Scenario.Spaces;
        var row = new LogEntry
        {
            Date = plan.FirstDay.AddDays(random.Next(today.DayNumber - plan.FirstDay.DayNumber + 1)),
            BatchId = batch.Order.Id,
            Space = random.Next(3) == 0 ? spaces[random.Next(spaces.Length)].Id : null,
        };
        var space = (random.Next(2) == 0 ? batch.Benches : batch.Tables)[0];
        return random.Next(8) switch
        {
            0 or 1 => Counted(row with { What = LogKind.Up, Of = of }, random),
            2 => Counted(row with { What = LogKind.Good, Of = of }, random),
            3 => row with { What = LogKind.Ready },
            4 or 5 => row with { What = LogKind.NotReady },
            6 => row with { What = LogKind.Counted, Trays = random.Next(4), Space = spaces[space].Id },
            _ => row with { What = LogKind.Walked, BatchId = null, Space = spaces[space].Id },
        };
    }

    // One count in four is a word.
    private static LogEntry Counted(LogEntry row, Random random) =>
        row.Of >= CountWords.Fewest && random.Next(4) == 0
            ? row with
            {
                Word = CountWords.All[random.Next(CountWords.All.Length)].Value,
            }
            : row with
            {
                Count = random.Next(row.Of!.Value + 1),
            };
}
