using System.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Twin.Tests;

/// <summary>
/// The season of docs/model.md written a second time, day by day, tray by tray, in the plainest way, at first from that page alone. Where
/// the two then differed, either the first was mended or the page was made to say what happens and this one followed it. They share the records, the
/// planned dates and numbers, the weather, the draws and the probit, and nothing else.
/// </summary>
internal sealed partial class TwinSeason
{
    private readonly SeasonPlan plan;
    private readonly Scenario scenario;
    private readonly SiteRules rules;
    private readonly PlaceLimits limits;
    private readonly TwinClimate climate;
    private readonly TwinBatch[] batches;
    private readonly List<TwinTray> all = [];
    private readonly List<Relief> open = [];

    // Benches whose free places a refused flat keeps for itself, and spaces nobody may enter any more in the step that is being worked.
    private readonly HashSet<int> keptForFlat = [];
    private readonly HashSet<int> barred = [];

    private int day;
    private double now;
    private double lastRound = -1;
    private int sownToday;
    private int pottedToday;
    private bool flatPottedToday;
    private int setOutToday;

    public TwinSeason(SeasonPlan plan, ulong seed, int season, PlaceLimits limits)
    {
        (this.plan, scenario, rules, this.limits) = (plan, plan.Scenario, plan.Scenario.Rules, limits);
        climate = new TwinClimate(plan, seed, season);
        batches = [.. plan.Batches.Select((batch, index) => new TwinBatch(plan, batch, index, climate, seed, season))];
        all.AddRange(batches.SelectMany(batch => batch.Unsown));
        Result = new TwinResult(plan);
        for (var today = 0; today < plan.Days; today++)
        {
            PlayDay(today);
        }

        foreach (var tray in Standing())
        {
            CountOverHeld(tray);
        }

        Result.Finish(plan, climate, batches, all);
    }

    public TwinResult Result { get; }

    private void PlayDay(int today)
    {
        day = today;
        now = (24 * day) + rules.RoundAt.ToTimeSpan().TotalHours;
        foreach (var tray in Standing())
        {
            tray.Look(now);
        }

        if (rules.IsWorkDay(plan.FirstDay.AddDays(day)))
        {
            Round();
        }

        foreach (var tray in all)
        {
            CountDay(tray);
        }

        for (var space = 0; space < scenario.Spaces.Length && rules.Reliefs.Contains(Relief.Aisle); space++)
        {
            Result.ReliefUses[Relief.Aisle] +=
                limits.IsLimited(space) && Places(space) > 0
                    ? Math.Max(0, Math.Min(scenario.Spaces[space].AislePlaces, HeldIn(space) - Places(space)))
                    : 0;
        }

        foreach (var tray in Standing().Where(tray => Kind(tray) == SpaceKind.Table))
        {
            Night(tray);
        }
    }

    private void Round()
    {
        lastRound = now;
        (sownToday, pottedToday, flatPottedToday, setOutToday) = (0, 0, false, 0);
        all.ForEach(tray => tray.MovedThisRound = false);
        open.Clear();
        Pass();
        foreach (var relief in rules.Reliefs)
        {
            var waiting = all.Where(tray => tray.RefusedBy >= 0).ToList();
            var opens = relief switch
            {
                Relief.OffMatEarly => waiting.Exists(tray =>
                    tray.Fate == TrayFate.Unsown && scenario.Spaces[tray.RefusedBy].Kind == SpaceKind.Mat
                ),
                Relief.TableEarly => waiting.Exists(tray => scenario.Spaces[tray.RefusedBy].Kind == SpaceKind.Bench),
                _ => waiting.Count > 0,
            };
            if (opens)
            {
                open.Add(relief);
                Pass();
            }
        }

        foreach (var tray in all.Where(tray => tray.Fate == TrayFate.Unsown && day - tray.Batch.SowDay >= rules.SowGiveUpDays))
        {
            tray.Fate = TrayFate.GivenUp;
            tray.Batch.Outcome.GivenUp++;
            tray.RefusedBy = -1;
        }
    }

    private void Pass()
    {
        foreach (var tray in all)
        {
            (tray.RefusedBy, tray.RefusedTrays, tray.RefusedAsTrays, tray.Held) = (-1, 0, false, false);
        }

        keptForFlat.Clear();
        ThrowOut();
        Step(SetOut);
        ThrowOutFromTable();
        Step(BenchToTable);
        PotUp();
        if (rules.MoveBack)
        {
            Step(MoveBack);
        }

        Step(MatToBench);
        Step(Sow);
    }

    private void Step(Action<TwinTray> work)
    {
        barred.Clear();
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
            .. all.Where(tray => tray.Fate is TrayFate.Standing or TrayFate.Unsown)
                .OrderBy(tray => tray.Batch.SetOutDay)
                .ThenBy(tray => tray.Batch.SowDay)
                .ThenBy(
                    tray => tray.Batch.Plan.Order.Id,
                    Comparer<string>.Create((a, b) => Encoding.UTF8.GetBytes(a).AsSpan().SequenceCompareTo(Encoding.UTF8.GetBytes(b)))
                )
                .ThenBy(tray => tray.Fate == TrayFate.Unsown ? 0 : tray.Entered)
                .ThenBy(tray => tray.Index),
        ];

    private IEnumerable<TwinTray> Standing() => all.Where(tray => tray.Fate == TrayFate.Standing);

    private SpaceKind? Kind(TwinTray tray) => tray.Fate == TrayFate.Standing ? scenario.Spaces[tray.Space].Kind : null;

    private bool IsOpen(int space)
    {
        var house = scenario.Houses.FirstOrDefault(one => one.Id == scenario.Spaces[space].HouseId);
        return house?.Opening != HouseOpening.FromDate || plan.FirstDay.AddDays(day) >= house.OpensOn;
    }

    /// <summary>Places of a space on the day, the aisle apart.</summary>
    private int Places(int space)
    {
        var places = scenario.Spaces[space].Places;
        foreach (var change in scenario.Spaces[space].Changes.Where(change => change.From <= plan.FirstDay.AddDays(day)))
        {
            places = change.Places;
        }

        return IsOpen(space) ? Math.Max(0, places + limits.Added(space)) : 0;
    }

    private int HeldIn(int space) => Standing().Where(tray => tray.Space == space).Sum(tray => tray.PlacesEach);

    private int Free(int space)
    {
        if (!limits.IsLimited(space))
        {
            return IsOpen(space) ? int.MaxValue / 2 : 0;
        }

        var aisle = open.Contains(Relief.Aisle) && Places(space) > 0 ? scenario.Spaces[space].AislePlaces : 0;
        return Places(space) + aisle - HeldIn(space);
    }

    private bool HasRoom(int space, int places) => !barred.Contains(space) && !keptForFlat.Contains(space) && Free(space) >= places;

    private int FirstWithRoom(IEnumerable<int> group, TwinTray tray) => group.FirstOrDefault(space => HasRoom(space, tray.PlacesEach), -1);

    // Waiting is charged to the first preference of the group asked.
    private static void Refuse(TwinTray tray, IReadOnlyList<int> group, int trays) =>
        (tray.RefusedBy, tray.RefusedTrays) = (group[0], trays);

    private void CountDay(TwinTray tray)
    {
        if (tray.RefusedBy >= 0)
        {
            var each = tray.RefusedAsTrays ? tray.Batch.Plan.Tray.PlacesEach : tray.PlacesEach;
            Result.Waiting[tray.RefusedBy][day] += tray.RefusedTrays * each;
            Result.Refuse(tray.Fate == TrayFate.Unsown ? Result.Waiting.Length : tray.Space, tray.RefusedBy, day, tray.RefusedTrays * each);
            tray.Batch.Outcome.BlockedTrayDays[tray.RefusedBy]++;
            tray.RefusedDaysSinceGrown += tray.Grown <= lastRound ? 1 : 0;
        }

        if (tray.Held)
        {
            tray.HoldDays++;
            tray.Batch.Outcome.HoldTrayDays++;
        }

        if (tray.Fate == TrayFate.Standing)
        {
            Result.Held[tray.Space][day] += tray.PlacesEach;
        }
    }

    private void Night(TwinTray tray)
    {
        var night = climate.NightOnTable(tray.Space, day, tray.Batch.Crop);
        tray.NightsStood++;
        tray.NightsCounted += night >= tray.Batch.Crop.HardenAboveC ? 1 : 0;
        Result.CarriedIn[day] += night < tray.Batch.Crop.DamageBelowC ? 1 : 0;
    }
}
