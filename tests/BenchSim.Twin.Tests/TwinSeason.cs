using System.Text;
using BenchSim.Engine.Randomness;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Twin.Tests;

/// <summary>
/// The season of docs/model.md written a second time, day by day, tray by tray, in the plainest way, at first from that page alone. Where
/// the two then differed, either the first was mended or the page was made to say what happens and this one followed it. They share the
/// records, the planned dates and numbers, the weather, the draws and the probit, and nothing else.
/// </summary>
internal sealed partial class TwinSeason
{
    private readonly SeasonPlan _plan;
    private readonly Scenario _scenario;
    private readonly SiteRules _rules;
    private readonly PlaceLimits _limits;
    private readonly TwinClimate _climate;
    private readonly TwinBatch[] _batches;
    private readonly List<TwinTray> _all = [];
    private readonly List<Relief> _open = [];

    // Benches whose free places a refused flat keeps for itself, and spaces nobody may enter any more in the step that is being worked.
    private readonly HashSet<int> _keptForFlat = [];
    private readonly HashSet<int> _barred = [];

    private readonly ulong _seed;
    private readonly int _season;
    private int _day;
    private double _now;
    private double _lastRound = -1;
    private int _sownToday;
    private int _pottedToday;
    private bool _flatPottedToday;
    private int _setOutToday;

    public TwinSeason(SeasonPlan plan, ulong seed, int season, PlaceLimits limits)
    {
        (_plan, _scenario, _rules, _limits) = (plan, plan.Scenario, plan.Scenario.Rules, limits);
        (_seed, _season) = (seed, season);
        _climate = new TwinClimate(plan, seed, season);
        var lucks = TwinLuck.Of(plan, _climate, seed, season);
        _batches = [.. plan.Batches.Select((batch, index) => new TwinBatch(plan, batch, index, _climate, lucks[index], seed, season))];
        Result = new TwinResult(plan);
        if (plan.Past is { } past)
        {
            LivePast(past);
        }
        else
        {
            _all.AddRange(_batches.SelectMany(batch => batch.Unsown));
        }

        for (var today = plan.Past?.Today ?? 0; today < plan.Days; today++)
        {
            PlayDay(today);
        }

        foreach (var tray in Standing())
        {
            CountOverHeld(tray);
        }

        Result.Finish(plan, _climate, _batches, _all);
    }

    public TwinResult Result { get; }

    private void PlayDay(int today)
    {
        _day = today;
        Mishaps();
        _now = (24 * _day) + _rules.RoundAt.ToTimeSpan().TotalHours;
        foreach (var tray in Standing())
        {
            tray.Look(_now);
        }

        if (_rules.IsWorkDay(_plan.FirstDay.AddDays(_day)))
        {
            Round();
        }

        foreach (var tray in _all)
        {
            CountDay(tray);
        }

        CountAisle();
        foreach (var tray in Standing().Where(tray => Kind(tray) == SpaceKind.Table))
        {
            Night(tray);
        }
    }

    private void CountAisle()
    {
        for (var space = 0; space < _scenario.Spaces.Length && _rules.Reliefs.Contains(Relief.Aisle); space++)
        {
            Result.ReliefUses[Relief.Aisle] +=
                _limits.IsLimited(space) && Places(space) > 0
                    ? Math.Max(0, Math.Min(_scenario.Spaces[space].AislePlaces, Result.Held[space][_day] - Places(space)))
                    : 0;
        }
    }

    // At the midnight that opens the day; what opens the first day that is played is of the past.
    private void Mishaps()
    {
        foreach (var (mishap, number) in _scenario.Mishaps.Select((mishap, number) => (mishap, number)))
        {
            var draw = Philox.Block(new PhiloxBlock(0, (uint)_season, 10, 0), PhiloxKey.Of(_seed, mishap.Id));
            var day = mishap.From.AddDays((int)(draw.Uniform1 * (mishap.To.DayNumber - mishap.From.DayNumber + 1)));
            if (draw.Uniform0 >= mishap.Chance || day != _plan.FirstDay.AddDays(_day) || _day == _plan.Past?.Today)
            {
                continue;
            }

            foreach (var tray in Standing())
            {
                var space = _scenario.Spaces[tray.Space];
                if (
                    (mishap.CropId ?? tray.Batch.Crop.Id) == tray.Batch.Crop.Id
                    && (mishap.SpaceId ?? space.Id) == space.Id
                    && (mishap.HouseId ?? space.HouseId) == space.HouseId
                )
                {
                    tray.Left *= 1 - mishap.Loss;
                    Result.MishapTrays[number]++;
                }
            }
        }
    }

    private void Round()
    {
        _lastRound = _now;
        (_sownToday, _pottedToday, _flatPottedToday, _setOutToday) = (0, 0, false, 0);
        _all.ForEach(tray => tray.MovedThisRound = false);
        _open.Clear();
        Pass();
        foreach (var relief in _rules.Reliefs)
        {
            var waiting = _all.Where(tray => tray.RefusedBy >= 0).ToList();
            var opens = relief switch
            {
                Relief.OffMatEarly => waiting.Exists(tray =>
                    tray.Fate == TrayFate.Unsown && _scenario.Spaces[tray.RefusedBy].Kind == SpaceKind.Mat
                ),
                Relief.TableEarly => waiting.Exists(tray => _scenario.Spaces[tray.RefusedBy].Kind == SpaceKind.Bench),
                _ => waiting.Count > 0,
            };
            if (opens)
            {
                _open.Add(relief);
                Pass();
            }
        }

        foreach (var tray in Standing().Where(tray => !tray.IsThinned && tray.Emerged <= _now && Kind(tray) != SpaceKind.Mat))
        {
            tray.IsThinned = true;
            var (order, crop) = (tray.Batch.Plan.Order, tray.Batch.Crop);
            var isThick = order.Method == Method.Direct && order.SeedsPerCell > crop.KeepPerCell;
            Result.CellsThinned[_day] += isThick ? tray.Batch.Plan.Tray.Cells : 0;
        }

        foreach (var tray in _all.Where(tray => tray.Fate == TrayFate.Unsown && tray.Batch.DaysWaited(_day) >= _rules.SowGiveUpDays))
        {
            tray.Fate = TrayFate.GivenUp;
            tray.Batch.Outcome.GivenUp++;
            tray.RefusedBy = -1;
        }
    }

    private void Pass()
    {
        foreach (var tray in _all)
        {
            (tray.RefusedBy, tray.RefusedTrays, tray.RefusedAsTrays, tray.Held) = (-1, 0, false, false);
        }

        _keptForFlat.Clear();
        ThrowOut();
        Step(SetOut);
        ThrowOutFromTable();
        Step(BenchToTable);
        PotUp();
        Step(Finish);
        if (_rules.MoveBack)
        {
            Step(MoveBack);
        }

        Step(MatToBench);
        Step(Sow);
    }

    private void Step(Action<TwinTray> work)
    {
        _barred.Clear();
        foreach (var tray in InOrder())
        {
            if (!tray.MovedThisRound)
            {
                work(tray);
            }
        }
    }

    private List<TwinTray> InOrder() =>
        [
            .. _all.Where(tray => tray.Fate is TrayFate.Standing or TrayFate.Unsown)
                .OrderBy(tray => tray.Batch.SetOutDay)
                .ThenBy(tray => tray.Batch.SowDay)
                .ThenBy(
                    tray => tray.Batch.Plan.Order.Id,
                    Comparer<string>.Create((a, b) => Encoding.UTF8.GetBytes(a).AsSpan().SequenceCompareTo(Encoding.UTF8.GetBytes(b)))
                )
                .ThenBy(tray => tray.Fate == TrayFate.Unsown ? 0 : tray.Entered)
                .ThenBy(tray => tray.Index),
        ];

    private IEnumerable<TwinTray> Standing() => _all.Where(tray => tray.Fate == TrayFate.Standing);

    private SpaceKind? Kind(TwinTray tray) => tray.Fate == TrayFate.Standing ? _scenario.Spaces[tray.Space].Kind : null;

    private bool IsOpen(int space)
    {
        var house = _scenario.Houses.FirstOrDefault(one => one.Id == _scenario.Spaces[space].HouseId);
        return house?.Opening != HouseOpening.FromDate || _plan.FirstDay.AddDays(_day) >= house.OpensOn;
    }

    /// <summary>Places of a space on the day, the aisle apart.</summary>
    private int Places(int space)
    {
        var places = _scenario.Spaces[space].Places;
        foreach (var change in _scenario.Spaces[space].Changes.Where(change => change.From <= _plan.FirstDay.AddDays(_day)))
        {
            places = change.Places;
        }

        return IsOpen(space) ? Math.Max(0, places + _limits.Added(space)) : 0;
    }

    private int HeldIn(int space) => Standing().Where(tray => tray.Space == space).Sum(tray => tray.PlacesEach);

    private int Free(int space)
    {
        if (!_limits.IsLimited(space))
        {
            return IsOpen(space) ? int.MaxValue / 2 : 0;
        }

        var aisle = _open.Contains(Relief.Aisle) && Places(space) > 0 ? _scenario.Spaces[space].AislePlaces : 0;
        return Places(space) + aisle - HeldIn(space);
    }

    private bool HasRoom(int space, int places) => !_barred.Contains(space) && !_keptForFlat.Contains(space) && Free(space) >= places;

    private int FirstWithRoom(IEnumerable<int> group, TwinTray tray) => group.FirstOrDefault(space => HasRoom(space, tray.PlacesEach), -1);

    // Waiting is charged to the first preference of the group asked.
    private static void Refuse(TwinTray tray, IReadOnlyList<int> group, int trays) =>
        (tray.RefusedBy, tray.RefusedTrays) = (group[0], trays);

    private void CountDay(TwinTray tray)
    {
        if (tray.RefusedBy >= 0)
        {
            var each = tray.RefusedAsTrays ? tray.Batch.Plan.Tray.PlacesEach : tray.PlacesEach;
            Result.Waiting[tray.RefusedBy][_day] += tray.RefusedTrays * each;
            Result.Refuse(
                tray.Fate == TrayFate.Unsown ? Result.Waiting.Length : tray.Space,
                tray.RefusedBy,
                _day,
                tray.RefusedTrays * each
            );
            tray.Batch.Outcome.BlockedTrayDays[tray.RefusedBy]++;
            tray.RefusedDaysSinceGrown += tray.Grown <= _lastRound ? 1 : 0;
        }

        if (tray.Held)
        {
            tray.HoldDays++;
            tray.Batch.Outcome.HoldTrayDays++;
        }

        if (tray.Fate == TrayFate.Standing)
        {
            Result.Held[tray.Space][_day] += tray.PlacesEach;
        }
    }

    private void Night(TwinTray tray)
    {
        var night = _climate.NightOnTable(tray.Space, _day, tray.Batch.Crop);
        tray.NightsStood++;
        var isCarriedIn = night < tray.Batch.Crop.DamageBelowC;
        tray.NightsCounted += isCarriedIn ? 0 : 1;
        Result.CarriedIn[_day] += isCarriedIn ? 1 : 0;
    }
}
