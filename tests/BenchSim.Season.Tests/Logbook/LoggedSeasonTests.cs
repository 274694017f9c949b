using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>A season whose every move was logged, played on from any day by the ledger, is the season that was logged.</summary>
public class LoggedSeasonTests
{
    [Fact]
    public void A_season_goes_on_from_its_log()
    {
        var (days, others) = (0, 0);
        RandomSites.GenScenario.Each(200, 21, scenario =>
        {
            if (scenario.Rules.Rounds == RoundKind.AnyTime || SeasonPlanner.Make(scenario with { Mishaps = [] }).Plan is not { } plan)
            {
                return;
            }

            var (whole, log) = (new SeasonResult(), new SeasonLogger(plan));
            new SeasonPlayer(plan, 3).Play(1, PlaceLimits.AsGiven, whole, log);
            for (var today = 5; today < plan.Days; today += 11)
            {
                if (!log.Shows(today))
                {
                    continue;
                }

                var date = plan.FirstDay.AddDays(today);
                LogEntry[] rows = [.. log.Rows.Where(row => row.Date < date)];
                var ledger = BenchLedger.Of(plan.Scenario, rows, date);
                Assert.Empty(ledger.Faults);
                Assert.Empty(ledger.Differences);

                // A log says how many, not which: where the play took others than those that came first, it is not the same trays.
                if (!Stand(log.Starts[today]).SetEquals(Stand(ledger)) || !log.Out(date).SetEquals(Out(ledger)))
                {
                    others++;
                    continue;
                }

                days++;
                var rest = new SeasonResult();
                new SeasonPlayer(plan with { Past = LedgerPast.Of(plan, ledger, date) with { TellsOfLuck = false } }, 3).Play(
                    1,
                    PlaceLimits.AsGiven,
                    rest
                );
                Assert.Equal(whole.Held, rest.Held);
                Assert.Equal(whole.SetOut, rest.SetOut);
                Assert.Equal(whole.PlantsOut, rest.PlantsOut);
                Assert.Equal(
                    whole.Batches.Select(batch => (batch.OutFirst, batch.OutLast, batch.PlantsOut, batch.GrowingHours)),
                    rest.Batches.Select(batch => (batch.OutFirst, batch.OutLast, batch.PlantsOut, batch.GrowingHours))
                );
            }
        });
        Assert.True(days > FixedSample.CasesOf(300), $"{days} days");
        Assert.True(others < days / 10, $"{others} of {days} days");
    }

    private static HashSet<(int Batch, bool AreFlats, int Index, int Space)> Stand(SeasonStart start) =>
        [
            .. from batch in start.Batches.Index()
            from lot in batch.Item.Lots
            from index in Enumerable.Range(lot.First, lot.Count)
            select (batch.Index, lot.IsFlat, index, lot.Space),
        ];

    private static HashSet<(int Batch, int Index, DateOnly On)> Out(BenchLedger ledger) =>
        [
            .. from batch in ledger.Batches.Index()
            from gone in batch.Item.Gone
            where gone.End == TrayEnd.Out
            from index in Enumerable.Range(gone.Pile.First, gone.Pile.Count)
            select (batch.Index, index, gone.On),
        ];

    private static HashSet<(int Batch, bool AreFlats, int Index, int Space)> Stand(BenchLedger ledger) =>
        [
            .. from batch in ledger.Batches.Index()
            from pile in batch.Item.Piles
            from index in Enumerable.Range(pile.First, pile.Count)
            select (batch.Index, pile.AreFlats, index, pile.Space),
        ];
}
