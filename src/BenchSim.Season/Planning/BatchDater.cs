using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>Works out the planned dates of a batch: forward from a sow date, or backward from the date the field wants.</summary>
internal sealed class BatchDater(Scenario scenario, SiteTables tables, PlanClimates climates)
{
    private readonly SeasonClimate _normal = climates.Normal();
    private readonly SeasonResult _scratch = new();
    private readonly DateOnly _opens = scenario.Window.Opens;
    private readonly HashSet<string?> _openLater =
    [
        .. scenario.Houses.Where(house => house.Opening == HouseOpening.FromDate).Select(house => house.Id),
    ];

    /// <summary>The batch with its dates, and the mean medium temperature up to emergence; null when a fault was added.</summary>
    public (BatchPlan Plan, double PathMeanC)? Date(
        BatchPlan draft,
        ImmutableArray<Fault>.Builder faults,
        ImmutableArray<Fault>.Builder warnings
    )
    {
        // A batch is walked by itself, so the time that a plan takes grows with its batches and not with their square.
        var core = new SeasonCore(
            new SeasonState(scenario, BatchStates.Of(scenario, [draft], seed: 0), tables, climates.Layout, PlayMode.Planning)
        );
        var order = draft.Order;
        var wanted = order.SetOut is { } date ? WorkDayBefore(date.DayNumber - _opens.DayNumber) : (int?)null;
        if (wanted < 0)
        {
            faults.Add(
                new Fault(
                    order.Place,
                    $"batch \"{order.Id}\" is wanted in the field before the first work day",
                    "give a later set-out date, or open the season earlier"
                )
            );
            return null;
        }

        var sow = order.Sow is { } sowDate
            ? tables.NextWorkDay[sowDate.DayNumber - _opens.DayNumber]
            : Backward(core, order, wanted!.Value, faults);
        if (sow < 0)
        {
            return null;
        }

        if (core.Walk(sow, _normal, _scratch) is not { } dates)
        {
            faults.Add(NeverReady(order, sow));
            return null;
        }

        if (wanted is { } day && dates.OutDay > day)
        {
            warnings.Add(
                new Fault(
                    order.Place,
                    $"batch \"{order.Id}\" sown on {DateOf(sow)} is ready on {DateOf(dates.OutDay)} at the earliest, "
                        + $"after the wanted {DateOf(day)}",
                    "sow earlier, or want it later"
                )
            );
        }

        if (order.Sow is not null && wanted is { } field && field - dates.OutDay > draft.Crop.HoldDays)
        {
            warnings.Add(ReadyLongBefore(draft, sow, dates.OutDay, field));
        }

        return (Dated(draft, sow, dates, wanted ?? AfterSlack(dates.OutDay)), dates.PathMeanC);
    }

    // The first work day that leaves the slack after the day it could go out. The season's days may end sooner, so the rules are asked, not
    // the tables.
    private int AfterSlack(int ready) => WorkDayFrom(ready + scenario.Rules.SlackDays);

    private int WorkDayFrom(int day) => scenario.Rules.WorkDayFrom(_opens.AddDays(day)).DayNumber - _opens.DayNumber;

    // A tray that is grown stays on its bench until so many days before its set-out date, as in the play.
    private int TableDay(BatchPlan draft, int grown, int setOut) =>
        Math.Max(grown, WorkDayFrom(Math.Max(0, setOut - draft.Crop.HardeningNights - scenario.Rules.TableLeadDays)));

    private Fault ReadyLongBefore(BatchPlan draft, int sow, int ready, int wanted) =>
        new(
            draft.Order.Place,
            $"batch \"{draft.Order.Id}\" sown on {DateOf(sow)} is ready for the field on {DateOf(ready)}, "
                + $"{wanted - ready} days before the wanted {DateOf(wanted)}: "
                + $"its trays are past their best after {draft.Crop.HoldDays} days and thrown out after {draft.Crop.DiscardAfterDays}",
            "sow it later, or want it sooner"
        );

    // The latest work day whose forward date leaves the slack before the wanted one; -1 when a fault was added.
    private int Backward(SeasonCore core, BatchOrder order, int field, ImmutableArray<Fault>.Builder faults)
    {
        var wanted = field - scenario.Rules.SlackDays;
        if (OpensLater(core.State.Batches[0].Plan))
        {
            return BackwardFromTheEnd(core, order, wanted, faults);
        }

        var first = tables.NextWorkDay[0];
        if (core.Walk(first, _normal, _scratch) is not { } earliest)
        {
            // What the whole season does not make ready, a longer one would hardly.
            faults.Add(NeverReady(order, first));
            return -1;
        }

        var sow = WorkDayBefore(Math.Max(0, wanted - (earliest.OutDay - first)));
        while (sow >= 0 && !(core.Walk(sow, _normal, _scratch) is { } ready && ready.OutDay <= wanted))
        {
            sow = WorkDayBefore(sow - 1);
        }

        if (sow < 0)
        {
            faults.Add(TooEarly(order, wanted, earliest));
            return -1;
        }

        for (var next = tables.NextWorkDay[sow + 1]; next <= wanted; next = tables.NextWorkDay[next + 1])
        {
            if (core.Walk(next, _normal, _scratch) is not { } later || later.OutDay > wanted)
            {
                break;
            }

            sow = next;
        }

        return sow;
    }

    // Where a space opens on a date, a later sowing may come into a better house and be ready sooner: every day is tried, from the last.
    private int BackwardFromTheEnd(SeasonCore core, BatchOrder order, int wanted, ImmutableArray<Fault>.Builder faults)
    {
        var isEverReady = false;
        for (var sow = WorkDayBefore(wanted); sow >= 0; sow = WorkDayBefore(sow - 1))
        {
            if (core.Walk(sow, _normal, _scratch) is not { } ready)
            {
                continue;
            }

            isEverReady = true;
            if (ready.OutDay <= wanted)
            {
                return sow;
            }
        }

        var first = tables.NextWorkDay[0];
        var soonest = core.Walk(first, _normal, _scratch);
        faults.Add(isEverReady || soonest is not null ? TooEarly(order, wanted, soonest) : NeverReady(order, first));
        return -1;
    }

    private bool OpensLater(BatchPlan draft) =>
        draft
            .Mats.Concat(draft.Benches)
            .Concat(draft.Finish)
            .Concat(draft.Tables)
            .Any(space => _openLater.Contains(scenario.Spaces[space].HouseId));

    private Fault TooEarly(BatchOrder order, int wanted, WalkDates? soonest)
    {
        var slack = scenario.Rules.SlackDays;
        var why = slack > 0 ? $", {slack} {(slack == 1 ? "day" : "days")} of slack (slack_days) before it is wanted" : "";
        var then = soonest is { } dates ? $"; sown on the first work day it is ready on {DateOf(dates.OutDay)}" : "";
        return new Fault(
            order.Place,
            $"batch \"{order.Id}\" would have to be sown before the season opens on {_opens:yyyy-MM-dd} "
                + $"to be ready by {DateOf(wanted)}{why}{then}",
            "open the season earlier, or want it later"
        );
    }

    private BatchPlan Dated(BatchPlan draft, int sow, WalkDates dates, int setOut) =>
        draft with
        {
            SowOn = _opens.AddDays(sow),
            EmergeOn = _opens.AddDays(dates.EmergeDay),
            OffMatOn = dates.OffMatDay < 0 ? null : _opens.AddDays(dates.OffMatDay),
            PotUpOn = dates.PotUpDay < 0 ? null : _opens.AddDays(dates.PotUpDay),
            FinishOn = dates.FinishDay < 0 ? null : _opens.AddDays(dates.FinishDay),
            TableOn = _opens.AddDays(TableDay(draft, dates.TableDay, setOut)),
            ReadyOn = _opens.AddDays(dates.OutDay),
            SetOutOn = _opens.AddDays(setOut),
        };

    private Fault NeverReady(BatchOrder order, int sow) =>
        new(
            order.Place,
            $"batch \"{order.Id}\" sown on {DateOf(sow)} is never ready for the field in normal weather",
            "give it a warmer mat or house, or a bench that is open in time"
        );

    private int WorkDayBefore(int day)
    {
        while (day >= 0 && !tables.IsWorkDay[day])
        {
            day--;
        }

        return day;
    }

    private string DateOf(int day) => _opens.AddDays(day).ToString("yyyy-MM-dd");
}
