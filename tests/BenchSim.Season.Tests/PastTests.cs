using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests;

/// <summary>
/// A season of which the first days are given as they were goes on as if it had been played: written down tray by tray up to any day, and
/// played from there, it is the same season.
/// </summary>
public class PastTests
{
    [Fact]
    public void The_rest_of_a_season_follows_from_what_was_written_down()
    {
        var pasts = 0;
        RandomSites.GenScenario.Each(300, 19, scenario =>
        {
            if (scenario.Rules.Rounds == RoundKind.AnyTime || SeasonPlanner.Make(scenario with { Mishaps = [] }).Plan is not { } plan)
            {
                return;
            }

            var (whole, diary) = (new SeasonResult(), new Diary(plan));
            new SeasonPlayer(plan, 3).Play(1, PlaceLimits.AsGiven, whole, diary);
            for (var today = 9; today < plan.Days; today += 13)
            {
                if (diary.At(today) is not { } past)
                {
                    continue;
                }

                pasts++;
                var rest = new SeasonResult();
                new SeasonPlayer(plan with { Past = past }, 3).Play(1, PlaceLimits.AsGiven, rest);
                AssertSame(whole, rest);
            }
        });
        Assert.True(pasts > FixedSample.CasesOf(400), $"{pasts} pasts");
    }

    // Nothing done and nothing over: the season from its first day.
    [Fact]
    public void A_past_of_no_days_changes_nothing() => RandomSites.GenScenario.Each(60, 20, scenario =>
        {
            if (SeasonPlanner.Make(scenario).Plan is not { } plan)
            {
                return;
            }

            var (whole, rest) = (new SeasonResult(), new SeasonResult());
            new SeasonPlayer(plan, 3).Play(1, PlaceLimits.AsGiven, whole);
            new SeasonPlayer(plan with { Past = new Diary(plan).At(0) }, 3).Play(1, PlaceLimits.AsGiven, rest);
            Assert.Equivalent(whole, rest, strict: true);
        });

    // A variant that changes nothing has the past of its base, whatever it was, also where it lists a space more, before all others.
    [Fact]
    public void A_variant_that_changes_nothing_is_the_same_season()
    {
        var pasts = 0;
        RandomSites.GenScenario.Each(100, 21, scenario =>
        {
            if (scenario.Rules.Rounds == RoundKind.AnyTime || SeasonPlanner.Make(scenario with { Mishaps = [] }).Plan is not { } plan)
            {
                return;
            }

            var diary = new Diary(plan);
            new SeasonPlayer(plan, 3).Play(1, PlaceLimits.AsGiven, new SeasonResult(), diary);
            var attic = SmallSite.Bench(0, "attic", house: scenario.Houses[0].Id);
            for (var today = 9; today < plan.Days; today += 40)
            {
                if (diary.At(today) is not { } past)
                {
                    continue;
                }

                pasts++;
                var below = plan with { Past = past };
                Assert.Equivalent(Play(below), Play(VariantPlanner.Make(below, plan.Scenario).Plan!), strict: true);
                var wider = VariantPlanner.Make(below, plan.Scenario with { Spaces = [attic, .. plan.Scenario.Spaces] }).Plan!;
                Assert.Equal(Play(below).Held, Play(wider).Held[1..]);
            }
        });
        Assert.True(pasts > FixedSample.CasesOf(50), $"{pasts} pasts");
    }

    private static SeasonResult Play(SeasonPlan plan)
    {
        var result = new SeasonResult();
        new SeasonPlayer(plan, 3).Play(1, PlaceLimits.AsGiven, result);
        return result;
    }

    // What is not in the diary: what waited and was held before that day, and why trays were thrown out.
    private static void AssertSame(SeasonResult whole, SeasonResult rest)
    {
        Assert.Equal(whole.Held, rest.Held);
        Assert.Equal(whole.TrayDays, rest.TrayDays);
        Assert.Equal(whole.Sown, rest.Sown);
        Assert.Equal(whole.Moved, rest.Moved);
        Assert.Equal(whole.Potted, rest.Potted);
        Assert.Equal(whole.SetOut, rest.SetOut);
        Assert.Equal(whole.CarriedIn, rest.CarriedIn);
        Assert.Equal(whole.CellsThinned, rest.CellsThinned);
        Assert.Equal(whole.HeatWattHours, rest.HeatWattHours);
        Assert.Equal(whole.PlantsOut, rest.PlantsOut);
        Assert.Equal(whole.PlantsInTimeWeatherCounted, rest.PlantsInTimeWeatherCounted);
        Assert.Equal(whole.Batches.Select(Figures), rest.Batches.Select(Figures));
    }

    private static object Figures(BatchOutcome batch) =>
        (
            (batch.SownFirst, batch.SownLast, batch.OffMat, batch.PottedUp, batch.Finishing, batch.OnTable),
            (batch.OutFirst, batch.OutMedian, batch.OutLast, batch.PlantsOut, batch.GrowingHours, batch.GivenUp),
            (batch.FlatsSown, batch.FlatsPotted, batch.FlatsDiscarded, batch.FlatsStanding),
            (batch.TraysStarted, batch.TraysOut, batch.TraysDiscarded, batch.TraysStanding)
        );

    /// <summary>Writes down what stands where, tray by tray, at the end of each day.</summary>
    private sealed class Diary(SeasonPlan plan) : ISeasonWitness
    {
        private readonly Dictionary<(int Batch, bool IsFlat, int Index), TrayPast> _trays = [];
        private readonly List<FlatPotted> _potted = [];
        private readonly List<(int Day, SeasonStart Start)> _starts = [];
        private int _today;

        public void Begins(SeasonView season) => _today = 0;

        public void Potted(FlatPotted potted)
        {
            _potted.Add(potted);
            End((potted.Batch, true, potted.Flat), TrayEnd.UsedUp);
        }

        public void WentOut(TraysOut trays)
        {
            for (var index = trays.First; index < trays.First + trays.Count; index++)
            {
                // A tray that was not filled is a lot of its own; somebody counted it.
                var isPart = plan.Batches[trays.Batch].Flat is not null && trays.Count == 1;
                End((trays.Batch, false, index), TrayEnd.Out, isPart ? trays.Plants : null);
            }
        }

        public void Discarded(TraysDiscarded trays)
        {
            for (var index = trays.First; index < trays.First + trays.Count; index++)
            {
                End((trays.Batch, trays.IsFlat, index), TrayEnd.Gone);
            }
        }

        public void DayEnds(SeasonView season)
        {
            for (var batch = 0; batch < plan.Batches.Length; batch++)
            {
                foreach (var lot in season.Standing(batch))
                {
                    for (var index = lot.First; index < lot.First + lot.Count; index++)
                    {
                        See((batch, lot.IsFlat, index), lot.Space, season.Day);
                    }
                }
            }

            _today = season.Day + 1;
            if (_today < plan.Days)
            {
                _starts.Add((_today, season.Capture()));
            }
        }

        /// <summary>The past up to a day; null where not all of it shows in what was written down.</summary>
        public SeasonPast? At(int today)
        {
            var start = _starts.Find(each => each.Day == today).Start;
            if (start is not null && !start.Batches.Zip(plan.Batches).All(pair => Shows(pair.First, pair.Second, today)))
            {
                return null;
            }

            return new SeasonPast
            {
                Today = today,
                Batches =
                [
                    .. plan.Batches.Select(
                        (batch, index) =>
                            new BatchPast
                            {
                                Unsown = start?.Batches[index].Unsown ?? (batch.Flat is null ? batch.Trays : batch.Flats),
                                NextSown = start?.Batches[index].Sown ?? 0,
                                LastSown = start?.Batches[index].LastSown ?? -1,
                                Filled = start?.Batches[index].Filled ?? 0,
                                Trays =
                                [
                                    .. _trays
                                        .Where(each => each.Key.Batch == index)
                                        .Select(each => Until(each.Value, today))
                                        .OfType<TrayPast>(),
                                ],
                            }
                    ),
                ],
            };
        }

        // No seedlings are passed on, no tray is part full, and no sowing has waited or was given up.
        private bool Shows(BatchStart start, BatchPlan batch, int today) =>
            start.Carry == 0
            && start.Lots.All(lot => lot.PottedPlants == 0)
            && (start.Unsown == 0 || batch.SowOn.DayNumber - plan.FirstDay.DayNumber >= today)
            && (start.Unsown > 0 || start.Sown == (batch.Flat is null ? batch.Trays : batch.Flats));

        private static TrayPast? Until(TrayPast trays, int today)
        {
            ImmutableArray<(int Space, int Day)> path = [.. trays.Path.Where(stay => stay.Day < today)];
            return path.Length <= trays.Borrowed ? null
                : trays.End == TrayEnd.Stands || trays.EndDay >= today ? trays with { Path = path, End = TrayEnd.Stands }
                : trays with { Path = path };
        }

        private void See((int Batch, bool IsFlat, int Index) key, int space, int day)
        {
            if (!_trays.TryGetValue(key, out var trays))
            {
                var potted = key.IsFlat
                    ? default(FlatPotted?)
                    : _potted
                        .Where(each => each.Batch == key.Batch && IsIn(each, key.Index))
                        .Select(each => (FlatPotted?)each)
                        .FirstOrDefault();
                var flat = potted is { } of ? _trays[(key.Batch, true, of.Flat)] : null;
                trays = new TrayPast
                {
                    AreFlats = key.IsFlat,
                    First = key.Index,
                    Count = 1,
                    SowDay = flat?.SowDay ?? day,
                    PottedDay = flat is null ? null : day,
                    Path = flat?.Path ?? [],
                    Borrowed = flat?.Path.Length ?? 0,
                };
            }

            if (trays.Path.Length == trays.Borrowed || trays.Path[^1].Space != space)
            {
                trays = trays with { Path = trays.Path.Add((space, day)) };
            }

            _trays[key] = trays;
        }

        private static bool IsIn(FlatPotted potted, int index) => index >= potted.FirstTray && index < potted.FirstTray + potted.Trays;

        private void End((int Batch, bool IsFlat, int Index) key, TrayEnd end, int? plants = null)
        {
            if (_trays.TryGetValue(key, out var trays))
            {
                _trays[key] = trays with { End = end, EndDay = _today, Plants = plants };
            }
        }
    }
}
