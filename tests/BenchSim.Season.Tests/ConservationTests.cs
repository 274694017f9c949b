using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests;

/// <summary>What must hold in every season of every site.</summary>
public class ConservationTests
{
    [Fact]
    public void No_tray_is_lost_and_no_space_holds_more_than_its_places()
    {
        var plans = 0;
        RandomSites.GenScenario.Each(900, 24, scenario => ForPlan(scenario, plan =>
            {
                plans++;
                CheckSeason(plan);
            }));

        // A random site may have no plan at all; those that have one must still be many.
        Assert.True(plans >= FixedSample.CasesOf(500), $"only {plans} plans were played");
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Splitting_and_joining_lots_changes_nothing() =>
        RandomSites.GenScenario.Each(250, 25, scenario => ForPlan(scenario, CheckGrains));

    [Fact]
    [Trait("Category", "Slow")]
    public void Wanted_places_are_the_same_however_few_places_there_are() =>
        RandomSites.GenScenario.Each(200, 26, scenario => ForPlan(scenario, CheckWanted));

    private static void ForPlan(Scenario scenario, Action<SeasonPlan> check)
    {
        if (SeasonPlanner.Make(scenario).Plan is { } plan)
        {
            check(plan);
        }
    }

    private static void CheckSeason(SeasonPlan plan)
    {
        var watch = new LedgerWitness();
        var result = new SeasonResult();
        var player = new SeasonPlayer(plan, 3);
        for (var season = 0; season < 2; season++)
        {
            player.Play(season, PlaceLimits.AsGiven, result, watch);
            CheckLedgers(plan, result);
            CheckPlaces(plan, result);
            player.Play(season, PlaceLimits.None, result, watch);
            CheckLedgers(plan, result);
        }
    }

    private static void CheckLedgers(SeasonPlan plan, SeasonResult result)
    {
        foreach (var (batch, outcome) in plan.Batches.Zip(result.Batches))
        {
            Assert.Equal(outcome.FlatsSown, outcome.FlatsStanding + outcome.FlatsPotted + outcome.FlatsDiscarded);
            Assert.Equal(outcome.TraysStarted, outcome.TraysStanding + outcome.TraysOut + outcome.TraysDiscarded);
            Assert.InRange(outcome.TraysStarted, 0, batch.Trays);
            Assert.InRange(outcome.FlatsSown, 0, batch.Flats);
            Assert.True(outcome.PlantsOut <= outcome.TraysOut * batch.Tray.Cells);
            Assert.True(outcome.PlantsInTimeWeatherCounted <= outcome.PlantsInTime);
        }

        for (var day = 0; day < plan.Days; day++)
        {
            Assert.Equal(result.Held.Sum(space => space[day]), result.HeldByGrower.Sum(grower => grower[day]));
        }

        Assert.Equal(result.Held.Sum(space => space.Sum(places => (long)places)), result.TrayDays.Sum(grower => grower.Sum()));
    }

    // Where places were taken away from under standing trays, what stands may stay, but nothing may be added above the places.
    private static void CheckPlaces(SeasonPlan plan, SeasonResult result)
    {
        for (var space = 0; space < plan.Scenario.Spaces.Length; space++)
        {
            var aisle = plan.Scenario.Rules.Reliefs.Contains(Relief.Aisle) ? plan.Scenario.Spaces[space].AislePlaces : 0;
            var places = SiteTables.PlacesByDay(plan.Scenario, plan.Scenario.Spaces[space], plan.Days, limited: true);
            for (var day = 0; day < plan.Days; day++)
            {
                var held = result.Held[space][day];
                Assert.True(held >= 0);
                Assert.True(
                    held <= places[day] + aisle || held <= result.Held[space][day - 1],
                    $"space {space} day {day}: {held} of {places[day]}"
                );
            }
        }
    }

    private static void CheckGrains(SeasonPlan plan)
    {
        var results = Enum.GetValues<LotGrain>()
            .Select(grain =>
            {
                var result = new SeasonResult();
                new SeasonPlayer(plan, 5, grain, null).Play(1, PlaceLimits.AsGiven, result);
                return result;
            })
            .ToList();
        foreach (var other in results.Skip(1))
        {
            Assert.Equal(results[0].Held, other.Held);
            Assert.Equal(results[0].Waiting, other.Waiting);
            Assert.Equivalent(results[0].Batches, other.Batches, strict: true);
        }
    }

    private static void CheckWanted(SeasonPlan plan)
    {
        var roomy = plan with
        {
            Scenario = plan.Scenario with
            {
                Spaces = [.. plan.Scenario.Spaces.Select(space => space with { Places = space.Places * 50, Changes = [] })],
            },
        };
        var (first, second) = (new SeasonResult(), new SeasonResult());
        new SeasonPlayer(plan, 5).Play(0, PlaceLimits.None, first);
        new SeasonPlayer(roomy, 5).Play(0, PlaceLimits.None, second);
        Assert.Equal(first.Held, second.Held);
    }

    /// <summary>Keeps its own ledger of where every tray is, from the moves alone.</summary>
    private sealed class LedgerWitness : ISeasonWitness
    {
        private readonly Dictionary<(int Batch, bool Flat, int Index), int> _where = [];
        private double _last;

        public void Begins(SeasonView season)
        {
            _where.Clear();
            _last = -1;
        }

        public void Moved(TrayMove move)
        {
            Forward(move.Hour);
            for (var index = move.First; index < move.First + move.Count; index++)
            {
                if (move.From < 0)
                {
                    Assert.True(_where.TryAdd((move.Batch, move.IsFlat, index), move.To), "sown twice");
                }
                else
                {
                    Assert.Equal(move.From, _where[(move.Batch, move.IsFlat, index)]);
                    _where[(move.Batch, move.IsFlat, index)] = move.To;
                }
            }
        }

        public void WentOut(TraysOut trays)
        {
            Forward(trays.Hour);
            Remove(trays.Batch, flat: false, trays.First, trays.Count);
        }

        public void Potted(FlatPotted potted)
        {
            Forward(potted.Hour);
            Remove(potted.Batch, flat: true, potted.Flat, 1);
            for (var tray = potted.FirstTray; tray < potted.FirstTray + potted.Trays; tray++)
            {
                Assert.True(_where.TryAdd((potted.Batch, false, tray), -2), "filled twice");
            }
        }

        public void Discarded(TraysDiscarded trays)
        {
            Forward(trays.Hour);
            Remove(trays.Batch, trays.IsFlat, trays.First, trays.Count);
        }

        public void GaveUp(SowingsGivenUp sowings) => Forward(sowings.Hour);

        public void DayEnds(SeasonView season)
        {
            var batches = season.State.Batches;
            var standing = batches.Sum(batch => batch.OnMat.Concat(batch.OnBench).Concat(batch.OnTable).Sum(lot => lot.Count));
            Assert.Equal(_where.Count, standing);
            foreach (var batch in batches)
            {
                foreach (var lot in batch.OnMat.Concat(batch.OnBench).Concat(batch.OnTable))
                {
                    for (var index = lot.First; index < lot.First + lot.Count; index++)
                    {
                        var at = _where[(batch.Index, lot.IsFlat, index)];
                        Assert.True(at == lot.Space || at == -2);
                        _where[(batch.Index, lot.IsFlat, index)] = lot.Space;
                    }
                }
            }
        }

        private void Remove(int batch, bool flat, int first, int count)
        {
            for (var index = first; index < first + count; index++)
            {
                Assert.True(_where.Remove((batch, flat, index)), "left twice");
            }
        }

        private void Forward(double hour)
        {
            Assert.True(hour >= _last, "time went back");
            _last = hour;
        }
    }
}
