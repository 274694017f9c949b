using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Watches one batch through a season and writes its story.</summary>
internal sealed class BatchTeller(SeasonPlan plan, int season, int index) : ISeasonWitness
{
    private readonly ImmutableArray<string>.Builder lines = ImmutableArray.CreateBuilder<string>();
    private readonly BatchPlan batch = plan.Batches[index];
    private readonly DayLines today = new();
    private string lastWait = "";
    private int waitSince;

    public void Begins(SeasonCore core)
    {
        var state = core.Batches[index];
        var order = batch.Order;
        lines.Add($"Season {season + 1}, batch {order.Id}: {order.Plants} plants of {batch.Crop.Name} for {order.Grower}, {Sowings()}.");
        lines.Add($"Planned: sow {Iso(batch.SowOn)}, {PotUpWords()}table {Iso(batch.TableOn)}, set out {Iso(batch.SetOutOn)}.");
        lines.Add(
            "Luck drawn: emergence takes "
                + Factor(state.EmergeNeed, batch.Crop.EmergeHeat)
                + " times its usual heat, growth "
                + Factor(state.GrowthNeed, state.GrowthDegreeDays)
                + $" times; the packet germinates {Percent(state.PacketGermination)} at its best (stated {Percent(order.Germination)})."
        );
    }

    public void Moved(BatchState moved, bool flat, int first, int count, int from, int to, double hour)
    {
        if (moved.Index == index)
        {
            EndWait(hour);
            today.Add($"move {from} {to}", flat, first, count, 0, (trays, _) =>
                from < 0
                    ? $"{Day(hour)}: {trays} sown on {SpaceName(to)}."
                    : $"{Day(hour)}: {trays} moved from {SpaceName(from)} to {SpaceName(to)}."
            );
        }
    }

    public void WentOut(BatchState moved, Lot lot, int plants, double hour)
    {
        if (moved.Index == index)
        {
            EndWait(hour);
            var (space, held) = (lot.Space, lot.HoldDays);
            today.Add($"out {space} {held}", flat: false, lot.First, lot.Count, plants, (trays, all) =>
                $"{Day(hour)}: {trays} set out from {SpaceName(space)} with {all} plants, {Lateness(hour)}"
                + (held > 0 ? $"; held {Days(held)} by the weather alone." : ".")
            );
        }
    }

    public void Potted(BatchState moved, int flat, int seedlings, int firstTray, int trays, double hour)
    {
        if (moved.Index == index)
        {
            EndWait(hour);
            if (trays == 0)
            {
                today.Add($"{Day(hour)}: flat {flat + 1} gave {seedlings} seedlings, too few for a tray; they are passed on.");
                return;
            }

            // Its trays are given their places after this is said, so the benches are looked up when the day is told.
            today.Add($"pot {flat}", flat: false, firstTray, trays, seedlings, (potted, all) =>
                $"{Day(hour)}: flat {flat + 1} gave {all} seedlings, potted up into {potted}{Standing(moved, firstTray, trays)}."
            );
        }
    }

    public void Discarded(BatchState moved, Lot lot, DiscardReason reason, double hour)
    {
        if (moved.Index == index)
        {
            EndWait(hour);
            var ready = reason == DiscardReason.FlatOverHeld ? lot.PotHour : lot.GrownHour + (batch.Crop.HardeningNights * 24.0);
            var days = reason is DiscardReason.OverHeld or DiscardReason.FlatOverHeld ? (int)(hour / 24) - RoundAtOrAfter(ready) : 0;
            today.Add($"thrown out {reason} {days}", lot.IsFlat, lot.First, lot.Count, 0, (trays, _) =>
                $"{Day(hour)}: {trays} thrown out{Why(reason, days, trays.Count == 1)}."
            );
        }
    }

    public void GaveUp(BatchState moved, int count, double hour)
    {
        if (moved.Index == index)
        {
            EndWait(hour);
            today.Add(
                $"{Day(hour)}: {count} {TrayRuns.Noun(batch.Flat is not null, count)} given up unsown, more than {Days(plan.Scenario.Rules.SowGiveUpDays)} after the planned date."
            );
        }
    }

    public void DayEnds(SeasonCore core, int day)
    {
        today.TellInto(lines);
        var rules = plan.Scenario.Rules;
        if (rules.Rounds == RoundKind.WorkRound && !rules.IsWorkDay(plan.FirstDay.AddDays(day)))
        {
            // Nobody asks for a place today: the last round's waits go on, whatever places the day adds.
            return;
        }

        var state = core.Batches[index];
        var wait = Waits(core, state);
        if (string.Equals(wait, lastWait, StringComparison.Ordinal))
        {
            return;
        }

        EndWait(day * 24.0);
        lastWait = wait;
        waitSince = day;
        if (wait.Length > 0)
        {
            lines.Add($"{Iso(day)}: {wait}.");
        }
    }

    public ImmutableArray<string> Close(SeasonResult result)
    {
        today.TellInto(lines);
        var outcome = result.Batches[index];
        var wanted = batch.Order.Plants;
        lines.Add(
            $"In the end {outcome.PlantsOut} plants went out, {outcome.PlantsInTime} of the {wanted} wanted in time"
                + (outcome.PlantsShort > 0 ? $"; {outcome.PlantsShort} never went out." : ".")
        );
        if (outcome.TraysStanding + outcome.FlatsStanding > 0)
        {
            lines.Add(
                $"Still standing on the last day: {outcome.TraysStanding} {TrayRuns.Noun(flat: false, outcome.TraysStanding)}, {outcome.FlatsStanding} {TrayRuns.Noun(flat: true, outcome.FlatsStanding)}."
            );
        }

        return lines.ToImmutable();
    }

    private string Waits(SeasonCore core, BatchState state)
    {
        var parts = new List<string>();
        if (state.SowWaiting > 0)
        {
            var group = state.Mats.Contains(state.SowWaitingAt) ? state.Mats : state.Benches;
            var room = new RoomWords(core, plan, group);
            parts.Add(
                $"{state.SowWaiting} {TrayRuns.Noun(state.IsPotUp, state.SowWaiting)} unsown, waiting for {room.Of(state.SowWaitingAt, state.PlacesEach(state.IsPotUp))}"
            );
        }

        AddWaits(core, parts, state.OnMat, state.Benches);
        AddWaits(core, parts, [.. state.OnBench.Where(lot => lot.IsFlat)], state.Benches);
        AddWaits(core, parts, [.. state.OnBench.Where(lot => !lot.IsFlat)], state.Tables);
        AddWaits(core, parts, state.OnTable, state.Tables);
        return string.Join("; ", parts);
    }

    private void AddWaits(SeasonCore core, List<string> parts, List<Lot> lots, int[] group)
    {
        var blocked = lots.Where(lot => lot.Hindrance == Hindrance.Place).Sum(lot => lot.Count);
        if (blocked > 0)
        {
            var first = lots.First(lot => lot.Hindrance == Hindrance.Place);
            var isPotUp = first.IsFlat && plan.Scenario.Spaces[first.Space].Kind == SpaceKind.Bench;
            var room = new RoomWords(core, plan, group);
            parts.Add(
                $"{blocked} {TrayRuns.Noun(first.IsFlat, blocked)} on {SpaceName(first.Space)} ready, waiting for "
                    + (isPotUp ? room.ForTheTraysOf(first, group[0]) : room.Of(group[0], first.PlacesRefused))
            );
        }

        var holding = lots.Where(lot => lot.Hindrance == Hindrance.Hold).Sum(lot => lot.Count);
        if (holding > 0)
        {
            parts.Add(
                $"{holding} {TrayRuns.Noun(flat: false, holding)} on {SpaceName(lots.First(lot => lot.Hindrance == Hindrance.Hold).Space)} held by the weather"
            );
        }
    }

    private void EndWait(double hour)
    {
        var days = (int)(hour / 24) - waitSince;
        if (lastWait.Length > 0 && days > 0)
        {
            lines.Add($"{Day(hour)}: that wait has lasted {Days(days)}.");
        }

        lastWait = "";
        waitSince = (int)(hour / 24);
    }

    private string Sowings() =>
        batch.Flat is null
            ? $"{batch.Trays} {TrayRuns.Noun(flat: false, batch.Trays)} sown directly"
            : $"{batch.Flats} {TrayRuns.Noun(flat: true, batch.Flats)} sown dense for {batch.Trays} {TrayRuns.Noun(flat: false, batch.Trays)}";

    private string PotUpWords() => batch.PotUpOn is { } date ? $"pot up {Iso(date)}, " : "";

    private string Lateness(double hour)
    {
        var late = (int)(hour / 24) - (batch.SetOutOn.DayNumber - plan.FirstDay.DayNumber);
        return late > 0 ? $"{Days(late)} after the planned date" : "on time";
    }

    // Where potted trays stand: ": 2 on Main benches and 1 on Overflow benches".
    private string Standing(BatchState state, int firstTray, int trays)
    {
        var bySpace = state
            .OnBench.Where(lot => !lot.IsFlat)
            .Select(lot => (lot.Space, Count: Math.Min(lot.First + lot.Count, firstTray + trays) - Math.Max(lot.First, firstTray)))
            .Where(part => part.Count > 0)
            .GroupBy(part => part.Space, part => part.Count)
            .Select(space => (Name: SpaceName(space.Key), Count: space.Sum()))
            .ToList();
        return bySpace.Count switch
        {
            0 => "",
            1 => $" on {bySpace[0].Name}",
            _ => ": " + string.Join(" and ", bySpace.Select(space => $"{space.Count} on {space.Name}")),
        };
    }

    private static string Why(DiscardReason reason, int days, bool isOne) =>
        reason switch
        {
            DiscardReason.OverHeld => $" {Days(days)} after {(isOne ? "it was" : "they were")} ready for the field",
            DiscardReason.FlatOverHeld => $" {Days(days)} after {(isOne ? "it was" : "they were")} ready to pot up",
            DiscardReason.NeverCameUp => ": never came up",
            _ => ": left over when all planned trays were filled",
        };

    // The first work day whose round is at or after an instant, as in docs/model.md section 2.
    private int RoundAtOrAfter(double hour)
    {
        var rules = plan.Scenario.Rules;
        var day = SiteTables.DayAtOrAfter(hour, rules.RoundAt.Hour + (rules.RoundAt.Minute / 60.0));
        return rules.WorkDayFrom(plan.FirstDay.AddDays(day)).DayNumber - plan.FirstDay.DayNumber;
    }

    private static string Days(int count) => count == 1 ? "1 day" : $"{count} days";

    private string SpaceName(int space) => plan.Scenario.Spaces[space].Name;

    private string Day(double hour) => Iso((int)(hour / 24));

    private string Iso(int day) => Iso(plan.FirstDay.AddDays(day));

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Percent(double share) => (100 * share).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    private static string Factor(long units, double usual) =>
        (units / HeatTable.UnitsADegreeDay / usual).ToString("0.00", CultureInfo.InvariantCulture);
}
