using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Play;
using BenchSim.Season.Weather;

namespace BenchSim.Study.Tests.Learning;

/// <summary>
/// A season that is played, and the log that a careful grower kept of it: every move; seedlings of the same seeds picked by lot, counted on
/// some days; trays judged every few days from the tenth after sowing on; plants as they go out; the low of every night in the house.
/// </summary>
internal sealed class LoggedSeason : ISeasonWitness
{
    private const int FirstJudged = 10;
    private const int JudgedEvery = 5;

    private static readonly int[] s_fewDays = [3, 5, 8, 12];

    private readonly SeasonPlan _plan;
    private readonly BatchLuck[] _lucks;
    private readonly int _season;
    private readonly int[] _countedOn;
    private readonly SeasonWeather _weather;
    private readonly List<LogEntry> _rows = [];
    private readonly List<(int Space, double From)>[] _ways;
    private readonly (double Germinates, double Late)[][] _seeds;
    private readonly HashSet<int> _ready = [];
    private int _day;

    public LoggedSeason(SeasonPlan plan, ulong seed, int season, int looked = 60, int[]? countedOn = null)
    {
        (_plan, _season, _countedOn) = (plan, season, countedOn ?? s_fewDays);
        _lucks = BatchStates.Lucks(plan.Scenario, plan.Batches, seed);
        _weather = new SeasonWeather(plan.Days + plan.Scenario.Rules.ForecastNights + 1);
        WeatherSource.Of(plan.Scenario, _weather.Days).Fill(seed, season, _weather);
        _ways = [.. plan.Batches.Select(_ => new List<(int, double)>())];
        var random = new Random(season);
        _seeds =
        [
            .. plan.Batches.Select(_ => Enumerable.Range(0, looked).Select(_ => (random.NextDouble(), random.NextDouble())).ToArray()),
        ];
        new SeasonPlayer(plan, seed).Play(season, PlaceLimits.AsGiven, new SeasonResult(), this);
    }

    /// <summary>The heat that each batch truly takes until half of it is up, degree-days.</summary>
    public IEnumerable<double> BatchHeats => _plan.Batches.Zip(_lucks, (batch, luck) => batch.Crop.EmergeHeat * luck.Emergence(_season));

    /// <summary>The plan as it stands on its last day by the log, all weather known.</summary>
    public SeasonPlan Log()
    {
        var ledger = BenchLedger.Of(_plan.Scenario, _rows, _plan.LastDay);
        Assert.Empty(ledger.Faults);
        var days = Enumerable.Range(0, _plan.Days - 1).Select(day => (_plan.FirstDay.AddDays(day), day));
        return _plan with
        {
            Scenario = _plan.Scenario with
            {
                Log = [.. _rows],
                Known = new KnownDays(
                    [
                        .. days.Select(each => new DailyWeather(
                            each.Item1,
                            _weather.TminOf(each.day),
                            _weather.TmaxOf(each.day),
                            _weather.RainOf(each.day)
                        )),
                    ],
                    _plan.Days - 1
                ),
            },
            Past = LedgerPast.Of(_plan, ledger, _plan.LastDay),
        };
    }

    public void Moved(TrayMove move)
    {
        if (move.First == 0)
        {
            _ways[move.Batch].Add((move.To, move.Hour));
        }

        Add(
            Row(move.From < 0 ? LogKind.Sown : LogKind.Moved, move.Batch) with
            {
                Trays = move.Count,
                From = move.From < 0 ? null : IdOf(move.From),
                Space = IdOf(move.To),
            }
        );
    }

    public void WentOut(TraysOut trays) =>
        Add(Row(LogKind.SetOut, trays.Batch) with { Trays = trays.Count, From = IdOf(trays.From), Count = trays.Plants });

    public void Discarded(TraysDiscarded trays) =>
        Add(Row(LogKind.ThrownOut, trays.Batch) with { Trays = trays.Count, From = IdOf(trays.From) });

    public void DayEnds(SeasonView season)
    {
        var state = season.State;
        foreach (var batch in state.Batches.Where(batch => batch.IsStanding))
        {
            Look(state, batch);
        }

        _day = season.Day + 1;
        Add(
            new LogEntry
            {
                Date = _plan.FirstDay.AddDays(_day),
                What = LogKind.Low,
                Space = "main",
                Count = state.Climate.NightC(1)[season.Day],
            }
        );
    }

    public void Potted(FlatPotted potted) => throw new NotSupportedException("All is sown directly.");

    // What is seen on a day is seen by the hour of its round.
    private void Look(SeasonState state, BatchState batch)
    {
        var hour = (_day * 24) + 8.0;
        var age = _day - (_plan.Batches[batch.Index].SowOn.DayNumber - _plan.FirstDay.DayNumber);
        if (_countedOn.Contains(age))
        {
            var luck = _lucks[batch.Index];
            var heat = Heat(state, batch, hour) / (batch.Crop.EmergeHeat * luck.Emergence(_season));
            var isUp = Normal.Cumulative(Math.Log(Math.Max(heat, 1e-9)) / batch.Crop.EmergeSigma);
            var count = _seeds[batch.Index].Count(seed => seed.Germinates < luck.Packet(_season) && seed.Late < isUp);
            Add(Row(LogKind.Up, batch.Index) with { Count = count, Of = _seeds[batch.Index].Length, Note = "picked by lot" });
        }

        Lot[] lots = [.. batch.OnMat, .. batch.OnBench, .. batch.OnTable];
        if (age >= FirstJudged && age % JudgedEvery == 0 && !_ready.Contains(batch.Index))
        {
            var isReady = lots[0].GrownHour <= hour;
            Add(Row(isReady ? LogKind.Ready : LogKind.NotReady, batch.Index));
            if (isReady)
            {
                _ = _ready.Add(batch.Index);
            }
        }
    }

    // Of the first tray of a batch, degree-days.
    private double Heat(SeasonState state, BatchState batch, double until)
    {
        var (law, heat) = (state.Layout.EmergenceOf(batch.CropIndex), 0.0);
        foreach (var (space, from) in _ways[batch.Index].AsEnumerable().Reverse().Where(stay => stay.From < until))
        {
            var sum = state.Climate.EmergenceSum(law, state.Layout.MediumOf(space));
            heat += sum.At(until) - sum.At(from);
            until = from;
        }

        return heat / HeatTable.UnitsADegreeDay;
    }

    private LogEntry Row(LogKind what, int batch) =>
        new()
        {
            Date = _plan.FirstDay.AddDays(_day),
            What = what,
            BatchId = _plan.Batches[batch].Order.Id,
        };

    private void Add(LogEntry row) => _rows.Add(row);

    private string IdOf(int space) => _plan.Scenario.Spaces[space].Id;
}
