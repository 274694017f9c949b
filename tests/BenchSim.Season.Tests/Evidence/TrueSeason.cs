using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Play;
using BenchSim.Season.Stands;
using BenchSim.Season.Tests.Logbook;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Evidence;

/// <summary>
/// A season that is taken for the true one: what was done in it is in its log, and on one day every batch that stands is looked at, with
/// the luck that it truly has: seedlings that are up, or, of every other batch that is, cells with a plant; and whether trays are ready.
/// </summary>
internal sealed class TrueSeason : ISeasonWitness
{
    private const int Looked = 60;

    private readonly SeasonPlan _plan;
    private readonly int _season;
    private readonly int _today;
    private readonly BatchLuck[] _lucks;
    private readonly SeasonWeather _weather;
    private readonly SeasonLogger _log;
    private readonly List<LogEntry> _looks = [];
    private readonly List<(int Space, double From)>[] _way;
    private readonly Random _random;

    public TrueSeason(SeasonPlan plan, ulong seed, int season, int today)
    {
        (_plan, _season, _today, _random) = (plan, season, today, new Random(season));
        _lucks = BatchStates.Lucks(plan.Scenario, plan.Batches, seed);
        _weather = new SeasonWeather(plan.Days + plan.Scenario.Rules.ForecastNights + 1);
        WeatherSource.Of(plan.Scenario, _weather.Days).Fill(seed, season, _weather);
        _log = new SeasonLogger(plan);
        _way = [.. plan.Batches.Select(_ => new List<(int, double)>())];
        new SeasonPlayer(plan, seed).Play(season, PlaceLimits.AsGiven, Result, this);
    }

    public SeasonResult Result { get; } = new();

    /// <summary>The batches that stand on the day.</summary>
    public IReadOnlyList<int> Standing { get; private set; } = [];

    /// <summary>The plan as it stands on the day by the log, the weather until then known.</summary>
    /// <param name="withLooks">Whether what was seen on the day is in the log.</param>
    public SeasonPlan Log(bool withLooks = true)
    {
        var date = _plan.FirstDay.AddDays(_today);
        LogEntry[] rows = [.. _log.Rows.Where(row => row.Date < date), .. withLooks ? _looks : []];
        var ledger = BenchLedger.Of(_plan.Scenario, rows, date);
        Assert.Empty(ledger.Faults);
        DailyWeather[] known = [.. Enumerable.Range(0, _today).Select(Day)];
        return _plan with
        {
            Scenario = _plan.Scenario with { Known = new KnownDays([.. known], _today) },
            Past = LedgerPast.Of(_plan, ledger, date),
        };
    }

    public void Moved(TrayMove move)
    {
        _log.Moved(move);
        if (move.First == 0 && (move.IsFlat || _plan.Batches[move.Batch].Flat is null))
        {
            _way[move.Batch].Add((move.To, move.Hour));
        }
    }

    public void Potted(FlatPotted potted) => _log.Potted(potted);

    public void WentOut(TraysOut trays) => _log.WentOut(trays);

    public void Discarded(TraysDiscarded trays) => _log.Discarded(trays);

    public void DayEnds(SeasonView season)
    {
        _log.DayEnds(season);
        if (season.Day + 1 == _today)
        {
            Standing = [.. season.State.Batches.Where(batch => batch.IsStanding).Select(batch => batch.Index)];
            foreach (var batch in season.State.Batches)
            {
                Look(season.State, batch);
            }
        }
    }

    private DailyWeather Day(int day) => new(_plan.FirstDay.AddDays(day), _weather.TminOf(day), _weather.TmaxOf(day), _weather.RainOf(day));

    // As all is at midnight.
    private void Look(SeasonState state, BatchState batch)
    {
        Lot[] lots = [.. batch.OnMat, .. batch.OnBench, .. batch.OnTable];
        if (Array.Find(lots, lot => lot.IsFlat || !batch.IsPotUp) is { } sown)
        {
            Count(state, batch, sown);
        }

        if (Array.Find(lots, lot => !lot.IsFlat) is { } tray)
        {
            Add(batch, tray.GrownHour <= _today * 24 ? LogKind.Ready : LogKind.NotReady);
        }
    }

    private void Count(SeasonState state, BatchState batch, Lot lot)
    {
        var luck = _lucks[batch.Index];
        var isHalfUp = lot.EmergedHour <= _today * 24;
        var score = Math.Log(Heat(state, batch) / (batch.Crop.EmergeHeat * luck.Emergence(_season))) / batch.Crop.EmergeSigma;
        var mean = isHalfUp ? state.Heat.PathMeanOf(lot) : state.Scenario.Spaces[lot.Space].MatC!.Value;
        var chance = luck.Packet(_season) * Stand.RelativeGermination(batch.Crop, mean) * Normal.Cumulative(score);
        if (!isHalfUp || batch.IsPotUp || _random.Next(2) == 0)
        {
            Add(batch, LogKind.Up, Hits(chance));
        }
        else
        {
            Add(batch, LogKind.Good, Hits(chance * (1 - luck.StandLoss(_season))));
        }
    }

    // Of the first tray or flat of a batch, degree-days.
    private double Heat(SeasonState state, BatchState batch)
    {
        var (law, heat, until) = (state.Layout.EmergenceOf(batch.CropIndex), 0.0, _today * 24.0);
        foreach (var (space, from) in _way[batch.Index].AsEnumerable().Reverse())
        {
            var sum = state.Climate.EmergenceSum(law, state.Layout.MediumOf(space));
            heat += sum.At(until) - sum.At(from);
            until = from;
        }

        return heat / HeatTable.UnitsADegreeDay;
    }

    private int Hits(double chance) => Enumerable.Range(0, Looked).Count(_ => _random.NextDouble() < chance);

    private void Add(BatchState batch, LogKind what, int? count = null) =>
        _looks.Add(
            new LogEntry
            {
                Date = _plan.FirstDay.AddDays(_today),
                What = what,
                BatchId = batch.Plan.Order.Id,
                Count = count,
                Of = count is null ? null : Looked,
            }
        );
}
